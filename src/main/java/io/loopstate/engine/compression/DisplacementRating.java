package io.loopstate.engine.compression;

import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.cycle.Point;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.flash.Equilibrium;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** What a compressor of known displacement does between a suction state and a discharge pressure. */
public final class DisplacementRating {
    private DisplacementRating() {}

    /** What was not given and is taken as usual. */
    public enum Assumption {
        /** Volumetric efficiency of a rotor as 1. */
        VOLUMETRIC_EFFICIENCY,
        /** Motor efficiency as 1. */
        MOTOR_EFFICIENCY
    }

    /**
     * The machine at work.
     *
     * @throws io.loopstate.engine.error.EngineException where it cannot run between the two; it names {@code suction}, {@code
     *     discharge}, {@code liquid} or an input of the machine
     */
    public static Result calculate(Spec spec) {
        RatingStates states = RatingStates.of(spec);
        Figures figures = states.figures(spec);
        Optional<EnergyBalance> balance = states.balance(spec);
        return new Result(
                states.points(),
                figures,
                states.inside(),
                states.head(spec),
                states.liquid(),
                balance,
                RatingFindings.of(spec, states, figures),
                spec.explain() ? RatingWorking.of(spec, states, figures, balance) : List.of());
    }

    /**
     * A machine and its working point.
     *
     * @param equilibrium the refrigerant
     * @param suction state at the suction port
     * @param discharge pressure to reach
     * @param machine the compressor
     * @param cylinders size of the cylinders that make its displacement, where given so
     * @param speed revolutions per second, where given
     * @param circuit what the capacity counts from; empty for the compressor alone
     * @param supply for the current
     * @param minimumVolumeFlow m3/s below which an impeller surges, where given
     * @param assumptions what was not given
     * @param atmosphericPressure Pa, to tell a vacuum
     * @param guidance limits for the findings
     * @param explain whether the result shows its working
     */
    public record Spec(
            Equilibrium equilibrium,
            SuctionCondition suction,
            DischargeLevel discharge,
            Machine machine,
            Optional<CylinderSize> cylinders,
            OptionalDouble speed,
            Optional<Circuit> circuit,
            Optional<Supply> supply,
            OptionalDouble minimumVolumeFlow,
            Set<Assumption> assumptions,
            double atmosphericPressure,
            Guidance guidance,
            boolean explain) {
        public Spec {
            Objects.requireNonNull(equilibrium);
            Objects.requireNonNull(suction);
            Objects.requireNonNull(discharge);
            Objects.requireNonNull(machine);
            Objects.requireNonNull(guidance);
            assumptions = Set.copyOf(assumptions);
        }
    }

    /**
     * Everything that follows.
     *
     * @param points compressor inlet, outlet, isentropic outlet
     * @param figures of the machine
     * @param inside of cylinder or rotors, where the model knows it
     * @param head of an impeller
     * @param liquid that comes in; empty for dry vapor
     * @param balance of the circuit, where its liquid was given
     * @param findings what is unwise or worth knowing
     * @param steps the working; empty unless asked for
     */
    public record Result(
            List<Point> points,
            Figures figures,
            Optional<InsideFigures> inside,
            Optional<Head> head,
            Optional<CompressionProcess.Liquid> liquid,
            Optional<EnergyBalance> balance,
            List<Finding> findings,
            List<Step> steps) {
        public Result {
            points = List.copyOf(points);
            findings = List.copyOf(findings);
            steps = List.copyOf(steps);
        }
    }

    /**
     * The machine.
     *
     * @param pressureRatio absolute, between the ports
     * @param displacementPerRevolution m3, where known
     * @param displacement m3/s
     * @param volumetricEfficiency volume of the suction vapor drawn in over displacement
     * @param massFlow kg/s
     * @param suctionVolumeFlow m3/s at the suction port
     * @param isentropicPower W between the ports at constant entropy
     * @param indicatedPower W on the vapor
     * @param frictionLoss W, which ends up in the vapor
     * @param shaftPower W
     * @param driveLoss W
     * @param motorLoss W
     * @param electricalPower W
     * @param shellLoss W
     * @param heatLoss W in all to the surroundings
     * @param current A per line, where the supply was given
     * @param shaftEfficiency isentropic over shaft power
     * @param overallEfficiency isentropic over electrical power
     * @param motorWarming K by which a motor warms the suction vapor
     * @param dischargeTemperature K
     */
    public record Figures(
            double pressureRatio,
            OptionalDouble displacementPerRevolution,
            double displacement,
            double volumetricEfficiency,
            double massFlow,
            double suctionVolumeFlow,
            double isentropicPower,
            double indicatedPower,
            double frictionLoss,
            double shaftPower,
            double driveLoss,
            double motorLoss,
            double electricalPower,
            double shellLoss,
            double heatLoss,
            OptionalDouble current,
            double shaftEfficiency,
            double overallEfficiency,
            double motorWarming,
            double dischargeTemperature) {}

    /**
     * Inside of cylinder or rotors.
     *
     * @param startPressure Pa at the start of compression
     * @param endPressure Pa where compression inside ends
     * @param endTemperature K there
     * @param clearanceEfficiency 1 + C - C v4/v3 of a piston
     * @param reexpansion volume of the clearance vapor after over before re-expansion
     * @param mismatchPower W lost because compression inside ends above or below the discharge pressure
     * @param coolingHeat W given off by a cooled cylinder
     */
    public record InsideFigures(
            double startPressure,
            double endPressure,
            double endTemperature,
            OptionalDouble clearanceEfficiency,
            OptionalDouble reexpansion,
            OptionalDouble mismatchPower,
            double coolingHeat) {}

    /**
     * Head of an impeller.
     *
     * @param needed J/kg between the ports at constant entropy
     * @param available J/kg that the impellers can give, where their head coefficient was given
     * @param neededCoefficient of each stage
     * @param tipSpeed m/s
     * @param machNumber tip speed over the speed of sound at the suction, where the suction is dry
     * @param onCurve where a head-flow curve is given
     */
    public record Head(
            double needed,
            OptionalDouble available,
            double neededCoefficient,
            double tipSpeed,
            OptionalDouble machNumber,
            Optional<OnCurve> onCurve) {}

    /**
     * Where a machine works on its head-flow curve.
     *
     * @param flowCoefficient V / (u D^2)
     * @param isentropicEfficiency there
     * @param surgeVolumeFlow m3/s below which it surges at this speed
     * @param chokeVolumeFlow m3/s at which it chokes
     */
    public record OnCurve(
            double flowCoefficient, double isentropicEfficiency, double surgeVolumeFlow, double chokeVolumeFlow) {}
}
