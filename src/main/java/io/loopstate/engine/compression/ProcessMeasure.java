package io.loopstate.engine.compression;

import io.loopstate.engine.component.Require;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import java.util.Objects;

/**
 * What is known of a compression beside the states at its ends.
 *
 * @param kind what the value is
 * @param value in the unit of its kind
 */
public record ProcessMeasure(Kind kind, double value) {
    /** What can be known. */
    public enum Kind {
        /** Work at constant entropy over work, above 0 to 1. */
        ISENTROPIC_EFFICIENCY,
        /** Integral of v dp along the path over work, above 0 to 1. */
        POLYTROPIC_EFFICIENCY,
        /** The n of p v^n = constant, with the real specific volume, above 0. */
        POLYTROPIC_INDEX,
        /** Measured at the discharge, K. */
        DISCHARGE_TEMPERATURE
    }

    public ProcessMeasure {
        Objects.requireNonNull(kind);
        switch (kind) {
            case ISENTROPIC_EFFICIENCY -> Require.efficiency("isentropicEfficiency", value);
            case POLYTROPIC_EFFICIENCY -> Require.efficiency("polytropicEfficiency", value);
            case POLYTROPIC_INDEX -> requireIndex(value);
            case DISCHARGE_TEMPERATURE -> Require.positive("discharge.temperature", value);
        }
    }

    private static void requireIndex(double index) {
        if (!(index > 0) || index > MAX_INDEX) {
            throw EngineException.of(
                    ErrorCode.IMPOSSIBLE_VALUE,
                    "The index of a polytropic compression is above 0 and at most 10; 1 is isothermal for an ideal gas.",
                    "polytropicIndex",
                    index,
                    0,
                    MAX_INDEX);
        }
    }

    private static final double MAX_INDEX = 10;
}
