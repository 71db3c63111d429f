package io.loopstate.engine.rejection;

import io.loopstate.engine.air.AirState;
import io.loopstate.engine.numerics.Roots;
import io.loopstate.engine.rejection.EvaporatorCoil.Operating;

/**
 * The air behind an evaporator. Air that entered nearly saturated can come out of the mixture of all its streams with more
 * water than it holds: that fog falls out too, which warms the air a little.
 *
 * @param state mean of all air
 * @param condensate kg/s
 * @param sensibleHeat W
 * @param latentHeat W, less what the condensate carries away
 */
public record EvaporatorAir(AirState state, double condensate, double sensibleHeat, double latentHeat) {
    private static final double TOLERANCE = 1e-14;
    /** K by which fog can warm air, far above what happens. */
    private static final double WARMEST = 30;

    /** The air behind a coil at work. */
    public static EvaporatorAir of(CoilAir air, Operating operating) {
        AirState leaving = operating.airOutlet();
        AirState state =
                leaving.humidityRatio() > saturated(leaving, leaving.dryBulb()) ? cleared(air, operating) : leaving;
        double condensate = air.massFlow() * (air.state().humidityRatio() - state.humidityRatio());
        double sensible = condensate == 0
                ? operating.heat()
                : air.massFlow() * state.heatCapacity() * (air.state().dryBulb() - state.dryBulb());
        return new EvaporatorAir(state, condensate, sensible, operating.heat() - sensible);
    }

    private static double saturated(AirState air, double temperature) {
        return AirState.saturatedHumidityRatio(air.pressure(), temperature);
    }

    /** Saturated air with the same heat given off: h_in - h_out - (W_in - W_out) h_water = Q / m. */
    private static AirState cleared(CoilAir air, Operating operating) {
        AirState in = air.state();
        AirState foggy = operating.airOutlet();
        double target = in.specificEnthalpy() - operating.heat() / air.massFlow();
        double dryBulb = Roots.brent(
                temperature -> {
                    double water = saturated(in, temperature);
                    return new AirState(in.pressure(), temperature, water).specificEnthalpy()
                            + (in.humidityRatio() - water) * AirFactors.waterEnthalpy(temperature)
                            - target;
                },
                foggy.dryBulb(),
                foggy.dryBulb() + WARMEST,
                TOLERANCE,
                "fog in the leaving air");
        return new AirState(in.pressure(), dryBulb, saturated(in, dryBulb));
    }
}
