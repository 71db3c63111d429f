package io.loopstate.engine.flash;

import io.loopstate.engine.eos.Isotherm;
import io.loopstate.engine.fluid.Auxiliaries;
import io.loopstate.engine.fluid.AuxiliaryEquation;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.numerics.Roots;

/**
 * Phase boundary of a pseudo-pure fluid: its published bubble and dew pressure equations, with the densities that the
 * equation of state has there.
 */
final class PseudoPureDome implements Dome {
    private static final double TOLERANCE = 1e-14;
    /** Share by which the start of a density iteration is bracketed; the auxiliary densities are good to 2 %. */
    private static final double AROUND = 0.25;

    private final Fluid fluid;

    PseudoPureDome(Fluid fluid) {
        this.fluid = fluid;
    }

    @Override
    public Edges atTemperature(double t) {
        return edges(t, t);
    }

    @Override
    public Edges atPressure(double p) {
        Auxiliaries auxiliaries = fluid.auxiliaries();
        return edges(
                temperature(auxiliaries.bubblePressure(), p, "bubble temperature"),
                temperature(auxiliaries.dewPressure(), p, "dew temperature"));
    }

    private double temperature(AuxiliaryEquation pressure, double p, String name) {
        double lower = fluid.limits().minTemperature();
        double upper = fluid.criticalPoint().temperature();
        if (p >= pressure.at(upper)) {
            return upper;
        }
        return Roots.brent(t -> Math.log(pressure.at(t) / p), lower, upper, TOLERANCE, name);
    }

    private Edges edges(double bubbleTemperature, double dewTemperature) {
        Auxiliaries auxiliaries = fluid.auxiliaries();
        double bubblePressure = auxiliaries.bubblePressure().at(bubbleTemperature);
        double dewPressure = auxiliaries.dewPressure().at(dewTemperature);
        return new Edges(
                bubbleTemperature,
                bubblePressure,
                density(bubbleTemperature, bubblePressure, auxiliaries.liquidDensity()),
                dewTemperature,
                dewPressure,
                density(dewTemperature, dewPressure, auxiliaries.vaporDensity()));
    }

    private double density(double t, double p, AuxiliaryEquation start) {
        Isotherm isotherm = fluid.model().isotherm(t);
        double guess = start.at(t);
        return DensitySolver.solve(isotherm, p, guess * (1 - AROUND), guess * (1 + AROUND), guess);
    }

    @Override
    public double minPressure() {
        double lowest = fluid.limits().minTemperature();
        return Math.max(
                fluid.auxiliaries().dewPressure().at(lowest),
                fluid.auxiliaries().bubblePressure().at(lowest));
    }

    @Override
    public double topTemperature() {
        return fluid.criticalPoint().temperature();
    }

    @Override
    public double topPressure() {
        return fluid.criticalPoint().pressure();
    }

    @Override
    public double thinVaporTemperature(double pressure) {
        return fluid.limits().minTemperature();
    }
}
