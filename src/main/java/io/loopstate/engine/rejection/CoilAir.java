package io.loopstate.engine.rejection;

import io.loopstate.engine.air.AirSolver;
import io.loopstate.engine.air.AirState;
import io.loopstate.engine.air.AirVariable;
import io.loopstate.engine.air.MoistAir;
import io.loopstate.engine.component.Require;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;

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

    /**
     * Heat, W, that warms this air to a measured dry bulb.
     *
     * @param coil what warms it, in words
     * @throws EngineException about {@code leavingDryBulb} where the air would not be warmed
     */
    double heatUpTo(double leavingDryBulb, String coil) {
        double rise = leavingDryBulb - state.dryBulb();
        if (!(rise > 0)) {
            throw EngineException.of(
                    ErrorCode.CONTRADICTORY_INPUTS,
                    "The air leaves the " + coil + " no warmer than it enters: swapped or wrong probes, or no heat.",
                    "leavingDryBulb",
                    leavingDryBulb,
                    state.dryBulb(),
                    Double.NaN);
        }
        return rise * capacityRate();
    }

    /**
     * This air after it gave off heat, W, and water down to a humidity ratio; the condensate leaves at the dry bulb of the
     * leaving air, which the balance then gives directly.
     */
    AirState cooled(double heat, double humidityRatio) {
        double removed = state.humidityRatio() - humidityRatio;
        double enthalpy = state.specificEnthalpy() - heat / massFlow;
        double dryBulb = 273.15
                + (enthalpy - humidityRatio * AirState.VAPOR_ENTHALPY)
                        / (AirState.DRY_AIR_HEAT_CAPACITY
                                + humidityRatio * AirState.VAPOR_HEAT_CAPACITY
                                + removed * AirFactors.WATER_HEAT_CAPACITY);
        return new AirState(state.pressure(), dryBulb, humidityRatio);
    }

    /**
     * Everything about this air warmed to a dry bulb, K.
     *
     * @throws EngineException about {@code airflow.volumeFlow} where that is hotter than moist air is known
     */
    MoistAir warmed(double dryBulb) {
        if (dryBulb > AirSolver.HIGHEST_DRY_BULB) {
            throw EngineException.of(
                            ErrorCode.CONTRADICTORY_INPUTS,
                            "So little air would leave hotter than the equations of moist air reach.")
                    .about("airflow.volumeFlow");
        }
        return MoistAir.of(state.at(dryBulb));
    }
}
