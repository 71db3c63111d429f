package io.loopstate.web.mapping;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.dto.Quantity;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The kinds of the quantities of a reply, by the same declarations that the contract is written from. */
public final class ReplyKinds {
    /** Annotations of record components are parsed anew whenever they are asked for. */
    private static final ClassValue<List<Member>> MEMBERS = new ClassValue<>() {
        @Override
        protected List<Member> computeValue(Class<?> type) {
            return Arrays.stream(type.getRecordComponents()).map(Member::of).toList();
        }
    };

    private ReplyKinds() {}

    /** A member of a record; the kind only where it is a quantity whose kind the contract tells. */
    private record Member(
            String name, Type type, Method accessor, boolean unwrapped, boolean quantity, Optional<QuantityKind> kind) {
        static Member of(RecordComponent component) {
            Method accessor = component.getAccessor();
            Schema schema = accessor.getAnnotation(Schema.class);
            return new Member(
                    component.getName(),
                    component.getGenericType(),
                    accessor,
                    accessor.isAnnotationPresent(JsonUnwrapped.class),
                    component.getType() == Quantity.class,
                    Arrays.stream(QuantityKind.values())
                            .filter(kind ->
                                    schema != null && Contract.schema(kind).equals(schema.ref()))
                            .findFirst());
        }

        Object of(Object owner) {
            try {
                return accessor.invoke(owner);
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException(e);
            }
        }
    }

    /**
     * The kind of the quantity at a place of a reply; empty where there is no quantity or the contract leaves its kind open.
     *
     * @param names of members and numbers of elements, from the reply down
     */
    public static Optional<QuantityKind> at(Object reply, List<String> names) {
        if (reply instanceof List<?> list && !names.isEmpty()) {
            return element(list, names.get(0)).flatMap(item -> at(item, names.subList(1, names.size())));
        }
        if (!(reply instanceof Record) || names.isEmpty()) {
            return Optional.empty();
        }
        return MEMBERS.get(reply.getClass()).stream()
                .map(member -> below(reply, member, names))
                .flatMap(Optional::stream)
                .findFirst();
    }

    /** Whether replies of a type may have a value of this name anywhere; records and lists are looked through. */
    public static boolean mayHave(Class<?> reply, String name) {
        return mayHave(reply, name, new HashSet<>());
    }

    private static boolean mayHave(Type type, String name, Set<Type> seen) {
        if (type instanceof ParameterizedType list) {
            return Arrays.stream(list.getActualTypeArguments()).anyMatch(element -> mayHave(element, name, seen));
        }
        if (!(type instanceof Class<?> record) || !record.isRecord() || !seen.add(type)) {
            return false;
        }
        return MEMBERS.get(record).stream()
                .anyMatch(member ->
                        member.name().equals(name) || mayHave(member.type(), name, seen) || mayHaveBelow(member, name));
    }

    /** The name may be that of a column, {@code suctionTemperature}. */
    private static boolean mayHaveBelow(Member member, String name) {
        int length = member.name().length();
        return name.startsWith(member.name())
                && name.length() > length
                && Character.isUpperCase(name.charAt(length))
                && mayHave(
                        member.type(),
                        Character.toLowerCase(name.charAt(length)) + name.substring(length + 1),
                        new HashSet<>());
    }

    private static Optional<QuantityKind> below(Object owner, Member member, List<String> names) {
        if (!member.unwrapped() && !member.name().equals(names.get(0))) {
            return Optional.empty();
        }
        if (member.quantity()) {
            return names.size() == 1 ? member.kind() : Optional.empty();
        }
        return at(member.of(owner), member.unwrapped() ? names : names.subList(1, names.size()));
    }

    private static Optional<?> element(List<?> list, String index) {
        return index.matches("0|[1-9][0-9]{0,8}") && Integer.parseInt(index) < list.size()
                ? Optional.ofNullable(list.get(Integer.parseInt(index)))
                : Optional.empty();
    }
}
