package io.loopstate.engine.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Integrals against those in closed form. */
class QuadratureTest {
    @Test
    void polynomialOfDegreeFifteenIsExact() {
        Quadrature.Integral integral = Quadrature.of(x -> Math.pow(x, 15) + 1, 0, 2, 1e-12);
        assertThat(integral.value()).isCloseTo(65536.0 / 16 + 2, within(1e-9));
        assertThat(integral.parts()).isEqualTo(2);
    }

    @Test
    void peakIsHalvedUntilItConverges() {
        // The integral of 1 / (x^2 + e^2) is atan(x / e) / e.
        double width = 1e-4;
        Quadrature.Integral integral = Quadrature.of(x -> 1 / (x * x + width * width), -1, 3, 1e-11);
        double exact = (Math.atan(3 / width) + Math.atan(1 / width)) / width;
        assertThat(integral.value()).isCloseTo(exact, within(1e-9 * exact));
        assertThat(integral.parts()).isGreaterThan(20);
    }

    @Test
    void integralWithoutBoundIsInfinite() {
        assertThat(Quadrature.of(x -> 1 / x, 0, 1, 1e-11).value()).isInfinite();
        assertThat(Quadrature.of(x -> x < 0.3 ? Double.POSITIVE_INFINITY : 1, 0, 1, 1e-11)
                        .value())
                .isInfinite();
    }

    /** At a point of the first estimate only, which halving never meets again; and where there is no number at all. */
    @Test
    void onePointWithoutBoundIsEnough() {
        double node = 0.5 + 0.5 * 0.183434642495649804939476;
        assertThat(Quadrature.of(x -> Math.abs(x - node) < 1e-6 ? Double.POSITIVE_INFINITY : 1, 0, 1, 1e-11)
                        .value())
                .isInfinite();
        assertThat(Quadrature.of(x -> x > 0.9 ? Double.NaN : 1, 0, 1, 1e-11).value())
                .isInfinite();
    }

    @Test
    void nothingHasNoIntegral() {
        assertThat(Quadrature.of(Math::exp, 2, 2, 1e-11)).isEqualTo(new Quadrature.Integral(0, 0));
    }
}
