package io.loopstate.web.mapping;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The names that the constants of enumerations have on the wire. */
final class WireNames {
    private static final Map<Class<?>, Map<String, Object>> NAMES = new ConcurrentHashMap<>();

    private WireNames() {}

    /** Constants by name, in order. */
    static Map<String, Object> of(Class<?> enumeration) {
        return NAMES.computeIfAbsent(enumeration, type -> {
            Map<String, Object> names = new LinkedHashMap<>();
            for (Object constant : type.getEnumConstants()) {
                names.put(name((Enum<?>) constant), constant);
            }
            return names;
        });
    }

    /** The name of a constant. */
    static String name(Enum<?> constant) {
        try {
            JsonProperty property =
                    constant.getDeclaringClass().getField(constant.name()).getAnnotation(JsonProperty.class);
            return property == null ? constant.name() : property.value();
        } catch (NoSuchFieldException e) {
            throw new IllegalStateException(e);
        }
    }
}
