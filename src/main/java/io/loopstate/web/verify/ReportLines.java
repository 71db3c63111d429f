package io.loopstate.web.verify;

import io.loopstate.web.dto.Quantity;
import io.loopstate.web.dto.VerifyCaseReport;
import io.loopstate.web.dto.VerifyValueReport;
import io.loopstate.web.dto.VerifyWarning;
import java.util.ArrayList;
import java.util.List;

/** What people read of a report. */
final class ReportLines {
    private ReportLines() {}

    /** What failed in a case, a line each; empty where it passed. */
    static List<String> failures(VerifyCaseReport report) {
        List<String> lines = new ArrayList<>();
        if (report.message() != null) {
            lines.add(Characters.clean(report.message()));
        }
        report.expectations().stream()
                .filter(value -> !value.passed())
                .map(ReportLines::failure)
                .forEach(lines::add);
        return lines;
    }

    /** One expectation that failed. */
    static String failure(VerifyValueReport value) {
        String place = value.pointer().isEmpty() ? "the whole reply" : value.pointer();
        String expected = value.expected() != null ? words(value.expected()) : '"' + value.expectedText() + '"';
        StringBuilder line = new StringBuilder(place).append(": expected ").append(expected);
        if (value.tolerance() != null) {
            line.append(" within ").append(words(value.tolerance()));
        }
        if (value.actual() != null) {
            line.append(", got ").append(words(value.actual()));
            line.append(", difference ").append(words(value.difference()));
        } else if (value.actualText() != null) {
            line.append(", got \"").append(value.actualText()).append('"');
        }
        if (value.message() != null) {
            line.append(". ").append(value.message());
        }
        return Characters.clean(line.toString());
    }

    /** The warnings of a case, a line each. */
    static List<String> warnings(VerifyCaseReport report) {
        return report.warnings().stream().map(ReportLines::words).toList();
    }

    private static String words(VerifyWarning warning) {
        return Characters.clean(
                warning.severity() + ' ' + warning.code() + " of " + warning.subject() + ": " + warning.message());
    }

    private static String words(Quantity quantity) {
        return quantity.unit().equals("ratio")
                ? Double.toString(quantity.value())
                : quantity.value() + " " + quantity.unit();
    }
}
