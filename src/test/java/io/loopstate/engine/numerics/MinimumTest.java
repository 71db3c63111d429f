package io.loopstate.engine.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Minima known in closed form. */
class MinimumTest {
    private static final double TOLERANCE = 1e-8;

    /** The derivative 1 - 2 / x of x - 2 ln x vanishes at 2; cosh is least at its center; the last has a kink. */
    @Test
    void findsWhatIsKnown() {
        assertThat(Minimum.brent(x -> x - 2 * Math.log(x), 0.1, 9, TOLERANCE, "test"))
                .isCloseTo(2, within(1e-6));
        assertThat(Minimum.brent(x -> Math.cosh(x - 0.3), -4, 1, TOLERANCE, "test"))
                .isCloseTo(0.3, within(1e-6));
        assertThat(Minimum.brent(x -> Math.abs(x + 1.25), -2, 5, TOLERANCE, "test"))
                .isCloseTo(-1.25, within(1e-7));
    }

    @Test
    void aMinimumAtAnEndIsThatEnd() {
        assertThat(Minimum.brent(x -> x, 1, 2, TOLERANCE, "test")).isCloseTo(1, within(1e-7));
        assertThat(Minimum.brent(x -> -x, 1, 2, TOLERANCE, "test")).isCloseTo(2, within(1e-7));
    }
}
