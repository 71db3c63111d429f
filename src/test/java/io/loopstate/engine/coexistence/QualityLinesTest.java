package io.loopstate.engine.coexistence;

import static org.assertj.core.api.Assertions.assertThat;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.fluid.Blend;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.Composition;
import io.loopstate.engine.fluid.Mixture;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * By physics: at constant quality the pressure of a mixture rises with temperature, and ever more slowly on a logarithmic scale. A
 * division that ran to a false phase of its model shows as a step.
 */
class QualityLinesTest {
    private static final Catalog CATALOG = Catalog.bundled();
    private static final int STEPS = 60;
    private static final double[] QUALITIES = {0.1, 0.43, 0.8};

    /** Those of the catalog, and some drawn at random that had steps. */
    static Stream<Mixture> mixtures() {
        return Stream.concat(
                CATALOG.blends().stream().map(Blend::mixture),
                Stream.of(
                                "R-1224yd(Z)/41 (50.6/49.4)",
                                "R-143a/124 (53.2/46.8)",
                                "R-41/C318 (73.5/26.5)",
                                "R-C318/143a (67.3/32.7)",
                                "R-601b/744 (31.5/68.5)",
                                "R-22/7146/124 (49.6/7/43.4)",
                                "R-134a/218/14 (34.8/10.8/54.4)",
                                "R-41/1336mzz(Z) (48.8/51.2)",
                                "R-3-1-10/13 (9.8/90.2)")
                        .map(Composition::parse)
                        .map(CATALOG::mixture));
    }

    @ParameterizedTest
    @MethodSource("mixtures")
    void pressureRisesWithoutSteps(Mixture mixture) {
        PhaseBoundary boundary = PhaseBoundaryTest.boundary(mixture);
        double critical = boundary.critical().temperature();
        double lowest = Math.max(boundary.minTemperature(), 0.45 * critical);
        int answered = 0;
        for (double quality : QUALITIES) {
            double last = Double.NaN;
            double rise = Double.NaN;
            for (int i = 0; i <= STEPS; i++) {
                double t = lowest + (0.97 * critical - lowest) * i / STEPS;
                double pressure = pressure(boundary, t, quality);
                double next = Math.log(pressure / last);
                if (Double.isFinite(rise) && Double.isFinite(next)) {
                    assertThat(next / rise)
                            .as("%s, quality %s at %s K", mixture.designation(), quality, t)
                            .isBetween(0.5, 1.2);
                    answered++;
                }
                rise = next;
                last = pressure;
            }
        }
        assertThat(answered).isGreaterThan(STEPS);
    }

    /** Found at random: between 0.978 and 0.989 of the critical temperature a liquid of this mixture is denser than at both ends of the line. */
    @Test
    void aLiquidMayBeDenserThanAtBothEnds() {
        Mixture mixture = CATALOG.mixture(Composition.parse("R-113/R-41 (40.4/59.6)"));
        PhaseBoundary boundary = PhaseBoundaryTest.boundary(mixture);
        double last = 0;
        for (double t = 340; t < 352; t += 0.5) {
            double pressure = pressure(boundary, t, 0.6447);
            assertThat(pressure - last).as("rise up to %s K", t).isPositive();
            last = pressure;
        }
    }

    /** NaN where it is refused, as where the liquid divides. */
    private static double pressure(PhaseBoundary boundary, double t, double quality) {
        try {
            return new MixtureSplit(boundary)
                    .at(SplitVariable.TEMPERATURE, t, SplitVariable.QUALITY, quality, quality)
                    .pressure();
        } catch (EngineException e) {
            assertThat(e.code()).isIn(ErrorCode.NOT_CONVERGED, ErrorCode.OUT_OF_RANGE);
            return Double.NaN;
        }
    }
}
