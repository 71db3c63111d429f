package io.loopstate.engine.compression;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import java.util.Optional;

/**
 * The state of a density on the isentrope through another: dry vapor by Newton's method in ln p over ln(density), nearly a
 * straight line, which for a mixture takes a tenth of the time of the general way; everything else by that.
 */
final class IsentropicDensity {
    private static final int MAX_ITERATIONS = 12;
    /** Of the density, relative: its rounding. */
    private static final double TOLERANCE = 1e-14;

    private IsentropicDensity() {}

    static State state(Equilibrium equilibrium, State from, double density) {
        Optional<State> fast = from.saturated() ? Optional.empty() : newton(equilibrium, from, density);
        return fast.orElseGet(
                () -> equilibrium.state(Variable.DENSITY, density, Variable.SPECIFIC_ENTROPY, from.specificEntropy()));
    }

    /** Empty where the path meets the dome, inside which there is no exponent, or leaves the range. */
    private static Optional<State> newton(Equilibrium equilibrium, State from, double density) {
        double logarithm = Math.log(from.pressure());
        State state = from;
        double before = Double.POSITIVE_INFINITY;
        for (int k = 0; k < MAX_ITERATIONS; k++) {
            double miss = Math.log(density / state.density());
            boolean done = Math.abs(miss) <= TOLERANCE || k > 2 && Math.abs(miss) >= before;
            if (Double.isNaN(state.isentropicExponent())) {
                return Optional.empty();
            }
            if (done) {
                return Optional.of(state);
            }
            before = Math.abs(miss);
            // d ln p / d ln(density) at constant entropy is the isentropic exponent.
            logarithm += state.isentropicExponent() * miss;
            try {
                state = equilibrium.atPressureEntropy(Math.exp(logarithm), from.specificEntropy());
            } catch (EngineException e) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }
}
