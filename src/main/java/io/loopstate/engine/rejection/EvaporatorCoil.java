package io.loopstate.engine.rejection;

import io.loopstate.engine.air.AirState;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.Require;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.numerics.Search;
import io.loopstate.engine.property.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

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

    /** Share of the coil by which a balance may miss before its pressure counts as unresolved. */
    private static final double UNRESOLVED = 1e-6;

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
     * @param zones in the direction of the refrigerant; those without heat are left out
     * @param surface what the boiling zone's surface does to the air
     * @param search of the evaporating pressure, Pa; empty where it was given
     */
    public record Operating(
            Saturation saturation,
            State outlet,
            double massFlow,
            double heat,
            double boilingShare,
            double areaLeftOver,
            AirState airOutlet,
            double condensate,
            List<EvaporatorZone> zones,
            EvaporatorSurface surface,
            Optional<Search> search) {
        public Operating {
            zones = List.copyOf(zones);
        }

        Operating found(Search by) {
            return new Operating(
                    saturation,
                    outlet,
                    massFlow,
                    heat,
                    boilingShare,
                    areaLeftOver,
                    airOutlet,
                    condensate,
                    zones,
                    surface,
                    Optional.of(by));
        }

        /** Evaporating pressure, Pa. */
        public double pressure() {
            return outlet.pressure();
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
        return massFlow > 0
                ? share(pressure, Load.massFlow(massFlow), EvaporatorInlet.enthalpy(inletEnthalpy), outlet)
                : Double.POSITIVE_INFINITY;
    }

    /** As above, for any load and inlet. */
    public double share(double pressure, Load load, EvaporatorInlet inlet, OutletCondition outlet) {
        EvaporatorNeeds needs = needs(pressure, inlet, outlet);
        double flow = load.flow(needs.rise());
        return flow > 0 ? flow * total(needs) : Double.POSITIVE_INFINITY;
    }

    /** The flow of refrigerant, kg/s, that the coil brings to its outlet condition at a pressure; 0 where it brings none. */
    public double massFlow(double pressure, double inletEnthalpy, OutletCondition outlet) {
        return 1 / total(needs(pressure, EvaporatorInlet.enthalpy(inletEnthalpy), outlet));
    }

    /**
     * The one dry conductance, W/K, that makes a coil of this air fit a measured operation; infinite where the temperatures would
     * have to cross. Its own conductances do not matter.
     */
    double fitting(double pressure, Load load, EvaporatorInlet inlet, OutletCondition outlet) {
        EvaporatorNeeds needs = needs(pressure, inlet, outlet);
        double flow = load.flow(needs.rise());
        double gamma = flow > 0 ? flow * (needs.boiling() + needs.superheating()) : Double.POSITIVE_INFINITY;
        return gamma < 1 ? -air.capacityRate() * Math.log1p(-gamma) : Double.POSITIVE_INFINITY;
    }

    private double total(EvaporatorNeeds needs) {
        return needs.boiling() / gamma(boiling) + needs.superheating() / gamma(superheating);
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
        return solve(Load.massFlow(massFlow), EvaporatorInlet.enthalpy(inletEnthalpy), outlet);
    }

    /** As above, for any load and inlet. */
    public Operating solve(Load load, EvaporatorInlet inlet, OutletCondition outlet) {
        double entering = air.state().dryBulb();
        double lowest = Math.max(equilibrium.refrigerant().minSaturationTemperature() * (1 + 1e-9), entering - DEEPEST);
        double critical = equilibrium.refrigerant().criticalPoint().temperature();
        double warmest = Math.min(entering, 0.999 * critical);
        if (!(lowest < warmest)) {
            throw noBalance();
        }
        // The bubble point is the colder end of a glide: with it both lie in the range.
        double lower = equilibrium.saturationAtTemperature(lowest).bubble().pressure();
        double upper = equilibrium.saturationAtTemperature(warmest).bubble().pressure();
        double limit = Math.min(
                upper, 0.998 * equilibrium.refrigerant().criticalPoint().pressure());
        if (share(lower, load, inlet, outlet) > 1 || share(limit, load, inlet, outlet) < 1) {
            throw noBalance();
        }
        Search search = Search.brent(
                        x -> 1 / share(Math.exp(x), load, inlet, outlet) - 1,
                        Math.log(lower),
                        Math.log(limit),
                        TOLERANCE,
                        "evaporating pressure of a coil")
                .in(Math::exp);
        // Where the outlet all but meets the air, the need grows without bound within the last digits of a pressure,
        // and the search ends on either side: the one below works.
        double pressure = search.root();
        double p = pressure;
        for (double step = JUMP; step < 1 && share(p, load, inlet, outlet) > 1 + UNRESOLVED; step *= 2) {
            p = pressure * (1 - step);
        }
        return operating(p, load, inlet, outlet).found(search);
    }

    private static EngineException noBalance() {
        return EngineException.of(
                        ErrorCode.CONTRADICTORY_INPUTS,
                        "The coil has no balance: it has too little or too much conductance or air for this flow of refrigerant.")
                .about("conductance");
    }

    /** The coil at a pressure, Pa, that is known to be in balance. */
    public Operating operating(double pressure, double massFlow, double inletEnthalpy, OutletCondition outlet) {
        return operating(pressure, Load.massFlow(massFlow), EvaporatorInlet.enthalpy(inletEnthalpy), outlet);
    }

    /** As above, for any load and inlet. */
    public Operating operating(double pressure, Load load, EvaporatorInlet inlet, OutletCondition outlet) {
        EvaporatorNeeds needs = needs(pressure, inlet, outlet);
        double flow = load.flow(needs.rise());
        double heat = flow * needs.rise();
        double entering = air.state().humidityRatio();
        double share = flow * needs.boiling() / gamma(boiling);
        double leaving = entering - share * gamma(boiling) * needs.surface().drying();
        return new Operating(
                needs.saturation(),
                needs.outlet(),
                flow,
                heat,
                share,
                1 - flow * total(needs),
                air.cooled(heat, leaving),
                air.massFlow() * (entering - leaving),
                zones(needs, flow),
                needs.surface(),
                Optional.empty());
    }

    private List<EvaporatorZone> zones(EvaporatorNeeds needs, double flow) {
        List<EvaporatorZone> zones = new ArrayList<>();
        double boiled = needs.boiledEnthalpy() - needs.inletEnthalpy();
        if (boiled > 0) {
            zones.add(zone(
                    EvaporatorZone.Kind.BOILING,
                    flow * boiled,
                    flow * needs.boiling(),
                    boiling,
                    needs.cold(),
                    needs.warm()));
        }
        double superheat = needs.outlet().specificEnthalpy() - needs.boiledEnthalpy();
        if (superheat > 0) {
            zones.add(zone(
                    EvaporatorZone.Kind.SUPERHEATING,
                    flow * superheat,
                    flow * needs.superheating(),
                    superheating,
                    needs.warm(),
                    needs.outlet().temperature()));
        }
        return zones;
    }

    private EvaporatorZone zone(
            EvaporatorZone.Kind kind, double heat, double need, double whole, double inlet, double outlet) {
        double share = need / gamma(whole);
        return new EvaporatorZone(kind, heat, share, share * whole, inlet, outlet, gamma(whole));
    }

    private EvaporatorNeeds needs(double pressure, EvaporatorInlet inlet, OutletCondition outlet) {
        return EvaporatorNeeds.of(equilibrium, air, pressure, inlet, outlet);
    }

    private double gamma(double conductance) {
        return -Math.expm1(-conductance / air.capacityRate());
    }
}
