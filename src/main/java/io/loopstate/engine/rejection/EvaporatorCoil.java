package io.loopstate.engine.rejection;

import io.loopstate.engine.air.AirState;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.Require;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.numerics.Roots;
import io.loopstate.engine.property.State;
import java.util.Objects;

/**
 * An air-cooled evaporating coil: one row in cross flow, which divides itself into boiling and superheating by what each zone
 * needs. Where its surface, taken at the temperature of the boiling refrigerant, lies below the dew point of the air it also
 * dries the air, and the boiling zone carries more heat by the ratio of the enthalpy to the temperature that drives it (Lewis
 * number 1). Boiling is taken as linear in temperature; there is no pressure drop and no frost.
 *
 * <p>Needs are proportional to the refrigerant flow, so that {@link #massFlow} needs no iteration: one saturation and two states.
 *
 * @param equilibrium the refrigerant
 * @param boiling conductance of the whole coil if all of it boiled, W/K
 * @param superheating conductance of the whole coil if all of it superheated, W/K
 * @param air that enters
 */
public record EvaporatorCoil(Equilibrium equilibrium, double boiling, double superheating, CoilAir air) {
    private static final double TOLERANCE = 1e-16;
    /** First step away from a jump, relative. */
    private static final double JUMP = 1e-12;

    /** K below the air at which the search for an evaporating temperature ends. */
    private static final double DEEPEST = 120;

    public EvaporatorCoil {
        Objects.requireNonNull(equilibrium);
        Objects.requireNonNull(air);
        Require.positive("conductance", boiling);
        Require.positive("conductance", superheating);
    }

    /**
     * A coil at work.
     *
     * @param saturation at the evaporating pressure
     * @param outlet of the refrigerant
     * @param massFlow of the refrigerant, kg/s
     * @param heat W taken from the air, latent heat included
     * @param boilingShare of the area
     * @param areaLeftOver share that nothing needs; above zero where the superheat asked for, not the coil, sets the pressure: vapor
     *     cannot leave warmer than the air
     * @param airOutlet mean of all air
     * @param condensate kg/s
     */
    public record Operating(
            Saturation saturation,
            State outlet,
            double massFlow,
            double heat,
            double boilingShare,
            double areaLeftOver,
            AirState airOutlet,
            double condensate) {
        /** Evaporating pressure, Pa. */
        public double pressure() {
            return outlet.pressure();
        }
    }

    /** The need of each zone for one kilogram per second, and what the boiling zone dries. */
    private record Needs(Saturation saturation, State outlet, double boiling, double superheating, double wetting) {
        double total() {
            return boiling + superheating;
        }
    }

    /**
     * The share of the coil that a flow needs at a pressure: 1 in balance, more where the pressure is too high; infinite where no
     * coil would do.
     *
     * @param pressure Pa
     * @param massFlow of refrigerant, kg/s
     * @param inletEnthalpy J/kg, as behind the valve
     * @param outlet superheat, temperature or quality
     */
    public double share(double pressure, double massFlow, double inletEnthalpy, OutletCondition outlet) {
        return massFlow * needs(pressure, inletEnthalpy, outlet).total();
    }

    /** The flow of refrigerant, kg/s, that the coil brings to its outlet condition at a pressure; 0 where it brings none. */
    public double massFlow(double pressure, double inletEnthalpy, OutletCondition outlet) {
        return 1 / needs(pressure, inletEnthalpy, outlet).total();
    }

    /**
     * The coil in balance with a flow of refrigerant.
     *
     * @param massFlow kg/s
     * @param inletEnthalpy J/kg, as behind the valve
     * @param outlet superheat, temperature or quality
     * @throws EngineException {@code CONTRADICTORY_INPUTS} about {@code conductance} where there is no balance
     */
    public Operating solve(double massFlow, double inletEnthalpy, OutletCondition outlet) {
        double entering = air.state().dryBulb();
        double lowest = Math.max(equilibrium.refrigerant().minSaturationTemperature() * (1 + 1e-9), entering - DEEPEST);
        double critical = equilibrium.refrigerant().criticalPoint().temperature();
        double warmest = Math.min(entering, 0.999 * critical);
        if (!(lowest < warmest)) {
            throw noBalance();
        }
        double lower = equilibrium.saturationAtTemperature(lowest).dew().pressure();
        double upper = equilibrium.saturationAtTemperature(warmest).bubble().pressure();
        double limit = Math.min(
                upper, 0.998 * equilibrium.refrigerant().criticalPoint().pressure());
        if (share(lower, massFlow, inletEnthalpy, outlet) > 1 || share(limit, massFlow, inletEnthalpy, outlet) < 1) {
            throw noBalance();
        }
        double logarithm = Roots.brent(
                x -> 1 / share(Math.exp(x), massFlow, inletEnthalpy, outlet) - 1,
                Math.log(lower),
                Math.log(limit),
                TOLERANCE,
                "evaporating pressure of a coil");
        // Where the need jumps to infinity the search ends on either side of the jump: the side below it is the one
        // that works.
        double pressure = Math.exp(logarithm);
        double p = pressure;
        for (double step = JUMP; step < 1 && Double.isInfinite(share(p, massFlow, inletEnthalpy, outlet)); step *= 2) {
            p = pressure * (1 - step);
        }
        return operating(p, massFlow, inletEnthalpy, outlet);
    }

