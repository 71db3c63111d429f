package io.loopstate.engine.cycle;

import static io.loopstate.engine.cycle.Working.energy;
import static io.loopstate.engine.cycle.Working.enthalpy;
import static io.loopstate.engine.cycle.Working.massFlow;
import static io.loopstate.engine.cycle.Working.power;
import static io.loopstate.engine.cycle.Working.ratio;
import static io.loopstate.engine.cycle.Working.specificVolume;
import static io.loopstate.engine.cycle.Working.volumeFlow;

import io.loopstate.engine.component.CompressorKind;
import io.loopstate.engine.cycle.DesignCycle.Performance;
import io.loopstate.engine.cycle.DesignCycle.Sizing;
import io.loopstate.engine.cycle.DesignCycle.Spec;
import io.loopstate.engine.cycle.Step.Term;
import java.util.Locale;
import java.util.Optional;

/** The working of a design cycle from its states to works, heats and sizes; symbols as in {@link DesignWorking}. */
final class PerformanceWorking {
    private final Working working;
    private final Spec spec;
    private final DesignStates states;
    private final Performance performance;

    private PerformanceWorking(Working working, Spec spec, DesignStates states, Performance performance) {
        this.working = working;
        this.spec = spec;
        this.states = states;
        this.performance = performance;
    }

    static void add(Working working, Spec spec, DesignStates states, Performance performance, Optional<Sizing> sizing) {
        PerformanceWorking steps = new PerformanceWorking(working, spec, states, performance);
        Term effect = steps.effect();
        Term work = energy("w", performance.compressorWork());
        Term rejection = steps.rejection();
        steps.ratios(effect, work);
        sizing.ifPresent(value -> steps.sizing(value, effect, work, rejection));
    }

    private Term effect() {
        return working.formula(
                "refrigerating effect",
                "q = h5 - h4",
                Basis.FIRST_LAW,
                energy("q", performance.refrigeratingEffect()),
                enthalpy("h5", states.evaporatorOutlet().specificEnthalpy()),
                enthalpy("h4", states.evaporatorInlet().specificEnthalpy()));
    }

    private Term rejection() {
        String from = spec.losses().dischargeLineHeatLoss() != 0 ? "h2c" : "h2";
        return working.formula(
                "heat rejected",
                "q_rejected = " + from + " - h3c",
                Basis.FIRST_LAW,
                energy("q_rejected", performance.heatRejectionPerMass()),
                enthalpy(from, states.condenserInlet().specificEnthalpy()),
                enthalpy("h3c", states.condenserOutlet().specificEnthalpy()));
    }

    private void ratios(Term effect, Term work) {
        Term coefficient = working.formula(
                "coefficient of performance",
                "COP = q / w",
                Basis.DEFINITION,
                ratio("COP", performance.coefficientOfPerformance()),
                effect,
                work);
        working.formula(
                "energy efficiency ratio in Btu/h per W",
                "EER = " + String.format(Locale.ROOT, "%.9f", Constants.BTU_PER_HOUR_PER_WATT) + " * COP",
                "NIST Special Publication 811",
                ratio("EER", performance.energyEfficiencyRatio()),
                coefficient);
    }

    private void sizing(Sizing sizing, Term effect, Term work, Term rejection) {
        Term volume = specificVolume("v1", states.compressorInlet().specificVolume());
        Term mass = massFlow("m", sizing.massFlow());
        massFlowFromSize(mass, volume, effect);
        if (spec.size().orElseThrow().given() != Size.Given.REFRIGERATING_CAPACITY) {
            working.formula(
                    "refrigerating capacity",
                    "Q = m * q",
                    Basis.FIRST_LAW,
                    power("Q", sizing.refrigeratingCapacity()),
                    mass,
                    effect);
        }
        Term power = working.formula(
                "compressor power", "P = m * w", Basis.FIRST_LAW, power("P", sizing.compressorPower()), mass, work);
        if (spec.compressor().kind() == CompressorKind.OPEN) {
            spec.compressor()
                    .motorEfficiency()
                    .ifPresent(motor -> working.formula(
                            "electrical power",
                            "P_electrical = P / eta_motor",
                            Basis.DEFINITION,
                            power("P_electrical", sizing.electricalPower().orElseThrow()),
                            power,
                            ratio("eta_motor", motor)));
        }
        working.formula(
                "heat rejected",
                "Q_rejected = m * q_rejected",
                Basis.FIRST_LAW,
                power("Q_rejected", sizing.heatRejected()),
                mass,
                rejection);
        working.formula(
                "volume flow drawn in",
                "V1 = m * v1",
                Basis.DEFINITION,
                volumeFlow("V1", sizing.suctionVolumeFlow()),
                mass,
                volume);
    }

    private void massFlowFromSize(Term mass, Term volume, Term effect) {
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
    }
}
