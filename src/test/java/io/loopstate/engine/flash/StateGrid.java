package io.loopstate.engine.flash;

import io.loopstate.engine.error.Variable;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.Limits;
import io.loopstate.engine.property.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** States of a fluid all over its range: from the triple point to the critical point, and out to 1.1 times its limits. */
final class StateGrid {
    private static final int TEMPERATURES = 14;
    /** x = sqrt(1 - T/Tc) of the highest saturation temperature: 0.12 % below the critical point. */
    private static final double CLOSEST = 0.0355;

    private static final double WIDENING = 1.1;
    /** Pa; thinner still, energy and enthalpy hold no digit of the density. */
    private static final double THINNEST = 1e-3;
    /** Pa; above these the equations of hydrogen, helium and nitrogen are not physical at their low temperatures. */
    private static final Map<String, Double> LOWERED = Map.of("R-702", 5e7, "R-704", 1e7, "R-728", 1e9);

    private final Equilibrium equilibrium;
    private final List<State> states = new ArrayList<>();

    private StateGrid(Equilibrium equilibrium) {
        this.equilibrium = equilibrium;
    }

    /** The fluid with its limits of temperature and pressure raised by a tenth, to exercise the solvers at the edges. */
    static Fluid widened(Fluid fluid) {
        Limits limits = fluid.limits();
        return fluid.withLimits(new Limits(
                limits.minTemperature(),
                limits.maxTemperature() * WIDENING,
                LOWERED.getOrDefault(fluid.designation(), limits.maxPressure() * WIDENING)));
    }

    static StateGrid of(Equilibrium equilibrium) {
        StateGrid grid = new StateGrid(equilibrium);
        grid.addSaturatedAndAround();
        grid.addAboveCritical();
        return grid;
    }

    List<State> states() {
        return states;
    }

    private void addSaturatedAndAround() {
        double tc = equilibrium.refrigerant().criticalPoint().temperature();
        double tMin = equilibrium.refrigerant().limits().minTemperature();
        double pMax = equilibrium.refrigerant().limits().maxPressure();
        double end = Math.sqrt(1 - tMin / tc);
        for (int i = 0; i < TEMPERATURES; i++) {
            double x = i == TEMPERATURES - 1 ? CLOSEST : end * (TEMPERATURES - i) / TEMPERATURES;
            double t = i == 0 ? tMin : tc * (1 - x * x);
            Saturation saturation = equilibrium.saturationAtTemperature(t);
            states.add(saturation.bubble());
            states.add(saturation.dew());
            for (double quality : new double[] {0.1, 0.5, 0.9}) {
                states.add(equilibrium.state(Variable.TEMPERATURE, t, Variable.VAPOR_QUALITY, quality));
            }
            double saturated = saturation.dew().pressure();
            for (double share : new double[] {1e-3, 0.1, 0.5, 0.9, 0.999}) {
                add(Math.max(saturated * share, Math.min(THINNEST, 0.999 * saturated)), t);
            }
            for (double share : new double[] {1e-5, 1e-3, 0.1, 0.5, 1}) {
                add(saturated + (pMax - saturated) * share, t);
            }
        }
    }

    private void addAboveCritical() {
        double tc = equilibrium.refrigerant().criticalPoint().temperature();
        double pc = equilibrium.refrigerant().criticalPoint().pressure();
        double tMax = equilibrium.refrigerant().limits().maxTemperature();
        double pMax = equilibrium.refrigerant().limits().maxPressure();
        for (double share : new double[] {0, 0.002, 0.01, 0.05, 0.2, 0.4, 0.7, 1}) {
            double t = tc * 1.0012 + (tMax - tc * 1.0012) * share;
            for (double p : new double[] {
                1e-4 * pc, 0.01 * pc, 0.3 * pc, 0.9 * pc, 1.001 * pc, 1.3 * pc, 2 * pc, Math.sqrt(pc * pMax), pMax
            }) {
                if (p <= pMax) {
                    add(p, t);
                }
            }
        }
    }

    private void add(double pressure, double temperature) {
        states.add(equilibrium.atPressureTemperature(pressure, temperature));
    }
}
