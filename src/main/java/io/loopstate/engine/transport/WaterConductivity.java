package io.loopstate.engine.transport;

import io.loopstate.engine.eos.Isotherm;
import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.JsonObject;

/**
 * Water: lambda = lambdaRef (l0 l1 + l2), Tb = T/Tref, r = rho/rhoRef. IAPWS R15-11 (2011), eqs. 15 to 24; the derivatives of
 * the density are those of the equation of state.
 */
final class WaterConductivity implements ThermalConductivity {
    /** Eq. 19: below it the enhancement is set to zero, since its terms cancel. */
    private static final double SMALLEST_Y = 1.2e-7;

    private final double referenceTemperature;
    private final double referenceDensity;
    private final double referencePressure;
    private final double referenceConductivity;
    private final double referenceViscosity;
    private final double gasConstant;
    private final double[] l;
    private final PowerSum[] rows;
    /** Only its pressure is asked for, which reads final fields alone and is safe to share. */
    private final Isotherm reference;

    private final double amplitude;
    private final double qD;
    private final double xi0;
    private final double gamma0;
    private final double exponent;

    WaterConductivity(JsonObject json, Fluid fluid) {
        referenceTemperature = json.number("Tref");
        referenceDensity = json.number("rhoMassRef") / fluid.molarMass();
        referencePressure = json.number("pRef");
        referenceConductivity = json.number("lambdaRef");
        referenceViscosity = json.number("etaRef");
        gasConstant = fluid.model().gasConstant();
        l = json.numbers("l");
        double[][] matrix = json.matrix("L");
        rows = new PowerSum[matrix.length];
        for (int i = 0; i < rows.length; i++) {
            rows[i] = PowerSum.polynomial(matrix[i]);
        }
        JsonObject critical = json.object("critical");
        reference = fluid.model().isotherm(critical.number("TRbar") * referenceTemperature);
        amplitude = critical.number("Lambda");
        qD = critical.number("qD");
        xi0 = critical.number("xi0");
        gamma0 = critical.number("Gamma0");
        exponent = critical.number("nu") / critical.number("gamma");
    }

    @Override
    public double at(Point point, double viscosity) {
        MolarState state = point.state();
        double tb = state.temperature() / referenceTemperature;
        double r = state.density() / referenceDensity;
        return referenceConductivity * (background(tb, r) + enhancement(state, tb, r, viscosity));
    }

    /** Eqs. 16 and 17. */
    private double background(double tb, double r) {
        double sum = 0;
        double power = 1;
        for (double term : l) {
            sum += term * power;
            power /= tb;
        }
        double exponentSum = 0;
        double inverse = 1;
        for (PowerSum row : rows) {
            exponentSum += inverse * row.at(r - 1);
            inverse *= 1 / tb - 1;
        }
        return Math.sqrt(tb) / sum * Math.exp(r * exponentSum);
    }

    /** Eqs. 18 to 24. */
    private double enhancement(MolarState state, double tb, double r, double viscosity) {
        double unit = referencePressure / referenceDensity;
        double here = unit / state.pressureByDensity();
        double there = unit / reference.pressure(state.density()).slope();
        double excess = r * (here - there * reference.temperature() / state.temperature());
        double xi = xi0 * Math.pow(Math.max(excess, 0) / gamma0, exponent);
        double y = qD * xi;
        if (y < SMALLEST_Y) {
            return 0;
        }
        double cp = state.isobaricHeatCapacity();
        double z = CriticalEnhancement.crossover(y, state.isochoricHeatCapacity() / cp, r) / y;
        return amplitude * r * (cp / gasConstant) * tb / (viscosity / referenceViscosity) * z;
    }
}
