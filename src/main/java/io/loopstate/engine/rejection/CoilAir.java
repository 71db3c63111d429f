package io.loopstate.engine.rejection;

import io.loopstate.engine.air.AirState;
import io.loopstate.engine.component.Require;

/**
 * Air that enters a coil.
 *
 * @param state before the coil
 * @param massFlow of dry air, kg/s
 */
public record CoilAir(AirState state, double massFlow) {
    public CoilAir {
        Require.positive("airflow", massFlow);
    }

    /** Heat that one kelvin of warming takes, W/K. */
    public double capacityRate() {
        return massFlow * state.heatCapacity();
    }

    /** The same air, another flow. */
    public CoilAir times(double share) {
        return new CoilAir(state, massFlow * share);
    }
}
