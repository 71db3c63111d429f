package io.loopstate.engine.compression;

import io.loopstate.engine.compression.DisplacementRating.Assumption;
import io.loopstate.engine.compression.DisplacementRating.Figures;
import io.loopstate.engine.compression.DisplacementRating.Spec;
import io.loopstate.engine.cycle.Basis;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.FindingCode;
import io.loopstate.engine.cycle.Findings;
import io.loopstate.engine.cycle.Guideline;
import io.loopstate.engine.cycle.Severity;
import io.loopstate.engine.cycle.SharedFindings;
import java.util.List;
import java.util.OptionalDouble;

/** What is unwise or worth knowing about a machine at its working point. */
final class RatingFindings {
    private RatingFindings() {}

    static List<Finding> of(Spec spec, RatingStates states, Figures figures) {
        Findings findings = new Findings(spec.guidance());
        ProcessFindings.ports(
                findings, states.equilibrium(), states.suction(), states.discharge(), spec.atmosphericPressure());
        boolean assumed = spec.assumptions().contains(Assumption.VOLUMETRIC_EFFICIENCY);
        SharedFindings.volumetricEfficiency(
                findings,
                assumed ? OptionalDouble.empty() : OptionalDouble.of(figures.volumetricEfficiency()),
                assumed);
        if (spec.assumptions().contains(Assumption.MOTOR_EFFICIENCY)) {
            findings.add(
                    FindingCode.MOTOR_EFFICIENCY_ASSUMED,
                    Severity.NOTE,
                    "motorEfficiency",
                    "No motor efficiency was given: it is taken as one, so the electrical power is the shaft power and the"
                            + " motor gives off no heat.",
                    Basis.DEFINITION);
        }
        states.inside()
                .map(DisplacementRating.InsideFigures::mismatchPower)
                .filter(OptionalDouble::isPresent)
                .ifPresent(power -> mismatch(findings, states, power.getAsDouble() / figures.isentropicPower()));
        spec.minimumVolumeFlow()
                .ifPresent(least -> findings.below(
                        Guideline.MIN_SURGE_MARGIN,
                        figures.suctionVolumeFlow() / least,
                        FindingCode.NEAR_SURGE,
                        Severity.DANGER,
                        "inletVolumeFlow",
                        "The flow is close to or below the least one, as a multiple of it: the machine surges."));
        if (spec.machine().displacer() instanceof CurvedImpeller impeller) {
            findings.below(
                    Guideline.MIN_SURGE_MARGIN,
                    states.detail().stroke().massFlow()
                            / states.detail().port().density()
                            / impeller.volumeFlow(impeller.curve().surge()),
                    FindingCode.NEAR_SURGE,
                    Severity.DANGER,
                    "headCoefficients",
                    "The flow is close to that of the highest head, as a multiple of it: a little more lift and the machine surges.");
        }
        return findings.toList();
    }

    private static void mismatch(Findings findings, RatingStates states, double share) {
        boolean over = states.detail().stroke().inside().orElseThrow().end().pressure()
                > states.discharge().pressure();
        findings.above(
                Guideline.MAX_BUILT_IN_MISMATCH,
                share,
                FindingCode.BUILT_IN_RATIO_MISMATCH,
                Severity.NOTE,
                "builtInVolumeRatio",
                (over
                                ? "Compression inside goes beyond the discharge pressure (over-compression)"
                                : "Compression inside ends below the discharge pressure (under-compression)")
                        + ": the value is the power lost to it as a share of the isentropic power.");
    }
}
