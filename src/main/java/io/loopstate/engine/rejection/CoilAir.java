package io.loopstate.engine.rejection;

import io.loopstate.engine.air.AirSolver;
import io.loopstate.engine.air.AirState;
import io.loopstate.engine.air.AirVariable;
import io.loopstate.engine.component.Require;
import io.loopstate.engine.error.EngineException;

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

    /**
     * Air as it is given, dry where it has no humidity.
     *
     * @param atmosphere Pa
     * @throws EngineException about {@code entering} or {@code airflow}
     */
    static CoilAir entering(double atmosphere, AirSide.Air air, AirSide.Airflow airflow) {
        AirState state = state(atmosphere, air, "entering");
        return new CoilAir(state, airflow.dryAir(state));
    }

    /** The state of air whose dry bulb is given, dry where it has no humidity; errors are about members of the input. */
    static AirState state(double atmosphere, AirSide.Air air, String input) {
        MoistAirQuery.Known humidity = air.humidity().orElse(new MoistAirQuery.Known(AirVariable.HUMIDITY_RATIO, 0));
        try {
            return new AirSolver(atmosphere)
                    .state(AirVariable.DRY_BULB, air.dryBulb().orElseThrow(), humidity.variable(), humidity.value());
        } catch (EngineException e) {
            throw e.about(input + '.' + e.input().orElseThrow());
        }
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
