package io.loopstate.engine.rejection;

import io.loopstate.engine.air.AirState;
import io.loopstate.engine.air.EnthalpyDatum;
import io.loopstate.engine.air.MoistAir;
import io.loopstate.engine.air.WaterVapor;
import io.loopstate.engine.cycle.QuantityKind;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.cycle.Step.Term;
import io.loopstate.engine.cycle.Working;
import java.util.List;

/** The working of moist air: from dry bulb and humidity ratio to everything else. */
final class MoistAirWorking {
    static final String CHAPTER = "ASHRAE Handbook - Fundamentals 2017, chapter 1, equation ";
    static final String MEMORY = " (from memory)";

    private MoistAirWorking() {}

    static List<Step> of(MoistAir air, EnthalpyDatum datum) {
        Working working = new Working();
        AirState state = air.state();
        Term t = Working.temperature("T", state.dryBulb());
        Term p = Working.pressure("p", state.pressure());
        Term saturation = working.formula(
                "saturation pressure of water at the dry bulb",
                "p_ws = p_ws(T)",
                state.dryBulb() < WaterVapor.TRIPLE_POINT
                        ? "IAPWS R14-08 (2011), equation 6 (from memory)"
                        : "Wagner and Pruss, J. Phys. Chem. Ref. Data 31 (2002) 387, equation 2.5 (from memory)",
                Working.pressure("p_ws", air.saturationPressure()),
                t);
        Term factor = working.formula(
                "by how much more vapor air holds than empty space",
                "f = f(T, p)",
                "A. L. Buck, J. Appl. Meteorol. 20 (1981) 1527 (from memory)",
                Working.ratio("f", WaterVapor.enhancementFactor(state.dryBulb(), state.pressure())),
                t,
                p);
        humidity(working, state, p, saturation, factor);
        volumeAndEnthalpy(working, state, datum);
        working.formula(
                "wet bulb",
                "W = ((2501 - 2.326 t*) W_s(t*) - 1.006 (t - t*)) / (2501 + 1.86 t - 4.186 t*), kJ, kg, degC; below freezing"
                        + " W = ((2830 - 0.24 t*) W_s(t*) - 1.006 (t - t*)) / (2830 + 1.86 t - 2.1 t*)",
                CHAPTER + "33 and 35" + MEMORY,
                Working.temperature("t*", air.wetBulb()),
                t,
                humidityRatio(state));
        air.dewPoint()
                .ifPresent(dew -> working.formula(
                        "dew point",
                        "p_w = f(T_dew, p) p_ws(T_dew)",
                        CHAPTER + "36" + MEMORY,
                        Working.temperature("T_dew", dew),
                        Working.pressure("p_w", state.vaporPressure())));
        return working.toList();
    }

    private static Term humidityRatio(AirState state) {
        return Working.of("W", state.humidityRatio(), QuantityKind.HUMIDITY_RATIO);
    }

    private static void humidity(Working working, AirState state, Term p, Term saturation, Term factor) {
        Term w = humidityRatio(state);
        Term partial = working.formula(
                "partial pressure of the vapor",
                "p_w = p W / (0.621945 + W)",
                CHAPTER + "20" + MEMORY,
                Working.pressure("p_w", state.vaporPressure()),
                p,
                w);
        working.formula(
                "relative humidity",
                "phi = p_w / (f p_ws)",
                CHAPTER + "12" + MEMORY,
                Working.ratio("phi", state.relativeHumidity()),
                partial,
                factor,
                saturation);
    }

    static void volumeAndEnthalpy(Working working, AirState state, EnthalpyDatum datum) {
        Term t = Working.temperature("T", state.dryBulb());
        Term w = humidityRatio(state);
        Term volume = working.formula(
                "volume per mass of dry air",
                "v = 287.042 T (1 + W / 0.621945) / p",
                CHAPTER + "26" + MEMORY,
                Working.specificVolume("v", state.specificVolume()),
                t,
                w,
                Working.pressure("p", state.pressure()));
        working.formula(
                "enthalpy per mass of dry air",
                datum == EnthalpyDatum.ZERO_CELSIUS
                        ? "h = 1.006 t + W (2501 + 1.86 t), kJ, kg, degC"
                        : "h = 1.006 t + W (2501 + 1.86 t) + 1.006 * 17.778, kJ, kg, degC",
                CHAPTER + "30" + MEMORY,
                Working.enthalpy("h", state.specificEnthalpy() + datum.offset()),
                t,
                w);
        working.formula(
                "density of the mixture",
                "rho = (1 + W) / v",
                CHAPTER + "11" + MEMORY,
                Working.density("rho", state.density()),
                w,
                volume);
    }
}
