package io.loopstate.web.mapping;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.units.Atmosphere;
import io.loopstate.units.DecimalMark;
import io.loopstate.units.QuantityKind;
import io.loopstate.units.QuantityParser;
import io.loopstate.units.Reading;
import io.loopstate.units.UnitFault;
import io.loopstate.web.dto.Quantity;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.Nearest;
import io.loopstate.web.problem.ProblemKind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads single values; what cannot be read becomes a fault and no value. */
final class ValueReader {
    private static final int MAX_NUMBERS = 1000;

    private final Source source;
    private final Faults faults;
    private final DecimalMark mark;
    private final Atmosphere atmosphere;
    private final Map<String, Reading> readings = new LinkedHashMap<>();
    private final Map<String, Object> values = new HashMap<>();

    ValueReader(Source source, Faults faults, DecimalMark mark, Atmosphere atmosphere) {
        this.source = source;
        this.faults = faults;
        this.mark = mark;
        this.atmosphere = atmosphere;
    }

    /** The quantities that were read, as given, by path. */
    Map<String, Reading> readings() {
        return readings;
    }

    /** What was read at a path, {@code null} if it is absent or has a fault. */
    Object value(String path) {
        return values.get(path);
    }

    /** The value of a member that is no record, {@code null} if it is absent or has a fault. */
    Object read(Shape.Member member) {
        Optional<Given> given = source.value(member.path());
        if (given.isEmpty() || faults.at(member.path())) {
            return null;
        }
        try {
            Object value = read(member, given.get());
            values.put(member.path(), value);
            return value;
        } catch (UnitFault fault) {
            faults.add(member.path(), UnitProblems.kind(fault.code()), UnitProblems.fault(given.get(), fault));
            return null;
        }
    }

    private Object read(Shape.Member member, Given given) {
        Class<?> type = member.type();
        if (type == Quantity.class) {
            return quantity(member, given);
        }
        if (type == Double.class) {
            return ratio(member, given);
        }
        if (type == Integer.class) {
            return whole(member, given);
        }
        if (type == Boolean.class) {
            return truth(member, given);
        }
        if (type == List.class) {
            return numbers(member, given);
        }
        if (Refrigerants.names(member.path()) && !given.place().inQuery()) {
            return refrigerant(member, given);
        }
        if (!given.node().isTextual()) {
            return wrongType(member, given, "a string");
        }
        return type.isEnum() ? constant(member, given) : given.node().textValue();
    }

    private Object refrigerant(Shape.Member member, Given given) {
        Optional<String> text = given.node().isArray()
                ? ComponentList.notation(given.node())
                : Optional.ofNullable(given.node().textValue());
        return text.isPresent() ? text.get() : wrongType(member, given, ComponentList.ALLOWED);
    }

    private Quantity quantity(Shape.Member member, Given given) {
        QuantityKind kind = member.kind();
        JsonNode node = given.node();
        Reading reading;
        if (node.isObject()) {
            reading = parts(member, given);
        } else if (node.isTextual()) {
            reading = QuantityParser.parse(kind, node.textValue(), mark);
        } else if (node.isNumber()) {
            reading = QuantityParser.parse(kind, node.doubleValue(), null);
        } else {
            return (Quantity)
                    wrongType(member, given, "{\"value\": number, \"unit\": text}, or text such as \"118 psig\"");
        }
        return reading == null ? null : si(member.path(), reading);
    }

    private Quantity si(String path, Reading reading) {
        double value = reading.toSi(atmosphere);
        readings.put(path, reading);
        return new Quantity(value, reading.kind().siUnit());
    }

    /** A quantity as an object, {@code null} after a fault. */
    private Reading parts(Shape.Member member, Given given) {
        JsonNode value = given.node().path("value");
        JsonNode unit = given.node().path("unit");
        boolean sound = true;
        for (var names = given.node().fieldNames(); names.hasNext(); ) {
            String name = names.next();
            if (!name.equals("value") && !name.equals("unit")) {
                part(member, name, "unknown-name", "There is no member of this name here.", name, "value, unit");
                sound = false;
            }
        }
        if (!value.isNumber()) {
            String code = value.isMissingNode() ? "missing" : "wrong-type";
            part(member, "value", code, "A quantity needs a number as its value.", words(value), "a number");
            sound = false;
        }
        if (!unit.isTextual() && !unit.isMissingNode() && !unit.isNull()) {
            part(member, "unit", "wrong-type", "A unit is a string.", words(unit), "a string");
            sound = false;
        }
        return sound ? QuantityParser.parse(member.kind(), value.doubleValue(), unit.textValue()) : null;
    }

