package io.loopstate.web.verify;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import io.loopstate.web.dto.VerifyCaseReport;
import io.loopstate.web.dto.VerifyReport;
import java.util.List;

/** A report in the Test Anything Protocol, version 14: a test point for each case, what failed and warnings as YAML below it. */
public final class Tap {
    private Tap() {}

    /** The report as text. */
    public static String of(VerifyReport report) {
        StringBuilder out = new StringBuilder("TAP version 14\n");
        out.append("1..").append(report.cases().size()).append('\n');
        out.append("# ").append(Characters.clean(report.name())).append('\n');
        int number = 0;
        for (VerifyCaseReport one : report.cases()) {
            number++;
            out.append(one.passed() ? "ok " : "not ok ").append(number).append(" - ");
            out.append(description(one.id())).append('\n');
            diagnosis(out, ReportLines.failures(one), ReportLines.warnings(one));
        }
        return out.toString();
    }

    private static void diagnosis(StringBuilder out, List<String> failures, List<String> warnings) {
        if (failures.isEmpty() && warnings.isEmpty()) {
            return;
        }
        out.append("  ---\n");
        list(out, "failures", failures);
        list(out, "warnings", warnings);
        out.append("  ...\n");
    }

    /** A JSON string is a double-quoted scalar of YAML. */
    private static void list(StringBuilder out, String name, List<String> lines) {
        if (lines.isEmpty()) {
            return;
        }
        out.append("  ").append(name).append(":\n");
        for (String line : lines) {
            out.append("    - \"");
            out.append(JsonStringEncoder.getInstance().quoteAsString(line));
            out.append("\"\n");
        }
    }

    /** A number sign would begin a directive. */
    private static String description(String id) {
        return Characters.clean(id).replace("\\", "\\\\").replace("#", "\\#");
    }
}
