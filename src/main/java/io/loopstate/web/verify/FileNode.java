package io.loopstate.web.verify;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeType;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.Nearest;
import io.loopstate.web.problem.Pointer;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/** One object of a file, by the names of its record in the contract. Faults are gathered, and a faulty member is absent. */
final class FileNode {
    private static final int FAULT_LIMIT = 50;

    private final JsonNode node;
    private final String pointer;
    private final List<Fault> faults;

    private FileNode(JsonNode node, String pointer, List<Fault> faults) {
        this.node = node;
        this.pointer = pointer;
        this.faults = faults;
    }

    /** The object at a pointer, empty where there is something else; names that its record does not have are faults. */
    static Optional<FileNode> of(JsonNode node, String pointer, Class<?> shape, List<Fault> faults) {
        FileNode object = new FileNode(node, pointer, faults);
        if (!node.isObject()) {
            object.add(pointer, "wrong-type", "This value has the wrong type.", words(node), "an object", null);
            return Optional.empty();
        }
        List<String> known = Arrays.stream(shape.getRecordComponents())
                .map(RecordComponent::getName)
                .toList();
        node.fieldNames().forEachRemaining(name -> {
            if (!known.contains(name)) {
                object.add(
                        Pointer.child(pointer, name),
                        "unknown-name",
                        "There is no member of this name here.",
                        name,
                        String.join(", ", known),
                        Nearest.hint(name, known));
            }
        });
        return Optional.of(object);
    }

    /** A member; null is absent. */
    Optional<JsonNode> member(String name) {
        JsonNode value = node.path(name);
        return value.isMissingNode() || value.isNull() ? Optional.empty() : Optional.of(value);
    }

    /** A member of one of these types. */
    Optional<JsonNode> member(String name, JsonNodeType... types) {
        Optional<JsonNode> value = member(name);
        if (value.isPresent() && !List.of(types).contains(value.get().getNodeType())) {
            String allowed = Arrays.stream(types).map(FileNode::words).collect(Collectors.joining(" or "));
            fault(name, "wrong-type", "This value has the wrong type.", words(value.get()), allowed);
            return Optional.empty();
        }
        return value;
    }

    /** A text of 1 to so many characters, none of which a report could not hold. */
    Optional<String> text(String name, int longest) {
        Optional<String> text = member(name, JsonNodeType.STRING).map(JsonNode::textValue);
        if (text.isPresent() && (text.get().isBlank() || text.get().length() > longest)) {
            fault(
                    name,
                    "wrong-length",
                    "This text has the wrong length.",
                    text.get(),
                    "1 to " + longest + " characters");
            return Optional.empty();
        }
        if (text.isPresent() && !Characters.printable(text.get())) {
            fault(
                    name,
                    "unprintable-character",
                    "This text has a control character or half a character, which no report can hold.",
                    Characters.clean(text.get()),
                    "printable characters");
            return Optional.empty();
        }
        return text;
    }

    /** The elements of an array with 1 to so many of them; empty where it is absent or faulty. */
    List<JsonNode> list(String name, int most) {
        Optional<JsonNode> array = member(name, JsonNodeType.ARRAY);
        if (array.isEmpty()) {
            return List.of();
        }
        if (array.get().isEmpty() || array.get().size() > most) {
            fault(
                    name,
                    "wrong-length",
                    "This list has the wrong length.",
                    array.get().size() + " elements",
                    "1 to " + most);
            return List.of();
        }
        return StreamSupport.stream(array.get().spliterator(), false).toList();
    }

    /** Adds a fault where a member is missing. */
    void require(String name, String allowed) {
        if (member(name).isEmpty()) {
            fault(name, "missing", "This member is required.", null, allowed);
        }
    }

    /** Adds a fault of a member. */
    void fault(String name, String code, String detail, String got, String allowed) {
        add(Pointer.child(pointer, name), code, detail, got, allowed, null);
    }

    /** Adds a fault of a member, with a hint. */
    void fault(String name, String code, String detail, String got, String allowed, Optional<String> hint) {
        add(Pointer.child(pointer, name), code, detail, got, allowed, hint.orElse(null));
    }

    /** Adds a fault of the object itself. */
    void fault(String code, String detail, String allowed) {
        add(pointer, code, detail, null, allowed, null);
    }

    private void add(String at, String code, String detail, String got, String allowed, String hint) {
        if (faults.size() < FAULT_LIMIT) {
            faults.add(
                    Fault.at(at, code, detail).withGot(got).withAllowed(allowed).withHint(hint));
        }
    }

    /** The pointer of a member. */
    String pointer(String name) {
        return Pointer.child(pointer, name);
    }

    private static String words(JsonNode node) {
        return node.isContainerNode() ? words(node.getNodeType()) : node.toString();
    }

    private static String words(JsonNodeType type) {
        return switch (type) {
            case ARRAY -> "an array";
            case OBJECT -> "an object";
            case NUMBER -> "a number";
            case STRING -> "text";
            case BOOLEAN -> "true or false";
            default -> type.name().toLowerCase(Locale.ROOT);
        };
    }
}
