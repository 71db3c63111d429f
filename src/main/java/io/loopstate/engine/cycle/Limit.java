package io.loopstate.engine.cycle;

import java.util.Objects;

/**
 * A limit of good practice.
 *
 * @param value SI
 * @param basis where it comes from: a source, or {@code common practice, no source}
 */
public record Limit(double value, String basis) {
    public Limit {
        Objects.requireNonNull(basis);
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a limit is a number");
        }
    }
}
