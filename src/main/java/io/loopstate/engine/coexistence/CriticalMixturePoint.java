package io.loopstate.engine.coexistence;

import io.loopstate.engine.eos.MixturePhase;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.numerics.LinearSystem;

/**
 * Critical point of a mixture: the quadratic and the cubic form of the Helmholtz energy vanish in one direction of the
 * amounts, Heidemann and Khalil (1980), AIChE J. 26, 769-779, eqs. 12 and 14.
 */
final class CriticalMixturePoint {
    private static final int MAX_ITERATIONS = 40;
    private static final int INVERSE_ITERATIONS = 12;
    private static final double STEP = 1e-5;
    /** Relative step of amounts along the direction. */
    private static final double ALONG = 0.01;

    private static final double LARGEST_STEP = 0.1;
    private static final double CONVERGED = 1e-11;

    private final Feed feed;

    private CriticalMixturePoint(Feed feed) {
        this.feed = feed;
    }

    /** Both forms. */
    private record Forms(double quadratic, double cubic) {}

    /** The critical point near a temperature (K) and a density (mol/m3). */
    static BoundaryPoint near(Feed feed, double temperature, double density) {
        return new CriticalMixturePoint(feed).solve(temperature, density);
    }

    private BoundaryPoint solve(double temperature, double density) {
        double t = temperature;
        double rho = density;
        double previous = Double.POSITIVE_INFINITY;
        for (int k = 0; k < MAX_ITERATIONS; k++) {
            Forms here = forms(t, rho);
            Forms warmer = forms(t * (1 + STEP), rho);
            Forms colder = forms(t * (1 - STEP), rho);
            Forms denser = forms(t, rho * (1 + STEP));
            Forms thinner = forms(t, rho * (1 - STEP));
            double[][] a = {
                {(warmer.quadratic - colder.quadratic) / (2 * STEP), (denser.quadratic - thinner.quadratic) / (2 * STEP)
                },
                {(warmer.cubic - colder.cubic) / (2 * STEP), (denser.cubic - thinner.cubic) / (2 * STEP)}
            };
            double[] step = {-here.quadratic, -here.cubic};
            LinearSystem.solve(a, step);
            double size = Math.max(Math.abs(step[0]), Math.abs(step[1]));
            double damping = Math.min(1, LARGEST_STEP / size);
            t *= 1 + damping * step[0];
            rho *= 1 + damping * step[1];
            if (size <= CONVERGED || size < 1e-8 && size > 0.5 * previous) {
                return new BoundaryPoint(
                        t, feed.merged().isotherm(t).pressure(rho).value(), rho, amounts(rho));
            }
            if (!(size < Double.POSITIVE_INFINITY)) {
                break;
            }
            previous = size;
        }
        throw EngineException.of(ErrorCode.NOT_CONVERGED, "critical point iteration of the mixture");
    }

    private double[] amounts(double rho) {
        double[] amounts = new double[feed.size()];
        for (int i = 0; i < amounts.length; i++) {
            amounts[i] = feed.moleFraction(i) * rho;
        }
        return amounts;
    }

    private Forms forms(double t, double rho) {
        MixturePhase phase = feed.phase(t, rho);
        double[] u = weakest(phase);
        double[] change = new double[u.length];
        for (int i = 0; i < u.length; i++) {
            change[i] = u[i] * Math.sqrt(feed.moleFraction(i));
        }
        double quadratic = form(phase, change, rho);
        double one = form(moved(t, rho, change, ALONG), change, rho) - form(moved(t, rho, change, -ALONG), change, rho);
        double two = form(moved(t, rho, change, 2 * ALONG), change, rho)
                - form(moved(t, rho, change, -2 * ALONG), change, rho);
        return new Forms(quadratic, (8 * one - two) / (12 * ALONG));
    }

    private MixturePhase moved(double t, double rho, double[] change, double by) {
        double[] amounts = amounts(rho);
        for (int i = 0; i < amounts.length; i++) {
            amounts[i] += by * rho * change[i];
        }
        return feed.phase(t, amounts);
    }

    /** {@code rho sum d_i d_j d ln f_i / d n_j}. */
    private static double form(MixturePhase phase, double[] change, double rho) {
        double sum = 0;
        for (int i = 0; i < change.length; i++) {
            for (int j = 0; j < change.length; j++) {
                double amount = phase.density() * phase.moleFraction(j);
                sum += change[i] * change[j] * phase.logFugacityByLogAmount(i, j) * rho / amount;
            }
        }
        return sum;
    }

    /** Eigenvector of the smallest eigenvalue of the symmetric matrix of second derivatives, by inverse iteration. */
    private double[] weakest(MixturePhase phase) {
        int n = feed.size();
        double[] v = new double[n];
        for (int i = 0; i < n; i++) {
            v[i] = Math.sqrt(feed.moleFraction(i)) * (1 + 0.1 * i);
        }
        for (int k = 0; k < INVERSE_ITERATIONS; k++) {
            double[][] a = new double[n][n];
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    a[i][j] =
                            phase.logFugacityByLogAmount(i, j) * Math.sqrt(feed.moleFraction(i) / feed.moleFraction(j));
                }
                a[i][i] += 1e-14;
            }
            LinearSystem.solve(a, v);
            double norm = 0;
            double sign = 0;
            for (int i = 0; i < n; i++) {
                norm += v[i] * v[i];
                sign += v[i] * Math.sqrt(feed.moleFraction(i));
            }
            double scale = Math.copySign(1 / Math.sqrt(norm), sign);
            for (int i = 0; i < n; i++) {
                v[i] *= scale;
            }
        }
        return v;
    }
}
