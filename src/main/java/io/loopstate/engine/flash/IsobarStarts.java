package io.loopstate.engine.flash;

import io.loopstate.engine.eos.Isotherm;
import io.loopstate.engine.eos.MolarState;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Starting values of temperature and density on isobars above the critical pressure, where no saturation line tells where to
 * begin: a coarse grid of the fluid's own states, made when first needed. Answers never depend on it, only their cost.
 */
final class IsobarStarts {
    private static final int PRESSURES = 12;
    private static final int TEMPERATURES = 33;

    /** Temperature (K) and density (mol/m3) to start from. */
    record Start(double temperature, double density) {}

    private record Grid(double[] logPressure, MolarState[][] states) {}

    private final AtomicReference<Grid> grid = new AtomicReference<>();

    /** Near the state of a caloric value (molar) at a pressure (Pa) above the critical one. */
    Start near(FluidModel fluid, double pressure, Caloric caloric, double value) {
        Grid known = grid.get();
        if (known == null) {
            known = build(fluid);
            grid.set(known);
        }
        double x = Math.log(pressure);
        int i = 0;
        while (i < PRESSURES - 2 && x > known.logPressure[i + 1]) {
            i++;
        }
        double share = (x - known.logPressure[i]) / (known.logPressure[i + 1] - known.logPressure[i]);
        Start low = along(known.states[i], caloric, value);
        Start high = along(known.states[i + 1], caloric, value);
        return new Start(
                low.temperature + share * (high.temperature - low.temperature),
                low.density * Math.pow(high.density / low.density, share));
    }

    private static Start along(MolarState[] isobar, Caloric caloric, double value) {
        int lo = 0;
        int hi = isobar.length - 1;
        while (hi - lo > 1) {
            int middle = (lo + hi) >>> 1;
            if (caloric.of(isobar[middle]) < value) {
                lo = middle;
            } else {
                hi = middle;
            }
        }
        double a = caloric.of(isobar[lo]);
        double share = Math.min(Math.max((value - a) / (caloric.of(isobar[hi]) - a), 0), 1);
        return new Start(
                isobar[lo].temperature() + share * (isobar[hi].temperature() - isobar[lo].temperature()),
                1 / (1 / isobar[lo].density() + share * (1 / isobar[hi].density() - 1 / isobar[lo].density())));
    }

    private static Grid build(FluidModel fluid) {
        double[] logPressure = new double[PRESSURES];
        MolarState[][] states = new MolarState[PRESSURES][TEMPERATURES];
        double step = Math.log(fluid.maxPressure() / fluid.criticalPressure()) / (PRESSURES - 1);
        for (int i = 0; i < PRESSURES; i++) {
            // isobars lie closest together just above the critical one
            double share = (double) i * i / (PRESSURES - 1);
            logPressure[i] = Math.log(fluid.criticalPressure()) + step * share;
            double pressure = fluid.criticalPressure() * Math.exp(step * share) * (i == 0 ? 1 + 1e-6 : 1);
            for (int j = 0; j < TEMPERATURES; j++) {
                Isotherm isotherm = fluid.isotherm(temperature(fluid, j));
                states[i][j] = isotherm.state(PressureTemperature.density(fluid, isotherm, pressure, true));
            }
        }
        return new Grid(logPressure, states);
    }

    /** Closest together around the critical temperature. */
    private static double temperature(FluidModel fluid, int j) {
        double tc = fluid.criticalTemperature();
        double share = 2.0 * j / (TEMPERATURES - 1) - 1;
        double end = share < 0 ? fluid.minTemperature() : fluid.maxTemperature();
        return tc + (end - tc) * share * share;
    }
}
