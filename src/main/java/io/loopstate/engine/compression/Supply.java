package io.loopstate.engine.compression;

import io.loopstate.engine.component.Require;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;

/**
 * The electrical supply of a motor.
 *
 * @param voltage V between lines, or between line and neutral of a single phase
 * @param phases 1 or 3
 * @param powerFactor above 0 to 1
 */
public record Supply(double voltage, int phases, double powerFactor) {
    public Supply {
        Require.positive("supply.voltage", voltage);
        Require.efficiency("supply.powerFactor", powerFactor);
        if (phases != 1 && phases != 3) {
            throw EngineException.of(ErrorCode.IMPOSSIBLE_VALUE, "Phases are 1 or 3.", "supply.phases", phases, 1, 3);
        }
    }

    /** A per line that a power (W) takes: P / (sqrt(3) V pf) of three phases, P / (V pf) of one. */
    public double current(double power) {
        return power / ((phases == 3 ? Math.sqrt(3) : 1) * voltage * powerFactor);
    }
}
