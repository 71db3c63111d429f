package io.loopstate.engine.compression;

import io.loopstate.engine.component.Compressor;
import io.loopstate.engine.component.Require;
import io.loopstate.engine.component.SaturationMargin;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.cycle.Inputs;
import io.loopstate.engine.cycle.RememberingEquilibrium;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.numerics.Minimum;
import io.loopstate.engine.numerics.Roots;
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.property.State;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/** Compression in two stages with cooling between, beside compression in one. */
public final class Staging {
    private static final double TOLERANCE = 1e-7;
    /** By which the intermediate pressure keeps away from those at the ends. */
    private static final double EDGE = 1.0001;

    private Staging() {}

    /** What is known of each stage: efficiency or index of the path. */
    public enum Kind {
        /** Isentropic efficiency. */
        EFFICIENCY,
        /** The n of p v^n in a cooled cylinder. */
        INDEX
    }

    /**
     * Both, and the intermediate pressure of least work.
     *
     * @throws EngineException naming {@code suction}, {@code discharge}, {@code intermediatePressure} or {@code
     *     intercoolerTemperature}
     */
    public static Result calculate(Spec spec) {
        Equilibrium equilibrium = new RememberingEquilibrium(spec.equilibrium());
        State suction = spec.suction().state(equilibrium);
        double high = spec.discharge().pressure(equilibrium, suction.pressure());
        double rule = Math.sqrt(suction.pressure() * high);
        double best = optimum(spec, equilibrium, suction, high);
        Stages optimum = stages(spec, equilibrium, suction, best, high);
        Stages square = stages(spec, equilibrium, suction, rule, high);
        Stages chosen = spec.intermediatePressure().isPresent() ? given(spec, equilibrium, suction, high) : optimum;
        Stage single = Inputs.trace("discharge", () -> stage(equilibrium, suction, high, spec.kind(), spec.lowStage()));
        return new Result(
                suction,
                chosen,
                optimum,
                square,
                single,
                single.work() - chosen.work(),
                1 - chosen.work() / single.work(),
                StagingFindings.of(spec, equilibrium, suction, chosen),
                spec.explain()
                        ? StagingWorking.of(spec, equilibrium, suction, chosen, optimum, square, single)
                        : List.of());
    }

    private static Stages given(Spec spec, Equilibrium equilibrium, State suction, double high) {
        double pressure = spec.intermediatePressure().getAsDouble();
        if (!(pressure > suction.pressure() && pressure < high)) {
            throw EngineException.of(
                    ErrorCode.CONTRADICTORY_INPUTS,
                    "The intermediate pressure lies between suction and discharge.",
                    "intermediatePressure",
                    pressure,
                    suction.pressure(),
                    high);
        }
        return stages(spec, equilibrium, suction, pressure, high);
    }

    /**
     * Least work over the logarithm of the pressure. Below the pressure at which the first stage ends as warm as the
     * intercooler leaves it, nothing is cooled and a second stage only adds losses: the least work lies above, where the work
     * falls, then rises.
     */
    private static double optimum(Spec spec, Equilibrium equilibrium, State suction, double high) {
        double a = Math.log(suction.pressure() * EDGE);
        double b = Math.log(high / EDGE);
        DoubleUnaryOperator excess = x ->
                Inputs.trace("discharge", () -> stage(equilibrium, suction, Math.exp(x), spec.kind(), spec.lowStage()))
                                .outlet()
                                .temperature()
                        - spec.intercoolerTemperature();
        if (!(excess.applyAsDouble(b) > 0)) {
            return Math.exp(a);
        }
        double start =
                excess.applyAsDouble(a) >= 0 ? a : Roots.brent(excess, a, b, 1e-6, "pressure where cooling begins");
        return Math.exp(Minimum.brent(
                x -> work(spec, equilibrium, suction, Math.exp(x), high),
                start,
                b,
                TOLERANCE,
                "intermediate pressure of least work"));
    }

    /** The work of both stages alone. */
    private static double work(Spec spec, Equilibrium equilibrium, State suction, double middle, double high) {
        Stage low = Inputs.trace("discharge", () -> stage(equilibrium, suction, middle, spec.kind(), spec.lowStage()));
        State cooled = Inputs.trace("intercoolerTemperature", () -> cooled(spec, equilibrium, low.outlet()));
        return low.work()
                + Inputs.trace("discharge", () -> stageWork(equilibrium, cooled, high, spec.kind(), spec.highStage()));
    }

    private static double stageWork(Equilibrium equilibrium, State inlet, double pressure, Kind kind, double value) {
        return kind == Kind.EFFICIENCY
                ? (Compressor.isentropicOutlet(equilibrium, inlet, pressure).specificEnthalpy()
                                - inlet.specificEnthalpy())
                        / value
                : stage(equilibrium, inlet, pressure, kind, value).work();
    }

