package io.loopstate.engine.cycle;

import static io.loopstate.engine.cycle.Working.energy;
import static io.loopstate.engine.cycle.Working.enthalpy;
import static io.loopstate.engine.cycle.Working.entropy;
import static io.loopstate.engine.cycle.Working.massFlow;
import static io.loopstate.engine.cycle.Working.power;
import static io.loopstate.engine.cycle.Working.pressure;
import static io.loopstate.engine.cycle.Working.pressureDrop;
import static io.loopstate.engine.cycle.Working.ratio;
import static io.loopstate.engine.cycle.Working.specificVolume;
import static io.loopstate.engine.cycle.Working.temperature;
import static io.loopstate.engine.cycle.Working.volumeFlow;

import io.loopstate.engine.component.Compressor;
import io.loopstate.engine.component.LineLosses;
import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.cycle.DesignCycle.Performance;
import io.loopstate.engine.cycle.DesignCycle.Sizing;
import io.loopstate.engine.cycle.DesignCycle.Spec;
import io.loopstate.engine.cycle.Step.Term;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.property.State;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The working of a design cycle. Numbers at the symbols: 1 compressor inlet, 2s and 2 compressor outlet, 2c condenser inlet,
 * 3c condenser outlet, 3 valve inlet, 4 evaporator inlet, 5 evaporator outlet.
 */
final class DesignWorking {
    private final Spec spec;
    private final DesignStates states;
    private final Performance performance;
    private final Working working;

    private DesignWorking(Spec spec, DesignStates states, Performance performance) {
        this.spec = spec;
        this.states = states;
        this.performance = performance;
        this.working = new Working(spec.equilibrium());
    }

    static List<Step> of(Spec spec, DesignStates states, Performance performance, Optional<Sizing> sizing) {
        DesignWorking steps = new DesignWorking(spec, states, performance);
        steps.levels();
        steps.lowSide();
        steps.compression();
        steps.highSide();
        steps.perMass();
        sizing.ifPresent(steps::sizing);
        return steps.working.toList();
    }

    private void levels() {
        level(
                "evaporating",
                "pe",
                "Te",
                spec.evaporating(),
                states.evaporatorOutlet().pressure());
        level(
                "condensing",
                "pc",
                "Tc",
                spec.condensing(),
                states.condenserInlet().pressure());
    }

    private void level(String name, String symbol, String given, SaturationLevel level, double result) {
        if (level.given() == Variable.TEMPERATURE) {
            String basis = level.basis().name().toLowerCase(Locale.ROOT);
            working.property(
                    name + " pressure from the " + basis + " temperature",
                    symbol + " = p_" + basis + "(" + given + ")",
                    pressure(symbol, result),
                    temperature(given, level.value()));
        }
    }

    private void lowSide() {
        State outlet = states.evaporatorOutlet();
        working.enthalpyOf("enthalpy at the evaporator outlet", "5", outlet);
        State inlet = states.compressorInlet();
        if (spec.losses().suctionLinePressureDrop() != 0) {
            drop("suction pressure after the suction line", "p1 = pe - dp", "p1", inlet, outlet);
        }
        if (performance.suctionLineHeatGain() != 0) {
            working.formula(
                    "enthalpy at the compressor inlet",
                    "h1 = h5 + q_suction",
                    Basis.FIRST_LAW,
                    enthalpy("h1", inlet.specificEnthalpy()),
                    enthalpy("h5", outlet.specificEnthalpy()),
                    energy("q_suction", performance.suctionLineHeatGain()));
        } else {
            working.formula(
                    "enthalpy at the compressor inlet",
                    "h1 = h5",
                    Basis.FIRST_LAW,
                    enthalpy("h1", inlet.specificEnthalpy()),
                    enthalpy("h5", outlet.specificEnthalpy()));
        }
        working.property(
                "entropy at the compressor inlet",
                "s1 = s(p1, h1)",
                entropy("s1", inlet.specificEntropy()),
                pressure("p1", inlet.pressure()),
                enthalpy("h1", inlet.specificEnthalpy()));
    }

    private void compression() {
        Compressor.Compression compression = states.compression();
        Term p1 = pressure("p1", compression.inlet().pressure());
        Term p2 = pressure("p2", compression.outlet().pressure());
        Term h1 = enthalpy("h1", compression.inlet().specificEnthalpy());
        if (spec.losses().dischargeLinePressureDrop() != 0) {
            drop(
                    "discharge pressure before the discharge line",
                    "p2 = pc + dp",
                    "p2",
                    compression.outlet(),
                    states.condenserInlet());
        }
        working.formula(
                "pressure ratio, absolute",
                "r = p2 / p1",
                Basis.DEFINITION,
                ratio("r", performance.pressureRatio()),
                p2,
                p1);
        Term h2s = working.property(
                "enthalpy after isentropic compression",
                "h2s = h(p2, s1)",
                enthalpy("h2s", compression.isentropicOutlet().specificEnthalpy()),
                p2,
                entropy("s1", compression.inlet().specificEntropy()));
        Term work = working.formula(
                "compressor work",
                "w = (h2s - h1) / eta",
                Basis.DEFINITION,
                energy("w", compression.work()),
                h2s,
                h1,
                ratio("eta", spec.compressor().effectiveEfficiency()));
        Term h2 = working.formula(
                "enthalpy at the compressor outlet",
                "h2 = h1 + w - q_shell",
                Basis.FIRST_LAW,
                enthalpy("h2", compression.outlet().specificEnthalpy()),
                h1,
                work,
                energy("q_shell", compression.heatLoss()));
        working.property(
                "discharge temperature",
                "T2 = T(p2, h2)",
                temperature("T2", compression.outlet().temperature()),
                p2,
                h2);
    }

