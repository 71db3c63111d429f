package io.loopstate.engine.compression;

import static io.loopstate.engine.cycle.Working.energy;
import static io.loopstate.engine.cycle.Working.enthalpy;
import static io.loopstate.engine.cycle.Working.pressure;
import static io.loopstate.engine.cycle.Working.ratio;
import static io.loopstate.engine.cycle.Working.temperature;

import io.loopstate.engine.compression.Staging.Stage;
import io.loopstate.engine.compression.Staging.Stages;
import io.loopstate.engine.cycle.Basis;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.cycle.Step.Term;
import io.loopstate.engine.cycle.Working;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import java.util.List;

/** The working of two stages. Numbers at the symbols: 1 and 2 first stage, 3 and 4 second stage. */
final class StagingWorking {
    private final Staging.Spec spec;
    private final Working working;

    private StagingWorking(Staging.Spec spec, Working working) {
        this.spec = spec;
        this.working = working;
    }

    static List<Step> of(
            Staging.Spec spec,
            Equilibrium equilibrium,
            State suction,
            Stages chosen,
            Stages optimum,
            Stages square,
            Stage single) {
        StagingWorking steps = new StagingWorking(spec, new Working(equilibrium));
        Working working = steps.working;
        Term p1 = pressure("p1", suction.pressure());
        Term p4 = pressure("p4", single.outlet().pressure());
        working.formula(
                "intermediate pressure by the square-root rule, exact for an ideal gas with perfect intercooling",
                "pi,rule = sqrt(p1 p4)",
                "R. Joel, Basic Engineering Thermodynamics, 5th edition, chapter 14 (from memory)",
                pressure("pi,rule", square.intermediatePressure()),
                p1,
                p4);
        working.property(
                "intermediate pressure of least work, by Brent's method over ln p with the real fluid",
                "pi,best = argmin(w)",
                pressure("pi,best", optimum.intermediatePressure()),
                p1,
                p4);
        Term low = steps.stage("first stage", "1", "2", chosen.low());
        working.property(
                "enthalpy after the intercooler",
                "h3 = h(pi, T3)",
                enthalpy("h3", chosen.cooled().specificEnthalpy()),
                pressure("pi", chosen.intermediatePressure()),
                temperature("T3", chosen.cooled().temperature()));
        working.formula(
                "heat given off in the intercooler",
                "qi = h2 - h3",
                Basis.FIRST_LAW,
                energy("qi", chosen.intercoolerHeat()),
                enthalpy("h2", chosen.low().outlet().specificEnthalpy()),
                enthalpy("h3", chosen.cooled().specificEnthalpy()));
        Term high = steps.stage("second stage", "3", "4", chosen.high());
        Term both = working.formula(
                "work of both stages", "w = w12 + w34", Basis.DEFINITION, energy("w", chosen.work()), low, high);
        Term one = energy("w1", single.work());
        working.formula(
                "work saved against one stage",
                "dw = w1 - w",
                Basis.DEFINITION,
                energy("dw", single.work() - chosen.work()),
                one,
                both);
        return working.toList();
    }

    private Term stage(String name, String from, String to, Stage stage) {
        boolean efficiency = spec.kind() == Staging.Kind.EFFICIENCY;
        working.enthalpyOf(
                "enthalpy at the inlet of the " + name,
                from,
                pressure("p" + from, stage.inlet().pressure()),
                stage.inlet());
        String symbol = "w" + from + to;
        Term work = working.property(
                "work of the " + name,
                efficiency
                        ? symbol + " = (h(p" + to + ", s" + from + ") - h" + from + ") / eta"
                        : symbol + " = n/(n-1) p" + from + " v" + from + " (r^((n-1)/n) - 1)",
                energy(symbol, stage.work()),
                ratio(efficiency ? "eta" : "n", from.equals("1") ? spec.lowStage() : spec.highStage()));
        working.property(
                "temperature after the " + name,
                "T" + to,
                temperature("T" + to, stage.outlet().temperature()),
                work);
        return work;
    }
}
