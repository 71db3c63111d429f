package io.loopstate.engine.cycle;

import static io.loopstate.engine.cycle.Working.difference;
import static io.loopstate.engine.cycle.Working.energy;
import static io.loopstate.engine.cycle.Working.enthalpy;
import static io.loopstate.engine.cycle.Working.entropy;
import static io.loopstate.engine.cycle.Working.pressure;
import static io.loopstate.engine.cycle.Working.pressureDrop;
import static io.loopstate.engine.cycle.Working.ratio;
import static io.loopstate.engine.cycle.Working.temperature;

import io.loopstate.engine.component.Compressor;
import io.loopstate.engine.component.CompressorKind;
import io.loopstate.engine.component.LineLosses;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.SaturationBasis;
import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.component.SuctionLineGain;
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
 * The working of a design cycle from state to state. Numbers at the symbols: 1 compressor inlet, 2s and 2 compressor outlet,
 * 2c condenser inlet, 3c condenser outlet, 3 valve inlet, 4 evaporator inlet, 5 evaporator outlet. The two levels are pe and
 * pc; a pressure has a number only where a pressure drop sets it apart from its level.
 */
final class DesignWorking {
    private final Spec spec;
    private final DesignStates states;
    private final LineLosses losses;
    private final Working working;

    private DesignWorking(Spec spec, DesignStates states, Working working) {
        this.spec = spec;
        this.states = states;
        this.losses = spec.losses();
        this.working = working;
    }

    static List<Step> of(Spec spec, DesignStates states, Performance performance, Optional<Sizing> sizing) {
        Working working = new Working(spec.equilibrium());
        DesignWorking steps = new DesignWorking(spec, states, working);
        Term low = steps.level("evaporating", "pe", "Te", spec.evaporating(), states.evaporatorOutlet());
        Term high = steps.level("condensing", "pc", "Tc", spec.condensing(), states.condenserInlet());
        Term h1 = steps.suction(low, steps.evaporatorOutlet(low));
        steps.compression(low, high, h1);
        steps.liquid(low, steps.condenserOutlet(high));
        PerformanceWorking.add(working, spec, states, performance, sizing);
        return working.toList();
    }

    private Term level(String name, String symbol, String given, SaturationLevel level, State at) {
        Term pressure = pressure(symbol, at.pressure());
        if (level.given() == Variable.TEMPERATURE && level.basis() == SaturationBasis.INLET_TO_DEW) {
            working.property(
                    name + " pressure at which the mean of inlet and dew temperature is the one given, by iteration",
                    symbol + ": (T4(" + symbol + ") + Tdew(" + symbol + ")) / 2 = " + given,
                    pressure,
                    temperature(given, level.value()),
                    temperature("T4", states.evaporatorInlet().temperature()),
                    temperature("Tdew", states.evaporating().dew()));
        } else if (level.given() == Variable.TEMPERATURE) {
            String basis = level.basis().name().toLowerCase(Locale.ROOT);
            working.property(
                    name + " pressure from the " + basis + " temperature",
                    symbol + " = p_" + basis + "(" + given + ")",
                    pressure,
                    temperature(given, level.value()));
        }
        return pressure;
    }

    private Term evaporatorOutlet(Term low) {
        State outlet = states.evaporatorOutlet();
        OutletCondition condition = spec.evaporatorOutlet();
        if (condition.given() == Variable.SUPERHEAT && condition.value() > 0) {
            Term dew = working.property(
                    "dew temperature at the evaporating pressure",
                    "Tdew = Tdew(pe)",
                    temperature("Tdew", states.evaporating().dew()),
                    low);
            working.formula(
                    "temperature at the evaporator outlet",
                    "T5 = Tdew + superheat",
                    Basis.DEFINITION,
                    temperature("T5", outlet.temperature()),
                    dew,
                    difference("superheat", condition.value()));
        }
        return working.enthalpyOf("enthalpy at the evaporator outlet", "5", low, outlet);
    }

    private Term suction(Term low, Term h5) {
        State inlet = states.compressorInlet();
        Term p1 = dropped("compressor inlet", "p1", inlet, low, "-", losses.suctionLinePressureDrop());
        Term h1 = enthalpy("h1", inlet.specificEnthalpy());
        SuctionLineGain gain = losses.suctionLineGain();
        switch (gain.given()) {
            case HEAT -> h1 = heated("compressor inlet", h1, h5, "q_suction", gain.value(), "+");
            case TEMPERATURE_RISE -> {
                working.formula(
                        "temperature at the compressor inlet",
                        "T1 = T5 + dT",
                        Basis.DEFINITION,
                        temperature("T1", inlet.temperature()),
                        temperature("T5", states.evaporatorOutlet().temperature()),
                        difference("dT", gain.value()));
                h1 = working.enthalpyOf("enthalpy at the compressor inlet", "1", p1, inlet);
            }
            case COMPRESSOR_INLET_TEMPERATURE ->
                h1 = working.enthalpyOf("enthalpy at the compressor inlet", "1", p1, inlet);
        }
        working.property(
                "entropy at the compressor inlet",
                "s1 = s(%s, h1)".formatted(p1.symbol()),
                entropy("s1", inlet.specificEntropy()),
                p1,
                h1);
        return h1;
    }

