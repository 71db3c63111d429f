package io.loopstate.engine.transport;

import io.loopstate.engine.eos.HelmholtzModel;
import io.loopstate.engine.eos.Isotherm;
import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.fluid.JsonObject;

/**
 * Crossover model of the critical enhancement, simplified. Olchowy and Sengers, Int. J. Thermophys. 10, 417 (1989).
 *
 * <p>X = pc rho / rhoc^2 / (dp/drho)_T, dX = X(T) - X(Tref) Tref/T, xi = xi0 (dX/Gamma)^(nu/gamma), y = qD xi;
 *
 * <p>W = (2/pi) ((1 - cv/cp) atan y + (cv/cp) y), W0 = (2/pi) (1 - exp(-1/(1/y + y^2 rhoc^2/(3 rho^2))));
 *
 * <p>lambda_c = rho cp RD k T (W - W0) / (6 pi eta xi), and zero where dX is not positive.
 */
final class CriticalEnhancement {
    /** Boltzmann's constant, J/K. */
    private static final double BOLTZMANN = 1.380649e-23;
    /** Reference temperature over the critical one where the source gives none. */
    private static final double REFERENCE_RATIO = 1.5;

    private final double criticalDensity;
    private final double susceptibilityUnit;
    /** Only its pressure is asked for, which reads final fields alone and is safe to share. */
    private final Isotherm reference;

    private final double qD;
    private final double xi0;
    private final double gammaAmplitude;
    private final double exponent;
    private final double rD;

    CriticalEnhancement(JsonObject json, HelmholtzModel model) {
        if (!json.text("form").equals("olchowy-sengers")) {
            throw new IllegalArgumentException("unknown critical enhancement " + json.text("form"));
        }
        double criticalTemperature = model.reducingTemperature();
        criticalDensity = model.reducingDensity();
        double criticalPressure =
                model.isotherm(criticalTemperature).pressure(criticalDensity).value();
        susceptibilityUnit = criticalPressure / (criticalDensity * criticalDensity);
        reference = model.isotherm(json.optionalNumber("Tref").orElse(REFERENCE_RATIO * criticalTemperature));
        qD = json.number("qD");
        xi0 = json.number("xi0");
        gammaAmplitude = json.number("Gamma");
        exponent = json.number("nu") / json.number("gamma");
        rD = json.number("RD");
    }

    /** @param viscosity Pa s */
    double at(MolarState state, double viscosity) {
        double density = state.density();
        double here = 1 / state.pressureByDensity();
        double there = 1 / reference.pressure(density).slope();
        double excess = susceptibilityUnit * density * (here - there * reference.temperature() / state.temperature());
        if (excess <= 0) {
            return 0;
        }
        double xi = xi0 * Math.pow(excess / gammaAmplitude, exponent);
        double y = qD * xi;
        double cp = state.isobaricHeatCapacity();
        double crossover = crossover(y, state.isochoricHeatCapacity() / cp, density / criticalDensity);
        return density * cp * rD * BOLTZMANN * state.temperature() * crossover / (6 * Math.PI * viscosity * xi);
    }

    /**
     * W - W0.
     *
     * @param heatCapacityRatio cv/cp
     * @param delta rho/rhoc
     */
    static double crossover(double y, double heatCapacityRatio, double delta) {
        double w = (1 - heatCapacityRatio) * Math.atan(y) + heatCapacityRatio * y;
        double w0 = -Math.expm1(-1 / (1 / y + y * y / (3 * delta * delta)));
        return 2 / Math.PI * (w - w0);
    }
}
