package io.loopstate.engine.balance;

import io.loopstate.engine.cycle.Basis;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.FindingCode;
import io.loopstate.engine.cycle.Findings;
import io.loopstate.engine.cycle.Guideline;
import io.loopstate.engine.cycle.QuantityKind;
import io.loopstate.engine.cycle.Severity;
import io.loopstate.engine.cycle.SharedFindings;
import io.loopstate.engine.rejection.Fan;
import io.loopstate.engine.rejection.SharedCoil;
import java.util.ArrayList;
import java.util.List;

/** What is unwise, implausible or assumed about a machine in balance: the compressor's findings, then those of coils and air. */
final class BalanceFindings {
    private static final String ASSUMPTION = "assumption of this engine";

    private final SystemBalance.Spec spec;
    private final WhatIf whatIf;
    private final Loop loop;
    private final Balanced balanced;
    private final Findings findings;

    private BalanceFindings(SystemBalance.Spec spec, WhatIf whatIf, Loop loop, Balanced balanced) {
        this.spec = spec;
        this.whatIf = whatIf;
        this.loop = loop;
        this.balanced = balanced;
        this.findings = new Findings(spec.guidance());
    }

    static List<Finding> of(
            SystemBalance.Spec spec, WhatIf whatIf, Loop loop, CompressorAtBalance compressor, Balanced balanced) {
        BalanceFindings own = new BalanceFindings(spec, whatIf, loop, balanced);
        own.settings();
        own.condenser();
        own.evaporator();
        own.assumptions();
        List<Finding> all = new ArrayList<>(
                compressor.findings().stream().map(BalanceFindings::renamed).toList());
        boolean told = all.stream().anyMatch(finding -> finding.code() == FindingCode.NEAR_CRITICAL);
        own.findings.toList().stream()
                .filter(finding -> !(told && finding.code() == FindingCode.NEAR_CRITICAL))
                .forEach(all::add);
        return all;
    }

    /** A balance has no suction and discharge among its inputs: what is found at them is about its results. */
    private static Finding renamed(Finding finding) {
        return finding.about(
                switch (finding.code()) {
                    case HIGH_DISCHARGE_TEMPERATURE -> "dischargeTemperature";
                    case HIGH_PRESSURE_RATIO -> "pressureRatio";
                    case VACUUM_SUCTION -> "suctionPressure";
                    case LOW_SUPERHEAT, HIGH_SUPERHEAT -> "superheat";
                    case WET_DISCHARGE -> "compressorOutlet";
                    case NEAR_CRITICAL -> "condensing";
                    default -> finding.subject();
                });
    }

    private void settings() {
        SharedFindings.superheatAtEvaporator(findings, loop.settings().superheat());
        SharedFindings.subcooling(findings, loop.settings().subcooling());
        SharedFindings.glide(
                findings,
                Math.max(balanced.evaporating().glide(), balanced.condensing().glide()));
    }

    private void condenser() {
        SharedFindings.nearCritical(
                findings,
                "condensing",
                balanced.condensing().pressure(),
                loop.equilibrium().refrigerant().criticalPoint().pressure());
        findings.above(
                Guideline.MAX_CONDENSING_OVER_AMBIENT,
                balanced.condenser().condensingOverAmbient(),
                FindingCode.HIGH_CONDENSING_OVER_AMBIENT,
                Severity.CAUTION,
                "condensingOverAmbient",
                "The refrigerant condenses far above the outdoor air: the condenser is small or dirty for this compressor, or"
                        + " has little air.");
        findings.below(
                Guideline.MIN_PINCH,
                balanced.condenser().pinch().pinch(),
                FindingCode.UNUSUAL_APPROACH,
                Severity.NOTE,
                "pinch",
                "Refrigerant and outdoor air come very close: the zone named there is at the end of what it can do.");
        leftOver(
                balanced.condenser().areaLeftOver(),
                "subcooling",
                "The subcooling asked for, not the coil, sets the condensing pressure: liquid cannot leave colder than the air."
                        + " With less subcooling the machine would condense lower.");
        fan();
    }

