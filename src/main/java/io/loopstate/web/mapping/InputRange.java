package io.loopstate.web.mapping;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import io.loopstate.units.Atmosphere;
import io.loopstate.units.DecimalMark;
import io.loopstate.units.QuantityKind;
import io.loopstate.units.QuantityParser;
import io.loopstate.units.Reading;
import io.loopstate.units.UnitFault;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.Pointer;
import io.loopstate.web.problem.ProblemException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/**
 * Values in equal distances, from the first to the last, upward or downward, in the unit of the first.
 *
 * @param variable with {@code from}, {@code to}, and {@code step} or {@code count}
 * @param pointer of the variable
 */
record InputRange(JsonNode variable, String pointer, DecimalMark mark) {
    /** Values are round in their unit, but for what the conversion of a step leaves. */
    private static final MathContext ROUND = new MathContext(12);
    /** A last value that is missed by rounding alone is met. */
    private static final double SLACK = 1e-9;
    /** Where gauges count from does not matter: the unit is the same at both ends. */
    private static final Atmosphere AIR = Atmosphere.standard();

    List<JsonNode> values(Shape.Member member, int most) {
        QuantityKind kind = member.type() == Double.class ? QuantityKind.RATIO : member.kind();
        if (kind == null) {
            throw VariedInput.refusal(at("from", "not-applicable", "This input has no range.")
                    .withHint("Give its values as a list: values."));
        }
        Reading from = reading("from", kind);
        Reading to = reading("to", kind);
        if (kind == QuantityKind.PRESSURE && !from.unit().equals(to.unit())) {
            throw VariedInput.refusal(at(
                            "to", "unit-of-another-kind", "The ends of a range of pressures differ in unit.")
                    .withGot(to.toString())
                    .withAllowed("a pressure in " + from.unit().name())
                    .withHint("What lies between a gauge and an absolute reading depends on the air pressure."));
        }
        BigDecimal first = BigDecimal.valueOf(from.value());
        double last = from.unit().equals(to.unit())
                ? to.value()
                : to.in(from.unit(), AIR).value();
        double span = last - from.value();
        if (variable.has("step") == variable.has("count")) {
            throw VariedInput.refusal(Fault.at(pointer, "missing", "A range needs a step or a count.")
                    .withAllowed("one of step and count"));
        }
        double steps = variable.has("count") ? count(most) - 1 : steps(from, span, kind, most);
        BigDecimal distance = variable.has("count")
                ? BigDecimal.valueOf(span).divide(BigDecimal.valueOf(steps), ROUND)
                : BigDecimal.valueOf(stepInUnit(from, span, kind)).round(ROUND);
        List<JsonNode> values = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            double between = first.add(distance.multiply(BigDecimal.valueOf(i)))
                    .round(ROUND)
                    .doubleValue();
            double value = i == 0 ? from.value() : i == steps && variable.has("count") ? last : between;
            values.add(node(member, new Reading(kind, value, from.unit())));
        }
        return values;
    }

    private int count(int most) {
        JsonNode count = variable.get("count");
        if (!count.isInt() || count.intValue() < 2 || count.intValue() > most) {
            throw VariedInput.refusal(at("count", "wrong-value", "This is no number of values.")
                    .withGot(count.asText())
                    .withAllowed("2 to " + most));
        }
        return count.intValue();
    }

    private double steps(Reading from, double span, QuantityKind kind, int most) {
        double steps = Math.floor(span / stepInUnit(from, span, kind) + SLACK);
        if (steps >= most) {
            throw VariedInput.refusal(at("step", "too-many-rows", "The range has too many values.")
                    .withGot((long) steps + 1 + " values")
                    .withAllowed("at most " + most + " values"));
        }
        return steps;
    }

    /** The step in the unit of the first value, toward the last. */
    private double stepInUnit(Reading from, double span, QuantityKind kind) {
        Reading step = reading("step", difference(kind));
        double distance = Math.abs(from.unit().fromSi(from.toSi(AIR) + step.toSi(AIR), AIR) - from.value());
        if (!(step.toSi(AIR) > 0) || !(distance > 0)) {
            throw VariedInput.refusal(at("step", "wrong-value", "A step leads from one value to another.")
                    .withGot(step.toString())
                    .withAllowed("above 0, whichever way the range goes"));
        }
        return Math.copySign(distance, span);
    }

    private static QuantityKind difference(QuantityKind kind) {
        return switch (kind) {
            case TEMPERATURE -> QuantityKind.TEMPERATURE_DIFFERENCE;
            case PRESSURE -> QuantityKind.PRESSURE_DIFFERENCE;
            default -> kind;
        };
    }

    private static JsonNode node(Shape.Member member, Reading reading) {
        return member.type() == Double.class ? DoubleNode.valueOf(ratio(reading)) : VariedInput.object(reading);
    }

    /** A ratio as a plain number. */
    static double ratio(Reading reading) {
        return BigDecimal.valueOf(reading.toSi(AIR)).round(ROUND).doubleValue();
    }

    private Reading reading(String member, QuantityKind kind) {
        JsonNode node = variable.path(member);
        Given given = new Given(node, Place.body(Pointer.child(pointer, member)));
        try {
            if (node.isTextual()) {
                return QuantityParser.parse(kind, node.textValue(), mark);
            }
            if (node.isNumber()) {
                return QuantityParser.parse(kind, node.doubleValue(), null);
            }
            if (node.path("value").isNumber()) {
                return QuantityParser.parse(
                        kind, node.get("value").doubleValue(), node.path("unit").textValue());
            }
        } catch (UnitFault fault) {
            throw new ProblemException(UnitProblems.kind(fault.code()), UnitProblems.fault(given, fault));
        }
        throw VariedInput.refusal(at(
                        member,
                        node.isMissingNode() ? "missing" : "wrong-type",
                        "A range needs from and to, and step or count.")
                .withAllowed("text such as \"30 degC\", or {\"value\": number, \"unit\": text}"));
    }

    private Fault at(String member, String code, String detail) {
        return Fault.at(Pointer.child(pointer, member), code, detail);
    }
}
