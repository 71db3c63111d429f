package io.loopstate.engine.coexistence;

import io.loopstate.engine.eos.MixturePhase;
import io.loopstate.engine.numerics.LinearSystem;
import java.util.ArrayList;
import java.util.List;

/**
 * Stability of a phase by the tangent plane criterion, Michelsen (1982), Fluid Phase Equilibria 9, 1-19: the phase is stable
 * where no other phase lies below its tangent plane of the Helmholtz energy per volume.
 *
 * <p>Stationary points are phases with the same fugacities; for amounts n the distance from the plane is {@code D / (R T) =
 * sum n_i (ln f_i(n) - ln f_i) - (p(n) - p) / (R T)}. They are looked for from a vapor, from the same composition on the
 * other side of the dome, and from liquids rich in each component.
 */
public final class TangentPlane {
    private static final int MAX_ITERATIONS = 60;
    private static final double LARGEST_STEP = 0.5;
    private static final double CONVERGED = 1e-9;
    /** Share of the favored component in a trial liquid. */
    private static final double RICH = 0.97;

    private static final double DENSE = 2.7;
    /** Depth below the plane that counts, relative to the density of the trial phase. */
    private static final double DEPTH = 1e-6;

    /** Reduced densities between which equations of state have loops with false phases in them. */
    private static final double LOOP_FROM = 0.7;

    private static final double LOOP_TO = 1.8;

    private TangentPlane() {}

    /** Whether no phase was found below the tangent plane of this one; amounts in mol/m3. */
    static boolean stable(Feed feed, double temperature, double[] amounts) {
        MixturePhase phase = feed.phase(temperature, amounts);
        for (double[] trial : trials(feed, phase)) {
            if (depth(feed, phase, trial) < -DEPTH) {
                return false;
            }
        }
        return true;
    }

    /** The same of the overall composition at a density (mol/m3). */
    public static boolean stable(Feed feed, double temperature, double density) {
        double[] amounts = new double[feed.size()];
        for (int i = 0; i < amounts.length; i++) {
            amounts[i] = feed.moleFraction(i) * density;
        }
        return stable(feed, temperature, amounts);
    }

    private static List<double[]> trials(Feed feed, MixturePhase phase) {
        int n = feed.size();
        double reducing = feed.merged().reducingDensity();
        double pressure = Math.max(phase.reducedPressure(), 1e-3);
        List<double[]> trials = new ArrayList<>();
        double[] light = new double[n];
        double[] dense = new double[n];
        double[] thin = new double[n];
        double sum = 0;
        for (int i = 0; i < n; i++) {
            light[i] = phase.moleFraction(i) * feed.component(i).vaporPressure(phase.temperature());
            sum += light[i];
            dense[i] = phase.moleFraction(i) * DENSE * reducing;
            thin[i] = phase.moleFraction(i) * pressure;
        }
        for (int i = 0; i < n; i++) {
            light[i] *= pressure / sum;
        }
        trials.add(light);
        trials.add(thin);
        trials.add(dense);
        for (int k = 0; k < n; k++) {
            double[] rich = new double[n];
            for (int i = 0; i < n; i++) {
                double share = i == k ? RICH : (1 - RICH) / (n - 1);
                rich[i] = share * DENSE * reducing;
            }
            trials.add(rich);
        }
        return trials;
    }

    /** Distance over R T and the density of the stationary point, 0 where the trial runs back to the phase itself. */
    private static double depth(Feed feed, MixturePhase phase, double[] trial) {
        double reducing = feed.merged().reducingDensity();
        int n = trial.length;
        double[] log = Amounts.log(trial);
        for (int k = 0; k < MAX_ITERATIONS; k++) {
            MixturePhase here = feed.phase(phase.temperature(), Amounts.exp(log));
            double[][] a = new double[n][n];
            double[] b = new double[n];
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    a[i][j] = here.logFugacityByLogAmount(i, j);
                }
                b[i] = phase.logFugacity(i) - here.logFugacity(i);
            }
            double distance = distance(phase, here, b);
            LinearSystem.solve(a, b);
            double size = LinearSystem.largest(b);
            if (!(size < Double.POSITIVE_INFINITY)) {
                return 0;
            }
            if (size < CONVERGED) {
                double reduced = here.density() / reducing;
                return reduced > LOOP_FROM && reduced < LOOP_TO ? 0 : distance / here.density();
            }
            double damping = Math.min(1, LARGEST_STEP / size);
            for (int i = 0; i < n; i++) {
                log[i] += damping * b[i];
            }
        }
        return 0;
    }

    /** @param below ln f_i of the phase less that of the trial */
    private static double distance(MixturePhase phase, MixturePhase here, double[] below) {
        double sum = phase.reducedPressure() - here.reducedPressure();
        for (int i = 0; i < below.length; i++) {
            sum -= here.density() * here.moleFraction(i) * below[i];
        }
        return sum;
    }
}
