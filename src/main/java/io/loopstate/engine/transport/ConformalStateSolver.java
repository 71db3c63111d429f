package io.loopstate.engine.transport;

import io.loopstate.engine.eos.Derivatives;
import io.loopstate.engine.eos.HelmholtzModel;
import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.fluid.Fluid;
import java.util.Optional;

/**
 * Finds the conformal state: the temperature and density at which the reference fluid has the residual Helmholtz energy
 * alphar and the compressibility factor Z of the fluid. Huber, Laesecke and Perkins, Ind. Eng. Chem. Res. 42, 3163 (2003).
 *
 * <p>Newton's method in ln T0 and ln rho0 starts from the state of equal reduced temperature and density; a step is limited,
 * and halved until it lessens the differences. In a liquid or a dense gas the state found lies close by.
 *
 * <p>In a dilute gas alphar and Z - 1 both shrink to the second virial coefficient and no longer fix two unknowns: the exact
 * state runs off to temperatures many times too low or too high, or does not exist. Therefore ln T0 is held within {@link
 * #FARTHEST} of the start, and where the exact state lies outside, the density is taken that differs least at the nearer
 * bound. That passes into the exact state without a jump and keeps the second virial coefficients matched.
 */
final class ConformalStateSolver {
    private static final int MAX_ITERATIONS = 60;
    private static final int MAX_HALVINGS = 40;
    /** Relative to alphar and Z - 1; the next step would change nothing. */
    private static final double CONVERGED = 1e-12;
    /** Z - 1 comes from a pressure, which has lost what lies below this. */
    private static final double ROUNDING = 1e-15;
    /** Times the allowed difference, where rounding in the reference fluid's equation ends the descent early. */
    private static final double STALLED = 1e4;
    /** Longest step in ln T0 or ln rho0, and the one that no longer matters. */
    private static final double LONGEST_STEP = 0.2;

    private static final double SHORTEST_STEP = 1e-10;

    /** Every liquid and every gas above 0.7 of the critical density in the catalog needs less, but hot R-14. */
    static final double FARTHEST = 0.2;

    /** Bound of ln rho0 where ln T0 is at its own. */
    private static final double FARTHEST_DENSITY = 1.5;

    private final HelmholtzModel fluid;
    private final HelmholtzModel reference;
    private final String name;
    private final double temperatureRatio;
    private final double densityRatio;

    ConformalStateSolver(Fluid fluid, Fluid referenceFluid) {
        this.fluid = fluid.model();
        this.reference = referenceFluid.model();
        this.name = "conformal state of " + fluid.designation() + " in " + referenceFluid.designation();
        temperatureRatio = referenceFluid.criticalPoint().temperature()
                / fluid.criticalPoint().temperature();
        densityRatio = referenceFluid.criticalMolarDensity() / fluid.criticalMolarDensity();
    }

    ConformalState solve(MolarState state) {
        double z = state.pressure() / (state.density() * fluid.gasConstant() * state.temperature()) - 1;
        Target target = new Target(
                reference,
                state.temperature() * temperatureRatio,
                state.density() * densityRatio,
                state.residualEnergy(),
                z);
        return exact(target).orElseGet(() -> nearest(target)).state(target);
    }

    /** Newton's method; empty once it leaves the neighborhood or finds no way down. */
    private static Optional<Trial> exact(Target target) {
        Trial here = target.at(0, 0);
        for (int k = 0; k < MAX_ITERATIONS && Math.abs(here.x) < 2 * FARTHEST; k++) {
            if (here.size() <= target.allowed()) {
                return Math.abs(here.x) <= FARTHEST ? Optional.of(here) : Optional.empty();
            }
            Trial next = descend(here, here.newtonX(), here.newtonY(), target);
            if (next == here) {
                return here.size() <= STALLED * target.allowed() ? Optional.of(here) : Optional.empty();
            }
            here = next;
        }
        return Optional.empty();
    }

    private Trial nearest(Target target) {
        Trial cold = atTemperature(-FARTHEST, target);
        Trial hot = atTemperature(FARTHEST, target);
        return cold.square() < hot.square() ? cold : hot;
    }

    /** Newton's method in ln rho0 alone, in a bracket; the better end where alphar + Z has no root between. */
    private Trial atTemperature(double x, Target target) {
        Trial thin = target.at(x, -FARTHEST_DENSITY);
        Trial dense = target.at(x, FARTHEST_DENSITY);
        if (thin.sum() * dense.sum() > 0) {
            return Math.abs(thin.sum()) < Math.abs(dense.sum()) ? thin : dense;
        }
        Trial here = target.at(x, 0);
        for (int k = 0; k < MAX_ITERATIONS; k++) {
            if (Math.abs(here.sum()) <= target.allowed() || dense.y - thin.y <= SHORTEST_STEP) {
                return here;
            }
            if (here.sum() * thin.sum() > 0) {
                thin = here;
            } else {
                dense = here;
            }
            double y = here.y - here.sum() / here.sumY();
            here = target.at(x, y > thin.y && y < dense.y ? y : 0.5 * (thin.y + dense.y));
        }
        throw EngineException.of(ErrorCode.NOT_CONVERGED, name);
    }

    /** The step, limited and halved until the differences lessen; the same state where they never do. */
    private static Trial descend(Trial here, double dx, double dy, Target target) {
        double factor = Math.min(1, LONGEST_STEP / Math.max(Math.abs(dx), Math.abs(dy)));
        for (int k = 0; k < MAX_HALVINGS; k++) {
            Trial next = target.at(here.x + factor * dx, here.y + factor * dy);
            if (next.square() < here.square()) {
                return next;
            }
            factor /= 2;
        }
        return here;
    }

    /** What is sought, and where the search starts. */
    private record Target(HelmholtzModel reference, double temperature, double density, double energy, double z) {
        double allowed() {
            return CONVERGED * Math.max(Math.abs(energy), Math.abs(z)) + ROUNDING;
        }

        Trial at(double x, double y) {
            Derivatives r = reference.isotherm(temperature * Math.exp(x)).residual(density * Math.exp(y));
            return new Trial(x, y, r.value() - energy, r.d() - z, -r.t(), r.d(), -r.dt(), r.d() + r.dd());
        }
    }

    /**
     * A state of the reference fluid: its distance x, y from the start in ln T0, ln rho0, the differences in alphar and Z,
     * and their derivatives by x and y.
     */
    private record Trial(
            double x, double y, double energy, double z, double energyX, double energyY, double zX, double zY) {
        double size() {
            return Math.max(Math.abs(energy), Math.abs(z));
        }

        double square() {
            return energy * energy + z * z;
        }

        private double determinant() {
            return energyX * zY - energyY * zX;
        }

        double newtonX() {
            return (energyY * z - zY * energy) / determinant();
        }

        double newtonY() {
            return (zX * energy - energyX * z) / determinant();
        }

        double sum() {
            return energy + z;
        }

        double sumY() {
            return energyY + zY;
        }

        ConformalState state(Target target) {
            return new ConformalState(target.temperature * Math.exp(x), target.density * Math.exp(y));
        }
    }
}
