package io.loopstate.engine.compression;

import static io.loopstate.engine.cycle.Working.energy;
import static io.loopstate.engine.cycle.Working.enthalpy;
import static io.loopstate.engine.cycle.Working.entropy;
import static io.loopstate.engine.cycle.Working.massFlow;
import static io.loopstate.engine.cycle.Working.power;
import static io.loopstate.engine.cycle.Working.pressure;
import static io.loopstate.engine.cycle.Working.ratio;
import static io.loopstate.engine.cycle.Working.specificVolume;
import static io.loopstate.engine.cycle.Working.temperature;

import io.loopstate.engine.compression.CompressionProcess.Figures;
import io.loopstate.engine.compression.CompressionProcess.Flow;
import io.loopstate.engine.compression.CompressionProcess.IdealGas;
import io.loopstate.engine.compression.CompressionProcess.Isothermal;
import io.loopstate.engine.compression.CompressionProcess.Spec;
import io.loopstate.engine.cycle.Basis;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.cycle.Step.Term;
import io.loopstate.engine.cycle.Working;
import io.loopstate.engine.property.State;
import java.util.List;
import java.util.Optional;

/** The working of a compression. Numbers at the symbols: 1 inlet, 2s isentropic outlet, 2 outlet. */
final class ProcessWorking {
    static final String POLYTROPIC =
            "J. M. Schultz, J. Eng. Power 84 (1962) 69-82, equation 1; integrated as in R. A. Huntington,"
                    + " J. Eng. Gas Turbines Power 107 (1985) 872-876 (from memory)";
    static final String IDEAL = "ideal gas with constant heat capacities, for comparison: M. J. Moran, H. N. Shapiro,"
            + " Fundamentals of Engineering Thermodynamics, chapter 6 (from memory)";

    private final ProcessEnds ends;
    private final Figures figures;
    private final Working working;

    private ProcessWorking(ProcessEnds ends, Figures figures) {
        this.ends = ends;
        this.figures = figures;
        this.working = new Working(ends.equilibrium());
    }

    static List<Step> of(
            Spec spec,
            ProcessEnds ends,
            Figures figures,
            Optional<Isothermal> isothermal,
            Optional<IdealGas> idealGas,
            Optional<Flow> flow) {
        ProcessWorking steps = new ProcessWorking(ends, figures);
        Term p1 = pressure("p1", ends.inlet().pressure());
        Term p2 = pressure("p2", ends.outlet().pressure());
        steps.working.formula(
                "pressure ratio", "r = p2 / p1", Basis.DEFINITION, ratio("r", figures.pressureRatio()), p2, p1);
        Term h1 = steps.working.enthalpyOf("enthalpy at the suction", "1", p1, ends.inlet());
        steps.isentropic(p2, h1);
        steps.actual(spec.measure(), spec.heatLossFraction(), p2, h1);
        isothermal.ifPresent(steps::isothermal);
        idealGas.ifPresent(gas -> steps.idealGas(gas));
        flow.ifPresent(steps::flow);
        return steps.working.toList();
    }

    private void isentropic(Term p2, Term h1) {
        Term s1 = working.property(
                "entropy at the suction",
                "s1 = s(p1, h1)",
                entropy("s1", ends.inlet().specificEntropy()),
                h1);
        Term h2s = working.property(
                "enthalpy after compression at constant entropy",
                "h2s = h(p2, s1)",
                enthalpy("h2s", ends.isentropic().specificEnthalpy()),
                p2,
                s1);
        working.formula(
                "isentropic work", "ws = h2s - h1", Basis.FIRST_LAW, energy("ws", figures.isentropicWork()), h2s, h1);
    }

    private void actual(ProcessMeasure measure, double loss, Term p2, Term h1) {
        Term ws = energy("ws", figures.isentropicWork());
        Term w = energy("w", figures.work());
        Term q = energy("q", figures.heatLoss());
        switch (measure.kind()) {
            case ISENTROPIC_EFFICIENCY -> {
                working.formula("work", "w = ws / eta_s", Basis.DEFINITION, w, ws, ratio("eta_s", measure.value()));
                heat(q, loss, w);
                outlet(p2, h1, w, q);
                polytropic(w);
            }
            case POLYTROPIC_EFFICIENCY -> {
                working.formula(
                        "enthalpy at the end of the polytropic path, integrated over ln p",
                        "h2 = h1 + integral of (1 - f) v dp / eta_p",
                        POLYTROPIC,
                        enthalpy("h2", ends.outlet().specificEnthalpy()),
                        h1,
                        ratio("f", loss),
                        ratio("eta_p", measure.value()));
                work(loss, h1, w);
                efficiency(w, ws);
                discharge(p2);
            }
            case POLYTROPIC_INDEX -> index(measure.value(), p2, h1, w, q, ws);
            case DISCHARGE_TEMPERATURE -> {
                working.enthalpyOf("enthalpy at the discharge", "2", p2, ends.outlet());
                work(loss, h1, w);
                efficiency(w, ws);
                polytropic(w);
            }
        }
    }

    private void heat(Term q, double loss, Term w) {
        working.formula("heat given off by the shell", "q = f w", Basis.DEFINITION, q, ratio("f", loss), w);
    }

