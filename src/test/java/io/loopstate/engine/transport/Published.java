package io.loopstate.engine.transport;

import io.loopstate.engine.fluid.Fluid;
import java.math.BigDecimal;
import java.util.function.DoubleUnaryOperator;

/**
 * A printed value and the state it is printed for. Where no tolerance is stated, the value may be off by one unit in its last
 * printed digit and by what half a unit in the last digit of a rounded density makes of it.
 */
record Published(Fluid fluid, double temperature, String density, boolean rounded, double molarUnit, String value) {
    /** mol/m3 that stands for the limit of zero density. */
    private static final double DILUTE = 1e-9;

    static Published of(
            String designation,
            double temperature,
            String density,
            String densityUnit,
            String densityIs,
            String value) {
        Fluid fluid = Fixtures.fluid(designation);
        double molarUnit = densityUnit.equals("mol/dm3") ? 1000 : 1 / fluid.molarMass();
        return new Published(fluid, temperature, density, densityIs.equals("rounded"), molarUnit, value);
    }

    double molarDensity() {
        return Math.max(DILUTE, Double.parseDouble(density) * molarUnit);
    }

    double expected() {
        return Double.parseDouble(value);
    }

    /** Absolute, in the unit of the value. */
    double tolerance(Double stated, DoubleUnaryOperator correlation) {
        if (stated != null) {
            return stated * expected();
        }
        double tolerance = unitInLastPlace(value);
        if (rounded) {
            double half = 0.5 * unitInLastPlace(density) * molarUnit;
            double above = correlation.applyAsDouble(molarDensity() + half);
            double below = correlation.applyAsDouble(molarDensity() - half);
            tolerance += 0.5 * Math.abs(above - below);
        }
        return tolerance;
    }

    private static double unitInLastPlace(String printed) {
        return new BigDecimal(printed).ulp().doubleValue();
    }
}
