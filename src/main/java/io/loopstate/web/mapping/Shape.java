package io.loopstate.web.mapping;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.dto.Quantity;
import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * The members of a request record. The record is the one declaration of a request: its components are the members of the
 * body and, flattened, the parameters of the query; the schema that a quantity refers to is the kind it is read as.
 */
final class Shape {
    private static final Map<Class<?>, Shape> SHAPES = new ConcurrentHashMap<>();

    /**
     * One member.
     *
     * @param path from the request down; that of the owner for an unwrapped record
     * @param type of the component
     * @param kind of a quantity, {@code null} else
     * @param nested shape of a record, {@code null} else
     * @param unwrapped whether the members of the nested record stand among the owner's
     */
    record Member(String path, Class<?> type, QuantityKind kind, Shape nested, boolean unwrapped) {}

    private final List<Member> members = new ArrayList<>();
    private final Map<String, Member> names = new LinkedHashMap<>();
    private final Map<String, Member> leaves = new LinkedHashMap<>();
    private final Set<String> queryNames = new LinkedHashSet<>();
    /** Records whose members stand among those of this one, by the name of the component. */
    private final Map<String, Shape> unwrapped = new HashMap<>();

    private final Constructor<?> constructor;

    private Shape(Class<?> type, String owner) {
        RecordComponent[] components = type.getRecordComponents();
        for (RecordComponent component : components) {
            Member member = member(component, owner);
            Paths.keep(member.path());
            members.add(member);
            if (member.unwrapped()) {
                names.putAll(member.nested().names);
                unwrapped.put(component.getName(), member.nested());
            } else {
                names.put(component.getName(), member);
            }
            if (member.nested() == null) {
                leaves.put(member.path(), member);
            } else {
                leaves.putAll(member.nested().leaves);
            }
        }
        leaves.keySet().forEach(path -> queryNames.add(Paths.flat(path)));
        try {
            constructor = type.getDeclaredConstructor(
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The shape of a request record; worked out once. */
    static Shape of(Class<?> request) {
        return SHAPES.computeIfAbsent(request, type -> new Shape(type, ""));
    }

    private static Member member(RecordComponent component, String owner) {
        Class<?> type = component.getType();
        if (type == Quantity.class) {
            String schema = component.getAccessor().getAnnotation(Schema.class).ref();
            String key = schema.substring(0, 1).toLowerCase(Locale.ROOT) + schema.substring(1);
            return new Member(Paths.child(owner, component.getName()), type, QuantityKind.ofKey(key), null, false);
        }
        boolean unwrapped = component.getAccessor().isAnnotationPresent(JsonUnwrapped.class);
        String path = unwrapped ? owner : Paths.child(owner, component.getName());
        return new Member(path, type, null, type.isRecord() ? new Shape(type, path) : null, unwrapped);
    }

    /** The components in order. */
    List<Member> members() {
        return members;
    }

    /** The names that stand in this object, those of unwrapped records included. */
    Map<String, Member> names() {
        return names;
    }

    /** Every member that is no record, by path, nested ones included. */
    Map<String, Member> leaves() {
        return leaves;
    }

    /** The names of the leaves in a query. */
    Set<String> queryNames() {
        return queryNames;
    }

    /** The path of a member, in which unwrapped records have no place, out of one by components. */
    String withoutUnwrapped(String path) {
        String member = "";
        Shape shape = this;
        for (String component : path.split("\\.")) {
            Shape inside = shape == null ? null : shape.unwrapped.get(component);
            if (inside == null) {
                member = Paths.child(member, component);
                shape = shape == null || !shape.names.containsKey(component)
                        ? null
                        : shape.names.get(component).nested();
            } else {
                shape = inside;
            }
        }
        return member;
    }

    /** The record of these values, in the order of the members. */
    Object construct(List<Object> values) {
        try {
            return constructor.newInstance(values.toArray());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
