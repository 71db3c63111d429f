package io.loopstate.engine.rejection;

import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.property.State;

/** How the refrigerant arrives at a condenser whose pressure is not known yet. */
@FunctionalInterface
public interface CoilInlet {
    /** The state at a pressure, Pa, whose saturation is given. */
    State at(Equilibrium equilibrium, double pressure, Saturation saturation);

    /** By its enthalpy, J/kg: what a compressor model knows. */
    static CoilInlet enthalpy(double specificEnthalpy) {
        return (equilibrium, pressure, saturation) -> equilibrium.atPressureEnthalpy(pressure, specificEnthalpy);
    }

    /** By a measured temperature, K; saturated vapor where the pressure's dew point lies above it. */
    static CoilInlet temperature(double temperature) {
        return (equilibrium, pressure, saturation) ->
                temperature > saturation.dew().temperature()
                        ? equilibrium.atPressureTemperature(pressure, temperature)
                        : saturation.dew();
    }

    /** By its superheat, K. */
    static CoilInlet superheat(double kelvin) {
        return (equilibrium, pressure, saturation) -> kelvin > 0
                ? equilibrium.atPressureTemperature(pressure, saturation.dew().temperature() + kelvin)
                : saturation.dew();
    }
}
