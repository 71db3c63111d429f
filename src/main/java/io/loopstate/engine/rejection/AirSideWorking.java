package io.loopstate.engine.rejection;

import io.loopstate.engine.air.AirState;
import io.loopstate.engine.cycle.Basis;
import io.loopstate.engine.cycle.QuantityKind;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.cycle.Step.Term;
import io.loopstate.engine.cycle.Working;
import io.loopstate.engine.rejection.AirSide.Coil;
import java.util.List;

/** The working of the air of a coil, in the direction that a class takes: states, flow, heat, and the factors of the trade. */
final class AirSideWorking {
    private AirSideWorking() {}

    static List<Step> of(AirSide.Spec spec, AirBalance balance, AirFigures figures) {
        Working working = new Working();
        balance.search()
                .ifPresent(search -> working.search(
                        "the dry bulb that is sought",
                        "Q(T) - Q = 0, the residual in watt",
                        search,
                        spec.leaving().dryBulb().isEmpty() ? "T2" : "T1",
                        QuantityKind.TEMPERATURE));
        Term h1 = state(working, "entering", "1", balance.entering());
        Term h2 = state(working, "leaving", "2", balance.leaving());
        Term v1 = Working.specificVolume("v1", balance.entering().specificVolume());
        Term volume = Working.volumeFlow("V1", figures.enteringVolumeFlow());
        Term flow = working.formula(
                "dry air", "m = V1 / v1", Basis.DEFINITION, Working.massFlow("m", figures.massFlow()), volume, v1);
        heat(working, spec, figures, flow, h1, h2, balance);
        Term factor = working.formula(
                "sensible factor of the entering air, the 1.08 of the trade",
                "F = cp / v1, cp = 1.006 + 1.86 W1",
                AirFactors.SOURCE,
                Working.of("F", figures.enteringFactors().sensible(), QuantityKind.SENSIBLE_HEAT_FACTOR),
                Working.of("cp", balance.entering().heatCapacity(), QuantityKind.SPECIFIC_HEAT_CAPACITY),
                v1);
        working.formula(
                "sensible heat by that factor; with the water that stays in the air it is a little less",
                "Q_F = F V1 |T2 - T1|",
                Basis.DEFINITION,
                Working.power(
                        "Q_F",
                        figures.enteringFactors().sensible()
                                * figures.enteringVolumeFlow()
                                * figures.temperatureChange()),
                factor,
                volume,
                Working.difference("|T2 - T1|", figures.temperatureChange()));
        figures.refrigerant().ifPresent(refrigerant -> refrigerant(working, figures, refrigerant));
        return working.toList();
    }

    private static Term state(Working working, String words, String place, AirState air) {
        Term t = Working.temperature("T" + place, air.dryBulb());
        Term w = Working.of("W" + place, air.humidityRatio(), QuantityKind.HUMIDITY_RATIO);
        working.formula(
                "volume of the " + words + " air per mass of dry air",
                "v%1$s = 287.042 T%1$s (1 + W%1$s / 0.621945) / p".formatted(place),
                MoistAirWorking.CHAPTER + "26" + MoistAirWorking.MEMORY,
                Working.specificVolume("v" + place, air.specificVolume()),
                t,
                w,
                Working.pressure("p", air.pressure()));
        return working.formula(
                "enthalpy of the " + words + " air per mass of dry air",
                "h%1$s = 1.006 t%1$s + W%1$s (2501 + 1.86 t%1$s), kJ, kg, degC".formatted(place),
                MoistAirWorking.CHAPTER + "30" + MoistAirWorking.MEMORY,
                Working.enthalpy("h" + place, air.specificEnthalpy()),
                t,
                w);
    }

    private static void heat(
            Working working, AirSide.Spec spec, AirFigures figures, Term flow, Term h1, Term h2, AirBalance balance) {
        Term fan = Working.power("P_fan", spec.fanPower());
        if (spec.coil() == Coil.CONDENSER) {
            working.formula(
                    "heat of the coil",
                    "Q = m (h2 - h1) - P_fan",
                    Basis.FIRST_LAW,
                    Working.power("Q", figures.heat()),
                    flow,
                    h2,
                    h1,
                    fan);
            return;
        }
        Term condensate = working.formula(
                "condensate",
                "m_w = m (W1 - W2)",
                Basis.DEFINITION,
                Working.massFlow("m_w", figures.condensate()),
                flow,
                Working.of("W1", balance.entering().humidityRatio(), QuantityKind.HUMIDITY_RATIO),
                Working.of("W2", balance.leaving().humidityRatio(), QuantityKind.HUMIDITY_RATIO));
        working.formula(
                "heat of the coil; the condensate leaves at the leaving dry bulb",
                "Q = m (h1 - h2) - m_w 4.186 t2 + P_fan, kJ, kg, degC",
                Basis.FIRST_LAW,
                Working.power("Q", figures.heat()),
                flow,
                h1,
                h2,
                condensate,
                Working.temperature("T2", balance.leaving().dryBulb()),
                fan);
        working.formula(
                "sensible heat",
                "Q_s = m (1.006 + 1.86 W2) (T1 - T2)",
                AirFactors.SOURCE,
                Working.power("Q_s", figures.sensibleHeat()),
                flow,
                Working.difference("T1 - T2", figures.temperatureChange()));
    }

    private static void refrigerant(Working working, AirFigures figures, AirFigures.Refrigerant refrigerant) {
        refrigerant.meanDifference().ifPresent(mean -> {
            Term difference = working.formula(
                    "logarithmic mean temperature difference",
                    "dT_m = (dT1 - dT2) / ln(dT1 / dT2)",
                    Basis.DEFINITION,
                    Working.difference("dT_m", mean),
                    Working.difference("dT1", refrigerant.enteringDifference()),
                    Working.difference("dT2", refrigerant.approach()));
            working.formula(
                    "conductance of the coil",
                    "UA = Q / dT_m",
                    Basis.DEFINITION,
                    Working.of("UA", refrigerant.conductance().orElseThrow(), QuantityKind.THERMAL_CONDUCTANCE),
                    Working.power("Q", figures.heat()),
                    difference);
        });
    }
}
