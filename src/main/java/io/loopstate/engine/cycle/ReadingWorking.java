package io.loopstate.engine.cycle;

import static io.loopstate.engine.cycle.Working.difference;
import static io.loopstate.engine.cycle.Working.energy;
import static io.loopstate.engine.cycle.Working.enthalpy;
import static io.loopstate.engine.cycle.Working.entropy;
import static io.loopstate.engine.cycle.Working.pressure;
import static io.loopstate.engine.cycle.Working.ratio;
import static io.loopstate.engine.cycle.Working.temperature;

import io.loopstate.engine.component.Compressor;
import io.loopstate.engine.cycle.FieldReadings.LineTemperatures;
import io.loopstate.engine.cycle.FieldReadings.Pressures;
import io.loopstate.engine.cycle.FieldReadings.Result;
import io.loopstate.engine.cycle.FieldReadings.Spec;
import io.loopstate.engine.cycle.Step.Term;
import io.loopstate.engine.property.State;
import java.util.List;

/**
 * The working of a set of readings. Numbers at the symbols: 1 suction line, 2s and 2 discharge, 3 liquid line, 4 behind the
 * valve, 5 evaporator outlet.
 */
final class ReadingWorking {
    private final Spec spec;
    private final ReadingStates states;
    private final Result result;
    private final Working working;

    ReadingWorking(Spec spec, ReadingStates states, Result result) {
        this.spec = spec;
        this.states = states;
        this.result = result;
        this.working = new Working(spec.equilibrium());
    }

    List<Step> toList() {
        superheat();
        subcooling();
        airDifferences();
        pressureRatio();
        compression();
        perMass();
        new RouteWorking(working, spec, states, result).add();
        return working.toList();
    }

    private void superheat() {
        LineTemperatures lines = spec.temperatures();
        Term dew = working.property(
                "dew temperature at the suction pressure",
                "Tdew = Tdew(p1)",
                temperature("Tdew", result.evaporating().dew()),
                pressure("p1", spec.pressures().suction()));
        working.formula(
                "superheat at the compressor",
                "superheat = T1 - Tdew",
                Basis.DEFINITION,
                difference("superheat", result.superheat()),
                temperature("T1", lines.suctionLine()),
                dew);
        result.evaporatorSuperheat()
                .ifPresent(value -> working.formula(
                        "superheat at the evaporator",
                        "superheat5 = T5 - Tdew",
                        Basis.DEFINITION,
                        difference("superheat5", value),
                        temperature("T5", lines.evaporatorOutlet().orElseThrow()),
                        dew));
    }

    private void subcooling() {
        result.subcooling().ifPresent(value -> {
            Term bubble = working.property(
                    result.liquidLinePressureAssumed()
                            ? "bubble temperature at the discharge pressure, which stands in for the liquid line's"
                            : "bubble temperature at the liquid line pressure",
                    "Tbubble = Tbubble(p3)",
                    temperature("Tbubble", states.atLiquidLine().orElseThrow().bubble()),
                    pressure("p3", states.liquidPressure()));
            working.formula(
                    "subcooling",
                    "subcooling = Tbubble - T3",
                    Basis.DEFINITION,
                    difference("subcooling", value),
                    bubble,
                    temperature("T3", spec.temperatures().liquidLine().orElseThrow()));
        });
    }

    private void airDifferences() {
        result.condensingOverAmbient().ifPresent(value -> {
            double midpoint = result.condensing().orElseThrow().midpoint();
            working.formula(
                    "condensing over ambient",
                    "dT = Tmid - Tair",
                    Basis.COMMON_PRACTICE,
                    difference("dT", value),
                    temperature("Tmid", midpoint),
                    temperature("Tair", midpoint - value));
        });
        result.evaporatorTemperatureDifference()
                .ifPresent(value -> working.formula(
                        "evaporator temperature difference",
                        "dT = Tair - Tmid",
                        Basis.COMMON_PRACTICE,
                        difference("dT", value),
                        temperature("Tair", spec.air().evaporator().entering().orElseThrow()),
                        temperature("Tmid", result.evaporating().midpoint())));
    }

