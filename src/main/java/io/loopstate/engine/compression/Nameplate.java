package io.loopstate.engine.compression;

import io.loopstate.engine.component.Compressor;
import io.loopstate.engine.component.Require;
import io.loopstate.engine.cycle.Basis;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.FindingCode;
import io.loopstate.engine.cycle.Findings;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.cycle.Guideline;
import io.loopstate.engine.cycle.Inputs;
import io.loopstate.engine.cycle.Optionals;
import io.loopstate.engine.cycle.QuantityKind;
import io.loopstate.engine.cycle.RememberingEquilibrium;
import io.loopstate.engine.cycle.Severity;
import io.loopstate.engine.cycle.SharedFindings;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/** Back from what a nameplate or catalog states at a rating point to displacement and efficiencies. */
public final class Nameplate {
    private Nameplate() {}

    /**
     * What the nameplate determines.
     *
     * @throws io.loopstate.engine.error.EngineException where the rating point is impossible; it names {@code suction}, {@code
     *     discharge}, {@code liquid} or the figure
     */
    public static Result calculate(Spec spec) {
        Equilibrium equilibrium = new RememberingEquilibrium(spec.equilibrium());
        State suction = spec.suction().state(equilibrium);
        double pressure = spec.discharge().pressure(equilibrium, suction.pressure());
        State isentropic = Inputs.trace("discharge", () -> Compressor.isentropicOutlet(equilibrium, suction, pressure));
        OptionalDouble effect = effect(spec, equilibrium, suction, pressure);
        double flow = spec.massFlow().isPresent()
                ? spec.massFlow().getAsDouble()
                : spec.refrigeratingCapacity().orElseThrow() / effect.orElseThrow();
        Figures figures = figures(spec, suction, isentropic, effect, flow);
        return new Result(
                suction,
                isentropic,
                figures,
                cylinders(spec, figures),
                findings(spec, equilibrium, suction, isentropic, figures),
                spec.explain() ? NameplateWorking.of(equilibrium, suction, isentropic, effect, figures) : List.of());
    }

    private static OptionalDouble effect(Spec spec, Equilibrium equilibrium, State suction, double pressure) {
        if (spec.circuit().isEmpty()) {
            return OptionalDouble.empty();
        }
        Circuit circuit = spec.circuit().get();
        double effect = circuit.evaporatorOutlet(equilibrium, suction).specificEnthalpy()
                - circuit.liquidState(equilibrium, pressure).specificEnthalpy();
        return OptionalDouble.of(effect);
    }

    private static Figures figures(Spec spec, State suction, State isentropic, OptionalDouble effect, double flow) {
        double volumeFlow = flow * suction.specificVolume();
        OptionalDouble displacement = Optionals.or(
                spec.displacement(), Optionals.map(spec.volumetricEfficiency(), share -> volumeFlow / share));
        OptionalDouble electrical = spec.electricalPower();
        OptionalDouble shaft = Optionals.or(
                spec.shaftPower(), Optionals.both(electrical, spec.motorEfficiency(), (power, share) -> power * share));
        OptionalDouble terminals = Optionals.or(
                electrical, Optionals.both(shaft, spec.motorEfficiency(), (power, share) -> power / share));
        double isentropicPower = flow * (isentropic.specificEnthalpy() - suction.specificEnthalpy());
        OptionalDouble capacity = Optionals.map(effect, heat -> flow * heat);
        return new Figures(
                isentropic.pressure() / suction.pressure(),
                flow,
                volumeFlow,
                capacity,
                displacement,
                Optionals.map(displacement, swept -> volumeFlow / swept),
                Optionals.both(displacement, spec.speed(), (swept, speed) -> swept / speed),
                isentropicPower,
                shaft,
                terminals,
                Optionals.map(shaft, power -> isentropicPower / power),
                Optionals.map(terminals, power -> isentropicPower / power),
                Optionals.both(capacity, Optionals.or(terminals, shaft), (heat, power) -> heat / power));
    }