    private static Stages stages(Spec spec, Equilibrium equilibrium, State suction, double middle, double high) {
        Stage low = Inputs.trace("discharge", () -> stage(equilibrium, suction, middle, spec.kind(), spec.lowStage()));
        State cooled = Inputs.trace("intercoolerTemperature", () -> cooled(spec, equilibrium, low.outlet()));
        Stage top = Inputs.trace("discharge", () -> stage(equilibrium, cooled, high, spec.kind(), spec.highStage()));
        return new Stages(
                middle,
                low,
                cooled,
                top,
                low.outlet().specificEnthalpy() - cooled.specificEnthalpy(),
                low.work() + top.work());
    }

    /** Never warmer than the vapor comes in, and never wet: down to the dew point at most. */
    private static State cooled(Spec spec, Equilibrium equilibrium, State outlet) {
        double temperature = spec.intercoolerTemperature();
        if (temperature >= outlet.temperature() || outlet.phase() == Phase.TWO_PHASE) {
            return outlet;
        }
        Optional<Saturation> saturation = SaturationMargin.saturation(equilibrium, outlet.pressure());
        if (saturation.isPresent() && temperature <= saturation.get().dew().temperature()) {
            return saturation.get().dew();
        }
        return equilibrium.atPressureTemperature(outlet.pressure(), temperature);
    }

    private static Stage stage(Equilibrium equilibrium, State inlet, double pressure, Kind kind, double value) {
        if (kind == Kind.EFFICIENCY) {
            State ideal = Compressor.isentropicOutlet(equilibrium, inlet, pressure);
            double work = (ideal.specificEnthalpy() - inlet.specificEnthalpy()) / value;
            return new Stage(inlet, equilibrium.atPressureEnthalpy(pressure, inlet.specificEnthalpy() + work), work, 0);
        }
        double ratio = pressure / inlet.pressure();
        State outlet = equilibrium.state(
                Variable.PRESSURE,
                pressure,
                Variable.SPECIFIC_VOLUME,
                inlet.specificVolume() * Math.pow(ratio, -1 / value));
        double rise = outlet.specificEnthalpy() - inlet.specificEnthalpy();
        double work = Math.max(IndexPath.flowWork(inlet.pressure(), inlet.specificVolume(), ratio, value), rise);
        return new Stage(inlet, outlet, work, work - rise);
    }

    /**
     * Two stages.
     *
     * @param equilibrium the fluid
     * @param suction state at the suction of the first stage
     * @param discharge pressure of the second
     * @param kind what the next two are
     * @param lowStage efficiency, above 0 to 1, or index
     * @param highStage likewise
     * @param intercoolerTemperature K to which the vapor is cooled, at the dew point at the latest
     * @param intermediatePressure Pa; empty for that of least work
     * @param atmosphericPressure Pa, to tell a vacuum
     * @param guidance limits for the findings
     * @param explain whether the result shows its working
     */
    public record Spec(
            Equilibrium equilibrium,
            SuctionCondition suction,
            DischargeLevel discharge,
            Kind kind,
            double lowStage,
            double highStage,
            double intercoolerTemperature,
            OptionalDouble intermediatePressure,
            double atmosphericPressure,
            Guidance guidance,
            boolean explain) {
        public Spec {
            Objects.requireNonNull(equilibrium);
            Objects.requireNonNull(suction);
            Objects.requireNonNull(discharge);
            Objects.requireNonNull(kind);
            Objects.requireNonNull(guidance);
            if (kind == Kind.EFFICIENCY) {
                Require.efficiency("isentropicEfficiency", lowStage);
                Require.efficiency("highStageIsentropicEfficiency", highStage);
            } else {
                Require.positive("polytropicIndex", lowStage);
                Require.positive("polytropicIndex", highStage);
            }
            Require.positive("intercoolerTemperature", intercoolerTemperature);
        }
    }

    /**
     * Two stages beside one.
     *
     * @param suction state
     * @param stages at the pressure given, or at that of least work
     * @param optimum at the intermediate pressure of least work
     * @param squareRoot at the square root of suction times discharge pressure
     * @param single the same in one stage
     * @param workSaved J/kg against one stage
     * @param savedShare of the work of one stage
     * @param findings what is unwise or worth knowing
     * @param steps the working; empty unless asked for
     */
    public record Result(
            State suction,
            Stages stages,
            Stages optimum,
            Stages squareRoot,
            Stage single,
            double workSaved,
            double savedShare,
            List<Finding> findings,
            List<Step> steps) {
        public Result {
            findings = List.copyOf(findings);
            steps = List.copyOf(steps);
        }
    }

    /**
     * One stage.
     *
     * @param inlet state
     * @param outlet state
     * @param work J/kg
     * @param heat J/kg given off by a cooled cylinder
     */
    public record Stage(State inlet, State outlet, double work, double heat) {}

    /**
     * Two stages at one intermediate pressure.
     *
     * @param intermediatePressure Pa
     * @param low first stage
     * @param cooled state after the intercooler
     * @param high second stage
     * @param intercoolerHeat J/kg
     * @param work J/kg of both
     */
    public record Stages(
            double intermediatePressure, Stage low, State cooled, Stage high, double intercoolerHeat, double work) {}
}
