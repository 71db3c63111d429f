package io.loopstate.engine.rejection;

import io.loopstate.engine.air.AirState;
import io.loopstate.engine.air.MoistAir;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.Require;
import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.cycle.Constants;
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
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.rejection.EvaporatorCoil.Operating;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An air-cooled evaporating coil: its dry conductance from readings, or from its conductance the pressure at which it evaporates,
 * what it takes from the air and how much of that is moisture, with the fan at part speed and dirt on the fins if wanted.
 */
public final class AirCooledEvaporator {
    private AirCooledEvaporator() {}

    /**
     * The coil at work.
     *
     * @throws EngineException where readings contradict each other or the coil has no balance; it names the input, e.g. {@code
     *     conductance}, {@code leaving.dryBulb}, {@code liquidTemperature}
     */
    public static Result calculate(Spec spec) {
        CoilAir rated = CoilAir.entering(spec.atmosphere(), spec.entering(), spec.airflow());
        EvaporatorInlet inlet = spec.inlet().at(spec.equilibrium());
        return spec.evaporating().isPresent() ? rate(spec, rated, inlet) : predict(spec, rated, inlet);
    }

    /**
     * What is known. With the evaporating level the conductance is sought, with the conductance the evaporating level.
     *
     * @param equilibrium the refrigerant
     * @param atmosphere Pa
     * @param entering air before the coil
     * @param airflow at full fan speed, counted as the air enters or as standard air
     * @param inlet how the refrigerant arrives
     * @param outlet how it leaves: superheat, temperature or quality
     * @param load flow or heat; empty where the leaving air tells the heat
     * @param leaving air behind the coil, with an evaporating level only
     * @param evaporating measured level
     * @param conductance of the clean, dry coil at full airflow
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
            EvaporatorFeed inlet,
            OutletCondition outlet,
            Optional<Load> load,
            Optional<AirSide.Air> leaving,
            Optional<SaturationLevel> evaporating,
            Optional<EvaporatorConductance> conductance,
            Fan fan,
            Dirt dirt,
            OptionalDouble cleanConductance,
            Guidance guidance,
            boolean explain) {
        public Spec {
            Objects.requireNonNull(equilibrium);
            Objects.requireNonNull(entering);
            Objects.requireNonNull(airflow);
            Objects.requireNonNull(inlet);
            Objects.requireNonNull(outlet);
            Objects.requireNonNull(fan);
            Objects.requireNonNull(dirt);
            Objects.requireNonNull(guidance);
            Require.positive("cleanConductance", cleanConductance);
            if (evaporating.isPresent() == conductance.isPresent() || load.isPresent() == leaving.isPresent()) {
                throw new IllegalArgumentException("a level or a conductance, a load or the leaving air");
            }
        }
    }

    /**
     * The coil at work.
     *
     * @param inlet of the refrigerant
     * @param outlet of the refrigerant
     * @param evaporating temperatures
     * @param operating flow, heat, zones and surface
     * @param conductance of the coil as it works: dirt and fan included, dry
     * @param air entering, at the flow in force
     * @param entering everything about that air
     * @param leaving everything about the mean of the leaving air
     * @param behind heat and moisture of that air
     * @param superheat K at the outlet; empty where liquid leaves
     * @param temperatureDifference K, entering air over midpoint
     * @param airflowPerTon m3/s as the air enters for each ton of refrigeration
     * @param pinch zone in which refrigerant and air come closest
     * @param cleanliness what is left of a coil that is known to have been better
     * @param findings what is unwise, implausible or assumed
     * @param steps the working; empty unless asked for
     */
    public record Result(
            Point inlet,
            Point outlet,
            SaturationTemperatures evaporating,
            Operating operating,
            EvaporatorConductance conductance,
            CoilAir air,
            MoistAir entering,
            MoistAir leaving,
            EvaporatorAir behind,
            OptionalDouble superheat,
            double temperatureDifference,
            double airflowPerTon,
            EvaporatorZone pinch,
            Cleanliness cleanliness,
            List<Finding> findings,
            List<Step> steps) {
        public Result {
            findings = List.copyOf(findings);
            steps = List.copyOf(steps);
        }

        /** Share that nothing needs; what iteration and rounding leave is nothing. */
        public double areaLeftOver() {
            return operating.areaLeftOver() > EvaporatorFindings.LEFT_OVER ? operating.areaLeftOver() : 0;
        }

        /** Sensible over total heat. */
        public double sensibleHeatRatio() {
            return behind.sensibleHeat() / operating.heat();
        }

        Result with(List<Finding> found, List<Step> working) {
            return new Result(
                    inlet,
                    outlet,
                    evaporating,
                    operating,
                    conductance,
                    air,
                    entering,
                    leaving,
                    behind,
                    superheat,
                    temperatureDifference,
                    airflowPerTon,
                    pinch,
                    cleanliness,
                    found,
                    working);
        }
    }

