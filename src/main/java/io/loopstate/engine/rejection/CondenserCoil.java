package io.loopstate.engine.rejection;

import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.SaturationMargin;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.numerics.Search;
import io.loopstate.engine.property.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * An air-cooled condensing coil. It divides itself into desuperheating, condensing and subcooling by what each zone needs, and
 * the condensing pressure is that at which the zones fill it exactly, or at which the liquid can just be had as cold as asked for,
 * where that takes more pressure. Condensing is taken as linear in temperature between dew
 * and bubble point; there is no pressure drop.
 *
 * <p>Made to be called inside an iteration: {@link #share} costs one saturation and two single-phase states, {@link #solve} about
 * eight of those.
 *
 * @param equilibrium the refrigerant
 * @param conductance of the whole coil by what it does
 * @param air that enters
 * @param arrangement how the air passes the zones
 */
public record CondenserCoil(Equilibrium equilibrium, Conductance conductance, CoilAir air, Arrangement arrangement) {
    private static final double TOLERANCE = 1e-16;
    /** First step away from a jump, relative. */
    private static final double JUMP = 1e-12;

    private static final List<CoilZone.Kind> KINDS = List.of(CoilZone.Kind.values());
    /** Highest condensing pressure over the critical one: beyond it the saturation line is too flat to steer by. */
    private static final double HIGHEST = 0.998;

    public CondenserCoil {
        Objects.requireNonNull(equilibrium);
        Objects.requireNonNull(conductance);
        Objects.requireNonNull(air);
        Objects.requireNonNull(arrangement);
    }

    /**
     * A coil at work.
     *
     * @param saturation at the condensing pressure
     * @param inlet of the refrigerant
     * @param outlet of the refrigerant
     * @param massFlow of the refrigerant, kg/s
     * @param heat W
     * @param zones in the direction of the refrigerant; those without heat are left out
     * @param airOutlet K, mean of all air
     * @param search of the condensing pressure, Pa; empty where it was given
     */
    public record Operating(
            Saturation saturation,
            State inlet,
            State outlet,
            double massFlow,
            double heat,
            List<CoilZone> zones,
            double airOutlet,
            Optional<Search> search) {
        public Operating {
            zones = List.copyOf(zones);
        }

        Operating found(Search by) {
            return new Operating(saturation, inlet, outlet, massFlow, heat, zones, airOutlet, Optional.of(by));
        }

        /**
         * Share of the coil that nothing needs. Above zero where the outlet asked for sets the pressure: liquid cannot leave
         * colder than the air, however large the coil.
         */
        public double areaLeftOver() {
            return 1 - zones.stream().mapToDouble(CoilZone::share).sum();
        }

        /** Condensing pressure, Pa. */
        public double pressure() {
            return inlet.pressure();
        }
    }

    /**
     * The share of the coil that would be needed at a pressure: 1 where it is in balance, more where the pressure is too low for
     * it; infinite where no coil would do.
     *
     * @param pressure Pa, below the critical one
     * @param massFlow of refrigerant, kg/s
     * @param inletEnthalpy J/kg
     * @param outlet subcooling, temperature or quality
     */
    public double share(double pressure, double massFlow, double inletEnthalpy, OutletCondition outlet) {
        return share(pressure, massFlow, CoilInlet.enthalpy(inletEnthalpy), outlet);
    }

    /** As above, for any inlet; infinite where nothing flows. */
    public double share(double pressure, double massFlow, CoilInlet inlet, OutletCondition outlet) {
        return massFlow > 0 ? share(pressure, Load.massFlow(massFlow), inlet, outlet) : Double.POSITIVE_INFINITY;
    }

    /**
     * The coil in balance.
     *
     * @param massFlow of refrigerant, kg/s
     * @param inletEnthalpy J/kg
     * @param outlet subcooling, temperature or quality
     * @throws EngineException {@code CONTRADICTORY_INPUTS} about {@code conductance} where the coil has no balance below the
     *     critical pressure, about {@code entering.dryBulb} where the air is too hot for anything to condense
     */
    public Operating solve(double massFlow, double inletEnthalpy, OutletCondition outlet) {
        return solve(Load.massFlow(massFlow), CoilInlet.enthalpy(inletEnthalpy), outlet);
    }

    /** As above, for any load and inlet. */
    public Operating solve(Load load, CoilInlet inlet, OutletCondition outlet) {
        double critical = equilibrium.refrigerant().criticalPoint().pressure();
        double lower = lowestPressure();
        double upper = HIGHEST * critical;
        // 1/share - 1 rises with the pressure and stays finite where no coil would do.
        if (!(lower < upper) || share(upper, load, inlet, outlet) > 1) {
            throw noBalance(lower < upper);
        }
        Search search = Search.brent(
                        x -> 1 / share(Math.exp(x), load, inlet, outlet) - 1,
                        Math.log(lower),
                        Math.log(upper),
                        TOLERANCE,
                        "condensing pressure of a coil")
                .in(Math::exp);
        return operating(possible(search.root(), load, inlet, outlet), load, inlet, outlet)
                .found(search);
    }

    /** Where the need jumps to infinity the search ends on either side of the jump: the side above it is the one that works. */
    private double possible(double pressure, Load load, CoilInlet inlet, OutletCondition outlet) {
        double p = pressure;
        for (double step = JUMP; step < 1 && Double.isInfinite(share(p, load, inlet, outlet)); step *= 2) {
            p = pressure * (1 + step);
        }
        return p;
    }

    /** The zones at a pressure, Pa, that is known to be in balance. */
    public Operating operating(double pressure, Load load, CoilInlet inlet, OutletCondition outlet) {
        States states = states(pressure, inlet, outlet);
        double flow =
                load.flow(states.inlet().specificEnthalpy() - states.outlet().specificEnthalpy());
        List<CoilZone> zones = new ArrayList<>();
        double entering = air.state().dryBulb();
        double warm = entering;
        for (CoilZone.Kind kind : KINDS) {
            warm += flow * states.heat(kind) / air.capacityRate();
        }
        for (CoilZone.Kind kind : KINDS) {
            double heat = flow * states.heat(kind);
            if (heat > 0) {
                double before = arrangement == Arrangement.SERIES ? warm - heat / air.capacityRate() : entering;
                CoilZone zone = zone(kind, states, heat, before);
                zones.add(zone);
                warm -= heat / air.capacityRate();
            }
        }
        double heat =
                flow * (states.inlet().specificEnthalpy() - states.outlet().specificEnthalpy());
        return new Operating(
                states.saturation(),
                states.inlet(),
                states.outlet(),
                flow,
                heat,
                zones,
                entering + heat / air.capacityRate(),
                Optional.empty());
    }

    private CoilZone zone(CoilZone.Kind kind, States states, double heat, double airInlet) {
        double need = CoilZone.need(heat, states.warm(kind), states.cold(kind), airInlet);
        double whole = conductance.of(kind);
        double share = share(need, whole);
        boolean series = arrangement == Arrangement.SERIES;
        double gamma = series ? need / air.capacityRate() : gamma(whole);
        double passing = series ? air.capacityRate() : share * air.capacityRate();
        return new CoilZone(
                kind,
                heat,
                share,
                share * whole,
                states.warm(kind),
                states.cold(kind),
                airInlet,
                airInlet + heat / passing,
                gamma);
    }

    /** As above, for any load and inlet. */
    public double share(double pressure, Load load, CoilInlet inlet, OutletCondition outlet) {
        return sum(pressure, load, inlet, outlet, (kind, need) -> share(need, conductance.of(kind)));
    }

    /**
     * The one conductance, W/K, that makes a coil of this air and arrangement fit a measured operation; infinite where the
     * temperatures would have to cross. Its own conductance does not matter.
     */
    double fitting(double pressure, Load load, CoilInlet inlet, OutletCondition outlet) {
        double rate = air.capacityRate();
        if (arrangement == Arrangement.SERIES) {
            return sum(
                    pressure,
                    load,
                    inlet,
                    outlet,
                    (kind, need) -> need < rate ? -rate * Math.log1p(-need / rate) : Double.POSITIVE_INFINITY);
        }
        double gamma = sum(pressure, load, inlet, outlet, (kind, need) -> need / rate);
        return gamma < 1 ? -rate * Math.log1p(-gamma) : Double.POSITIVE_INFINITY;
    }

    /** What a zone adds for its need. */
    private interface Contribution {
        double of(CoilZone.Kind kind, double need);
    }

    /** Adds up the zones in the direction of the air. */
    private double sum(double pressure, Load load, CoilInlet inlet, OutletCondition outlet, Contribution contribution) {
        States states = states(pressure, inlet, outlet);
        double flow =
                load.flow(states.inlet().specificEnthalpy() - states.outlet().specificEnthalpy());
        if (!(flow > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        double before = air.state().dryBulb();
        double sum = 0;
        for (int i = KINDS.size() - 1; i >= 0; i--) {
            CoilZone.Kind kind = KINDS.get(i);
            double heat = flow * states.heat(kind);
            sum += contribution.of(kind, CoilZone.need(heat, states.warm(kind), states.cold(kind), before));
            before += arrangement == Arrangement.SERIES ? heat / air.capacityRate() : 0;
        }
        return sum;
    }

    /** Share of the coil for a need. */
    private double share(double need, double whole) {
        double rate = air.capacityRate();
        if (arrangement == Arrangement.CROSS_FLOW) {
            return need / (gamma(whole) * rate);
        }
        return need < rate ? -rate / whole * Math.log1p(-need / rate) : Double.POSITIVE_INFINITY;
    }

    private double gamma(double whole) {
        return -Math.expm1(-whole / air.capacityRate());
    }

    /** Pa: where the bubble point is that of the air, so that nothing could condense. */
    private double lowestPressure() {
        double entering = air.state().dryBulb();
        if (entering >= equilibrium.refrigerant().criticalPoint().temperature()) {
            return Double.POSITIVE_INFINITY;
        }
        double temperature = Math.max(entering, equilibrium.refrigerant().minSaturationTemperature());
        return equilibrium.saturationAtTemperature(temperature).dew().pressure();
    }

    private EngineException noBalance(boolean airBelowCritical) {
        return airBelowCritical
                ? EngineException.of(
                                ErrorCode.CONTRADICTORY_INPUTS,
                                "The coil has no balance below the critical pressure: it has too little conductance or air for"
                                        + " so much heat.")
                        .about("conductance")
                : EngineException.of(
                        ErrorCode.CONTRADICTORY_INPUTS,
                        "The air is as hot as the critical point of the refrigerant or hotter: nothing can condense. Above the"
                                + " critical pressure it takes a gas cooler.",
                        "entering.dryBulb",
                        air.state().dryBulb(),
                        Double.NaN,
                        equilibrium.refrigerant().criticalPoint().temperature());
    }

    private States states(double pressure, CoilInlet inlet, OutletCondition outlet) {
        Saturation saturation = equilibrium.saturationAtPressure(pressure);
        return new States(
                saturation, inlet.at(equilibrium, pressure, saturation), outlet(pressure, saturation, outlet));
    }

    /** The outlet; where a pressure is too low for it the bubble point, from which the air then shows that it cannot be. */
    private State outlet(double pressure, Saturation saturation, OutletCondition outlet) {
        double bubble = saturation.bubble().temperature();
        return switch (outlet.given()) {
            case SUBCOOLING -> liquid(pressure, saturation, bubble - outlet.value());
            case TEMPERATURE -> liquid(pressure, saturation, Math.min(bubble, outlet.value()));
            case VAPOR_QUALITY ->
                equilibrium.state(Variable.PRESSURE, pressure, Variable.VAPOR_QUALITY, outlet.value());
            default -> throw new IllegalArgumentException(outlet.given() + " does not describe liquid");
        };
    }

    private State liquid(double pressure, Saturation saturation, double temperature) {
        return saturation.bubble().temperature() - temperature <= SaturationMargin.SATURATED
                ? saturation.bubble()
                : equilibrium.atPressureTemperature(pressure, temperature);
    }

    /** The refrigerant at one pressure. */
    private record States(Saturation saturation, State inlet, State outlet) {
        /** J/kg. */
        double heat(CoilZone.Kind kind) {
            double in = inlet.specificEnthalpy();
            double out = outlet.specificEnthalpy();
            double from = Math.min(in, saturation.dew().specificEnthalpy());
            double to = Math.min(from, Math.max(out, saturation.bubble().specificEnthalpy()));
            return switch (kind) {
                case DESUPERHEATING -> in - from;
                case CONDENSING -> from - to;
                case SUBCOOLING -> to - out;
            };
        }

        /** K, where the refrigerant enters the zone. */
        double warm(CoilZone.Kind kind) {
            return switch (kind) {
                case DESUPERHEATING -> inlet.temperature();
                case CONDENSING ->
                    Math.min(inlet.temperature(), saturation.dew().temperature());
                case SUBCOOLING ->
                    Math.min(inlet.temperature(), saturation.bubble().temperature());
            };
        }

        /** K, where the refrigerant leaves the zone. */
        double cold(CoilZone.Kind kind) {
            return switch (kind) {
                case DESUPERHEATING -> saturation.dew().temperature();
                case CONDENSING ->
                    Math.max(outlet.temperature(), saturation.bubble().temperature());
                case SUBCOOLING -> outlet.temperature();
            };
        }
    }
}
