package io.loopstate.engine.air;

import java.util.OptionalDouble;

/**
 * Moist air with every number. Specific quantities are per kilogram of dry air unless said otherwise.
 *
 * @param state pressure, dry bulb, humidity ratio and what follows from them directly
 * @param wetBulb K, thermodynamic
 * @param dewPoint K, below the triple point the frost point; empty for dry air, with less water than saturated air at 130 K
 * @param saturationPressure of water at the dry bulb, Pa
 * @param degreeOfSaturation humidity ratio over that of saturated air at the dry bulb; 0 where water boils
 */
public record MoistAir(
        AirState state, double wetBulb, OptionalDouble dewPoint, double saturationPressure, double degreeOfSaturation) {
    /**
     * Everything about air of a state.
     *
     * @param state inside the range of {@link AirSolver}
     */
    public static MoistAir of(AirState state) {
        double partial = state.vaporPressure();
        // Air with less water has no dew point in the range of the equations, and counts as dry.
        double least = WaterVapor.saturatedPartialPressure(WaterVapor.LOWEST, state.pressure());
        OptionalDouble dewPoint = partial > least
                ? OptionalDouble.of(Math.min(state.dryBulb(), WaterVapor.dewPoint(partial, state.pressure())))
                : OptionalDouble.empty();
        return new MoistAir(
                state,
                WetBulb.of(state),
                dewPoint,
                WaterVapor.saturationPressure(state.dryBulb()),
                state.humidityRatio() / AirState.saturatedHumidityRatio(state.pressure(), state.dryBulb()));
    }
}