    private static Optional<CylinderSize> cylinders(Spec spec, Figures figures) {
        if (spec.strokeToBoreRatio().isEmpty()
                || figures.displacementPerRevolution().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(CylinderSize.of(
                figures.displacementPerRevolution().getAsDouble(),
                spec.cylinders(),
                spec.strokeToBoreRatio().getAsDouble(),
                spec.doubleActing()));
    }

    private static List<Finding> findings(
            Spec spec, Equilibrium equilibrium, State suction, State isentropic, Figures figures) {
        Findings findings = new Findings(spec.guidance());
        ProcessFindings.ports(findings, equilibrium, suction, isentropic, spec.atmosphericPressure());
        figures.volumetricEfficiency().ifPresent(share -> {
            if (share > 1) {
                findings.add(
                        FindingCode.EFFICIENCY_IMPLAUSIBLE,
                        Severity.CAUTION,
                        "volumetricEfficiency",
                        "The capacity needs more vapor than the compressor sweeps: capacity, displacement or rating point"
                                + " do not belong together.",
                        QuantityKind.RATIO,
                        share,
                        1,
                        Basis.DEFINITION);
            }
        });
        SharedFindings.volumetricEfficiency(findings, figures.volumetricEfficiency(), false);
        Optionals.or(figures.shaftEfficiency(), figures.overallEfficiency())
                .ifPresent(efficiency -> implausible(findings, efficiency));
        return findings.toList();
    }

    private static void implausible(Findings findings, double efficiency) {
        boolean impossible = findings.above(
                Guideline.MAX_ISENTROPIC_EFFICIENCY,
                efficiency,
                FindingCode.EFFICIENCY_IMPLAUSIBLE,
                Severity.CAUTION,
                "isentropicEfficiency",
                "The power is less than compression without loss takes: power, capacity or rating point do not belong"
                        + " together.");
        if (!impossible) {
            findings.below(
                    Guideline.MIN_ISENTROPIC_EFFICIENCY,
                    efficiency,
                    FindingCode.LOW_EFFICIENCY,
                    Severity.CAUTION,
                    "isentropicEfficiency",
                    "The power is far more than compression without loss takes: it may include a fan, or the figures do not"
                            + " belong to one rating point.");
        }
    }

    /**
     * A nameplate and its rating point.
     *
     * @param equilibrium the refrigerant
     * @param suction state at the suction port
     * @param discharge pressure
     * @param circuit what the capacity counts from; needed with a capacity
     * @param refrigeratingCapacity W; this or the mass flow
     * @param massFlow kg/s
     * @param displacement m3/s; at most one of this and the volumetric efficiency
     * @param volumetricEfficiency above 0 to 1
     * @param electricalPower W; at most one of this and the shaft power
     * @param shaftPower W
     * @param motorEfficiency above 0 to 1
     * @param speed 1/s
     * @param cylinders 1 or more
     * @param strokeToBoreRatio for bore and stroke
     * @param doubleActing whether both faces of a piston compress
     * @param atmosphericPressure Pa, to tell a vacuum
     * @param guidance limits for the findings
     * @param explain whether the result shows its working
     */
    public record Spec(
            Equilibrium equilibrium,
            SuctionCondition suction,
            DischargeLevel discharge,
            Optional<Circuit> circuit,
            OptionalDouble refrigeratingCapacity,
            OptionalDouble massFlow,
            OptionalDouble displacement,
            OptionalDouble volumetricEfficiency,
            OptionalDouble electricalPower,
            OptionalDouble shaftPower,
            OptionalDouble motorEfficiency,
            OptionalDouble speed,
            int cylinders,
            OptionalDouble strokeToBoreRatio,
            boolean doubleActing,
            double atmosphericPressure,
            Guidance guidance,
            boolean explain) {
        public Spec {
            Objects.requireNonNull(equilibrium);
            Objects.requireNonNull(suction);
            Objects.requireNonNull(discharge);
            Objects.requireNonNull(circuit);
            Objects.requireNonNull(guidance);
            Require.positive("refrigeratingCapacity", refrigeratingCapacity);
            Require.positive("massFlow", massFlow);
            Require.positive("displacement", displacement);
            Require.efficiency("volumetricEfficiency", volumetricEfficiency);
            Require.positive("electricalPower", electricalPower);
            Require.positive("shaftPower", shaftPower);
            Require.efficiency("motorEfficiency", motorEfficiency);
            Require.positive("speed", speed);
            Require.positive("cylinders", cylinders);
            Require.positive("strokeToBoreRatio", strokeToBoreRatio);
        }
    }

    /**
     * What follows.
     *
     * @param suction state at the suction port
     * @param isentropicOutlet where compression without loss would end
     * @param figures flows, powers and efficiencies
     * @param cylinders bore and stroke, where their ratio was given
     * @param findings what is unwise or implausible
     * @param steps the working; empty unless asked for
     */
    public record Result(
            State suction,
            State isentropicOutlet,
            Figures figures,
            Optional<CylinderSize> cylinders,
            List<Finding> findings,
            List<Step> steps) {
        public Result {
            findings = List.copyOf(findings);
            steps = List.copyOf(steps);
        }
    }

    /**
     * Figures behind a nameplate; what it does not determine is empty.
     *
     * @param pressureRatio absolute
     * @param massFlow kg/s
     * @param suctionVolumeFlow m3/s
     * @param refrigeratingCapacity W
     * @param displacement m3/s
     * @param volumetricEfficiency of the suction vapor
     * @param displacementPerRevolution m3
     * @param isentropicPower W
     * @param shaftPower W
     * @param electricalPower W
     * @param shaftEfficiency isentropic over shaft power
     * @param overallEfficiency isentropic over electrical power
     * @param coefficientOfPerformance capacity over the electrical power, or else the shaft power
     */
    public record Figures(
            double pressureRatio,
            double massFlow,
            double suctionVolumeFlow,
            OptionalDouble refrigeratingCapacity,
            OptionalDouble displacement,
            OptionalDouble volumetricEfficiency,
            OptionalDouble displacementPerRevolution,
            double isentropicPower,
            OptionalDouble shaftPower,
            OptionalDouble electricalPower,
            OptionalDouble shaftEfficiency,
            OptionalDouble overallEfficiency,
            OptionalDouble coefficientOfPerformance) {}
}
