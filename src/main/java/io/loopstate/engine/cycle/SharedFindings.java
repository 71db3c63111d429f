package io.loopstate.engine.cycle;

import io.loopstate.engine.fluid.CriticalPoint;
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.property.State;
import java.util.Optional;
import java.util.OptionalDouble;

/** Findings that a designed and a measured cycle have in common. */
public final class SharedFindings {
    private SharedFindings() {}

    /** A ratio high for one stage. */
    public static void pressureRatio(Findings findings, double ratio) {
        findings.above(
                Guideline.MAX_PRESSURE_RATIO,
                ratio,
                FindingCode.HIGH_PRESSURE_RATIO,
                Severity.CAUTION,
                "pressureRatio",
                "The pressure ratio is high for one stage: volumetric efficiency falls and the discharge runs hot;"
                        + " consider two stages.");
    }

    /** A discharge line hotter than oil stands. */
    public static void dischargeTemperature(Findings findings, double temperature) {
        findings.above(
                Guideline.MAX_DISCHARGE_TEMPERATURE,
                temperature,
                FindingCode.HIGH_DISCHARGE_TEMPERATURE,
                Severity.DANGER,
                "dischargeTemperature",
                "The discharge line is hotter than oil and valves stand for long; the discharge valve is hotter still.");
    }

    /** Suction below the atmosphere, Pa. */
    public static void vacuum(Findings findings, double suctionPressure, double atmosphere) {
        if (suctionPressure < atmosphere) {
            findings.add(
                    FindingCode.VACUUM_SUCTION,
                    Severity.CAUTION,
                    "suctionPressure",
                    "The suction side runs below the atmosphere: a leak draws in air and moisture.",
                    QuantityKind.PRESSURE,
                    suctionPressure,
                    atmosphere,
                    "atmospheric pressure given");
        }
    }

    /** The airflow of a comfort evaporator for each ton of refrigeration, m3/s. */
    public static void evaporatorAirflow(Findings findings, double airflowPerTon) {
        String message = "The airflow for each ton is outside the usual range of a comfort evaporator.";
        findings.below(
                Guideline.MIN_EVAPORATOR_AIRFLOW,
                airflowPerTon,
                FindingCode.UNUSUAL_AIRFLOW,
                Severity.CAUTION,
                "airflowPerTon",
                message + " Little air makes the coil cold and the suction low: check filter, coil, belt and duct.");
        findings.above(
                Guideline.MAX_EVAPORATOR_AIRFLOW,
                airflowPerTon,
                FindingCode.UNUSUAL_AIRFLOW,
                Severity.NOTE,
                "airflowPerTon",
                message + " Much air dries little; freezers and coolers run so on purpose.");
    }

    /** Near the critical pressure on the high side, or beyond it. Pressures in Pa. */
    public static void critical(Findings findings, double pressure, double criticalPressure) {
        if (pressure >= criticalPressure) {
            findings.add(
                    FindingCode.TRANSCRITICAL,
                    Severity.NOTE,
                    "condensing",
                    "The high side lies above the critical pressure: nothing condenses, and the temperature at the outlet"
                            + " of the gas cooler stands in for subcooling.",
                    QuantityKind.PRESSURE,
                    pressure,
                    criticalPressure,
                    "critical point of the equation of state");
        } else {
            nearCritical(findings, "condensing", pressure, criticalPressure);
        }
    }

    /** A pressure close to the critical one; Pa. */
    public static void nearCritical(Findings findings, String subject, double pressure, double criticalPressure) {
        findings.above(
                Guideline.NEAR_CRITICAL_PRESSURE,
                pressure / criticalPressure,
                FindingCode.NEAR_CRITICAL,
                Severity.CAUTION,
                subject,
                "The pressure is close to the critical one, as a share of it: properties change steeply there and small"
                        + " errors of a reading weigh heavily.");
    }

    /** A state close to the critical point in both temperature and pressure. */
    public static void nearCritical(Findings findings, CriticalPoint critical, State state) {
        double temperature = state.temperature() / critical.temperature();
        double share = state.pressure() / critical.pressure();
        double near = findings.limit(Guideline.NEAR_CRITICAL_TEMPERATURE);
        if (temperature > near
                && temperature < 2 - near
                && share < 2 - findings.limit(Guideline.NEAR_CRITICAL_PRESSURE)) {
            nearCritical(findings, "state", state.pressure(), critical.pressure());
        }
    }

    /** A glide worth knowing. */
    public static void glide(
            Findings findings, SaturationTemperatures evaporating, Optional<SaturationTemperatures> condensing) {
        glide(
                findings,
                Math.max(
                        evaporating.glide(),
                        condensing.map(SaturationTemperatures::glide).orElse(0.0)));
    }

