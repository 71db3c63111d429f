package io.loopstate.engine.transport;

import io.loopstate.engine.fluid.JsonObject;

/**
 * Generalized multiparameter correlation of dilute gases and dense fluids from critical constants, acentric factor, dipole
 * moment and association factor. Chung, Ajlan, Lee and Starling, Ind. Eng. Chem. Res. 27, 671 (1988), viscosity part; in the
 * units of the paper: poise, g/mol, cm3/mol, debye.
 */
final class ChungViscosity implements Viscosity {
    /** Coefficients a0 to a3 of A1 to A10: A = a0 + a1 omega + a2 mu_r^4 + a3 kappa. */
    private static final double[][] A = {
        {6.32402, 50.4119, -51.6801, 1189.02},
        {0.0012102, -0.0011536, -0.0062571, 0.037283},
        {5.28346, 254.209, -168.481, 3898.27},
        {6.62263, 38.0957, -8.46414, 31.4178},
        {19.7454, 7.63034, -14.3544, 31.5267},
        {-1.89992, -12.5367, 4.98529, -18.1507},
        {24.2745, 3.44945, -11.2913, 69.3466},
        {0.79716, 1.11764, 0.012348, -4.11661},
        {-0.23816, 0.067695, -0.8163, 4.02528},
        {0.068629, 0.34793, 0.59256, -0.72663},
    };

    private static final double PASCAL_SECOND_PER_POISE = 0.1;
    private static final double CUBIC_CENTIMETRES = 1e6;
    private static final double REDUCED_TEMPERATURE = 1.2593;

    private final double criticalTemperature;
    private final double criticalDensity;
    private final double gasFactor;
    private final double denseFactor;
    private final double[] a;

    ChungViscosity(JsonObject json) {
        criticalTemperature = json.number("Tc");
        criticalDensity = json.number("rhoc");
        double molarMass = 1000 * json.number("molarMass");
        double criticalVolume = CUBIC_CENTIMETRES / criticalDensity;
        double volumeFactor = Math.pow(criticalVolume, -2.0 / 3);
        double omega = json.number("acentricFactor");
        double kappa = json.number("kappa");
        double dipole = 131.3 * json.number("dipoleMoment") / Math.sqrt(criticalVolume * criticalTemperature);
        double dipole4 = Math.pow(dipole, 4);
        double shape = 1 - 0.2756 * omega + 0.059035 * dipole4 + kappa;
        gasFactor = 4.0785e-5 * Math.sqrt(molarMass) * shape * volumeFactor;
        denseFactor = 36.344e-6 * Math.sqrt(molarMass * criticalTemperature) * volumeFactor;
        a = new double[A.length];
        for (int k = 0; k < a.length; k++) {
            a[k] = A[k][0] + A[k][1] * omega + A[k][2] * dipole4 + A[k][3] * kappa;
        }
    }

    @Override
    public double at(Point point) {
        double temperature = point.state().temperature();
        double reduced = REDUCED_TEMPERATURE * temperature / criticalTemperature;
        double y = point.state().density() / criticalDensity / 6;
        double free = 1 - y;
        double g1 = (1 - y / 2) / (free * free * free);
        double g2 = (a[0] * -Math.expm1(-a[3] * y) / y + a[1] * g1 * Math.exp(a[4] * y) + a[2] * g1)
                / (a[0] * a[3] + a[1] + a[2]);
        double dilute = gasFactor * Math.sqrt(temperature) / collisionIntegral(reduced);
        double dense = denseFactor * a[6] * y * y * g2 * Math.exp(a[7] + a[8] / reduced + a[9] / (reduced * reduced));
        return PASCAL_SECOND_PER_POISE * (dilute * (1 / g2 + a[5] * y) + dense);
    }

    /** With the periodic term that the method keeps. */
    private static double collisionIntegral(double reduced) {
        return CollisionIntegral.neufeld(reduced)
                - 6.435e-4 * Math.pow(reduced, 0.14874) * Math.sin(18.0323 * Math.pow(reduced, -0.7683) - 7.27371);
    }
}
