package io.loopstate.engine.cycle;

import io.loopstate.engine.cycle.FieldReadings.Result;
import io.loopstate.engine.cycle.FieldReadings.Spec;
import java.util.OptionalDouble;

/** What is unwise or implausible about the air of a set of readings. */
final class AirFindings {
    private AirFindings() {}

    static void add(Findings findings, Spec spec, Result result) {
        condensingOverAmbient(findings, spec, result);
        liquidBelowAmbient(findings, spec);
        condenserAir(findings, spec.air().condenser(), result);
        evaporatorTemperatureDifference(findings, spec, result);
        evaporatorAir(findings, spec.air().evaporator(), result);
        approximation(findings, spec);
    }

    private static void condensingOverAmbient(Findings findings, Spec spec, Result result) {
        boolean outdoor = spec.air().outdoor().isPresent();
        result.condensingOverAmbient().ifPresent(difference -> {
            if (difference <= 0) {
                findings.add(
                        FindingCode.IMPLAUSIBLE_READING,
                        Severity.CAUTION,
                        outdoor ? "outdoorAirTemperature" : "condenserAir.enteringTemperature",
                        "The air is no colder than the refrigerant condenses, so it could take up no heat: check the air"
                                + " temperature and the discharge pressure.",
                        QuantityKind.TEMPERATURE_DIFFERENCE,
                        difference,
                        0,
                        Basis.SECOND_LAW);
            }
            findings.above(
                    Guideline.MAX_CONDENSING_OVER_AMBIENT,
                    difference,
                    FindingCode.HIGH_CONDENSING_OVER_AMBIENT,
                    Severity.CAUTION,
                    "condensingOverAmbient",
                    "The refrigerant condenses far above the air: a dirty condenser, little air, air drawn in again,"
                            + " too much refrigerant, or gas that does not condense.");
        });
    }

    private static void liquidBelowAmbient(Findings findings, Spec spec) {
        OptionalDouble air =
                Optionals.or(spec.air().condenser().entering(), spec.air().outdoor());
        OptionalDouble liquid = spec.temperatures().liquidLine();
        Optionals.both(air, liquid, (ambient, line) -> ambient - line)
                .ifPresent(below -> findings.above(
                        Guideline.LINE_PROBE_ACCURACY,
                        below,
                        FindingCode.IMPLAUSIBLE_READING,
                        Severity.CAUTION,
                        "liquidLineTemperature",
                        "The liquid line is colder than the air that cools the condenser by more than a probe's accuracy: check both"
                                + " readings, unless something else subcools the liquid."));
    }

    private static void condenserAir(Findings findings, AirStream air, Result result) {
        if (air.entering().isPresent()
                && air.leaving().isPresent()
                && air.leaving().getAsDouble() <= air.entering().getAsDouble()) {
            implausible(
                    findings,
                    "condenserAir.leavingTemperature",
                    "The air leaves the condenser no warmer than it enters: swapped or wrong probes, or a machine at rest."
                            + " No heat is computed from it.",
                    air.leaving().getAsDouble(),
                    air.entering().getAsDouble());
        }
        result.condensing().ifPresent(condensing -> {
            if (air.leaving().isPresent() && air.leaving().getAsDouble() > condensing.dew()) {
                implausible(
                        findings,
                        "condenserAir.leavingTemperature",
                        "The air leaves the condenser warmer than the refrigerant condenses: check the air probe and the"
                                + " discharge pressure.",
                        air.leaving().getAsDouble(),
                        condensing.dew());
            }
        });
    }

    private static void evaporatorTemperatureDifference(Findings findings, Spec spec, Result result) {
        result.evaporatorTemperatureDifference().ifPresent(difference -> {
            if (difference <= 0) {
                findings.add(
                        FindingCode.IMPLAUSIBLE_READING,
                        Severity.CAUTION,
                        "evaporatorAir.enteringTemperature",
                        "The air enters the evaporator no warmer than the refrigerant evaporates, so it could give off no"
                                + " heat: check the air temperature and the suction pressure.",
                        QuantityKind.TEMPERATURE_DIFFERENCE,
                        difference,
                        0,
                        Basis.SECOND_LAW);
            }
            findings.above(
                    Guideline.MAX_EVAPORATOR_TEMPERATURE_DIFFERENCE,
                    difference,
                    FindingCode.HIGH_EVAPORATOR_TEMPERATURE_DIFFERENCE,
                    Severity.CAUTION,
                    "evaporatorTemperatureDifference",
                    "The refrigerant evaporates far below the air: little air, a dirty or iced coil, or too little"
                            + " refrigerant.");
        });
        OptionalDouble entering = spec.air().evaporator().entering();
        boolean comfort = entering.orElse(0) >= findings.limit(Guideline.COMFORT_AIR_TEMPERATURE);
        if (comfort) {
            findings.below(
                    Guideline.FREEZING_POINT,
                    result.evaporating().midpoint(),
                    FindingCode.FROST,
                    Severity.CAUTION,
                    "evaporating",
                    "The refrigerant evaporates below the freezing point of water under room air: the coil will ice over.");
        }
    }

    private static void evaporatorAir(Findings findings, AirStream air, Result result) {
        if (air.entering().isPresent()
                && air.leaving().isPresent()
                && air.leaving().getAsDouble() >= air.entering().getAsDouble()) {
            implausible(
                    findings,
                    "evaporatorAir.leavingTemperature",
                    "The air leaves the evaporator no colder than it enters: swapped or wrong probes, or a machine at rest."
                            + " No heat is computed from it.",
                    air.leaving().getAsDouble(),
                    air.entering().getAsDouble());
        }
        if (air.leaving().isPresent()
                && air.leaving().getAsDouble() < result.evaporating().bubble()) {
            implausible(
                    findings,
                    "evaporatorAir.leavingTemperature",
                    "The air leaves the evaporator colder than the refrigerant evaporates: check the air probe and the"
                            + " suction pressure.",
                    air.leaving().getAsDouble(),
                    result.evaporating().bubble());
        }
    }

    private static void approximation(Findings findings, Spec spec) {
        approximation(findings, spec, spec.air().condenser(), "condenserAir", 1);
        approximation(findings, spec, spec.air().evaporator(), "evaporatorAir", -1);
    }

    private static void approximation(Findings findings, Spec spec, AirStream air, String subject, int sign) {
        AirHeat heat = AirHeat.of(air, spec.pressures().atmosphere(), sign);
        if (heat.heat().isPresent() && !heat.measured()) {
            findings.add(
                    FindingCode.APPROXIMATION,
                    Severity.NOTE,
                    subject,
                    sign > 0
                            ? "The heat to the air is that of dry air."
                            : "The heat from the air is that of dry air without moisture condensing: a lower bound of the"
                                    + " capacity.",
                    "ASHRAE Handbook - Fundamentals 2017, chapter 1, dry-air part of equation 28 (from memory)");
        }
    }

    private static void implausible(Findings findings, String subject, String message, double value, double limit) {
        findings.add(
                FindingCode.IMPLAUSIBLE_READING,
                Severity.CAUTION,
                subject,
                message,
                QuantityKind.TEMPERATURE,
                value,
                limit,
                Basis.READINGS);
    }
}
