package io.loopstate.engine.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.loopstate.engine.error.EngineException;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Integrals and differential equations against closed solutions. */
class IntegrationTest {
    @Test
    void runningIntegralIsExactForPolynomials() {
        ChebyshevIntegral rule = new ChebyshevIntegral(6);
        double[] values = new double[rule.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = 7 * Math.pow(rule.point(i), 6) - 3 * Math.pow(rule.point(i), 2) + 1;
        }
        for (int i = 0; i < values.length; i++) {
            double x = rule.point(i);
            assertThat(rule.integral(i, values)).isCloseTo(Math.pow(x, 7) - Math.pow(x, 3) + x, Offset.offset(1e-14));
        }
    }

    @Test
    void runningIntegralOfAnExponential() {
        ChebyshevIntegral rule = new ChebyshevIntegral(12);
        double[] values = new double[rule.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = Math.exp(2 * rule.point(i));
        }
        assertThat(rule.integral(values.length - 1, values)).isCloseTo(Math.expm1(2) / 2, Offset.offset(1e-13));
        assertThat(rule.integral(0.3, values)).isCloseTo(Math.expm1(0.6) / 2, Offset.offset(1e-13));
    }

    /** y' = y cos x has the solution exp(sin x). */
    @Test
    void smoothEquationIsSolvedToItsTolerance() {
        double y = DormandPrince.integrate((x, value) -> value * Math.cos(x), 0, 1, 3, 1e-11, "test");
        assertThat(y).isCloseTo(Math.exp(Math.sin(3)), Offset.offset(1e-10));
    }

    /** A kink costs steps, not accuracy: y' = |x - 1/3| from 0 to 1. */
    @Test
    void kinkIsFound() {
        double y = DormandPrince.integrate((x, value) -> Math.abs(x - 1.0 / 3), 0, 0, 1, 1e-11, "test");
        assertThat(y).isCloseTo((1.0 / 9 + 4.0 / 9) / 2, Offset.offset(1e-10));
    }

    @Test
    void whatCannotBeIntegratedIsAnErrorWithItsName() {
        assertThatThrownBy(() -> DormandPrince.integrate((x, value) -> 1 / (x - 0.5), 0, 0, 1, 1e-11, "pole"))
                .isInstanceOf(EngineException.class)
                .hasMessage("pole");
    }
}
