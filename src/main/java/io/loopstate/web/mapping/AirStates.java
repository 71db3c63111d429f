package io.loopstate.web.mapping;

import io.loopstate.engine.air.AirState;
import io.loopstate.engine.air.EnthalpyDatum;
import io.loopstate.engine.air.MoistAir;
import io.loopstate.engine.rejection.AirFactors;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.dto.AirHeatFactors;
import io.loopstate.web.dto.MoistAirState;

/** Moist air of the engine in the units of the reply. */
final class AirStates {
    private AirStates() {}

    static MoistAirState of(Output out, MoistAir air, EnthalpyDatum datum) {
        AirState state = air.state();
        // Partial pressures have no use as gauge readings.
        Output absolute = out.absolute();
        return new MoistAirState(
                absolute.of(QuantityKind.PRESSURE, state.pressure()),
                out.of(QuantityKind.TEMPERATURE, state.dryBulb()),
                out.of(QuantityKind.TEMPERATURE, air.wetBulb()),
                out.of(QuantityKind.TEMPERATURE, air.dewPoint()),
                state.relativeHumidity(),
                out.of(QuantityKind.HUMIDITY_RATIO, state.humidityRatio()),
                out.of(QuantityKind.SPECIFIC_ENERGY, state.specificEnthalpy() + datum.offset()),
                out.of(QuantityKind.SPECIFIC_VOLUME, state.specificVolume()),
                out.of(QuantityKind.DENSITY, state.density()),
                out.of(QuantityKind.SPECIFIC_ENTROPY, state.heatCapacity()),
                absolute.of(QuantityKind.PRESSURE, state.vaporPressure()),
                absolute.of(QuantityKind.PRESSURE, air.saturationPressure()),
                air.degreeOfSaturation());
    }

    static AirHeatFactors of(Output out, AirFactors factors) {
        return new AirHeatFactors(
                out.of(QuantityKind.SENSIBLE_HEAT_FACTOR, factors.sensible()),
                out.of(QuantityKind.TOTAL_HEAT_FACTOR, factors.total()),
                out.of(QuantityKind.LATENT_HEAT_FACTOR, factors.latent()));
    }
}
