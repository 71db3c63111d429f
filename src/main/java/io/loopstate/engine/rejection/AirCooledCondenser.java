package io.loopstate.engine.rejection;

import io.loopstate.engine.air.AirSolver;
import io.loopstate.engine.air.MoistAir;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.Require;
import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.cycle.Inputs;
import io.loopstate.engine.cycle.Point;
import io.loopstate.engine.cycle.PointName;
import io.loopstate.engine.cycle.SaturationTemperatures;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.rejection.CondenserCoil.Load;
import io.loopstate.engine.rejection.CondenserCoil.Operating;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An air-cooled condensing coil: its conductance from readings, or from its conductance the pressure at which it condenses, zone
 * by zone, with the fan at part speed and dirt on the fins if wanted.
 */
public final class AirCooledCondenser {
    private AirCooledCondenser() {}

    /**
     * The coil at work.
     *
     * @throws EngineException where readings contradict each other or the coil has no balance; it names the input, e.g. {@code
     *     conductance}, {@code leavingDryBulb}, {@code fanSpeed}
     */
    public static Result calculate(Spec spec) {
        CoilAir rated = CoilAir.entering(spec.atmosphere(), spec.entering(), spec.airflow());
        return spec.condensing().isPresent() ? rate(spec, rated) : predict(spec, rated);
    }

    /**
     * What is known. With the condensing level the conductance is sought, with the conductance the condensing level.
     *
     * @param equilibrium the refrigerant
     * @param atmosphere Pa
     * @param entering air before the coil
     * @param airflow at full fan speed, counted as the air enters or as standard air
     * @param arrangement how the air passes the zones
     * @param inlet how the refrigerant arrives
     * @param outlet how it leaves: subcooling, temperature or quality
     * @param load what has to be condensed; empty where the leaving air tells the heat
     * @param leavingDryBulb K, with a condensing level only
     * @param condensing measured level
     * @param conductance of the clean coil at full airflow
     * @param fan what the fan does
     * @param dirt on the coil
     * @param cleanConductance W/K that the coil is known to have when clean, to judge a measured one by
     * @param guidance limits for the findings
     * @param explain whether the result shows its working
     */
    public record Spec(
            Equilibrium equilibrium,
            double atmosphere,
            AirSide.Air entering,
            AirSide.Airflow airflow,
            Arrangement arrangement,
            CoilInlet inlet,
            OutletCondition outlet,
            Optional<Load> load,
            OptionalDouble leavingDryBulb,
            Optional<SaturationLevel> condensing,
            Optional<Conductance> conductance,
            Fan fan,
            Dirt dirt,
            OptionalDouble cleanConductance,
            Guidance guidance,
            boolean explain) {
        public Spec {
            Objects.requireNonNull(equilibrium);
            Objects.requireNonNull(entering);
            Objects.requireNonNull(airflow);
            Objects.requireNonNull(arrangement);
            Objects.requireNonNull(inlet);
            Objects.requireNonNull(outlet);
            Objects.requireNonNull(fan);
            Objects.requireNonNull(dirt);
            Objects.requireNonNull(guidance);
            Require.positive("cleanConductance", cleanConductance);
            load.ifPresent(given -> Require.positive(given.heatGiven() ? "heat" : "massFlow", given.value()));
            if (condensing.isPresent() == conductance.isPresent() || load.isPresent() == leavingDryBulb.isPresent()) {
                throw new IllegalArgumentException("a level or a conductance, a load or the leaving air");
            }
        }
    }

    /**
     * The fan.
     *
     * @param speed as a share of full speed, to which the airflow is proportional; 0 where it stands still
     * @param exponent with which the conductance follows the airflow
     * @param exponentAssumed whether that is common practice instead of the maker's
     * @param naturalDraft airflow without a fan, as a share of that at full speed
     */
    public record Fan(double speed, double exponent, boolean exponentAssumed, double naturalDraft) {
        /** Common practice, no source: between laminar and turbulent air over fins. */
        public static final double USUAL_EXPONENT = 0.5;
        /** Common practice, no source: what rises through a warm coil by itself. */
        public static final double USUAL_NATURAL_DRAFT = 0.1;

