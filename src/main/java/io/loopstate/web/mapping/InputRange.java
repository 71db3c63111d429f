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
import java.util.Optional;
import java.util.function.DoubleSupplier;

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
            throw ProblemException.invalid(at("from", "not-applicable", "This input has no range.")
                    .withHint("Give its values as a list: values."));
        }
        Reading from = reading("from", kind);
        Reading to = reading("to", kind);
        if (kind == QuantityKind.PRESSURE && !from.unit().equals(to.unit())) {
            throw ProblemException.invalid(at(
                            "to", "unit-of-another-kind", "The ends of a range of pressures differ in unit.")
                    .withGot(to.toString())
                    .withAllowed("a pressure in " + from.unit().name())
                    .withHint("What lies between a gauge and an absolute reading depends on the air pressure."));
        }
        BigDecimal first = BigDecimal.valueOf(from.value());
        double last = from.unit().equals(to.unit())
                ? to.value()
                : orNaN(() -> to.in(from.unit(), AIR).value());
        double span = last - from.value();
        if (!Double.isFinite(span)) {
            throw ProblemException.invalid(
                    at("to", "wrong-value", "The range is too wide.").withGot(to.toString()));
        }
        boolean counted = variable.hasNonNull("count");
        if (variable.hasNonNull("step") == counted) {
            throw ProblemException.invalid(
                    Fault.at(pointer, counted ? "too-many-inputs" : "missing", "A range needs a step or a count.")
                            .withAllowed("one of step and count"));
        }
        double step = counted ? Double.NaN : stepInUnit(from, span, kind);
        double steps = counted ? count(most) - 1 : steps(span, step, most);
        BigDecimal distance = counted
                ? BigDecimal.valueOf(span).divide(BigDecimal.valueOf(steps), ROUND)
                : BigDecimal.valueOf(step).round(ROUND);
        List<JsonNode> values = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            double between = first.add(distance.multiply(BigDecimal.valueOf(i)))
                    .round(ROUND)
                    .doubleValue();
            double value = i == 0 ? from.value() : i == steps && counted ? last : between;
            values.add(node(member, new Reading(kind, value, from.unit())));
        }
        return values;
    }

    private int count(int most) {
        JsonNode count = variable.get("count");
        if (!count.isInt() || count.intValue() < 2 || count.intValue() > most) {
            throw ProblemException.invalid(at("count", "wrong-value", "This is no number of values.")
                    .withGot(count.asText())
                    .withAllowed("2 to " + most));
        }
        return count.intValue();
    }

    private double steps(double span, double step, int most) {
        double steps = Math.floor(span / step + SLACK);
        if (steps >= most) {
            throw ProblemException.invalid(at("step", "too-many-rows", "The range has too many values.")
                    .withGot("more than " + most + " values")
                    .withAllowed("at most " + most + " values"));
        }
        return steps;
    }

    /** The step in the unit of the first value, toward the last. */
    private double stepInUnit(Reading from, double span, QuantityKind kind) {
        Reading step = reading("step", difference(kind));
        double distance =
                orNaN(() -> Math.abs(from.unit().fromSi(from.toSi(AIR) + step.toSi(AIR), AIR) - from.value()));
        if (!(step.toSi(AIR) > 0) || !(distance > 0)) {
            throw ProblemException.invalid(at("step", "wrong-value", "A step leads from one value to another.")
                    .withGot(step.toString())
                    .withAllowed("above 0, whichever way the range goes"));
        }
        return Math.copySign(distance, span);
    }

    /** What is beyond all numbers in a unit is refused as a range, not as a quantity. */
    private static double orNaN(DoubleSupplier converted) {
        try {
            return converted.getAsDouble();
        } catch (IllegalArgumentException notFinite) {
            return Double.NaN;
        }
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
            Optional<Reading> read = parsed(node, kind);
            if (read.isPresent()) {
                // What lies below absolute zero is refused here.
                read.get().toSi(AIR);
                return read.get();
            }
        } catch (UnitFault fault) {
            throw new ProblemException(UnitProblems.kind(fault.code()), UnitProblems.fault(given, fault));
        }
        boolean absent = node.isMissingNode() || node.isNull();
        throw ProblemException.invalid(at(
                        member,
                        absent ? "missing" : "wrong-type",
                        absent ? "A range needs from and to, and step or count." : "This value has the wrong type.")
                .withAllowed("text such as \"30 degC\", or {\"value\": number, \"unit\": text}"));
    }

    /** Empty where the node has another type. */
    private Optional<Reading> parsed(JsonNode node, QuantityKind kind) {
        if (node.isTextual()) {
            return Optional.of(QuantityParser.parse(kind, node.textValue(), mark));
        }
        if (node.isNumber()) {
            return Optional.of(QuantityParser.parse(kind, node.doubleValue(), null));
        }
        JsonNode value = node.path("value");
        return value.isNumber()
                ? Optional.of(QuantityParser.parse(
                        kind, value.doubleValue(), node.path("unit").textValue()))
                : Optional.empty();
    }

    private Fault at(String member, String code, String detail) {
        return Fault.at(Pointer.child(pointer, member), code, detail);
    }
}
