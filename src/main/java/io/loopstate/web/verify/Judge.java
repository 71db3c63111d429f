package io.loopstate.web.verify;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.units.QuantityKind;
import io.loopstate.units.Reading;
import io.loopstate.units.UnitToken;
import io.loopstate.web.dto.Quantity;
import io.loopstate.web.dto.VerifyValueReport;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;

/** Judges the expectations of one answer. */
final class Judge {
    private static final UnitToken PLAIN = UnitToken.of("ratio");

    private final Answer answer;

    Judge(Answer answer) {
        this.answer = answer;
    }

    /** Whether an expectation is met. */
    VerifyValueReport judge(Expected expected) {
        JsonNode actual = answer.tree().at(expected.pointer());
        if (actual.isMissingNode()) {
            return failed(expected, NearPointers.message(answer.tree(), expected.pointer()));
        }
        return expected.words()
                .map(words -> words(expected, words, actual))
                .orElseGet(() -> number(expected, expected.number().orElseThrow(), actual));
    }

    /** An expectation of an answer that does not hold values. */
    static VerifyValueReport failed(Expected expected, String message) {
        return new VerifyValueReport(
                expected.pointer().toString(),
                false,
                expected.number()
                        .map(number -> new Quantity(
                                number.value(), number.unit().orElse(PLAIN).name()))
                        .orElse(null),
                null,
                null,
                null,
                expected.words().map(Expected.Words::text).orElse(null),
                null,
                message);
    }

    private static VerifyValueReport words(Expected expected, Expected.Words words, JsonNode actual) {
        if (actual.isContainerNode()) {
            return failed(expected, "There is no text here, but " + (actual.isArray() ? "a list." : "an object."));
        }
        boolean same = actual.asText().equals(words.text()) && (words.flag() ? actual.isBoolean() : actual.isTextual());
        boolean alike = !same && actual.asText().equals(words.text());
        return new VerifyValueReport(
                expected.pointer().toString(),
                same,
                null,
                null,
                null,
                null,
                words.text(),
                actual.asText(),
                alike ? "The reply has another type here: " + actual.getNodeType() + "." : null);
    }

    private VerifyValueReport number(Expected expected, Expected.Number number, JsonNode actual) {
        JsonPointer pointer = expected.pointer();
        JsonNode holder = actual.isNumber() ? answer.tree().at(pointer.head()) : actual;
        boolean quantity =
                holder.path("value").isNumber() && holder.path("unit").isTextual();
        if (!quantity && !actual.isNumber()) {
            return failed(expected, "There is no number here, but " + actual.getNodeType() + '.');
        }
        JsonPointer place = quantity && actual.isNumber() ? pointer.head() : pointer;
        UnitToken unit = quantity ? UnitToken.of(holder.get("unit").textValue()) : PLAIN;
        if (quantity && number.unit().isEmpty()) {
            return failed(expected, "This is a quantity in " + unit + ": the value expected needs a unit as well.");
        }
        UnitToken wanted = number.unit().orElse(PLAIN);
        Optional<QuantityKind> declared = quantity ? answer.kind(place) : Optional.of(QuantityKind.RATIO);
        Optional<QuantityKind> kind = declared.or(() -> Arrays.stream(QuantityKind.values())
                        .filter(candidate -> unit.measures(candidate) && wanted.measures(candidate))
                        .findFirst())
                .filter(wanted::measures);
        if (kind.isEmpty()) {
            String what = declared.map(QuantityKind::words).orElse("quantity") + " in " + unit;
            String hint =
                    wanted.measures(QuantityKind.PRESSURE_DIFFERENCE) ? " Say gauge or absolute, psig or psia." : "";
            return failed(expected, wanted + " is a unit of another kind: this is a " + what + '.' + hint);
        }
        if (kind.get() == QuantityKind.TEMPERATURE && number.relative() > 0) {
            return failed(expected, Units.NO_RELATIVE);
        }
        double value = quantity ? holder.get("value").doubleValue() : actual.doubleValue();
        return compare(expected, number, new Reading(kind.get(), value, unit), wanted);
    }

    private VerifyValueReport compare(Expected expected, Expected.Number number, Reading reply, UnitToken wanted) {
        double actual = reply.in(wanted, answer.atmosphere()).value();
        // In decimals: 1.1 is within 0.1 of 1.
        BigDecimal difference = BigDecimal.valueOf(actual).subtract(BigDecimal.valueOf(number.value()));
        BigDecimal relative =
                BigDecimal.valueOf(number.relative()).multiply(BigDecimal.valueOf(Math.abs(number.value())));
        BigDecimal tolerance = relative.max(BigDecimal.valueOf(number.absolute()));
        String step = reply.kind() == QuantityKind.TEMPERATURE_DIFFERENCE
                ? wanted.name()
                : Units.stepOf(wanted).name();
        return new VerifyValueReport(
                expected.pointer().toString(),
                difference.abs().compareTo(tolerance) <= 0,
                new Quantity(number.value(), wanted.name()),
                new Quantity(actual, wanted.name()),
                new Quantity(difference.doubleValue(), step),
                new Quantity(tolerance.doubleValue(), step),
                null,
                null,
                null);
    }
}
