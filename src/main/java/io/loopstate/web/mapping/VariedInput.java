package io.loopstate.web.mapping;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.loopstate.units.DecimalMark;
import io.loopstate.units.QuantityKind;
import io.loopstate.units.QuantityParser;
import io.loopstate.units.Reading;
import io.loopstate.units.UnitFault;
import io.loopstate.web.dto.Quantity;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.Nearest;
import io.loopstate.web.problem.Pointer;
import io.loopstate.web.problem.ProblemException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** An input of a calculation that takes several values, one after the other: a list, or a range. */
public final class VariedInput {
    private static final List<String> MEMBERS = List.of("input", "from", "to", "step", "count", "values");
    private static final List<String> RANGE = List.of("from", "to", "step", "count");

    private final String path;
    private final List<JsonNode> values;

    private VariedInput(String path, List<JsonNode> values) {
        this.path = path;
        this.values = List.copyOf(values);
    }

    /**
     * Reads {@code {"input": ..., "from": ..., "to": ..., "step": ...}}, the same with {@code count} for {@code step}, or
     * {@code {"input": ..., "values": [...]}}.
     *
     * @param pointer of the variable, for faults
     * @param most values
     * @throws ProblemException with what is wrong
     */
    public static VariedInput of(
            Operation<?, ?, ?, ?> operation, JsonNode variable, String pointer, boolean decimalComma, int most) {
        DecimalMark mark = decimalComma ? DecimalMark.COMMA : DecimalMark.POINT;
        names(variable, pointer);
        Shape.Member member = member(operation, variable, pointer);
        boolean range = RANGE.stream().anyMatch(variable::hasNonNull);
        boolean emptyList =
                variable.path("values").isArray() && variable.get("values").isEmpty();
        boolean list = variable.hasNonNull("values") && !(range && emptyList);
        if (list == range) {
            throw ProblemException.invalid(Fault.at(
                            pointer,
                            list ? "too-many-inputs" : "missing",
                            "A varied input needs its values, or a range.")
                    .withAllowed("values, or from and to with step or count"));
        }
        return new VariedInput(
                member.path(),
                list
                        ? values(member, variable.get("values"), pointer, mark, most)
                        : new InputRange(variable, pointer, mark).values(member, most));
    }

    /** The input's name in a query. */
    public String name() {
        return Paths.flat(path);
    }

    /** Its values in order. */
    public List<JsonNode> values() {
        return values;
    }

    /** Whether a request says this input itself. */
    public boolean isIn(JsonNode request) {
        JsonNode node = request;
        for (String part : path.split("\\.")) {
            node = node.path(part);
        }
        return !node.isMissingNode() && !node.isNull();
    }

    /** Puts a value into a request; where its place is below something that is no object, the calculation will say so. */
    public void put(ObjectNode request, JsonNode value) {
        String[] parts = path.split("\\.");
        ObjectNode owner = request;
        for (int i = 0; i < parts.length - 1; i++) {
            JsonNode below = owner.path(parts[i]);
            if (below.isMissingNode() || below.isNull()) {
                owner = owner.putObject(parts[i]);
            } else if (below instanceof ObjectNode object) {
                owner = object;
            } else {
                return;
            }
        }
        owner.set(parts[parts.length - 1], value);
    }

    private static void names(JsonNode variable, String pointer) {
        if (!variable.isObject()) {
            throw ProblemException.invalid(Fault.at(pointer, "wrong-type", "A varied input has the wrong type.")
                    .withAllowed("an object with " + String.join(", ", MEMBERS)));
        }
        variable.fieldNames().forEachRemaining(name -> {
            if (!MEMBERS.contains(name)) {
                throw ProblemException.invalid(
                        Fault.at(Pointer.child(pointer, name), "unknown-name", "There is no member of this name here.")
                                .withGot(name)
                                .withAllowed(String.join(", ", MEMBERS))
                                .withHint(Nearest.hint(name, MEMBERS)));
            }
        });
    }

    private static Shape.Member member(Operation<?, ?, ?, ?> operation, JsonNode variable, String pointer) {
        Shape shape = Shape.of(operation.request());
        String name = variable.path("input").asText();
        Optional<Shape.Member> member = shape.leaves().values().stream()
                .filter(leaf ->
                        leaf.path().equals(name) || Paths.flat(leaf.path()).equals(name))
                .findFirst();
        return member.orElseThrow(() -> {
            List<String> known = List.copyOf(shape.leaves().keySet());
            return ProblemException.invalid(Fault.at(
                            Pointer.child(pointer, "input"),
                            "unknown-input",
                            "The calculation has no input of this name.")
                    .withGot(name)
                    .withAllowed(String.join(", ", known))
                    .withHint(Nearest.hint(name, known)));
        });
    }

    private static List<JsonNode> values(
            Shape.Member member, JsonNode values, String pointer, DecimalMark mark, int most) {
        if (!values.isArray() || values.isEmpty() || values.size() > most) {
            boolean many = values.size() > most;
            Fault fault = Fault.at(
                            Pointer.child(pointer, "values"),
                            many ? "too-many-rows" : "wrong-type",
                            many ? "The list has too many values." : "This value has the wrong type.")
                    .withAllowed("an array of 1 to " + most + " values");
            throw ProblemException.invalid(many ? fault.withGot(values.size() + " values") : fault);
        }
        List<JsonNode> read = new ArrayList<>();
        values.forEach(value -> read.add(tidy(member, value, mark)));
        return read;
    }

    /** A quantity that can be read as an object; everything else as it is, for the calculation to judge. */
    private static JsonNode tidy(Shape.Member member, JsonNode value, DecimalMark mark) {
        try {
            if (value.isTextual() && member.type() == Quantity.class) {
                return object(QuantityParser.parse(member.kind(), value.textValue(), mark));
            }
            if (value.isTextual() && member.type() == Double.class) {
                return JsonNodeFactory.instance.numberNode(
                        InputRange.ratio(QuantityParser.parse(QuantityKind.RATIO, value.textValue(), mark)));
            }
            return value;
        } catch (UnitFault fault) {
            return value;
        }
    }

    /** A quantity as a request may hold it. */
    static JsonNode object(Reading reading) {
        return JsonNodeFactory.instance
                .objectNode()
                .put("value", reading.value())
                .put("unit", reading.unit().name());
    }
}
