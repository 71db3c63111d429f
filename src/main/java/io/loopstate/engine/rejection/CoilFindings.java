package io.loopstate.engine.rejection;

import io.loopstate.engine.cycle.Basis;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.FindingCode;
import io.loopstate.engine.cycle.Findings;
import io.loopstate.engine.cycle.Guideline;
import io.loopstate.engine.cycle.QuantityKind;
import io.loopstate.engine.cycle.Severity;
import io.loopstate.engine.cycle.SharedFindings;
import java.util.List;

/** What is unwise, implausible or assumed about a condensing coil. */
final class CoilFindings {
    private static final double LEFT_OVER = 1e-6;

    private CoilFindings() {}

    static List<Finding> of(AirCooledCondenser.Spec spec, AirCooledCondenser.Result result) {
        Findings findings = new Findings(spec.guidance());
        SharedFindings.nearCritical(
                findings,
                "condensing",
                result.operating().pressure(),
                spec.equilibrium().refrigerant().criticalPoint().pressure());
        SharedFindings.dischargeTemperature(findings, result.operating().inlet().temperature());
        SharedFindings.glide(findings, result.condensing().glide());
        findings.above(
                Guideline.MAX_CONDENSING_OVER_AMBIENT,
                result.condensingOverAmbient(),
                FindingCode.HIGH_CONDENSING_OVER_AMBIENT,
                Severity.CAUTION,
                "condensingOverAmbient",
                "The refrigerant condenses far above the air: a dirty or small condenser, little air, air drawn in again, too"
                        + " much refrigerant, or gas that does not condense.");
        pinch(findings, result);
        leftOver(findings, spec, result);
        fan(findings, spec);
        cleanliness(findings, result);
        if (spec.entering().humidity().isEmpty()) {
            findings.add(
                    FindingCode.APPROXIMATION,
                    Severity.NOTE,
                    "entering",
                    "No humidity was given: the air is taken as dry, which puts its heat capacity about one percent low.",
                    "assumption of this engine");
        }
        return findings.toList();
    }

    private static void pinch(Findings findings, AirCooledCondenser.Result result) {
        findings.below(
                Guideline.MIN_PINCH,
                result.pinch().pinch(),
                FindingCode.UNUSUAL_APPROACH,
                Severity.NOTE,
                "pinch",
                "Refrigerant and air come very close: the zone named there is at the end of what it can do, and small errors of"
                        + " readings weigh heavily.");
    }

    private static void leftOver(Findings findings, AirCooledCondenser.Spec spec, AirCooledCondenser.Result result) {
        double left = result.operating().areaLeftOver();
        if (spec.conductance().isPresent() && left > LEFT_OVER) {
            findings.add(
                    FindingCode.AREA_LEFT_OVER,
                    Severity.CAUTION,
                    "condenserOutlet",
                    "The outlet asked for, not the coil, sets the condensing pressure: liquid cannot leave colder than the air."
                            + " With less subcooling the coil would condense lower.",
                    QuantityKind.RATIO,
                    left,
                    0,
                    Basis.SECOND_LAW);
        }
    }

    private static void fan(Findings findings, AirCooledCondenser.Spec spec) {
        AirCooledCondenser.Fan fan = spec.fan();
        if (fan.speed() == 0) {
            findings.add(
                    FindingCode.FAN_WITHOUT_AIRFLOW,
                    Severity.DANGER,
                    "fanSpeed",
                    "The fan stands still: only natural draft is left, a guess at best. The pressure rises until the high"
                            + " pressure switch opens.",
                    QuantityKind.RATIO,
                    fan.naturalDraft(),
                    1,
                    Basis.COMMON_PRACTICE);
        }
        if (fan.speed() < 1 && fan.exponentAssumed()) {
            findings.add(
                    FindingCode.APPROXIMATION,
                    Severity.NOTE,
                    "airflowExponent",
                    "The conductance is taken to follow the airflow with this exponent: replace it by the maker's.",
                    QuantityKind.RATIO,
                    fan.exponent(),
                    fan.exponent(),
                    Basis.COMMON_PRACTICE);
        }
    }

    private static void cleanliness(Findings findings, AirCooledCondenser.Result result) {
        result.cleanliness()
                .ifPresent(cleanliness -> findings.below(
                        Guideline.MIN_CLEANLINESS,
                        cleanliness,
                        FindingCode.LOW_CLEANLINESS,
                        Severity.CAUTION,
                        "cleanliness",
                        "The coil has lost much of its conductance: clean it, straighten its fins, and check for gas that does"
                                + " not condense."));
    }
}