    private void highSide() {
        State outlet = states.condenserOutlet();
        State valve = states.valveInlet();
        Term h3 = working.enthalpyOf(
                states.transcritical() ? "enthalpy at the gas cooler outlet" : "enthalpy at the condenser outlet",
                "3c",
                outlet);
        if (performance.liquidLineHeatGain() != 0) {
            h3 = working.formula(
                    "enthalpy before the valve",
                    "h3 = h3c + q_liquid",
                    Basis.FIRST_LAW,
                    enthalpy("h3", valve.specificEnthalpy()),
                    h3,
                    energy("q_liquid", performance.liquidLineHeatGain()));
        }
        working.formula(
                "enthalpy behind the valve, throttled",
                "h4 = " + h3.symbol(),
                Basis.FIRST_LAW,
                enthalpy("h4", states.evaporatorInlet().specificEnthalpy()),
                h3);
        performance
                .evaporatorInletQuality()
                .ifPresent(quality -> working.property(
                        "vapor quality behind the valve",
                        "x4 = x(p4, h4)",
                        ratio("x4", quality),
                        pressure("p4", states.evaporatorInlet().pressure()),
                        enthalpy("h4", states.evaporatorInlet().specificEnthalpy())));
    }

    private void perMass() {
        LineLosses losses = spec.losses();
        Term effect = working.formula(
                "refrigerating effect",
                "q = h5 - h4",
                Basis.FIRST_LAW,
                energy("q", performance.refrigeratingEffect()),
                enthalpy("h5", states.evaporatorOutlet().specificEnthalpy()),
                enthalpy("h4", states.evaporatorInlet().specificEnthalpy()));
        String from = losses.dischargeLineHeatLoss() != 0 ? "h2c" : "h2";
        working.formula(
                "heat rejected",
                "q_rejected = " + from + " - h3c",
                Basis.FIRST_LAW,
                energy("q_rejected", performance.heatRejectionPerMass()),
                enthalpy(from, states.condenserInlet().specificEnthalpy()),
                enthalpy("h3c", states.condenserOutlet().specificEnthalpy()));
        Term coefficient = working.formula(
                "coefficient of performance",
                "COP = q / w",
                Basis.DEFINITION,
                ratio("COP", performance.coefficientOfPerformance()),
                effect,
                energy("w", performance.compressorWork()));
        working.formula(
                "energy efficiency ratio in Btu/h per W",
                "EER = " + String.format(Locale.ROOT, "%.9f", Constants.BTU_PER_HOUR_PER_WATT) + " * COP",
                "NIST Special Publication 811",
                ratio("EER", performance.energyEfficiencyRatio()),
                coefficient);
    }

    private void sizing(Sizing sizing) {
        Term effect = energy("q", performance.refrigeratingEffect());
        Term volume = specificVolume("v1", states.compressorInlet().specificVolume());
        Term mass = massFlow("m", sizing.massFlow());
        Size size = spec.size().orElseThrow();
        if (size.given() == Size.Given.DISPLACEMENT) {
            working.formula(
                    "mass flow from the displacement",
                    "m = V * eta_v / v1",
                    Basis.DEFINITION,
                    mass,
                    volumeFlow("V", size.value()),
                    ratio("eta_v", spec.compressor().volumetricEfficiency().orElse(1)),
                    volume);
        } else if (size.given() == Size.Given.REFRIGERATING_CAPACITY) {
            working.formula(
                    "mass flow from the capacity",
                    "m = Q / q",
                    Basis.FIRST_LAW,
                    mass,
                    power("Q", size.value()),
                    effect);
        }
        working.formula(
                "refrigerating capacity",
                "Q = m * q",
                Basis.FIRST_LAW,
                power("Q", sizing.refrigeratingCapacity()),
                mass,
                effect);
        working.formula(
                "compressor power",
                "P = m * w",
                Basis.FIRST_LAW,
                power("P", sizing.compressorPower()),
                mass,
                energy("w", performance.compressorWork()));
        working.formula(
                "heat rejected",
                "Q_rejected = m * q_rejected",
                Basis.FIRST_LAW,
                power("Q_rejected", sizing.heatRejected()),
                mass,
                energy("q_rejected", performance.heatRejectionPerMass()));
        working.formula(
                "volume flow drawn in",
                "V1 = m * v1",
                Basis.DEFINITION,
                volumeFlow("V1", sizing.suctionVolumeFlow()),
                mass,
                volume);
    }

    private void drop(String name, String formula, String symbol, State result, State from) {
        String given = formula.contains("pe") ? "pe" : "pc";
        working.formula(
                name,
                formula,
                Basis.DEFINITION,
                pressure(symbol, result.pressure()),
                pressure(given, from.pressure()),
                pressureDrop("dp", Math.abs(result.pressure() - from.pressure())));
    }
}