    private void pressureRatio() {
        Pressures pressures = spec.pressures();
        working.formula(
                "pressure ratio, absolute",
                "r = p2 / p1",
                Basis.DEFINITION,
                ratio("r", result.pressureRatio()),
                pressure("p2", pressures.discharge()),
                pressure("p1", pressures.suction()));
    }

    private void compression() {
        Term h1 = working.enthalpyOf(
                "enthalpy in the suction line",
                "1",
                pressure("p1", spec.pressures().suction()),
                states.compressorInlet());
        states.compression().ifPresent(compression -> {
            State outlet = compression.outlet();
            Term s1 = working.property(
                    "entropy in the suction line",
                    "s1 = s(p1, h1)",
                    entropy("s1", compression.inlet().specificEntropy()),
                    pressure("p1", compression.inlet().pressure()),
                    h1);
            Term h2s = working.property(
                    "enthalpy after isentropic compression",
                    "h2s = h(p2, s1)",
                    enthalpy("h2s", compression.isentropicOutlet().specificEnthalpy()),
                    pressure("p2", outlet.pressure()),
                    s1);
            Term h2 = working.enthalpyOf(
                    "enthalpy in the discharge line", "2", pressure("p2", outlet.pressure()), outlet);
            Term work = working.formula(
                    "compressor work",
                    "w = (h2 - h1) / (1 - f)",
                    Basis.FIRST_LAW,
                    energy("w", compression.work()),
                    h2,
                    h1,
                    ratio("f", spec.machine().heatLossFraction()));
            efficiency(compression, h1, h2s, work);
        });
    }

    private void efficiency(Compressor.Compression compression, Term h1, Term h2s, Term work) {
        if (compression.work() != 0) {
            working.formula(
                    "isentropic efficiency as measured",
                    "eta = (h2s - h1) / w",
                    Basis.DEFINITION,
                    ratio("eta", compression.isentropicEfficiency()),
                    h2s,
                    h1,
                    work);
        }
    }

    private void perMass() {
        states.valveInlet().ifPresent(liquid -> {
            Term h3 = working.enthalpyOf(
                    "enthalpy in the liquid line", "3", pressure("p3", states.liquidPressure()), liquid);
            Term h4 = working.formula(
                    "enthalpy behind the valve, throttled",
                    "h4 = h3",
                    Basis.FIRST_LAW,
                    enthalpy("h4", states.evaporatorInlet().orElseThrow().specificEnthalpy()),
                    h3);
            effect(h4);
            states.compressorOutlet()
                    .ifPresent(outlet -> result.perMass()
                            .heatRejection()
                            .ifPresent(value -> working.formula(
                                    "heat rejected",
                                    "q_rejected = h2 - h3",
                                    Basis.FIRST_LAW,
                                    energy("q_rejected", value),
                                    enthalpy("h2", outlet.specificEnthalpy()),
                                    h3)));
        });
    }

    private void effect(Term h4) {
        result.perMass().refrigeratingEffect().ifPresent(value -> {
            Term after = states.evaporatorOutlet().isPresent()
                    ? working.enthalpyOf(
                            "enthalpy at the evaporator outlet",
                            "5",
                            pressure("p1", spec.pressures().suction()),
                            states.evaporatorOutlet().get())
                    : enthalpy("h1", states.compressorInlet().specificEnthalpy());
            Term effect = working.formula(
                    "refrigerating effect",
                    "q = " + after.symbol() + " - h4",
                    Basis.FIRST_LAW,
                    energy("q", value),
                    after,
                    h4);
            result.perMass()
                    .coefficientOfPerformance()
                    .ifPresent(coefficient -> working.formula(
                            "coefficient of performance",
                            "COP = q / w",
                            Basis.DEFINITION,
                            ratio("COP", coefficient),
                            effect,
                            energy("w", result.perMass().compressorWork().orElseThrow())));
        });
    }
}