    private static EngineException noBalance() {
        return EngineException.of(
                        ErrorCode.CONTRADICTORY_INPUTS,
                        "The coil has no balance: it has too little or too much conductance or air for this flow of refrigerant.")
                .about("conductance");
    }

    /** The coil at a pressure, Pa, that is known to be in balance. */
    public Operating operating(double pressure, double massFlow, double inletEnthalpy, OutletCondition outlet) {
        Needs needs = needs(pressure, inletEnthalpy, outlet);
        double heat = massFlow * (needs.outlet().specificEnthalpy() - inletEnthalpy);
        AirState in = air.state();
        double share = massFlow * needs.boiling();
        double water = in.humidityRatio() - share * gamma(boiling) * needs.wetting();
        // The condensate leaves at the leaving dry bulb, which the balance then gives directly.
        double removed = in.humidityRatio() - water;
        double enthalpy = in.specificEnthalpy() - heat / air.massFlow();
        double dryBulb = 273.15
                + (enthalpy - water * AirState.VAPOR_ENTHALPY)
                        / (AirState.DRY_AIR_HEAT_CAPACITY
                                + water * AirState.VAPOR_HEAT_CAPACITY
                                + removed * AirFactors.WATER_HEAT_CAPACITY);
        return new Operating(
                needs.saturation(),
                needs.outlet(),
                massFlow,
                heat,
                share,
                1 - massFlow * needs.total(),
                new AirState(in.pressure(), dryBulb, water),
                air.massFlow() * removed);
    }

    private Needs needs(double pressure, double inletEnthalpy, OutletCondition condition) {
        Saturation saturation = equilibrium.saturationAtPressure(pressure);
        State outlet = outlet(pressure, saturation, condition);
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
        Wetting wetting = wetting((cold + warm) / 2);
        double boiling = mirrored(Math.max(0, boiled - inletEnthalpy), cold, warm, entering)
                / (gamma(boiling()) * air.capacityRate() * wetting.gain());
        double superheat = outlet.specificEnthalpy() - boiled;
        double superheating = superheat > 0
                ? mirrored(superheat, warm, outlet.temperature(), entering)
                        / (gamma(superheating()) * air.capacityRate())
                : 0;
        return new Needs(saturation, outlet, boiling, superheating, wetting.drying());
    }

    /** A refrigerant that warms up under air that cools is one that cools under air that warms, seen in a mirror. */
    private static double mirrored(double heat, double inlet, double outlet, double air) {
        return CoilZone.need(heat, -inlet, -outlet, -air);
    }

    private double gamma(double conductance) {
        return -Math.expm1(-conductance / air.capacityRate());
    }

    private State outlet(double pressure, Saturation saturation, OutletCondition condition) {
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

    /**
     * What a wet surface does.
     *
     * @param gain heat of the wet surface over that of a dry one, 1 where it stays dry
     * @param drying kg/kg by which air that meets the surface fully is dried
     */
    private record Wetting(double gain, double drying) {}

    private Wetting wetting(double surface) {
        AirState in = air.state();
        double saturated = AirState.saturatedHumidityRatio(in.pressure(), surface);
        double difference = in.dryBulb() - surface;
        if (saturated >= in.humidityRatio() || difference <= 0) {
            return new Wetting(1, 0);
        }
        double drying = in.humidityRatio() - saturated;
        double wet = in.specificEnthalpy()
                - new AirState(in.pressure(), surface, saturated).specificEnthalpy()
                - drying * AirFactors.waterEnthalpy(surface);
        return new Wetting(wet / (in.heatCapacity() * difference), drying);
    }
}