    private void outlet(Term p2, Term h1, Term w, Term q) {
        working.formula(
                "enthalpy at the discharge",
                "h2 = h1 + w - q",
                Basis.FIRST_LAW,
                enthalpy("h2", ends.outlet().specificEnthalpy()),
                h1,
                w,
                q);
        discharge(p2);
    }

    private void discharge(Term p2) {
        working.property(
                "discharge temperature",
                "T2 = T(p2, h2)",
                temperature("T2", figures.dischargeTemperature()),
                p2,
                enthalpy("h2", ends.outlet().specificEnthalpy()));
    }

    private void work(double loss, Term h1, Term w) {
        working.formula(
                "work",
                "w = (h2 - h1) / (1 - f)",
                Basis.FIRST_LAW,
                w,
                enthalpy("h2", ends.outlet().specificEnthalpy()),
                h1,
                ratio("f", loss));
        heat(energy("q", figures.heatLoss()), loss, w);
    }

    private void efficiency(Term w, Term ws) {
        working.formula(
                "isentropic efficiency",
                "eta_s = ws / w",
                Basis.DEFINITION,
                ratio("eta_s", figures.isentropicEfficiency()),
                ws,
                w);
    }

    private void polytropic(Term w) {
        figures.polytropicWork().ifPresent(value -> {
            Term wp = working.formula(
                    "polytropic work: the integral of v dp along the path of constant efficiency that ends at h2",
                    "wp = integral of v dp",
                    POLYTROPIC,
                    energy("wp", value));
            working.formula(
                    "polytropic efficiency",
                    "eta_p = wp / w",
                    Basis.DEFINITION,
                    ratio("eta_p", figures.polytropicEfficiency().orElseThrow()),
                    wp,
                    w);
        });
    }

    private void index(double index, Term p2, Term h1, Term w, Term q, Term ws) {
        State inlet = ends.inlet();
        Term n = ratio("n", index);
        Term r = ratio("r", figures.pressureRatio());
        Term v1 = working.property(
                "specific volume at the suction", "v1 = v(p1, h1)", specificVolume("v1", inlet.specificVolume()), h1);
        Term v2 = working.formula(
                "specific volume at the discharge",
                "v2 = v1 / r^(1/n)",
                Basis.DEFINITION,
                specificVolume("v2", ends.outlet().specificVolume()),
                v1,
                r,
                n);
        working.property(
                "discharge temperature", "T2 = T(p2, v2)", temperature("T2", figures.dischargeTemperature()), p2, v2);
        Term h2 = working.property(
                "enthalpy at the discharge",
                "h2 = h(p2, v2)",
                enthalpy("h2", ends.outlet().specificEnthalpy()),
                p2,
                v2);
        Term wp = working.formula(
                "polytropic work: the integral of v dp, exact for every fluid",
                index == 1 ? "wp = p1 v1 ln r" : "wp = n/(n-1) p1 v1 (r^((n-1)/n) - 1)",
                Basis.DEFINITION,
                energy("wp", figures.polytropicWork().orElseThrow()),
                n,
                pressure("p1", inlet.pressure()),
                v1,
                r);
        working.formula(
                "work: of a cooled cylinder the polytropic work, of an uncooled one the rise of the enthalpy",
                "w = max(wp, h2 - h1)",
                Basis.FIRST_LAW,
                w,
                wp,
                h2,
                h1);
        working.formula("heat given off", "q = w - (h2 - h1)", Basis.FIRST_LAW, q, w, h2, h1);
        efficiency(w, ws);
    }

    private void isothermal(Isothermal isothermal) {
        Term heat = working.property(
                "heat given off by reversible compression at the suction's temperature",
                "qT = T1 (s1 - s(p2, T1))",
                energy("qT", isothermal.heat()),
                temperature("T1", ends.inlet().temperature()));
        Term work = working.property(
                "isothermal work, the least there is",
                "wT = h(p2, T1) - h1 + qT",
                energy("wT", isothermal.work()),
                enthalpy("h1", ends.inlet().specificEnthalpy()),
                heat);
        working.formula(
                "isothermal efficiency",
                "eta_T = wT / w",
                Basis.DEFINITION,
                ratio("eta_T", isothermal.efficiency()),
                work,
                energy("w", figures.work()));
    }

    private void idealGas(IdealGas gas) {
        Term k = ratio("k", gas.heatCapacityRatio());
        Term r = ratio("r", figures.pressureRatio());
        Term t1 = temperature("T1", ends.inlet().temperature());
        Term constant = entropy("R", gas.gasConstant());
        working.formula(
                "isentropic work if the vapor were an ideal gas",
                "ws,ideal = k/(k-1) R T1 (r^((k-1)/k) - 1)",
                IDEAL,
                energy("ws,ideal", gas.isentropicWork()),
                k,
                constant,
                t1,
                r);
        working.formula(
                "isothermal work if the vapor were an ideal gas",
                "wT,ideal = R T1 ln r",
                IDEAL,
                energy("wT,ideal", gas.isothermalWork()),
                constant,
                t1,
                r);
    }

    private void flow(Flow flow) {
        Term m = massFlow("m", flow.massFlow());
        working.formula("power", "P = m w", Basis.FIRST_LAW, power("P", flow.power()), m, energy("w", figures.work()));
        working.formula(
                "heat given off",
                "Q = m q",
                Basis.FIRST_LAW,
                power("Q", flow.heatLoss()),
                m,
                energy("q", figures.heatLoss()));
    }
}