        public Fan {
            if (!(speed >= 0 && speed <= 1)) {
                throw EngineException.of(
                        ErrorCode.IMPOSSIBLE_VALUE, "A share of full speed is 0 to 1.", "fanSpeed", speed, 0, 1);
            }
            Require.properShare("airflowExponent", exponent);
            Require.efficiency("naturalDraft", naturalDraft);
        }

        /** At full speed. */
        public static Fan full() {
            return new Fan(1, USUAL_EXPONENT, true, USUAL_NATURAL_DRAFT);
        }

        /** Airflow over that at full speed. */
        double airflow() {
            return Math.max(speed, naturalDraft);
        }
    }

    /**
     * Dirt on the coil.
     *
     * @param resistance m2 K/W, 0 for a clean coil
     * @param area m2 on which it lies; needed for a resistance
     */
    public record Dirt(double resistance, OptionalDouble area) {
        public Dirt {
            Require.notNegative("foulingResistance", resistance);
            Require.positive("area", area);
            if (resistance > 0 && area.isEmpty()) {
                throw EngineException.of(
                                ErrorCode.CONTRADICTORY_INPUTS, "A fouling resistance needs the area that it covers.")
                        .about("area");
            }
        }

        /** A clean coil. */
        public static Dirt none() {
            return new Dirt(0, OptionalDouble.empty());
        }
    }

    /**
     * The coil at work.
     *
     * @param inlet of the refrigerant
     * @param outlet of the refrigerant
     * @param condensing temperatures
     * @param operating flow, heat and zones
     * @param conductance of the coil as it works: dirt and fan included
     * @param air entering, at the flow in force
     * @param entering everything about that air
     * @param leaving everything about the mean of the leaving air
     * @param condensingOverAmbient K, midpoint over entering air
     * @param approach K, midpoint over leaving air
     * @param pinch zone in which refrigerant and air come closest
     * @param simpleConductance W/K by the logarithmic mean from the midpoint to the air; empty where those cross
     * @param cleanliness measured over clean conductance, where that is known
     * @param foulingResistance m2 K/W that explains the difference, where the area is known too
     * @param findings what is unwise, implausible or assumed
     * @param steps the working; empty unless asked for
     */
    public record Result(
            Point inlet,
            Point outlet,
            SaturationTemperatures condensing,
            Operating operating,
            Conductance conductance,
            CoilAir air,
            MoistAir entering,
            MoistAir leaving,
            double condensingOverAmbient,
            double approach,
            CoilZone pinch,
            OptionalDouble simpleConductance,
            OptionalDouble cleanliness,
            OptionalDouble foulingResistance,
            List<Finding> findings,
            List<Step> steps) {
        public Result {
            findings = List.copyOf(findings);
            steps = List.copyOf(steps);
        }

        Result with(List<Finding> found, List<Step> working) {
            return new Result(
                    inlet,
                    outlet,
                    condensing,
                    operating,
                    conductance,
                    air,
                    entering,
                    leaving,
                    condensingOverAmbient,
                    approach,
                    pinch,
                    simpleConductance,
                    cleanliness,
                    foulingResistance,
                    found,
                    working);
        }
    }

    private static Result rate(Spec spec, CoilAir air) {
        Equilibrium equilibrium = spec.equilibrium();
        double pressure =
                Inputs.trace("condensing", () -> spec.condensing().get().pressure(equilibrium));
        Inputs.trace("condensing", () -> equilibrium.saturationAtPressure(pressure));
        Load load = spec.load().orElseGet(() -> Load.heat(heatOfAir(spec, air)));
        CondenserCoil any = new CondenserCoil(equilibrium, Conductance.uniform(1), air, spec.arrangement());
        double found = Inputs.trace("condenserOutlet", () -> any.fitting(pressure, load, spec.inlet(), spec.outlet()));
        if (Double.isInfinite(found)) {
            throw EngineException.of(
                            ErrorCode.CONTRADICTORY_INPUTS,
                            "No coil does this: in some zone the air would have to become warmer than the refrigerant, or"
                                    + " the refrigerant colder than the air. Check airflow, air and refrigerant temperatures.")
                    .about(spec.leavingDryBulb().isPresent() ? "leavingDryBulb" : "condensing");
        }
        Conductance conductance = Conductance.uniform(found);
        Operating operating = new CondenserCoil(equilibrium, conductance, air, spec.arrangement())
                .operating(pressure, load, spec.inlet(), spec.outlet());
        return result(spec, conductance, air, operating);
    }

