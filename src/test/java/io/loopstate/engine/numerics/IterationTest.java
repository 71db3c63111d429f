package io.loopstate.engine.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.error.EngineException;
import org.junit.jupiter.api.Test;

/** The work of an iteration is counted, whether it converges or not. */
class IterationTest {
    private static final double TOLERANCE = 1e-12;

    @Test
    void stepsAndOutcomesAreCounted() {
        long steps = Iteration.BRACKET.steps();
        long converged = Iteration.BRACKET.converged();
        double root = Roots.brent(x -> x * x - 2, 0, 2, TOLERANCE, "test");
        assertThat(root * root).isCloseTo(2, within(1e-11));
        // Other tests may run at the same time.
        assertThat(Iteration.BRACKET.converged()).isGreaterThan(converged);
        assertThat(Iteration.BRACKET.steps()).isGreaterThan(steps + 3);
    }

    @Test
    void givingUpIsCounted() {
        long before = Iteration.BRACKET.givenUp();
        assertThatThrownBy(() ->
                        Roots.newton(x -> new Roots.ValueSlope(Double.NaN, 1), 0, 1, 0.5, TOLERANCE, true, "test"))
                .isInstanceOf(EngineException.class)
                .hasMessageContaining("test");
        assertThat(Iteration.BRACKET.givenUp()).isGreaterThan(before);
    }
}
