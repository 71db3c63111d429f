package io.loopstate.engine.rejection;

import io.loopstate.engine.cycle.Basis;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.FindingCode;
import io.loopstate.engine.cycle.Findings;
import io.loopstate.engine.cycle.Guideline;
import io.loopstate.engine.cycle.QuantityKind;
import io.loopstate.engine.cycle.Severity;
import io.loopstate.engine.cycle.SharedFindings;
import io.loopstate.engine.rejection.CondenserDuty.Totals;
import java.util.List;

/** What is unwise or implausible about a duty. */
final class DutyFindings {
    private DutyFindings() {}

    static List<Finding> of(CondenserDuty.Spec spec, DutyStates states, DutyFigures figures) {
        Findings findings = new Findings(spec.guidance());
        states.inlet().ifPresent(inlet -> {
            SharedFindings.critical(
                    findings,
                    inlet.state().pressure(),
                    spec.equilibrium().refrigerant().criticalPoint().pressure());
            SharedFindings.dischargeTemperature(findings, inlet.state().temperature());
            SharedFindings.wetDischarge(findings, inlet.state());
        });
        states.condensing().ifPresent(level -> SharedFindings.glide(findings, level.glide()));
        states.outlet()
                .ifPresent(outlet ->
                        outlet.subcooling().ifPresent(subcooling -> SharedFindings.subcooling(findings, subcooling)));
        factor(findings, figures.totals());
        balance(findings, figures.totals());
        return findings.toList();
    }

    private static void factor(Findings findings, Totals totals) {
        totals.machineFactor().ifPresent(factor -> {
            if (factor < 1) {
                findings.add(
                        FindingCode.UNUSUAL_HEAT_REJECTION_FACTOR,
                        Severity.CAUTION,
                        "heatRejectionFactor",
                        "Less heat is rejected than taken up: an input is wrong, unless the shell gives off more than the"
                                + " compressor puts in.",
                        QuantityKind.RATIO,
                        factor,
                        1,
                        Basis.FIRST_LAW);
                return;
            }
            findings.below(
                    Guideline.MIN_HEAT_REJECTION_FACTOR,
                    factor,
                    FindingCode.UNUSUAL_HEAT_REJECTION_FACTOR,
                    Severity.CAUTION,
                    "heatRejectionFactor",
                    "Hardly more heat is rejected than taken up: check capacity and power.");
            findings.above(
                    Guideline.MAX_HEAT_REJECTION_FACTOR,
                    factor,
                    FindingCode.UNUSUAL_HEAT_REJECTION_FACTOR,
                    Severity.CAUTION,
                    "heatRejectionFactor",
                    "Much more heat is rejected than taken up: a high lift in one stage, a poor compressor, or wrong"
                            + " readings.");
        });
    }

    private static void balance(Findings findings, Totals totals) {
        totals.balanceDifference()
                .ifPresent(difference -> findings.above(
                        Guideline.MAX_HEAT_BALANCE_DIFFERENCE,
                        Math.abs(difference),
                        FindingCode.HEAT_BALANCE_OFF,
                        Severity.CAUTION,
                        "heatRejected",
                        "The heat by the states of the refrigerant and that by the balance of the machine disagree: a reading"
                                + " is wrong or the machine was not steady."));
    }
}