    private static Result rate(Spec spec, CoilAir air, EvaporatorInlet inlet) {
        Equilibrium equilibrium = spec.equilibrium();
        double pressure =
                Inputs.trace("evaporating", () -> spec.evaporating().get().pressure(equilibrium));
        Inputs.trace("evaporating", () -> equilibrium.saturationAtPressure(pressure));
        Load load = spec.load().orElseGet(() -> Load.heat(heatOfAir(spec, air)));
        EvaporatorCoil any = new EvaporatorCoil(equilibrium, 1, 1, air);
        double found = Inputs.trace("evaporatorOutlet", () -> any.fitting(pressure, load, inlet, spec.outlet()));
        if (Double.isInfinite(found)) {
            throw EngineException.of(
                            ErrorCode.CONTRADICTORY_INPUTS,
                            "No coil does this: in some zone the air would have to become colder than the refrigerant, or the"
                                    + " refrigerant warmer than the air. Check airflow, air and refrigerant temperatures.")
                    .about(spec.leaving().isPresent() ? "leaving.dryBulb" : "evaporating");
        }
        EvaporatorConductance conductance = new EvaporatorConductance(found, found);
        Operating operating =
                new EvaporatorCoil(equilibrium, found, found, air).operating(pressure, load, inlet, spec.outlet());
        boolean blind =
                spec.leaving().isPresent() && spec.leaving().get().humidity().isEmpty();
        if (blind && operating.surface().wet()) {
            throw EngineException.of(
                            ErrorCode.CONTRADICTORY_INPUTS,
                            "The coil is colder than the dew point of the air and dries it: without the humidity of the leaving"
                                    + " air its heat is not known.")
                    .about("leaving.relativeHumidity");
        }
        return result(spec, conductance, air, operating);
    }

    /** Heat that the measured air gave off, W; the condensate leaves as cold as the air. */
    private static double heatOfAir(Spec spec, CoilAir air) {
        AirSide.Air measured = spec.leaving().orElseThrow();
        AirState in = air.state();
        AirState out = measured.humidity().isPresent()
                ? CoilAir.state(spec.atmosphere(), measured, "leaving")
                : in.at(measured.dryBulb().orElseThrow());
        if (!(out.dryBulb() < in.dryBulb())) {
            throw EngineException.of(
                    ErrorCode.CONTRADICTORY_INPUTS,
                    "The air leaves the evaporator no colder than it enters: swapped or wrong probes, or no cooling.",
                    "leaving.dryBulb",
                    out.dryBulb(),
                    Double.NaN,
                    in.dryBulb());
        }
        double removed = in.humidityRatio() - out.humidityRatio();
        if (removed < 0) {
            throw EngineException.of(
                            ErrorCode.CONTRADICTORY_INPUTS,
                            "The air would leave the evaporator with more water than it enters with. Of a dry coil leave this"
                                    + " humidity out.")
                    .about("leaving."
                            + measured.humidity().orElseThrow().variable().input());
        }
        return air.massFlow()
                * (in.specificEnthalpy() - out.specificEnthalpy() - removed * AirFactors.waterEnthalpy(out.dryBulb()));
    }

    private static Result predict(Spec spec, CoilAir rated, EvaporatorInlet inlet) {
        CoilAir air = rated.times(spec.fan().airflow());
        EvaporatorConductance conductance = spec.conductance().orElseThrow().at(spec.fan(), spec.dirt());
        EvaporatorCoil coil =
                new EvaporatorCoil(spec.equilibrium(), conductance.boiling(), conductance.superheating(), air);
        Operating operating;
        try {
            operating = coil.solve(spec.load().orElseThrow(), inlet, spec.outlet());
        } catch (EngineException e) {
            boolean slow = spec.fan().airflow() < 1
                    && e.input().filter("conductance"::equals).isPresent();
            throw slow ? e.about("fanSpeed") : e.input().isPresent() ? e : e.about("evaporatorOutlet");
        }
        return result(spec, conductance, air, operating);
    }

    private static Result result(Spec spec, EvaporatorConductance conductance, CoilAir air, Operating operating) {
        Equilibrium equilibrium = spec.equilibrium();
        double pressure = operating.pressure();
        spec.inlet().requireExpansion(equilibrium, pressure);
        SaturationTemperatures evaporating = SaturationTemperatures.of(pressure, operating.saturation());
        double over = operating.outlet().temperature() - evaporating.dew();
        boolean wet = operating.outlet().phase() == Phase.TWO_PHASE;
        EvaporatorAir behind = EvaporatorAir.of(air, operating);
        double entering = air.state().dryBulb();
        double inlet = operating.outlet().specificEnthalpy() - operating.heat() / operating.massFlow();
        Result bare = new Result(
                Point.of(PointName.EVAPORATOR_INLET, equilibrium, equilibrium.atPressureEnthalpy(pressure, inlet)),
                Point.of(PointName.EVAPORATOR_OUTLET, equilibrium, operating.outlet()),
                evaporating,
                operating,
                conductance,
                air,
                MoistAir.of(air.state()),
                MoistAir.of(behind.state()),
                behind,
                wet ? OptionalDouble.empty() : OptionalDouble.of(Math.max(0, over)),
                entering - evaporating.midpoint(),
                air.massFlow() * air.state().specificVolume() / operating.heat() * Constants.WATT_PER_TON,
                operating.zones().stream()
                        .min((one, other) -> Double.compare(one.pinch(entering), other.pinch(entering)))
                        .orElseThrow(),
                Cleanliness.of(conductance.boiling(), spec.cleanConductance(), spec.dirt()),
                List.of(),
                List.of());
        return bare.with(
                EvaporatorFindings.of(spec, bare), spec.explain() ? EvaporatorWorking.of(spec, bare) : List.of());
    }
}
