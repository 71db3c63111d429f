package io.loopstate.engine.rejection;

import io.loopstate.engine.flash.Saturation;

/** How the refrigerant arrives at an evaporator whose pressure is not known yet. */
@FunctionalInterface
public interface EvaporatorInlet {
    /** J/kg at the pressure whose saturation is given. */
    double enthalpy(Saturation saturation);

    /** By its enthalpy, J/kg, which a valve keeps. */
    static EvaporatorInlet enthalpy(double specificEnthalpy) {
        return saturation -> specificEnthalpy;
    }

    /** By its vapor quality. */
    static EvaporatorInlet quality(double share) {
        return saturation -> saturation.bubble().specificEnthalpy() + share * saturation.latentHeat();
    }
}
