package io.loopstate.engine.rejection;

import io.loopstate.engine.air.MoistAir;
import io.loopstate.engine.component.Require;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.cycle.Inputs;
import io.loopstate.engine.cycle.Point;
import io.loopstate.engine.cycle.PointName;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.rejection.GasCoolerCoil.Operating;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An air-cooled gas cooler at a given pressure: its conductance from a measured outlet, or from its conductance the temperature at
 * which the refrigerant leaves it, with the fan at part speed and dirt on the fins if wanted.
 */
public final class AirCooledGasCooler {
    private AirCooledGasCooler() {}

    /**
     * The gas cooler at work.
     *
     * @throws EngineException where readings contradict each other or the refrigerant would condense; it names the input, e.g.
     *     {@code pressure}, {@code gasCoolerOutletTemperature}, {@code conductance}
     */
    public static Result calculate(Spec spec) {
        CoilAir rated = CoilAir.entering(spec.atmosphere(), spec.entering(), spec.airflow());
        CoilAir air = rated.times(spec.fan().airflow());
        GasCoolerCoil coil = Inputs.trace(
                "pressure",
                () -> new GasCoolerCoil(
                        spec.equilibrium(), air, spec.arrangement(), spec.pressure(), spec.inletTemperature()));
        return spec.outletTemperature().isPresent() ? rate(spec, air, coil) : predict(spec, air, coil);
    }

    /**
     * What is known. With the outlet the conductance is sought, with the conductance the outlet.
     *
     * @param equilibrium the refrigerant
     * @param atmosphere Pa
     * @param entering air before the coil
     * @param airflow at full fan speed, counted as the air enters or as standard air
     * @param arrangement one row in cross flow, or many in counter flow
     * @param pressure Pa, above the critical one
     * @param inletTemperature K of the refrigerant
     * @param outletTemperature K of the refrigerant, measured
     * @param load refrigerant flow or heat; empty where the leaving air tells the heat
     * @param leavingDryBulb K, with a measured outlet only
     * @param conductance W/K of the clean coil at full airflow
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
            double pressure,
            double inletTemperature,
            OptionalDouble outletTemperature,
            Optional<Load> load,
            OptionalDouble leavingDryBulb,
            OptionalDouble conductance,
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
            Objects.requireNonNull(fan);
            Objects.requireNonNull(dirt);
            Objects.requireNonNull(guidance);
            Require.positive("pressure", pressure);
            Require.positive("gasCoolerInletTemperature", inletTemperature);
            Require.positive("gasCoolerOutletTemperature", outletTemperature);
            Require.positive("conductance", conductance);
            Require.positive("cleanConductance", cleanConductance);
            if (outletTemperature.isPresent() == conductance.isPresent()
                    || load.isPresent() == leavingDryBulb.isPresent()) {
                throw new IllegalArgumentException("an outlet or a conductance, a load or the leaving air");
            }
        }
    }

    /**
     * The gas cooler at work.
     *
     * @param inlet of the refrigerant
     * @param outlet of the refrigerant
     * @param operating flow, heat, segments and pinch
     * @param air entering, at the flow in force
     * @param entering everything about that air
     * @param leaving everything about the mean of the leaving air
     * @param approach K, refrigerant at the outlet over entering air
     * @param cleanliness what is left of a coil that is known to have been better
     * @param findings what is unwise, implausible or assumed
     * @param steps the working; empty unless asked for
     */
    public record Result(
            Point inlet,
            Point outlet,
            Operating operating,
            CoilAir air,
            MoistAir entering,
            MoistAir leaving,
            double approach,
            Cleanliness cleanliness,
            List<Finding> findings,
            List<Step> steps) {
        public Result {
            findings = List.copyOf(findings);
            steps = List.copyOf(steps);
        }

        Result with(List<Finding> found, List<Step> working) {
            return new Result(inlet, outlet, operating, air, entering, leaving, approach, cleanliness, found, working);
        }
    }

    private static Result rate(Spec spec, CoilAir air, GasCoolerCoil coil) {
        double outlet = spec.outletTemperature().orElseThrow();
        if (!(outlet > air.state().dryBulb() && outlet < spec.inletTemperature())) {
            throw EngineException.of(
                    ErrorCode.CONTRADICTORY_INPUTS,
                    "The refrigerant leaves warmer than the entering air and colder than it arrives.",
                    "gasCoolerOutletTemperature",
                    outlet,
                    air.state().dryBulb(),
                    spec.inletTemperature());
        }
        Load load = spec.load()
                .orElseGet(() -> Load.heat(air.heatUpTo(spec.leavingDryBulb().orElseThrow(), "gas cooler")));
        if (Double.isInfinite(coil.fitting(outlet, load))) {
            throw EngineException.of(
                            ErrorCode.CONTRADICTORY_INPUTS,
                            "No gas cooler does this: somewhere the air would have to become warmer than the refrigerant. Check"
                                    + " airflow, air and refrigerant temperatures.")
                    .about(spec.leavingDryBulb().isPresent() ? "leavingDryBulb" : "gasCoolerOutletTemperature");
        }
        return result(spec, air, coil.measured(outlet, load));
    }

    private static Result predict(Spec spec, CoilAir air, GasCoolerCoil coil) {
        double conductance =
                spec.dirt().under(spec.conductance().orElseThrow() * spec.fan().conductance());
        return result(spec, air, coil.solve(conductance, spec.load().orElseThrow()));
    }

    private static Result result(Spec spec, CoilAir air, Operating operating) {
        Equilibrium equilibrium = spec.equilibrium();
        Result bare = new Result(
                Point.of(PointName.GAS_COOLER_INLET, equilibrium, operating.inlet()),
                Point.of(PointName.GAS_COOLER_OUTLET, equilibrium, operating.outlet()),
                operating,
                air,
                MoistAir.of(air.state()),
                air.warmed(operating.airOutlet()),
                operating.outlet().temperature() - air.state().dryBulb(),
                Cleanliness.of(operating.conductance(), spec.cleanConductance(), spec.dirt()),
                List.of(),
                List.of());
        return bare.with(
                GasCoolerReport.findings(spec, bare), spec.explain() ? GasCoolerReport.working(spec, bare) : List.of());
    }
}
