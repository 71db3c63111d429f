package io.loopstate.engine.transport;

import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.JsonObject;

/**
 * Water: eta = etaRef mu0(Tb) mu1(Tb, r), Tb = T/Tref, r = rho/rhoRef. IAPWS R12-08 (2008), eqs. 10 to 12. The critical
 * enhancement mu2 is taken as 1, as the release recommends for industrial use; it exceeds 2 % only within a few kelvin of the
 * critical point.
 */
final class WaterViscosity implements Viscosity {
    private final double referenceTemperature;
    private final double referenceDensity;
    private final double referenceViscosity;
    private final double[] h;
    private final double[] n;
    private final double[] i;
    private final double[] j;

    WaterViscosity(JsonObject json, Fluid fluid) {
        referenceTemperature = json.number("Tref");
        referenceDensity = json.number("rhoMassRef") / fluid.molarMass();
        referenceViscosity = json.number("etaRef");
        h = json.numbers("h");
        n = json.numbers("H");
        i = json.numbers("i");
        j = json.numbers("j");
    }

    @Override
    public double at(Point point) {
        double tb = point.state().temperature() / referenceTemperature;
        double r = point.state().density() / referenceDensity;
        double sum = 0;
        double power = 1;
        for (double term : h) {
            sum += term * power;
            power /= tb;
        }
        double[] inverse = powers(1 / tb - 1);
        double[] distance = powers(r - 1);
        double exponent = 0;
        for (int k = 0; k < n.length; k++) {
            exponent += n[k] * inverse[(int) i[k]] * distance[(int) j[k]];
        }
        return referenceViscosity * 100 * Math.sqrt(tb) / sum * Math.exp(r * exponent);
    }

    /** Powers 0 to 6, the highest of the release. */
    private static double[] powers(double x) {
        double[] powers = new double[7];
        powers[0] = 1;
        for (int k = 1; k < powers.length; k++) {
            powers[k] = powers[k - 1] * x;
        }
        return powers;
    }
}
