package io.loopstate.engine.coexistence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.eos.MixtureModel;
import io.loopstate.engine.eos.MixturePhase;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.fluid.Accuracy;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.Composition;
import io.loopstate.engine.fluid.Mixture;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

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

    /** Found at random: a critical point off the lines, of two liquids or of the water alone, was taken for their meeting. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "R-1233zd(E)/718/365mfc/143a (94.1/0.6/2.2/3.1)",
                "R-718/245ca (18.4/81.6)",
                "R-C270/718 (67.3/32.7)",
                "R-717/7146 (79.3/20.7)"
            })
    void linesThatDoNotMeetAreRefused(String notation) {
        Mixture mixture = Catalog.bundled().mixture(Composition.parse(notation));
        assertThatThrownBy(() -> boundary(mixture))
                .isInstanceOf(EngineException.class)
                .hasMessageContaining("past the critical point");
    }

    /** The bubble line of this mixture has a lowest pressure, below which and beside which its inverse is no function. */
    @Test
    void aPressureOnALineThatTurnsBackIsRefused() {
        PhaseBoundary boundary =
                boundary(Catalog.bundled().mixture(Composition.parse("R-C318/236ea/14 (49.2/41/9.8)")));
        assertThatThrownBy(() -> boundary.atPressure(0.8 * boundary.critical().pressure(), true))
                .isInstanceOf(EngineException.class)
                .hasMessageContaining("turns back");
        BoundaryPoint above = boundary.atPressure(0.95 * boundary.critical().pressure(), true);
        assertEquilibrium(boundary.feed(), above);
    }

    /** Below and above the critical temperature: phases that differ, with the quality or the volume they were asked for. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "R-470A",
                "R-22/245fa/610 (27.5/50.3/22.2)",
                "R-1224yd(Z)/41 (50.6/49.4)",
                "R-170/50 (14.8/85.2)",
                "R-1123/1336mzz(Z)/1336mzz(E) (33.1/27.8/39.1)",
                "R-E170/50 (55/45)"
            })
    void phasesNearTheCriticalPointAreToldApart(String notation) {
        PhaseBoundary boundary = boundary(
                Composition.looksLike(notation)
                        ? Catalog.bundled().mixture(Composition.parse(notation))
                        : Catalog.bundled().mixture(notation).orElseThrow());
        MixtureSplit division = new MixtureSplit(boundary);
        double critical = boundary.critical().temperature();
        for (double quality : new double[] {0.01, 0.1, 0.3911, 0.5, 0.6}) {
            double last = 0;
            for (double below = MixtureSplit.CRITICAL_TEMPERATURES; below < 0.01; below *= 1.5) {
                Split split = division.at(
                        SplitVariable.TEMPERATURE, critical * (1 - below), SplitVariable.QUALITY, quality, quality);
                assertEquilibrium(boundary.feed(), split);
                double contrast = split.liquid().density() / split.vapor().density() - 1;
                assertThat(contrast).as("%s below at %s", below, quality).isGreaterThan(last);
                last = contrast;
            }
        }
        for (double share = 0.1; share < 1; share += 0.2) {
            double t = critical + share * (boundary.maxTemperature() - critical);
            double dense = 1 / boundary.atTemperature(t, true).density();
            double thin = 1 / boundary.atTemperature(t, false).density();
            double volume = dense + share * (thin - dense);
            Split split = division.at(SplitVariable.TEMPERATURE, t, SplitVariable.VOLUME, volume, share);
            assertEquilibrium(boundary.feed(), split);
            assertThat(split.density() * volume).isCloseTo(1, within(FUGACITIES));
            assertThat(split.liquid().density()).isGreaterThan(split.vapor().density());
        }
    }

    /** The model has a false phase beside the liquid, with equal fugacities; along a quality the pressure jumped to it and back. */
    @Test
    void falsePhasesAreNotTakenForLiquids() {
        PhaseBoundary boundary = boundary(Catalog.bundled().mixture(Composition.parse("R-1224yd(Z)/41 (50.6/49.4)")));
        MixtureSplit division = new MixtureSplit(boundary);
        double last = 0;
        for (double t = 184; t <= 230; t += 1) {
            Split split = division.at(SplitVariable.TEMPERATURE, t, SplitVariable.QUALITY, 0.4274, 0.4274);
            assertEquilibrium(boundary.feed(), split);
            assertThat(split.liquid().pressureByDensity()).isPositive();
            double step = split.pressure() / last;
            assertThat(last == 0 ? 1.05 : step).as("%s K", t).isBetween(1.02, 1.08);
            last = split.pressure();
        }
    }

    @Test
    void falsePhasesOnALineAreRefused() {
        PhaseBoundary boundary = boundary(Catalog.bundled().mixture(Composition.parse("R-718/141b (12.4/87.6)")));
        double critical = boundary.critical().temperature();
        boundary.requireSound(boundary.atTemperature(0.95 * critical, true));
        assertThatThrownBy(() -> boundary.requireSound(boundary.atTemperature(0.95 * critical, false)))
                .isInstanceOf(EngineException.class)
                .hasMessageContaining("false phase");
    }

    private static void assertEquilibrium(Feed feed, Split split) {
        MixturePhase liquid = feed.phase(split.temperature(), split.liquidAmounts());
        MixturePhase vapor = feed.phase(split.temperature(), split.vaporAmounts());
        double mass = 0;
        for (int i = 0; i < feed.size(); i++) {
            assertThat(liquid.logFugacity(i)).isCloseTo(vapor.logFugacity(i), within(FUGACITIES));
            double whole = split.mix(liquid.moleFraction(i), vapor.moleFraction(i));
            assertThat(whole).isCloseTo(feed.moleFraction(i), within(FUGACITIES));
            mass += split.vaporFraction()
                    * vapor.moleFraction(i)
                    * feed.component(i).molarMass();
        }
        assertThat(mass / feed.molarMass()).isCloseTo(split.quality(), within(FUGACITIES));
    }

    static PhaseBoundary boundary(Mixture mixture) {
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
