package io.loopstate.engine.compression;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.numerics.ChebyshevIntegral;
import io.loopstate.engine.numerics.DormandPrince;
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.property.State;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * Compression along which each small rise of pressure has the same efficiency: dh = k v dp with the real specific volume, where
 * k = (1 - heat loss share) / polytropic efficiency. The equation is integrated over ln p, dh/d(ln p) = k p v(p, h), to 1e-11;
 * it needs none of the corrections that closed formulas make for a gas that is not ideal.
 *
 * <p>Dry vapor is smooth along the path: collocation at 7, 13, 25 and 49 Chebyshev points until two of them agree, by an
 * iteration that also finds k where the end is known; where none do, and for wet vapor, by steps of Dormand and Prince.
 *
 * <p>Sources: J. M. Schultz, J. Eng. Power 84 (1962) 69-82, equation 1, for the definition; R. A. Huntington, J. Eng. Gas
 * Turbines Power 107 (1985) 872-876, for the integration in small stages (both from memory).
 */
final class PolytropicPath {
    private static final double TOLERANCE = 1e-11;
    private static final double ROOT_TOLERANCE = 2e-11;
    private static final int MAX_ITERATIONS = 40;
    private static final List<ChebyshevIntegral> RULES = List.of(
            new ChebyshevIntegral(6), new ChebyshevIntegral(12), new ChebyshevIntegral(24), new ChebyshevIntegral(48));
    /** By which a rule may differ from the one before: its own error is smaller by a factor of hundreds at least. */
    private static final double AGREEMENT = 2e-9;

    private PolytropicPath() {}

    /**
     * Rise of the enthalpy, J/kg.
     *
     * @param outletPressure Pa
     * @param share k above
     */
    static double enthalpyRise(Equilibrium equilibrium, State inlet, double outletPressure, double share) {
        OptionalDouble area = area(equilibrium, inlet, outletPressure, integral -> share);
        return area.isPresent() ? share * area.getAsDouble() : stepped(equilibrium, inlet, outletPressure, share);
    }

    /** The state at the end. */
    static State end(Equilibrium equilibrium, State inlet, double outletPressure, double share) {
        double rise = enthalpyRise(equilibrium, inlet, outletPressure, share);
        return equilibrium.atPressureEnthalpy(outletPressure, inlet.specificEnthalpy() + rise);
    }

    /**
     * The share k of the path between two states: the integral of v dp is the rise of the enthalpy over k. Empty where the
     * enthalpy does not rise, since no path of this kind leads there.
     *
     * @param isentropicRise J/kg to the outlet's pressure at constant entropy, for the start
     */
    static OptionalDouble share(Equilibrium equilibrium, State inlet, State outlet, double isentropicRise) {
        double target = outlet.specificEnthalpy() - inlet.specificEnthalpy();
        if (!(target > 0)) {
            return OptionalDouble.empty();
        }
        OptionalDouble area = area(equilibrium, inlet, outlet.pressure(), integral -> target / integral);
        return area.isPresent()
                ? OptionalDouble.of(target / area.getAsDouble())
                : steppedShare(equilibrium, inlet, outlet.pressure(), target, isentropicRise);
    }

    /**
     * The integral of v dp along the path, J/kg; empty where collocation does not settle.
     *
     * @param share k from the integral so far
     */
    private static OptionalDouble area(
            Equilibrium equilibrium, State inlet, double outletPressure, DoubleUnaryOperator share) {
        if (inlet.phase() == Phase.TWO_PHASE) {
            return OptionalDouble.empty();
        }
        double length = Math.log(outletPressure / inlet.pressure());
        double first = inlet.pressure() * inlet.specificVolume();
        try {
            Solution coarse = settled(RULES.get(0), equilibrium, inlet, length, place -> first * length * place, share);
            for (int k = 1; k < RULES.size() && !Double.isNaN(coarse.area()); k++) {
                Solution fine = settled(RULES.get(k), equilibrium, inlet, length, coarse, share);
                if (Math.abs(fine.area() - coarse.area()) <= AGREEMENT * fine.area()) {
                    return OptionalDouble.of(fine.area());
                }
                coarse = fine;
            }
            return OptionalDouble.empty();
        } catch (EngineException exception) {
            // An iterate may leave the range where the path does not: the steps tell.
            return OptionalDouble.empty();
        }
    }

