package io.loopstate.engine.coexistence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.loopstate.engine.eos.MixtureModel;
import io.loopstate.engine.eos.MixturePhase;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.fluid.Accuracy;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.Mixture;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The kept lines against the conditions of equilibrium that they stand for. */
class PhaseBoundaryTest {
    private static final int TEMPERATURES = 60;
    private static final double LOWEST = 200;
    private static final double CLOSEST = 0.999;
    private static final double FUGACITIES = 1e-9;

    /**
     * Near its critical point the model of this blend has a false phase: at 447 K the isotherm of the whole rises to 3.249
     * MPa at 2.53 mol/L, falls, rises again to 3.265 MPa at 4.12 mol/L and falls once more.
     */
    private static final String WITH_FALSE_PHASE = "R-514A";

    static Stream<Mixture> mixtures() {
        return Catalog.bundled().mixtures().stream().filter(m -> m.accuracy() == Accuracy.FITTED);
    }

    @Test
    void aFalsePhaseIsRefused() {
        PhaseBoundary boundary =
                boundary(Catalog.bundled().mixture(WITH_FALSE_PHASE).orElseThrow());
        double critical = boundary.critical().temperature();
        assertThat(boundary.maxTemperature()).isBetween(0.99 * critical, 0.995 * critical);
        double hidden = 0.5 * (boundary.maxTemperature() + critical);
        double pressure = 0.5
                * (boundary.atTemperature(boundary.maxTemperature(), true).pressure()
                        + boundary.critical().pressure());
        for (boolean denser : new boolean[] {true, false}) {
            assertThatThrownBy(() -> boundary.atTemperature(hidden, denser))
                    .isInstanceOf(EngineException.class)
                    .hasMessageContaining("false phase");
            assertThatThrownBy(() -> boundary.atPressure(pressure, denser))
                    .isInstanceOf(EngineException.class)
                    .hasMessageContaining("false phase");
        }
    }

    private static PhaseBoundary boundary(Mixture mixture) {
        List<Feed.Component> components = mixture.components().stream()
                .map(Mixture.Component::fluid)
                .map(f -> new Feed.Component(
                        f.criticalPoint().temperature(),
                        f.criticalPoint().pressure(),
                        f.acentricFactor(),
                        f.molarMass()))
                .toList();
        return new PhaseBoundary(
                new Feed(mixture.model(), mixture.moleFractions(), components),
                mixture.limits().minTemperature());
    }

    @ParameterizedTest
    @MethodSource("mixtures")
    void phasesOnTheLinesAreInEquilibrium(Mixture mixture) {
        PhaseBoundary boundary = boundary(mixture);
        double lowest = Math.max(LOWEST, boundary.minTemperature());
        boolean gap = boundary.maxTemperature() < CLOSEST * boundary.critical().temperature();
        assertThat(gap).isEqualTo(mixture.designation().equals(WITH_FALSE_PHASE));
        double highest =
                gap ? boundary.maxTemperature() : CLOSEST * boundary.critical().temperature();
        for (int i = 0; i < TEMPERATURES; i++) {
            double t = lowest + (highest - lowest) * i / (TEMPERATURES - 1);
            for (boolean bubble : new boolean[] {true, false}) {
                BoundaryPoint point = boundary.atTemperature(t, bubble);
                assertEquilibrium(boundary.feed(), point);
                assertThat(point.bubble()).isEqualTo(bubble);
                if (point.pressure() < boundary.critical().pressure() && t < highest) {
                    assertEquilibrium(boundary.feed(), boundary.atPressure(point.pressure(), bubble));
                }
            }
        }
    }

    private static void assertEquilibrium(Feed feed, BoundaryPoint point) {
        MixturePhase whole = feed.phase(point.temperature(), point.density());
        MixturePhase other = feed.phase(point.temperature(), point.incipient());
        for (int i = 0; i < feed.size(); i++) {
            assertThat(Math.abs(whole.logFugacity(i) - other.logFugacity(i)))
                    .as("ratio of fugacities of component %d at %s K", i, point.temperature())
                    .isLessThanOrEqualTo(FUGACITIES);
        }
        MixturePhase light = whole.density() < other.density() ? whole : other;
        double pressure = light.reducedPressure() * MixtureModel.GAS_CONSTANT * point.temperature();
        assertThat(Math.abs(pressure / point.pressure() - 1)).isLessThanOrEqualTo(FUGACITIES);
    }
}
