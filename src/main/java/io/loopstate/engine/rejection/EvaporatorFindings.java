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

/** What is unwise, implausible or assumed about an evaporating coil. */
final class EvaporatorFindings {
    static final double LEFT_OVER = 1e-6;

    private final AirCooledEvaporator.Spec spec;
    private final AirCooledEvaporator.Result result;
    private final Findings findings;

    private EvaporatorFindings(AirCooledEvaporator.Spec spec, AirCooledEvaporator.Result result) {
        this.spec = spec;
        this.result = result;
        this.findings = new Findings(spec.guidance());
    }

    static List<Finding> of(AirCooledEvaporator.Spec spec, AirCooledEvaporator.Result result) {
        EvaporatorFindings all = new EvaporatorFindings(spec, result);
        all.refrigerant();
        all.air();
        all.frost();
        all.limits();
        SharedCoil.fan(
                all.findings,
                spec.fan(),
                "only air that sinks through the cold coil is left, a guess at best. The coil ices over and liquid reaches the"
                        + " compressor.");
        all.assumptions();
        return all.findings.toList();
    }

    private void refrigerant() {
        SharedFindings.vacuum(findings, result.operating().pressure(), spec.atmosphere());
        SharedFindings.glide(findings, result.evaporating().glide());
        if (result.superheat().isEmpty()) {
            findings.add(
                    FindingCode.LIQUID_AT_COMPRESSOR,
                    Severity.DANGER,
                    "evaporatorOutlet",
                    "Liquid leaves the evaporator. Unless a vessel before the compressor keeps it, it washes out oil and breaks"
                            + " valves.",
                    QuantityKind.RATIO,
                    result.operating().outlet().vaporQuality(),
                    1,
                    Basis.DEFINITION);
            return;
        }
        double superheat = result.superheat().getAsDouble();
        findings.below(
                Guideline.MIN_SUPERHEAT,
                superheat,
                FindingCode.LOW_SUPERHEAT,
                Severity.CAUTION,
                "evaporatorOutlet",
                "The superheat at the evaporator leaves little margin against liquid.");
        SharedFindings.superheatAtEvaporator(findings, superheat);
    }

    private boolean comfort() {
        return result.air().state().dryBulb() >= findings.limit(Guideline.COMFORT_AIR_TEMPERATURE);
    }

    private void air() {
        findings.above(
                Guideline.MAX_EVAPORATOR_TEMPERATURE_DIFFERENCE,
                result.temperatureDifference(),
                FindingCode.HIGH_EVAPORATOR_TEMPERATURE_DIFFERENCE,
                Severity.CAUTION,
                "evaporatorTemperatureDifference",
                "The refrigerant evaporates far below the air: the coil is small, dirty or iced for this load, or has little air.");
        if (comfort()) {
            SharedFindings.evaporatorAirflow(findings, result.airflowPerTon());
        }
    }

    private void frost() {
        double surface = result.operating().surface().temperature();
        if (comfort()) {
            findings.below(
                    Guideline.FREEZING_POINT,
                    surface,
                    FindingCode.FROST,
                    Severity.CAUTION,
                    "evaporating",
                    "The refrigerant evaporates below the freezing point of water under room air: the coil will ice over, and what"
                            + " is calculated holds for the time before that only.");
        } else if (surface < findings.limit(Guideline.FREEZING_POINT)
                && result.operating().surface().wet()) {
            findings.add(
                    FindingCode.FROST,
                    Severity.NOTE,
                    "evaporating",
                    "Moisture freezes on the coil, which has to be defrosted. Frost and the heat of its freezing are not modeled:"
                            + " the water is counted as leaving liquid.",
                    "limit of this engine");
        }
    }

    private void limits() {
        SharedCoil.pinch(
                findings,
                result.pinch().pinch(result.air().state().dryBulb()),
                "the zone named there is at the end of what it can do");
        double left = result.areaLeftOver();
        if (spec.conductance().isPresent() && left > 0) {
            findings.add(
                    FindingCode.AREA_LEFT_OVER,
                    Severity.CAUTION,
                    "evaporatorOutlet",
                    "The superheat asked for, not the coil, sets the evaporating pressure: vapor cannot leave warmer than the air."
                            + " With less superheat the coil would evaporate higher.",
                    QuantityKind.RATIO,
                    left,
                    0,
                    Basis.SECOND_LAW);
        }
        SharedCoil.cleanliness(
                findings,
                result.cleanliness(),
                "clean it, look for ice, straighten its fins, and check the filter and the charge.");
    }

    private void assumptions() {
        if (result.operating().surface().wet()) {
            findings.add(
                    FindingCode.APPROXIMATION,
                    Severity.NOTE,
                    "latentHeat",
                    "The surface is taken as cold as the boiling refrigerant: where tube and refrigerant hold back much of the heat,"
                            + " less moisture condenses than is calculated.",
                    SharedCoil.ASSUMPTION);
        }
        SharedCoil.dry(
                findings,
                spec.entering(),
                "so all heat is sensible and the evaporating level comes out lower than with moisture.");
        if (spec.inlet().liquidTemperature().isPresent()
                && spec.inlet().liquidPressure().isEmpty()) {
            findings.add(
                    FindingCode.APPROXIMATION,
                    Severity.NOTE,
                    "liquidTemperature",
                    "No pressure of the liquid was given: its enthalpy is that of boiling liquid of this temperature.",
                    SharedCoil.ASSUMPTION);
        }
        spec.leaving()
                .ifPresent(measured -> findings.above(
                        Guideline.LINE_PROBE_ACCURACY,
                        Math.abs(measured.dryBulb().orElseThrow()
                                - result.behind().state().dryBulb()),
                        FindingCode.MODELS_DISAGREE,
                        Severity.NOTE,
                        "leaving.dryBulb",
                        "With this heat the model's air leaves at another temperature than was measured: it splits the heat otherwise into"
                                + " sensible and latent."));
    }
}