    /** A glide worth knowing. */
    public static void glide(Findings findings, double glide) {
        findings.above(
                Guideline.MAX_UNNOTICED_GLIDE,
                glide,
                FindingCode.HIGH_GLIDE,
                Severity.NOTE,
                "temperatureGlide",
                "The refrigerant glides: superheat counts from the dew point, subcooling from the bubble point,"
                        + " temperature differences to air from the midpoint.");
    }

    /** Superheat of a vapor that is no longer wet. */
    public static void superheatAtCompressor(Findings findings, double superheat) {
        findings.below(
                Guideline.MIN_SUPERHEAT,
                superheat,
                FindingCode.LOW_SUPERHEAT,
                Severity.CAUTION,
                "superheat",
                "The superheat at the compressor leaves little margin against liquid.");
        findings.above(
                Guideline.MAX_SUPERHEAT,
                superheat,
                FindingCode.HIGH_SUPERHEAT,
                Severity.NOTE,
                "superheat",
                "The superheat at the compressor is above the usual range: a starved evaporator or a long or bare suction"
                        + " line; the motor is cooled less and the discharge runs hotter.");
    }

    /** More superheat than usual at the evaporator; K. */
    public static void superheatAtEvaporator(Findings findings, double superheat) {
        findings.above(
                Guideline.MAX_EVAPORATOR_SUPERHEAT,
                superheat,
                FindingCode.HIGH_SUPERHEAT,
                Severity.NOTE,
                "evaporatorSuperheat",
                "The superheat at the evaporator is above the usual range: part of the coil only heats vapor.");
    }

    /** Subcooling of a liquid that holds no vapor. */
    public static void subcooling(Findings findings, double subcooling) {
        if (subcooling <= 0) {
            findings.add(
                    FindingCode.NO_SUBCOOLING,
                    Severity.CAUTION,
                    "subcooling",
                    "The liquid is not below its bubble point: flash gas reaches the valve as soon as pressure is lost.",
                    QuantityKind.TEMPERATURE_DIFFERENCE,
                    subcooling,
                    0,
                    Basis.DEFINITION);
            return;
        }
        findings.below(
                Guideline.MIN_SUBCOOLING,
                subcooling,
                FindingCode.LOW_SUBCOOLING,
                Severity.NOTE,
                "subcooling",
                "The subcooling is below the usual range of a system with an expansion valve.");
        findings.above(
                Guideline.MAX_SUBCOOLING,
                subcooling,
                FindingCode.HIGH_SUBCOOLING,
                Severity.NOTE,
                "subcooling",
                "The subcooling is above the usual range of a system with an expansion valve: liquid may back up in the"
                        + " condenser.");
    }

    /** Liquid left at the discharge. */
    public static void wetDischarge(Findings findings, State outlet) {
        if (outlet.phase() == Phase.TWO_PHASE) {
            findings.add(
                    FindingCode.WET_DISCHARGE,
                    Severity.DANGER,
                    "compressorOutlet",
                    "The compression ends inside the dome: liquid is left at the discharge.",
                    QuantityKind.RATIO,
                    outlet.vaporQuality(),
                    1,
                    Basis.DEFINITION);
        }
    }

    /** A coefficient of performance above that of Carnot. */
    public static void carnot(Findings findings, OptionalDouble coefficient, OptionalDouble carnot) {
        if (coefficient.isPresent() && carnot.isPresent() && coefficient.getAsDouble() > carnot.getAsDouble()) {
            findings.add(
                    FindingCode.ABOVE_CARNOT,
                    Severity.CAUTION,
                    "coefficientOfPerformance",
                    "The coefficient of performance is above that of a reversible machine between the evaporating and"
                            + " condensing temperatures: unless the liquid is cooled far below condensing, an input is"
                            + " wrong.",
                    QuantityKind.RATIO,
                    coefficient.getAsDouble(),
                    carnot.getAsDouble(),
                    Basis.SECOND_LAW);
        }
    }

    /** A volumetric efficiency that is low or was taken as one. */
    public static void volumetricEfficiency(Findings findings, OptionalDouble efficiency, boolean displacementGiven) {
        efficiency.ifPresent(value -> findings.below(
                Guideline.MIN_VOLUMETRIC_EFFICIENCY,
                value,
                FindingCode.LOW_VOLUMETRIC_EFFICIENCY,
                Severity.CAUTION,
                "volumetricEfficiency",
                "The compressor draws in little of its displacement: pressure ratio, clearance or leaking valves."));
        if (displacementGiven && efficiency.isEmpty()) {
            findings.add(
                    FindingCode.VOLUMETRIC_EFFICIENCY_ASSUMED,
                    Severity.NOTE,
                    "volumetricEfficiency",
                    "No volumetric efficiency was given: it is taken as one, so flow, capacity and power are upper bounds.",
                    Basis.DEFINITION);
        }
    }
}
