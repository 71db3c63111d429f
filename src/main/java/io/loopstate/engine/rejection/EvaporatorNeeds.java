package io.loopstate.engine.rejection;

import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.property.State;

/**
 * What each zone of an evaporating coil needs at a pressure for one kilogram of refrigerant a second, as the share of the coil's
 * effective air; and where the zone lies between. It does not depend on the conductances.
 *
 * @param saturation at the evaporating pressure
 * @param outlet of the refrigerant
 * @param inletEnthalpy J/kg, as behind the valve
 * @param cold K at the beginning of the boiling zone
 * @param warm K at its end
 * @param boiledEnthalpy J/kg at its end
 * @param boiling need of the boiling zone, s/kg
 * @param superheating need of the superheating zone, s/kg
 * @param surface of the boiling zone
 */
record EvaporatorNeeds(
        Saturation saturation,
        State outlet,
        double inletEnthalpy,
        double cold,
        double warm,
        double boiledEnthalpy,
        double boiling,
        double superheating,
        EvaporatorSurface surface) {

    static EvaporatorNeeds of(
            Equilibrium equilibrium, CoilAir air, double pressure, EvaporatorInlet inlet, OutletCondition condition) {
        Saturation saturation = equilibrium.saturationAtPressure(pressure);
        double inletEnthalpy = inlet.enthalpy(saturation);
        State outlet = outlet(equilibrium, pressure, saturation, condition);
        double dew = saturation.dew().specificEnthalpy();
        double bubble = saturation.bubble().temperature();
        double glide = saturation.temperatureGlide();
        double quality = (inletEnthalpy - saturation.bubble().specificEnthalpy()) / saturation.latentHeat();
        double cold = bubble + Math.max(0, quality) * glide;
        double boiled = Math.min(outlet.specificEnthalpy(), dew);
        double warm = outlet.specificEnthalpy() < dew
                ? outlet.temperature()
                : saturation.dew().temperature();
        double entering = air.state().dryBulb();
        EvaporatorSurface surface = EvaporatorSurface.under(air.state(), (cold + warm) / 2);
        double boiling = mirrored(Math.max(0, boiled - inletEnthalpy), cold, warm, entering)
                / (air.capacityRate() * surface.gain());
        double superheat = outlet.specificEnthalpy() - boiled;
        double superheating =
                superheat > 0 ? mirrored(superheat, warm, outlet.temperature(), entering) / air.capacityRate() : 0;
        return new EvaporatorNeeds(
                saturation, outlet, inletEnthalpy, cold, warm, boiled, boiling, superheating, surface);
    }

    /** Heat for each kilogram, J/kg. */
    double rise() {
        return outlet.specificEnthalpy() - inletEnthalpy;
    }

    /** A refrigerant that warms up under air that cools is one that cools under air that warms, seen in a mirror. */
    private static double mirrored(double heat, double inlet, double outlet, double air) {
        return CoilZone.need(heat, -inlet, -outlet, -air);
    }

    private static State outlet(
            Equilibrium equilibrium, double pressure, Saturation saturation, OutletCondition condition) {
        double dew = saturation.dew().temperature();
        return switch (condition.given()) {
            case SUPERHEAT ->
                condition.value() > 0
                        ? equilibrium.atPressureTemperature(pressure, dew + condition.value())
                        : saturation.dew();
            case TEMPERATURE ->
                condition.value() > dew
                        ? equilibrium.atPressureTemperature(pressure, condition.value())
                        : saturation.dew();
            case VAPOR_QUALITY ->
                equilibrium.state(Variable.PRESSURE, pressure, Variable.VAPOR_QUALITY, condition.value());
            default -> throw new IllegalArgumentException(condition.given() + " does not describe vapor");
        };
    }
}