    /** A path at the points of a rule: the integral of v dp to the end, or NaN, which agrees with nothing; p v at the points. */
    private record Solution(ChebyshevIntegral rule, double length, double area, double[] slopes)
            implements DoubleUnaryOperator {
        /** The integral of v dp to a place between 0 and 1. */
        @Override
        public double applyAsDouble(double place) {
            return length * rule.integral(place, slopes);
        }
    }

    /** The path once it no longer changes. */
    private static Solution settled(
            ChebyshevIntegral rule,
            Equilibrium equilibrium,
            State inlet,
            double length,
            DoubleUnaryOperator start,
            DoubleUnaryOperator share) {
        double[] slopes = new double[rule.size()];
        double[] rises = new double[rule.size()];
        slopes[0] = inlet.pressure() * inlet.specificVolume();
        double area = start.applyAsDouble(1);
        for (int i = 1; i < rises.length; i++) {
            rises[i] = share.applyAsDouble(area) * start.applyAsDouble(rule.point(i));
        }
        for (int k = 0; k < MAX_ITERATIONS; k++) {
            for (int i = 1; i < slopes.length; i++) {
                double pressure = inlet.pressure() * Math.exp(length * rule.point(i));
                State state = equilibrium.atPressureEnthalpy(pressure, inlet.specificEnthalpy() + rises[i]);
                if (state.phase() == Phase.TWO_PHASE) {
                    return new Solution(rule, length, Double.NaN, slopes);
                }
                slopes[i] = pressure * state.specificVolume();
            }
            double next = length * rule.integral(rises.length - 1, slopes);
            double factor = length * share.applyAsDouble(next);
            for (int i = 1; i < rises.length; i++) {
                rises[i] = factor * rule.integral(i, slopes);
            }
            if (Math.abs(next - area) <= TOLERANCE * next) {
                return new Solution(rule, length, next, slopes);
            }
            area = next;
        }
        return new Solution(rule, length, Double.NaN, slopes);
    }

    private static double stepped(Equilibrium equilibrium, State inlet, double outletPressure, double share) {
        double start = Math.log(inlet.pressure());
        double end = Math.log(outletPressure);
        double scale = share * inlet.pressure() * inlet.specificVolume() * Math.abs(end - start);
        return DormandPrince.integrate(
                (x, rise) -> {
                    double pressure = Math.exp(x);
                    State state = equilibrium.atPressureEnthalpy(pressure, inlet.specificEnthalpy() + rise);
                    return share * pressure * state.specificVolume();
                },
                start,
                0,
                end,
                TOLERANCE * scale,
                "polytropic path");
    }

    private static OptionalDouble steppedShare(
            Equilibrium equilibrium, State inlet, double outletPressure, double target, double isentropicRise) {
        // The enthalpy rises nearly in proportion to k: the ratio of the rises is a start good to a few per cent, and
        // the
        // secant through two such starts converges in a few steps.
        double previous = target / isentropicRise;
        double miss = stepped(equilibrium, inlet, outletPressure, previous) - target;
        double share = previous * target / (target + miss);
        for (int k = 0; k < MAX_ITERATIONS; k++) {
            if (Math.abs(miss) <= ROOT_TOLERANCE * target) {
                return OptionalDouble.of(previous);
            }
            double next = stepped(equilibrium, inlet, outletPressure, share) - target;
            double step = next == miss ? 0 : next * (share - previous) / (next - miss);
            previous = share;
            miss = next;
            if (Math.abs(step) <= ROOT_TOLERANCE * share) {
                return OptionalDouble.of(share);
            }
            share = Math.max(share - step, share / 2);
        }
        throw EngineException.of(ErrorCode.NOT_CONVERGED, "polytropic efficiency");
    }
}
