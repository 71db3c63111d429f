package io.loopstate.engine.rejection;

import io.loopstate.engine.cycle.Basis;
import io.loopstate.engine.cycle.FindingCode;
import io.loopstate.engine.cycle.Findings;
import io.loopstate.engine.cycle.Guideline;
import io.loopstate.engine.cycle.QuantityKind;
import io.loopstate.engine.cycle.Severity;
import io.loopstate.engine.cycle.Step.Term;
import io.loopstate.engine.cycle.Working;

/** What the findings and the working of every air-cooled coil have in common. */
public final class SharedCoil {
    /** Basis of a finding about what was not given. */
    static final String ASSUMPTION = "assumption of this engine";

    private SharedCoil() {}

    /**
     * A fan that stands still, and an exponent that nobody gave.
     *
     * @param consequence what comes of a standing fan
     */
    static void fan(Findings findings, Fan fan, String consequence) {
        if (fan.speed() == 0) {
            findings.add(
                    FindingCode.FAN_WITHOUT_AIRFLOW,
                    Severity.DANGER,
                    "fanSpeed",
                    "The fan stands still: " + consequence,
                    QuantityKind.RATIO,
                    fan.naturalDraft(),
                    1,
                    Basis.COMMON_PRACTICE);
        }
        if (fan.speed() < 1) {
            exponent(findings, fan, "airflowExponent");
        }
    }

    /** An exponent that was assumed, where the airflow is not that of the rating. */
    public static void exponent(Findings findings, Fan fan, String input) {
        if (fan.exponentAssumed()) {
            findings.add(
                    FindingCode.APPROXIMATION,
                    Severity.NOTE,
                    input,
                    "The conductance is taken to follow the airflow with this exponent: replace it by the maker's.",
                    QuantityKind.RATIO,
                    fan.exponent(),
                    fan.exponent(),
                    Basis.COMMON_PRACTICE);
        }
    }

    /** A coil that has lost much; the advice says what to look for. */
    static void cleanliness(Findings findings, Cleanliness cleanliness, String advice) {
        cleanliness
                .ratio()
                .ifPresent(ratio -> findings.below(
                        Guideline.MIN_CLEANLINESS,
                        ratio,
                        FindingCode.LOW_CLEANLINESS,
                        Severity.CAUTION,
                        "cleanliness",
                        "The coil has lost much of its conductance: " + advice));
    }

    /** Refrigerant and air that all but meet. */
    static void pinch(Findings findings, double kelvin, String consequence) {
        findings.below(
                Guideline.MIN_PINCH,
                kelvin,
                FindingCode.UNUSUAL_APPROACH,
                Severity.NOTE,
                "pinch",
                "Refrigerant and air come very close: " + consequence
                        + ", and small errors of readings weigh heavily.");
    }

    /** Air without a humidity, which is taken as dry. */
    static void dry(Findings findings, AirSide.Air air, String consequence) {
        if (air.humidity().isEmpty()) {
            findings.add(
                    FindingCode.APPROXIMATION,
                    Severity.NOTE,
                    "entering",
                    "No humidity was given: the air is taken as dry, " + consequence,
                    ASSUMPTION);
        }
    }

    /** The capacity rate of the air. */
    static Term rate(Working working, CoilAir air) {
        return working.formula(
                "capacity rate of the air",
                "C_air = m_air cp",
                AirFactors.SOURCE,
                conductance("C_air", air.capacityRate()),
                Working.massFlow("m_air", air.massFlow()),
                Working.of("cp", air.state().heatCapacity(), QuantityKind.SPECIFIC_HEAT_CAPACITY));
    }

    /**
     * The conductance in force.
     *
     * @param name of the conductance
     */
    static void inForce(Working working, String name, Fan fan, Dirt dirt, double clean, double conductance) {
        working.formula(
                name + " at this airflow, under this dirt",
                "1 / UA = 1 / (UA_clean s^n) + R / A",
                fan.exponentAssumed() ? Basis.COMMON_PRACTICE : Basis.DEFINITION,
                conductance("UA", conductance),
                conductance("UA_clean", clean),
                Working.ratio("s", fan.airflow()),
                Working.ratio("n", fan.exponent()),
                Working.of("R", dirt.resistance(), QuantityKind.FOULING_RESISTANCE),
                Working.of("A", dirt.area().orElse(1), QuantityKind.AREA));
    }

    static Term conductance(String symbol, double value) {
        return Working.of(symbol, value, QuantityKind.THERMAL_CONDUCTANCE);
    }
}
