package io.loopstate.web.verification;

import io.loopstate.web.dto.VerifiedOutcome;
import io.loopstate.web.dto.VerifiedValue;
import io.loopstate.web.problem.Problem;
import io.loopstate.web.verify.Answer;
import io.loopstate.web.verify.Answers;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.OptionalDouble;

/** The numbers of a row against the answer to its request. */
final class Comparison {
    /** What rounding of a value exactly half-way may add. */
    private static final double ROUNDING = 1 + 1e-9;
    /** Told of a difference beyond the last printed one. */
    private static final int DIGITS = 4;

    private Comparison() {}

    /** Asks for a row now. */
    static List<VerifiedValue> of(PublishedRow row, Answers answers) {
        Answer answer = answers.toQuery(row.operation(), row.parameters());
        return row.values().stream().map(value -> value(row, value, answer)).toList();
    }

    private static VerifiedValue value(PublishedRow row, PublishedValue value, Answer answer) {
        OptionalDouble number = answer.number(value.pointer(), value.unit());
        if (number.isEmpty()) {
            String detail = answer.problem().map(Problem::detail).orElse("The reply has no such number.");
            return value(row, value, OptionalDouble.empty(), VerifiedOutcome.UNEXPECTED, detail);
        }
        double calculated = value.asPrinted(number.getAsDouble());
        VerifiedOutcome outcome = VerifiedOutcome.UNEXPECTED;
        if (value.deviation(calculated) <= ROUNDING) {
            outcome = VerifiedOutcome.MET;
        } else if (Math.abs(calculated - value.number()) <= value.allowed().orElse(0) * ROUNDING) {
            outcome = VerifiedOutcome.KNOWN_DEVIATION;
        }
        String reason = outcome == VerifiedOutcome.KNOWN_DEVIATION ? value.reason() : null;
        return value(row, value, OptionalDouble.of(calculated), outcome, reason);
    }

    private static VerifiedValue value(
            PublishedRow row, PublishedValue value, OptionalDouble calculated, VerifiedOutcome outcome, String reason) {
        boolean there = calculated.isPresent();
        double number = calculated.orElse(0);
        return new VerifiedValue(
                row.id(),
                value.column(),
                row.place(),
                row.origin(),
                "/v1/" + row.request(),
                value.pointer().toString(),
                value.printed(),
                there ? number : null,
                value.printedUnit(),
                there ? rounded(number - value.number(), new BigDecimal(value.printed()).scale() + DIGITS) : null,
                there ? rounded(value.deviation(number), DIGITS) : null,
                value.allowed().isPresent() ? value.allowed().getAsDouble() : null,
                outcome,
                reason);
    }

    /** What a difference has beyond some digits of the print is the rounding of this processor. */
    private static double rounded(double value, int digits) {
        return new BigDecimal(value).setScale(digits, RoundingMode.HALF_UP).doubleValue();
    }

    /** One value in words, for logs and reports. */
    static String words(VerifiedValue value) {
        StringBuilder words = new StringBuilder(value.quantity())
                .append(": printed ")
                .append(value.printed())
                .append(value.unit().equals("ratio") ? "" : ' ' + value.unit());
        if (value.calculated() == null) {
            return words.append(", not answered: ").append(value.reason()).toString();
        }
        return words.append(", calculated ")
                .append(value.calculated())
                .append(", difference ")
                .append(value.difference())
                .append(" or ")
                .append(value.deviation())
                .append(" half units of the last printed digit")
                .append(value.knownDifference() == null ? "" : ", known up to " + value.knownDifference())
                .toString();
    }
}
