package io.loopstate.testing;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.NotNull;
import java.util.List;

/** A body with a member of every kind that the reading of JSON has to cope with. */
public record Probe(
        @NotNull String name,
        @DecimalMax("1") Double efficiency,
        Side side,
        @Valid Probe inner,
        List<Double> values) {

    /** A closed set of values. */
    public enum Side {
        HIGH,
        LOW
    }
}
