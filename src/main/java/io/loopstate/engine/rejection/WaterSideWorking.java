package io.loopstate.engine.rejection;

import io.loopstate.engine.cycle.Basis;
import io.loopstate.engine.cycle.QuantityKind;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.cycle.Step.Term;
import io.loopstate.engine.cycle.Working;
import java.util.List;

/** The working of the water of a coil. */
final class WaterSideWorking {
    private WaterSideWorking() {}

    static List<Step> of(WaterSide.Spec spec, WaterSide.Balance balance, WaterSide.Figures figures) {
        Working working = new Working(spec.water());
        Term p = Working.pressure("p", spec.pressure());
        balance.search()
                .ifPresent(search -> working.search(
                        "flow of the entering water, whose temperature and density depend on it",
                        "V1 rho1(m) - m = 0",
                        search,
                        "m",
                        QuantityKind.MASS_FLOW));
        Term h1 = enthalpy(working, spec, "entering", "1", p, balance.entering());
        Term h2 = enthalpy(working, spec, "leaving", "2", p, balance.leaving());
        Term rho = spec.brine().isPresent()
                ? Working.density("rho1", balance.entering().density())
                : working.property(
                        "density of the entering water",
                        "rho1 = rho(p, T1)",
                        Working.density("rho1", balance.entering().density()),
                        p,
                        Working.temperature("T1", figures.entering()));
        Term volume = Working.volumeFlow("V1", figures.volumeFlow());
        Term flow = working.formula(
                "flow", "m = V1 rho1", Basis.DEFINITION, Working.massFlow("m", figures.massFlow()), volume, rho);
        working.formula(
                "heat",
                spec.heating() ? "Q = m (h2 - h1)" : "Q = m (h1 - h2)",
                Basis.FIRST_LAW,
                Working.power("Q", figures.heat()),
                flow,
                h1,
                h2);
        working.formula(
                "the factor of the trade, about 500",
                "F = rho1 |h2 - h1| / |T2 - T1|",
                Basis.DEFINITION,
                Working.of("F", figures.factor(), QuantityKind.SENSIBLE_HEAT_FACTOR),
                rho,
                h1,
                h2,
                Working.difference("|T2 - T1|", figures.temperatureChange()));
        figures.tower()
                .ifPresent(tower -> working.formula(
                        "evaporation of the tower",
                        "m_evaporation = Q / latentHeat",
                        Basis.FIRST_LAW,
                        Working.massFlow("m_evaporation", tower.evaporation()),
                        Working.power("Q", figures.heat()),
                        Working.energy("latentHeat", figures.heat() / tower.evaporation())));
        return working.toList();
    }

    private static Term enthalpy(
            Working working, WaterSide.Spec spec, String words, String place, Term pressure, SideLiquid.At state) {
        if (spec.brine().isPresent()) {
            return working.formula(
                    "enthalpy of the " + words + " brine from 0 degC",
                    "h%1$s = cp (T%1$s - 273.15 K)".formatted(place),
                    "heat capacity given, taken as constant",
                    Working.energy("h" + place, state.specificEnthalpy()),
                    Working.of("cp", spec.brine().get().heatCapacity(), QuantityKind.SPECIFIC_HEAT_CAPACITY),
                    Working.temperature("T" + place, state.temperature()));
        }
        return working.property(
                "enthalpy of the " + words + " water",
                "h%1$s = h(p, T%1$s)".formatted(place),
                Working.enthalpy("h" + place, state.specificEnthalpy()),
                pressure,
                Working.temperature("T" + place, state.temperature()));
    }
}