    private void compression(Term low, Term high, Term h1) {
        Compressor.Compression compression = states.compression();
        Term p1 = losses.suctionLinePressureDrop() == 0
                ? low
                : pressure("p1", compression.inlet().pressure());
        Term p2 =
                dropped("compressor outlet", "p2", compression.outlet(), high, "+", losses.dischargeLinePressureDrop());
        working.formula(
                "pressure ratio, absolute",
                "r = %s / %s".formatted(p2.symbol(), p1.symbol()),
                Basis.DEFINITION,
                ratio("r", p2.value() / p1.value()),
                p2,
                p1);
        Term h2s = working.property(
                "enthalpy after isentropic compression",
                "h2s = h(%s, s1)".formatted(p2.symbol()),
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
                efficiency());
        Term h2 = enthalpy("h2", compression.outlet().specificEnthalpy());
        outlet(compression, h1, h2, work);
        working.property(
                "discharge temperature",
                "T2 = T(%s, h2)".formatted(p2.symbol()),
                temperature("T2", compression.outlet().temperature()),
                p2,
                h2);
        if (losses.dischargeLineHeatLoss() != 0) {
            Term h2c = enthalpy("h2c", states.condenserInlet().specificEnthalpy());
            heated("condenser inlet", h2c, h2, "q_discharge", losses.dischargeLineHeatLoss(), "-");
        }
    }

    /** Of a hermetic compressor with a known motor the product of both efficiencies. */
    private Term efficiency() {
        Term efficiency = ratio("eta", spec.compressor().effectiveEfficiency());
        if (spec.compressor().kind() == CompressorKind.HERMETIC) {
            spec.compressor()
                    .motorEfficiency()
                    .ifPresent(motor -> working.formula(
                            "efficiency with the motor in the refrigerant",
                            "eta = eta_s * eta_motor",
                            Basis.DEFINITION,
                            efficiency,
                            ratio("eta_s", spec.compressor().isentropicEfficiency()),
                            ratio("eta_motor", motor)));
        }
        return efficiency;
    }

    private void outlet(Compressor.Compression compression, Term h1, Term h2, Term work) {
        String name = "enthalpy at the compressor outlet";
        if (compression.heatLoss() == 0) {
            working.formula(name, "h2 = h1 + w", Basis.FIRST_LAW, h2, h1, work);
            return;
        }
        Term loss = working.formula(
                "heat given off by the shell",
                "q_shell = f * w",
                Basis.DEFINITION,
                energy("q_shell", compression.heatLoss()),
                ratio("f", spec.compressor().heatLossFraction()),
                work);
        working.formula(name, "h2 = h1 + w - q_shell", Basis.FIRST_LAW, h2, h1, work, loss);
    }

    private Term condenserOutlet(Term high) {
        State outlet = states.condenserOutlet();
        String place = states.transcritical() ? "gas cooler outlet" : "condenser outlet";
        Term p3 = dropped(place, "p3c", outlet, high, "-", losses.condenserPressureDrop());
        OutletCondition condition = spec.condenserOutlet();
        if (condition.given() == Variable.SUBCOOLING && condition.value() > 0) {
            Term bubble = working.property(
                    "bubble temperature at the condenser outlet",
                    "Tbubble = Tbubble(%s)".formatted(p3.symbol()),
                    temperature("Tbubble", outlet.temperature() + condition.value()),
                    p3);
            working.formula(
                    "temperature at the condenser outlet",
                    "T3c = Tbubble - subcooling",
                    Basis.DEFINITION,
                    temperature("T3c", outlet.temperature()),
                    bubble,
                    difference("subcooling", condition.value()));
        }
        return working.enthalpyOf("enthalpy at the " + place, "3c", p3, outlet);
    }

    private void liquid(Term low, Term h3c) {
        Term h3 = losses.liquidLineHeatGain() == 0
                ? h3c
                : heated(
                        "valve inlet",
                        enthalpy("h3", states.valveInlet().specificEnthalpy()),
                        h3c,
                        "q_liquid",
                        losses.liquidLineHeatGain(),
                        "+");
        State inlet = states.evaporatorInlet();
        Term h4 = working.formula(
                "enthalpy behind the valve, throttled",
                "h4 = " + h3.symbol(),
                Basis.FIRST_LAW,
                enthalpy("h4", inlet.specificEnthalpy()),
                h3);
        Term p4 = dropped("evaporator inlet", "p4", inlet, low, "+", losses.evaporatorPressureDrop());
        if (inlet.saturated()) {
            working.property(
                    "vapor quality behind the valve",
                    "x4 = x(%s, h4)".formatted(p4.symbol()),
                    ratio("x4", inlet.vaporQuality()),
                    p4,
                    h4);
        }
    }

    /** The pressure at a place, by a step if a drop sets it apart from its level. */
    private Term dropped(String place, String symbol, State state, Term level, String sign, double drop) {
        if (drop == 0) {
            return level;
        }
        return working.formula(
                "pressure at the " + place,
                "%s = %s %s dp_%s".formatted(symbol, level.symbol(), sign, symbol.substring(1)),
                Basis.DEFINITION,
                pressure(symbol, state.pressure()),
                level,
                pressureDrop("dp_" + symbol.substring(1), drop));
    }

    /** The enthalpy at the end of a line, by a step also where no heat is exchanged. */
    private Term heated(String place, Term result, Term from, String symbol, double heat, String sign) {
        String name = "enthalpy at the " + place;
        if (heat == 0) {
            return working.formula(name, result.symbol() + " = " + from.symbol(), Basis.FIRST_LAW, result, from);
        }
        return working.formula(
                name,
                "%s = %s %s %s".formatted(result.symbol(), from.symbol(), sign, symbol),
                Basis.FIRST_LAW,
                result,
                from,
                energy(symbol, heat));
    }
}
