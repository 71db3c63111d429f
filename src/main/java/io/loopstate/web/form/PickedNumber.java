package io.loopstate.web.form;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import io.loopstate.web.dto.Quantity;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The number that one name means in every reply of a kind, taken from the reply itself: a cell of a spreadsheet asks for one number,
 * and a tree of all values costs more than the calculation. Names that mean different values in different replies, pointers, and
 * whatever is no number are not answered here but by {@link Selection}.
 */
public final class PickedNumber {
    /** Ways to numbers by the names that mean them in every reply of a kind. */
    private static final ClassValue<Map<String, List<Method>>> KNOWN = new ClassValue<>() {
        @Override
        protected Map<String, List<Method>> computeValue(Class<?> reply) {
            return RowsOfReply.of(reply).isPresent() ? Map.of() : new PickedNumber(reply).ways();
        }
    };

    private final Map<String, List<Method>> byFlatName = new HashMap<>();
    /** Every value by the last part of its name, in each place where one can stand; an empty way leads into a list. */
    private final Map<String, List<List<Method>>> byLastName = new HashMap<>();

    private PickedNumber(Class<?> reply) {
        walk(reply, List.of(), true);
    }

    /** The number of a reply; empty where the name does not mean one and the same number in every reply of its kind. */
    static Optional<JsonNode> of(Object reply, String name) {
        Object value = reply;
        List<Method> way = KNOWN.get(reply.getClass()).getOrDefault(name, List.of());
        for (Method step : way) {
            if (value == null) {
                return Optional.empty();
            }
            try {
                value = step.invoke(value);
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException(e);
            }
        }
        return value instanceof Quantity quantity
                ? Optional.of(DoubleNode.valueOf(quantity.value()))
                : value instanceof Double number ? Optional.of(DoubleNode.valueOf(number)) : Optional.empty();
    }

    /**
     * The last part of the name of the one number that is asked for of a reply of a kind; empty where a client sees more of the reply,
     * or a refusal that names its other values.
     */
    public static Optional<String> sole(Map<String, List<String>> parameters, Class<?> reply) {
        List<String> picks = parameters.getOrDefault("pick", List.of());
        if (picks.size() != 1 || !List.of(Form.TXT.key()).equals(parameters.get("format"))) {
            return Optional.empty();
        }
        List<Method> way = KNOWN.get(reply).getOrDefault(picks.get(0), List.of());
        return way.isEmpty()
                ? Optional.empty()
                : Optional.of(way.get(way.size() - 1).getName());
    }

    private Map<String, List<Method>> ways() {
        Map<String, List<Method>> ways = new HashMap<>();
        byLastName.forEach((name, found) -> {
            if (found.size() == 1 && !found.get(0).isEmpty()) {
                ways.put(name, found.get(0));
            }
        });
        ways.putAll(byFlatName);
        return ways;
    }

    private void walk(Class<?> type, List<Method> owner, boolean single) {
        for (RecordComponent component : type.getRecordComponents()) {
            if (owner.isEmpty() && Selection.TRUST.contains(component.getName())) {
                continue;
            }
            List<Method> way = Stream.concat(owner.stream(), Stream.of(component.getAccessor()))
                    .toList();
            Class<?> kind = element(component.getGenericType());
            if (kind.isRecord() && kind != Quantity.class) {
                walk(kind, way, single && kind == component.getType());
                continue;
            }
            byLastName
                    .computeIfAbsent(component.getName(), name -> new ArrayList<>())
                    .add(single ? way : List.of());
            if (single) {
                byFlatName.put(FlatName.of(way.stream().map(Method::getName).toList()), way);
            }
        }
    }

    /** The type of a component, or of the elements of a list. */
    private static Class<?> element(Type type) {
        return type instanceof ParameterizedType list ? element(list.getActualTypeArguments()[0]) : (Class<?>) type;
    }
}
