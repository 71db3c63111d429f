package io.loopstate.engine.rejection;

import io.loopstate.engine.cycle.Basis;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.FindingCode;
import io.loopstate.engine.cycle.Findings;
import io.loopstate.engine.cycle.Guideline;
import io.loopstate.engine.cycle.QuantityKind;
import io.loopstate.engine.cycle.Severity;
import io.loopstate.engine.cycle.SharedFindings;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.cycle.Step.Term;
import io.loopstate.engine.cycle.Working;
import java.util.List;

/** What is unwise, implausible or assumed about a gas cooler, and its working. */
final class GasCoolerReport {
    private static final String COUNTER_FLOW =
            "local balance of counter flow, dUA = dQ / (T - T_air); properties along the isobar";
    private static final String CROSS_FLOW =
            "cross flow, air unmixed: W. M. Kays, A. L. London, Compact Heat Exchangers (from memory), taken locally";

    private GasCoolerReport() {}

    static List<Finding> findings(AirCooledGasCooler.Spec spec, AirCooledGasCooler.Result result) {
        Findings findings = new Findings(spec.guidance());
        nearCritical(findings, spec);
        SharedFindings.dischargeTemperature(findings, spec.inletTemperature());
        findings.below(
                Guideline.MIN_PINCH,
                result.operating().pinch(),
                FindingCode.UNUSUAL_APPROACH,
                Severity.NOTE,
                "pinch",
                "Refrigerant and air come very close: more coil brings nothing more there, and small errors of readings weigh"
                        + " heavily.");
        fan(findings, spec.fan());
        result.cleanliness()
                .ifPresent(cleanliness -> findings.below(
                        Guideline.MIN_CLEANLINESS,
                        cleanliness,
                        FindingCode.LOW_CLEANLINESS,
                        Severity.CAUTION,
                        "cleanliness",
                        "The coil has lost much of its conductance: clean it and straighten its fins."));
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

    /** As far above the critical pressure as the limit lies below it properties still change steeply. */
    private static void nearCritical(Findings findings, AirCooledGasCooler.Spec spec) {
        double share = spec.pressure()
                / spec.equilibrium().refrigerant().criticalPoint().pressure();
        double limit = 2 - findings.limit(Guideline.NEAR_CRITICAL_PRESSURE);
        if (share < limit) {
            findings.add(
                    FindingCode.NEAR_CRITICAL,
                    Severity.CAUTION,
                    "pressure",
                    "The pressure lies just above the critical one, as a share of it: the heat capacity has a steep peak and small"
                            + " errors of a reading weigh heavily.",
                    QuantityKind.RATIO,
                    share,
                    limit,
                    Basis.DEFINITION);
        }
    }

    private static void fan(Findings findings, AirCooledCondenser.Fan fan) {
        if (fan.speed() == 0) {
            findings.add(
                    FindingCode.FAN_WITHOUT_AIRFLOW,
                    Severity.DANGER,
                    "fanSpeed",
                    "The fan stands still: only natural draft is left, a guess at best. In a real machine the pressure rises until the"
                            + " high pressure switch opens.",
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

    static List<Step> working(AirCooledGasCooler.Spec spec, AirCooledGasCooler.Result result) {
        Working working = new Working(spec.equilibrium());
        GasCoolerCoil.Operating operating = result.operating();
        Term rate = working.formula(
                "capacity rate of the air",
                "C_air = m_air cp",
                AirFactors.SOURCE,
                conductance("C_air", result.air().capacityRate()),
                Working.massFlow("m_air", result.air().massFlow()),
                Working.of("cp", result.air().state().heatCapacity(), QuantityKind.SPECIFIC_HEAT_CAPACITY));
        spec.conductance()
                .ifPresent(clean -> working.formula(
                        "conductance at this airflow, under this dirt",
                        "1 / UA = 1 / (UA_clean s^n) + R / A",
                        spec.fan().exponentAssumed() ? Basis.COMMON_PRACTICE : Basis.DEFINITION,
                        conductance("UA", operating.conductance()),
                        conductance("UA_clean", clean),
                        Working.ratio("s", spec.fan().airflow()),
                        Working.ratio("n", spec.fan().exponent()),
                        Working.of("R", spec.dirt().resistance(), QuantityKind.FOULING_RESISTANCE),
                        Working.of("A", spec.dirt().area().orElse(1), QuantityKind.AREA)));
        Term pressure = Working.pressure("p", spec.pressure());
        Term in = working.enthalpyOf("enthalpy at the inlet", "_in", pressure, operating.inlet());
        operating
                .search()
                .ifPresent(search -> working.search(
                        "the enthalpy at the outlet",
                        "(share - 1) / (share + 1) = 0",
                        search,
                        "h_out",
                        QuantityKind.SPECIFIC_ENTHALPY));
        Term out = working.enthalpyOf("enthalpy at the outlet", "_out", pressure, operating.outlet());
        Term heat = working.formula(
                "heat",
                "Q = m (h_in - h_out)",
                Basis.FIRST_LAW,
                Working.power("Q", operating.heat()),
                Working.massFlow("m", operating.massFlow()),
                in,
                out);
        boolean series = spec.arrangement() == Arrangement.SERIES;
        working.formula(
                "the need of the coil, as an integral over the heat in as many intervals as it takes to converge",
                series
                        ? "UA = integral of dQ / (T - T_air)"
                        : "1 - exp(-UA / C_air) = integral of dQ / (C_air (T - T_entering))",
                series ? COUNTER_FLOW : CROSS_FLOW,
                conductance("UA", operating.conductance()),
                heat,
                rate,
                Working.temperature("T_entering", result.air().state().dryBulb()),
                Working.ratio("intervals", operating.intervals()));
        working.formula(
                "air behind the coil",
                "T_leaving = T_entering + Q / C_air",
                Basis.FIRST_LAW,
                Working.temperature("T_leaving", operating.airOutlet()),
                Working.temperature("T_entering", result.air().state().dryBulb()),
                heat,
                rate);
        return working.toList();
    }

    private static Term conductance(String symbol, double value) {
        return Working.of(symbol, value, QuantityKind.THERMAL_CONDUCTANCE);
    }
}
