package io.loopstate.engine.rejection;

import io.loopstate.engine.component.Compressor;
import io.loopstate.engine.component.CompressorKind;
import io.loopstate.engine.cycle.Basis;
import io.loopstate.engine.cycle.QuantityKind;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.cycle.Step.Term;
import io.loopstate.engine.cycle.Working;
import io.loopstate.engine.property.State;
import io.loopstate.engine.rejection.CondenserDuty.Machine;
import io.loopstate.engine.rejection.CondenserDuty.Totals;
import java.util.ArrayList;
import java.util.List;

/** The working of a duty. */
final class DutyWorking {
    private final Working working;
    private final CondenserDuty.Spec spec;
    private final DutyStates states;
    private final DutyFigures figures;

    private DutyWorking(CondenserDuty.Spec spec, DutyStates states, DutyFigures figures) {
        this.working = new Working(spec.equilibrium());
        this.spec = spec;
        this.states = states;
        this.figures = figures;
    }

    static List<Step> of(CondenserDuty.Spec spec, DutyStates states, DutyFigures figures) {
        DutyWorking steps = new DutyWorking(spec, states, figures);
        if (states.inlet().isPresent()) {
            steps.perMass();
        }
        steps.totals();
        return steps.working.toList();
    }

    private void perMass() {
        State inlet = states.inlet().orElseThrow().state();
        State outlet = states.outlet().orElseThrow().state();
        Term pressure = Working.pressure("p_c", inlet.pressure());
        states.compression().ifPresent(this::compression);
        Term in = working.enthalpyOf("enthalpy at the condenser's inlet", "_in", pressure, inlet);
        Term out = working.enthalpyOf("enthalpy at the condenser's outlet", "_out", pressure, outlet);
        working.formula(
                "heat rejected per mass",
                "q = h_in - h_out",
                Basis.FIRST_LAW,
                Working.energy("q", inlet.specificEnthalpy() - outlet.specificEnthalpy()),
                in,
                out);
        states.parts().ifPresent(parts -> {
            part("desuperheating", "q_desuperheating = h_in - h_dew", parts.desuperheating());
            part("condensing", "q_condensing = h_dew - h_bubble", parts.condensing());
            part("subcooling", "q_subcooling = h_bubble - h_out", parts.subcooling());
            part("gasCooling", "q_gasCooling = h_in - h_out", parts.gasCooling());
        });
    }

    private void part(String name, String formula, double value) {
        if (value > 0) {
            working.formula(name, formula, Basis.FIRST_LAW, Working.energy("q_" + name, value));
        }
    }

    private void compression(Compressor.Compression compression) {
        Term h1 = working.enthalpyOf(
                "enthalpy of the vapor drawn in",
                "1",
                Working.pressure("p_e", compression.inlet().pressure()),
                compression.inlet());
        Term isentropic = Working.enthalpy("h2s", compression.isentropicOutlet().specificEnthalpy());
        Term h2s = working.property(
                "enthalpy after compression at constant entropy",
                "h2s = h(p_c, s1)",
                isentropic,
                Working.pressure("p_c", compression.outlet().pressure()),
                Working.entropy("s1", compression.inlet().specificEntropy()));
        double efficiency = spec.condensing()
                .orElseThrow()
                .compression()
                .orElseThrow()
                .model()
                .effectiveEfficiency();
        working.formula(
                "work put into the refrigerant",
                "w = (h2s - h1) / eta",
                Basis.DEFINITION,
                Working.energy("w", compression.work()),
                h2s,
                h1,
                Working.ratio("eta", efficiency));
    }

    private void totals() {
        Totals totals = figures.totals();
        Machine machine = spec.machine();
        if (totals.balanceHeat().isPresent()) {
            balance(totals, machine);
        }
        if (figures.perMass().isPresent()
                && totals.massFlow().isPresent()
                && totals.heatRejected().isPresent()) {
            working.formula(
                    "heat rejected",
                    "Q = m q",
                    Basis.FIRST_LAW,
                    Working.power("Q", totals.heatRejected().getAsDouble()),
                    Working.massFlow("m", totals.massFlow().getAsDouble()),
                    Working.energy("q", figures.perMass().get().heatRejection()));
        }
        if (totals.heatRejected().isPresent() && totals.refrigeratingCapacity().isPresent()) {
            working.formula(
                    "heat rejection factor",
                    "F = Q / Q_e",
                    Basis.DEFINITION,
                    Working.ratio("F", totals.heatRejectionFactor().orElseThrow()),
                    Working.power("Q", totals.heatRejected().getAsDouble()),
                    Working.power("Q_e", totals.refrigeratingCapacity().getAsDouble()));
        }
    }

    private void balance(Totals totals, Machine machine) {
        Term power = Working.power("P", machine.compressorPower().orElseThrow());
        if (machine.kind() == CompressorKind.OPEN && machine.motorEfficiency().isPresent()) {
            power = working.formula(
                    "power at the shaft",
                    "P = P_electrical eta_motor",
                    Basis.DEFINITION,
                    Working.power("P", DutyFigures.refrigerantPower(machine).orElseThrow()),
                    Working.power("P_electrical", machine.compressorPower().getAsDouble()),
                    Working.ratio("eta_motor", machine.motorEfficiency().getAsDouble()));
        }
        List<Term> terms = new ArrayList<>(
                List.of(Working.of("Q_e", machine.refrigeratingCapacity().orElseThrow(), QuantityKind.POWER), power));
        terms.add(Working.power("Q_shell", machine.shellHeatLoss()));
        terms.add(Working.power("Q_oil", machine.oilCoolerHeat()));
        working.formula(
                "heat left for the condenser by the balance of the machine",
                "Q_balance = Q_e + P - Q_shell - Q_oil",
                Basis.FIRST_LAW,
                Working.power("Q_balance", totals.balanceHeat().getAsDouble()),
                terms.toArray(Term[]::new));
    }
}