    private void part(Shape.Member member, String name, String code, String detail, String got, String allowed) {
        Place place = source.place(Paths.child(member.path(), name));
        Fault fault = place.fault(code, detail).withGot(got).withAllowed(allowed);
        faults.add(member.path(), ProblemKind.INVALID_REQUEST, fault);
    }

    private String words(JsonNode node) {
        return node.isMissingNode() ? null : new Given(node, source.place("")).words();
    }

    private Double ratio(Shape.Member member, Given given) {
        if (given.node().isTextual()) {
            return QuantityParser.parse(QuantityKind.RATIO, given.node().textValue(), mark)
                    .toSi(atmosphere);
        }
        if (!given.node().isNumber()) {
            return (Double) wrongType(member, given, "a number");
        }
        return QuantityParser.parse(QuantityKind.RATIO, given.node().doubleValue(), null)
                .toSi(atmosphere);
    }

    /** Plain numbers: an array of a body, or text with commas between, semicolons where the comma is the decimal mark. */
    private List<Double> numbers(Shape.Member member, Given given) {
        List<Double> numbers = new ArrayList<>();
        if (given.node().isTextual()) {
            String between = mark == DecimalMark.COMMA ? ";" : ",";
            for (String part : given.node().textValue().split(between, MAX_NUMBERS + 1)) {
                numbers.add(QuantityParser.parse(QuantityKind.RATIO, part.strip(), mark)
                        .toSi(atmosphere));
            }
        } else if (given.node().isArray()) {
            for (JsonNode element : given.node()) {
                if (!element.isNumber()) {
                    wrongType(member, given, "an array of numbers");
                    return null;
                }
                numbers.add(QuantityParser.parse(QuantityKind.RATIO, element.doubleValue(), null)
                        .toSi(atmosphere));
            }
        } else {
            wrongType(member, given, "an array of numbers, or text with commas between them");
            return null;
        }
        if (numbers.size() > MAX_NUMBERS) {
            wrongType(member, given, "at most " + MAX_NUMBERS + " numbers");
            return null;
        }
        return numbers;
    }

    private Integer whole(Shape.Member member, Given given) {
        JsonNode node = given.node();
        if (node.isInt()) {
            return node.intValue();
        }
        if (given.place().inQuery() && node.textValue().matches("-?[0-9]{1,9}")) {
            return Integer.valueOf(node.textValue());
        }
        return (Integer) wrongType(member, given, "a whole number");
    }

    private Boolean truth(Shape.Member member, Given given) {
        JsonNode node = given.node();
        if (node.isBoolean()) {
            return node.booleanValue();
        }
        if (given.place().inQuery() && List.of("true", "false").contains(node.textValue())) {
            return Boolean.valueOf(node.textValue());
        }
        return (Boolean) wrongType(member, given, "true or false");
    }

    private Object constant(Shape.Member member, Given given) {
        Map<String, Object> names = WireNames.of(member.type());
        String text = given.node().textValue();
        Object constant = names.get(text);
        if (constant == null) {
            Fault fault = given.place()
                    .fault("wrong-value", "This value is not understood.")
                    .withGot(given.words())
                    .withAllowed(String.join(", ", names.keySet()))
                    .withHint(Nearest.hint(text, names.keySet()));
            faults.add(member.path(), ProblemKind.INVALID_REQUEST, fault);
        }
        return constant;
    }

    private Object wrongType(Shape.Member member, Given given, String allowed) {
        Fault fault = given.place()
                .fault("wrong-type", "This value has the wrong type.")
                .withGot(given.typed())
                .withAllowed(allowed);
        faults.add(member.path(), ProblemKind.INVALID_REQUEST, fault);
        return null;
    }
}
