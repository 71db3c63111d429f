package io.loopstate.engine.compression;

import io.loopstate.engine.component.Require;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.cycle.Point;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.flash.Equilibrium;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/** One compression from a suction state to a discharge pressure, by the real fluid. */
public final class CompressionProcess {
    private CompressionProcess() {}

    /**
     * The compression and its limits.
     *
     * @throws io.loopstate.engine.error.EngineException where the inputs contradict each other or leave the range of the
     *     equation of state; it names {@code suction}, {@code discharge}, {@code pressureRatio} or the measure
     */
    public static Result calculate(Spec spec) {
        ProcessEnds ends = ProcessEnds.of(spec);
        Figures figures = ends.figures();
        Optional<Isothermal> isothermal = ends.isothermal();
        Optional<IdealGas> idealGas = IdealGasCompression.of(ends, spec.measure());
        Optional<Liquid> liquid = ends.liquid();
        Optional<Flow> flow = ends.flow(spec);
        return new Result(
                ends.points(),
                figures,
                isothermal,
                idealGas,
                liquid,
                flow,
                ProcessFindings.of(spec, ends, figures),
                spec.explain() ? ProcessWorking.of(spec, ends, figures, isothermal, idealGas, flow) : List.of());
    }

    /**
     * A compression as stated.
     *
     * @param equilibrium the fluid
     * @param suction state at the suction
     * @param discharge pressure to reach
     * @param measure what is known of the compression
     * @param heatLossFraction share of the work that the shell gives off, 0 to below 1; with a polytropic index 0, since
     *     the index fixes the heat
     * @param massFlow kg/s; at most one of this and the next
     * @param suctionVolumeFlow m3/s
     * @param atmosphericPressure Pa, to tell a vacuum
     * @param guidance limits for the findings
     * @param explain whether the result shows its working
     */
    public record Spec(
            Equilibrium equilibrium,
            SuctionCondition suction,
            DischargeLevel discharge,
            ProcessMeasure measure,
            double heatLossFraction,
            OptionalDouble massFlow,
            OptionalDouble suctionVolumeFlow,
            double atmosphericPressure,
            Guidance guidance,
            boolean explain) {
        public Spec {
            Objects.requireNonNull(equilibrium);
            Objects.requireNonNull(suction);
            Objects.requireNonNull(discharge);
            Objects.requireNonNull(measure);
            Objects.requireNonNull(guidance);
            Require.properShare("heatLossFraction", heatLossFraction);
            Require.positive("massFlow", massFlow);
            Require.positive("suctionVolumeFlow", suctionVolumeFlow);
        }
    }

    /**
     * Everything that follows.
     *
     * @param points compressor inlet, outlet, isentropic outlet
     * @param figures work and efficiencies
     * @param isothermal the least work there is; empty where the fluid has no state at the suction's temperature and the
     *     discharge pressure
     * @param idealGas formulas of the ideal gas for class; empty for wet vapor
     * @param liquid the liquid that comes in; empty for dry vapor
     * @param flow of the whole machine; empty without a size
     * @param findings what is unwise or worth knowing
     * @param steps the working; empty unless asked for
     */
    public record Result(
            List<Point> points,
            Figures figures,
            Optional<Isothermal> isothermal,
            Optional<IdealGas> idealGas,
            Optional<Liquid> liquid,
            Optional<Flow> flow,
            List<Finding> findings,
            List<Step> steps) {
        public Result {
            points = List.copyOf(points);
            findings = List.copyOf(findings);
            steps = List.copyOf(steps);
        }
    }

    /**
     * The compression per kilogram, J/kg where no unit is given. Outlet enthalpy = inlet enthalpy + work - heatLoss.
     *
     * @param pressureRatio absolute
     * @param volumeRatio suction over discharge specific volume
     * @param isentropicWork h2s - h1
     * @param polytropicWork integral of v dp along the path; empty where the enthalpy does not rise
     * @param work put in
     * @param heatLoss given off during compression
     * @param isentropicEfficiency isentropic work over work
     * @param polytropicEfficiency polytropic work over work
     * @param isentropicIndex n of p v^n between the inlet and the isentropic outlet
     * @param polytropicIndex n of p v^n between inlet and outlet
     * @param dischargeTemperature K
     * @param isentropicDischargeTemperature K
     */
    public record Figures(
            double pressureRatio,
            double volumeRatio,
            double isentropicWork,
            OptionalDouble polytropicWork,
            double work,
            double heatLoss,
            double isentropicEfficiency,
            OptionalDouble polytropicEfficiency,
            double isentropicIndex,
            double polytropicIndex,
            double dischargeTemperature,
            double isentropicDischargeTemperature) {}

    /**
     * Reversible compression at the suction's temperature, the lower bound of all work.
     *
     * @param work J/kg, change of the Gibbs energy
     * @param heat J/kg given off
     * @param efficiency isothermal over actual work
     * @param condenses whether the fluid ends up liquid, as below its critical temperature it may
     */
    public record Isothermal(double work, double heat, double efficiency, boolean condenses) {}

    /**
     * What the formulas of an ideal gas with constant heat capacities give; for comparison only.
     *
     * @param gasConstant J/(kg K)
     * @param heatCapacityRatio cp / cv at the suction
     * @param index of the path: the one given, or that of constant entropy
     * @param dischargeTemperature K, with the efficiency given if any
     * @param work J/kg
     * @param isentropicWork J/kg
     * @param isothermalWork J/kg
     */
    public record IdealGas(
            double gasConstant,
            double heatCapacityRatio,
            double index,
            double dischargeTemperature,
            double work,
            double isentropicWork,
            double isothermalWork) {}

    /**
     * Liquid in the suction.
     *
     * @param massShare kg of liquid per kg
     * @param volumeShare m3 of liquid per m3
     * @param outletQuality vapor quality at the discharge; empty where all of it has evaporated
     */
    public record Liquid(double massShare, double volumeShare, OptionalDouble outletQuality) {}

    /**
     * The whole machine.
     *
     * @param massFlow kg/s
     * @param suctionVolumeFlow m3/s
     * @param dischargeVolumeFlow m3/s
     * @param power W
     * @param heatLoss W
     */
    public record Flow(
            double massFlow, double suctionVolumeFlow, double dischargeVolumeFlow, double power, double heatLoss) {}
}
