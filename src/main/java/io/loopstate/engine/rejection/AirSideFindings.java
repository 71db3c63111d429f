package io.loopstate.engine.rejection;

import io.loopstate.engine.cycle.Basis;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.FindingCode;
import io.loopstate.engine.cycle.Findings;
import io.loopstate.engine.cycle.Guideline;
import io.loopstate.engine.cycle.QuantityKind;
import io.loopstate.engine.cycle.Severity;
import io.loopstate.engine.cycle.SharedFindings;
import io.loopstate.engine.rejection.AirSide.Coil;
import java.util.List;

/** What is unwise, implausible or assumed about the air of a coil. */
final class AirSideFindings {
    private static final double SMALL = 1e-12;

    private AirSideFindings() {}

    static List<Finding> of(AirSide.Spec spec, AirBalance balance, AirFigures figures) {
        Findings findings = new Findings(spec.guidance());
        figures.refrigerant().ifPresent(refrigerant -> refrigerant(findings, spec.coil(), refrigerant, balance));
        fan(findings, spec, figures);
        if (spec.coil() == Coil.EVAPORATOR) {
            evaporator(findings, figures);
        }
        if (balance.humidityAssumed()) {
            findings.add(
                    FindingCode.APPROXIMATION,
                    Severity.NOTE,
                    spec.entering().humidity().isEmpty() ? "entering" : "leaving",
                    spec.coil() == Coil.CONDENSER
                            ? "No humidity was given: the air is taken as dry, which puts its heat about one percent low."
                            : "A humidity is missing: the air is taken to keep its water unless it is cooled below its dew"
                                    + " point, so latent heat may be missing.",
                    "assumption of this engine");
        }
        return findings.toList();
    }

    private static void refrigerant(
            Findings findings, Coil coil, AirFigures.Refrigerant refrigerant, AirBalance balance) {
        if (refrigerant.approach() <= 0) {
            findings.add(
                    FindingCode.TEMPERATURE_CROSS,
                    Severity.CAUTION,
                    refrigerant.enteringDifference() <= 0 ? "entering.dryBulb" : "leaving.dryBulb",
                    coil == Coil.CONDENSER
                            ? "The air would have to become warmer than the refrigerant condenses: check the air probes, the"
                                    + " pressure and whether the coil still condenses."
                            : "The air would have to become colder than the refrigerant evaporates: check the air probes and"
                                    + " the pressure.",
                    QuantityKind.TEMPERATURE,
                    balance.leaving().dryBulb(),
                    refrigerant.temperature(),
                    Basis.SECOND_LAW);
        }
        if (coil == Coil.CONDENSER) {
            findings.above(
                    Guideline.MAX_CONDENSING_OVER_AMBIENT,
                    refrigerant.enteringDifference(),
                    FindingCode.HIGH_CONDENSING_OVER_AMBIENT,
                    Severity.CAUTION,
                    "condensingOverAmbient",
                    "The refrigerant condenses far above the air: a dirty condenser, little air, air drawn in again, too"
                            + " much refrigerant, or gas that does not condense.");
            return;
        }
        findings.above(
                Guideline.MAX_EVAPORATOR_TEMPERATURE_DIFFERENCE,
                refrigerant.enteringDifference(),
                FindingCode.HIGH_EVAPORATOR_TEMPERATURE_DIFFERENCE,
                Severity.CAUTION,
                "evaporatorTemperatureDifference",
                "The refrigerant evaporates far below the air: little air, a dirty or iced coil, or too little refrigerant.");
        if (balance.entering().dryBulb() >= findings.limit(Guideline.COMFORT_AIR_TEMPERATURE)) {
            findings.below(
                    Guideline.FREEZING_POINT,
                    refrigerant.temperature(),
                    FindingCode.FROST,
                    Severity.CAUTION,
                    "saturationTemperature",
                    "The refrigerant evaporates below the freezing point of water under room air: the coil will ice over.");
        }
    }

    private static void fan(Findings findings, AirSide.Spec spec, AirFigures figures) {
        if (spec.fanPower() > 0) {
            findings.above(
                    Guideline.MAX_FAN_PRESSURE,
                    spec.fanPower() / figures.enteringVolumeFlow(),
                    FindingCode.FAN_WITHOUT_AIRFLOW,
                    Severity.CAUTION,
                    "fanPower",
                    "The fan takes much power for the air it moves, power over flow being a pressure: it turns the wrong way,"
                            + " slips, meets a blocked coil or filter, or the airflow is wrong.");
        }
    }

    private static void evaporator(Findings findings, AirFigures figures) {
        SharedFindings.evaporatorAirflow(findings, figures.airflowPerTon());
        if (figures.condensate() < -SMALL) {
            findings.add(
                    FindingCode.IMPLAUSIBLE_READING,
                    Severity.CAUTION,
                    "leaving",
                    "The air would leave the evaporator with more water than it enters with: check the wet bulbs, or water"
                            + " is carried off the coil.",
                    QuantityKind.MASS_FLOW,
                    figures.condensate(),
                    0,
                    Basis.READINGS);
        }
    }
}
