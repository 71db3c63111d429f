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
        SharedCoil.pinch(findings, result.operating().pinch(), "more coil brings nothing more there");
        SharedCoil.fan(
                findings,
                spec.fan(),
                "only natural draft is left, a guess at best. In a real machine the pressure rises until the high pressure"
                        + " switch opens.");
        SharedCoil.cleanliness(findings, result.cleanliness(), "clean it and straighten its fins.");
        SharedCoil.dry(findings, spec.entering(), "which puts its heat capacity about one percent low.");
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

    static List<Step> working(AirCooledGasCooler.Spec spec, AirCooledGasCooler.Result result) {
        Working working = new Working(spec.equilibrium());
        GasCoolerCoil.Operating operating = result.operating();
        Term rate = SharedCoil.rate(working, result.air());
        spec.conductance()
                .ifPresent(clean -> SharedCoil.inForce(
                        working, "conductance", spec.fan(), spec.dirt(), clean, operating.conductance()));
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
                SharedCoil.conductance("UA", operating.conductance()),
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
}
