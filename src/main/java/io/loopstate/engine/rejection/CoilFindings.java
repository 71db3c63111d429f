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
        SharedCoil.pinch(findings, result.pinch().pinch(), "the zone named there is at the end of what it can do");
        leftOver(findings, spec, result);
        SharedCoil.fan(
                findings,
                spec.fan(),
                "only natural draft is left, a guess at best. The pressure rises until the high pressure switch opens.");
        SharedCoil.cleanliness(
                findings,
                result.cleanliness(),
                "clean it, straighten its fins, and check for gas that does not condense.");
        SharedCoil.dry(findings, spec.entering(), "which puts its heat capacity about one percent low.");
        return findings.toList();
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
}
