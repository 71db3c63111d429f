package io.loopstate.engine.cycle;

import java.util.EnumMap;
import java.util.Map;

/**
 * The limits that findings are measured against: the common ones, except where replaced.
 *
 * @param replaced limits that replace the common ones
 */
public record Guidance(Map<Guideline, Limit> replaced) {
    public Guidance {
        replaced = Map.copyOf(replaced);
    }

    /** The common limits. */
    public static Guidance common() {
        return new Guidance(Map.of());
    }

    /** The same guidance with one limit replaced. */
    public Guidance with(Guideline guideline, Limit limit) {
        Map<Guideline, Limit> all = new EnumMap<>(Guideline.class);
        all.putAll(replaced);
        all.put(guideline, limit);
        return new Guidance(all);
    }

    /** The limit in force. */
    public Limit limit(Guideline guideline) {
        return replaced.getOrDefault(guideline, guideline.common());
    }
}
