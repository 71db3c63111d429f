package io.loopstate.engine.flash;

import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.property.Phase;

/** What a flash finds, on a molar basis. */
sealed interface Point {
    /** K. */
    double temperature();

    /** Pa. */
    double pressure();

    /** mol/m3. */
    double density();

    Phase phase();

    /**
     * One phase.
     *
     * @param pressure Pa; the one given or that of the saturation line, free of the rounding of a liquid's equation
     * @param quality 0 or 1 on the edge of the dome, NaN elsewhere
     */
    record OnePhase(Phase phase, MolarState state, double pressure, double quality) implements Point {
        OnePhase(Phase phase, MolarState state, double pressure) {
            this(phase, state, pressure, Double.NaN);
        }

        @Override
        public double temperature() {
            return state.temperature();
        }

        @Override
        public double density() {
            return state.density();
        }
    }

    /**
     * Coexisting phases.
     *
     * @param vaporFraction by mole
     * @param quality vapor fraction by mass, the same where both phases have one composition
     */
    record TwoPhase(MolarState liquid, MolarState vapor, double pressure, double vaporFraction, double quality)
            implements Point {
        @Override
        public Phase phase() {
            return Phase.TWO_PHASE;
        }

        @Override
        public double temperature() {
            return liquid.temperature();
        }

        @Override
        public double density() {
            return 1 / mix(1 / liquid.density(), 1 / vapor.density());
        }

        double mix(double ofLiquid, double ofVapor) {
            return ofLiquid + vaporFraction * (ofVapor - ofLiquid);
        }
    }
}