    private void leftOver(double share, String subject, String message) {
        if (share > 0) {
            findings.add(
                    FindingCode.AREA_LEFT_OVER,
                    Severity.CAUTION,
                    subject,
                    message,
                    QuantityKind.RATIO,
                    share,
                    0,
                    Basis.SECOND_LAW);
        }
    }

    private void fan() {
        double speed = whatIf.fanSpeed().orElse(spec.condenser().fan().speed());
        if (speed == 0) {
            findings.add(
                    FindingCode.FAN_WITHOUT_AIRFLOW,
                    Severity.DANGER,
                    "condenser.fanSpeed",
                    "The condenser fan stands still: only natural draft is left, a guess at best. In a real machine the high"
                            + " pressure switch opens.",
                    QuantityKind.RATIO,
                    spec.condenser().fan().naturalDraft(),
                    1,
                    Basis.COMMON_PRACTICE);
        }
    }

    private void evaporator() {
        findings.above(
                Guideline.MAX_EVAPORATOR_TEMPERATURE_DIFFERENCE,
                balanced.evaporator().temperatureDifference(),
                FindingCode.HIGH_EVAPORATOR_TEMPERATURE_DIFFERENCE,
                Severity.CAUTION,
                "evaporatorTemperatureDifference",
                "The refrigerant evaporates far below the indoor air: the evaporator is small, dirty or iced for this compressor,"
                        + " or has little air.");
        boolean comfort =
                loop.evaporator().air().state().dryBulb() >= findings.limit(Guideline.COMFORT_AIR_TEMPERATURE);
        boolean frost = comfort
                && findings.below(
                        Guideline.FREEZING_POINT,
                        balanced.evaporating().midpoint(),
                        FindingCode.FROST,
                        Severity.CAUTION,
                        "evaporating",
                        "The refrigerant evaporates below the freezing point of water under room air: the coil will ice over,"
                                + " and what is calculated holds for the time before that only.");
        boolean cold = balanced.evaporating().midpoint() < findings.limit(Guideline.FREEZING_POINT);
        if (cold && !frost && balanced.evaporator().condensate() > 0) {
            findings.add(
                    FindingCode.FROST,
                    Severity.NOTE,
                    "evaporating",
                    "Moisture freezes on the coil, which has to be defrosted. Frost and the heat of its freezing are not"
                            + " modeled: the water is counted as leaving liquid.",
                    "limit of this engine");
        }
        if (comfort) {
            SharedFindings.evaporatorAirflow(findings, balanced.evaporator().airflowPerTon());
        }
        leftOver(
                balanced.evaporator().areaLeftOver(),
                "superheat",
                "The superheat asked for, not the coil, sets the evaporating pressure: vapor cannot leave warmer than the air."
                        + " With less superheat the machine would evaporate higher.");
    }

    private void assumptions() {
        if (spec.condenser().air().humidity().isEmpty()) {
            findings.add(
                    FindingCode.APPROXIMATION,
                    Severity.NOTE,
                    "outdoorAir",
                    "No humidity was given: the outdoor air is taken as dry, which puts its heat capacity about one percent low.",
                    ASSUMPTION);
        }
        if (spec.evaporator().air().humidity().isEmpty()) {
            findings.add(
                    FindingCode.APPROXIMATION,
                    Severity.NOTE,
                    "indoorAir",
                    "No humidity was given: the indoor air is taken as dry, so all capacity is sensible and the evaporating"
                            + " level comes out lower than with moisture.",
                    ASSUMPTION);
        }
        Fan fan = spec.condenser().fan();
        double share =
                spec.condenser().fan().airflow(whatIf.fanSpeed().orElse(fan.speed())) * whatIf.condenserAirflow();
        if (share < 1) {
            SharedCoil.exponent(findings, fan, "condenser.airflowExponent");
        }
        if (whatIf.refrigerant().isPresent()) {
            findings.add(
                    FindingCode.APPROXIMATION,
                    Severity.CAUTION,
                    "whatIf.refrigerant",
                    "Another refrigerant in the same machine: displacement, efficiencies and conductances are kept, which they are"
                            + " not quite. Charge, oil, motor, valve, pressure rating, flammability and approval are not checked:"
                            + " the manufacturer decides.",
                    "limit of this engine");
        }
    }
}
