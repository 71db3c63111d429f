package io.loopstate.engine.component;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;

/** Throttling at constant enthalpy. */
public final class ExpansionValve {
    private ExpansionValve() {}

    /**
     * The state behind the valve: h4 = h3.
     *
     * @param outletPressure Pa, below that of the inlet
     * @throws EngineException {@code CONTRADICTORY_INPUTS} if the pressure does not fall
     */
    public static State expand(Equilibrium equilibrium, State inlet, double outletPressure) {
        if (!(outletPressure < inlet.pressure())) {
            throw EngineException.of(
                    ErrorCode.CONTRADICTORY_INPUTS,
                    "A valve lowers the pressure: the pressure behind it is not below that before it.",
                    Variable.PRESSURE,
                    outletPressure,
                    0,
                    inlet.pressure());
        }
        return equilibrium.atPressureEnthalpy(outletPressure, inlet.specificEnthalpy());
    }
}
