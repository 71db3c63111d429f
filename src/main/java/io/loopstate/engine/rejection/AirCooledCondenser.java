package io.loopstate.engine.rejection;

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
            if (condensing.isPresent() == conductance.isPresent() || load.isPresent() == leavingDryBulb.isPresent()) {
                throw new IllegalArgumentException("a level or a conductance, a load or the leaving air");
            }
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
     * @param cleanliness what is left of a coil that is known to have been better
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
            Cleanliness cleanliness,
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
                    found,
                    working);
        }
    }

    private static Result rate(Spec spec, CoilAir air) {
        Equilibrium equilibrium = spec.equilibrium();
        double pressure =
                Inputs.trace("condensing", () -> spec.condensing().get().pressure(equilibrium));
        Inputs.trace("condensing", () -> equilibrium.saturationAtPressure(pressure));
        Load load = spec.load()
                .orElseGet(() -> Load.heat(air.heatUpTo(spec.leavingDryBulb().orElseThrow(), "condenser")));
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

    private static Result predict(Spec spec, CoilAir rated) {
        CoilAir air = rated.times(spec.fan().airflow());
        Conductance conductance = spec.conductance().orElseThrow().at(spec.fan(), spec.dirt());
        CondenserCoil coil = new CondenserCoil(spec.equilibrium(), conductance, air, spec.arrangement());
        Operating operating;
        try {
            operating = coil.solve(spec.load().orElseThrow(), spec.inlet(), spec.outlet());
        } catch (EngineException e) {
            boolean slow = spec.fan().airflow() < 1
                    && e.input().filter("conductance"::equals).isPresent();
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
        Result bare = new Result(
                Point.of(PointName.CONDENSER_INLET, equilibrium, operating.inlet()),
                Point.of(PointName.CONDENSER_OUTLET, equilibrium, operating.outlet()),
                condensing,
                operating,
                conductance,
                air,
                MoistAir.of(air.state()),
                air.warmed(operating.airOutlet()),
                over,
                approach,
                pinch,
                mean.isPresent() ? OptionalDouble.of(operating.heat() / mean.getAsDouble()) : mean,
                Cleanliness.of(conductance.condensing(), spec.cleanConductance(), spec.dirt()),
                List.of(),
                List.of());
        return bare.with(CoilFindings.of(spec, bare), spec.explain() ? CoilWorking.of(spec, bare) : List.of());
    }
}