    private static double heatOfAir(Spec spec, CoilAir air) {
        double leaving = spec.leavingDryBulb().orElseThrow();
        double rise = leaving - air.state().dryBulb();
        if (!(rise > 0)) {
            throw EngineException.of(
                    ErrorCode.CONTRADICTORY_INPUTS,
                    "The air leaves the condenser no warmer than it enters: swapped or wrong probes, or no heat.",
                    "leavingDryBulb",
                    leaving,
                    air.state().dryBulb(),
                    Double.NaN);
        }
        return rise * air.capacityRate();
    }

    private static Result predict(Spec spec, CoilAir rated) {
        double share = spec.fan().airflow();
        CoilAir air = rated.times(share);
        Conductance scaled = spec.conductance()
                .orElseThrow()
                .times(Math.pow(share, spec.fan().exponent()));
        Conductance conductance = spec.dirt().resistance() > 0
                ? scaled.fouled(spec.dirt().resistance(), spec.dirt().area().orElseThrow())
                : scaled;
        CondenserCoil coil = new CondenserCoil(spec.equilibrium(), conductance, air, spec.arrangement());
        Operating operating;
        try {
            operating = coil.solve(spec.load().orElseThrow(), spec.inlet(), spec.outlet());
        } catch (EngineException e) {
            boolean slow = share < 1 && e.input().filter("conductance"::equals).isPresent();
            throw slow ? e.about("fanSpeed") : e.input().isPresent() ? e : e.about("condenserOutlet");
        }
        return result(spec, conductance, air, operating);
    }

    private static Result result(Spec spec, Conductance conductance, CoilAir air, Operating operating) {
        Equilibrium equilibrium = spec.equilibrium();
        Saturation saturation = operating.saturation();
        SaturationTemperatures condensing = SaturationTemperatures.of(operating.pressure(), saturation);
        double over = condensing.midpoint() - air.state().dryBulb();
        double approach = condensing.midpoint() - operating.airOutlet();
        CoilZone pinch = operating.zones().stream()
                .min((one, other) -> Double.compare(one.pinch(), other.pinch()))
                .orElseThrow();
        OptionalDouble mean = LogMean.of(over, approach);
        OptionalDouble clean = spec.cleanConductance();
        double working = conductance.condensing();
        Result bare = new Result(
                Point.of(PointName.CONDENSER_INLET, equilibrium, operating.inlet()),
                Point.of(PointName.CONDENSER_OUTLET, equilibrium, operating.outlet()),
                condensing,
                operating,
                conductance,
                air,
                MoistAir.of(air.state()),
                MoistAir.of(air.state().at(leaving(operating.airOutlet()))),
                over,
                approach,
                pinch,
                mean.isPresent() ? OptionalDouble.of(operating.heat() / mean.getAsDouble()) : mean,
                clean.isPresent() ? OptionalDouble.of(working / clean.getAsDouble()) : clean,
                clean.isPresent() && spec.dirt().area().isPresent()
                        ? OptionalDouble.of(spec.dirt().area().getAsDouble() * (1 / working - 1 / clean.getAsDouble()))
                        : OptionalDouble.empty(),
                List.of(),
                List.of());
        return bare.with(CoilFindings.of(spec, bare), spec.explain() ? CoilWorking.of(spec, bare) : List.of());
    }

    private static double leaving(double dryBulb) {
        if (dryBulb > AirSolver.HIGHEST_DRY_BULB) {
            throw EngineException.of(
                            ErrorCode.CONTRADICTORY_INPUTS,
                            "So little air would leave hotter than the equations of moist air reach.")
                    .about("airflow.volumeFlow");
        }
        return dryBulb;
    }
}
