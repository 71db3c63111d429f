package io.loopstate.engine.flash;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.error.Variable;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.Composition;
import io.loopstate.engine.fluid.Mixture;
import io.loopstate.engine.fluid.ReferenceState;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The phase that forms first. */
class IncipientPhaseTest {
    private static final Catalog CATALOG = Catalog.bundled();
    private static final Equilibria EQUILIBRIA = new Equilibria();
    /** Relative; the shares of a composition of one's own are those of the first vapor to the last digit of a double. */
    private static final double SAME = 1e-8;

    /** Two phases in equilibrium: the vapor that forms at the bubble point has its own dew point there. */
    @ParameterizedTest
    @CsvSource({"R-454B, 280", "R-448A, 260", "R-455A, 300", "R-407C, 320", "R-410A, 250"})
    void theFirstVaporHasItsDewPointWhereTheLiquidHasItsBubblePoint(String designation, double temperature) {
        Mixture mixture = CATALOG.mixture(designation).orElseThrow();
        Equilibrium equilibrium = states(mixture);
        Saturation liquid = equilibrium.saturationAtTemperature(temperature);
        Mixture vapor = phase(mixture, equilibrium.incipientPhase(Variable.TEMPERATURE, temperature, true));
        assertThat(states(vapor).saturationAtTemperature(temperature).dew().pressure())
                .isCloseTo(
                        liquid.bubble().pressure(),
                        within(SAME * liquid.bubble().pressure()));
    }

    /** The same, the other way: the liquid that forms at the dew point has its own bubble point there. */
    @ParameterizedTest
    @CsvSource({"R-454B, 1e6", "R-448A, 5e5", "R-407C, 2e6"})
    void theFirstLiquidHasItsBubblePointWhereTheVaporHasItsDewPoint(String designation, double pressure) {
        Mixture mixture = CATALOG.mixture(designation).orElseThrow();
        Equilibrium equilibrium = states(mixture);
        Saturation vapor = equilibrium.saturationAtPressure(pressure);
        Mixture liquid = phase(mixture, equilibrium.incipientPhase(Variable.PRESSURE, pressure, false));
        assertThat(states(liquid).saturationAtPressure(pressure).bubble().temperature())
                .isCloseTo(vapor.dew().temperature(), within(SAME * vapor.dew().temperature()));
    }

    /** Definition: the glide at a pressure is that between the bubble and the dew point of this pressure. */
    @ParameterizedTest
    @CsvSource({"R-454B, 280", "R-448A, 260", "R-407C, 320"})
    void glidesByTemperatureAndByPressureBelongTogether(String designation, double temperature) {
        Equilibrium equilibrium = states(CATALOG.mixture(designation).orElseThrow());
        Saturation byTemperature = equilibrium.saturationAtTemperature(temperature);
        Saturation byPressure =
                equilibrium.saturationAtPressure(byTemperature.dew().pressure());
        assertThat(byPressure.dew().temperature()).isCloseTo(temperature, within(SAME * temperature));
        assertThat(byTemperature.pressureGlide()).isPositive();
        assertThat(byPressure.temperatureGlide()).isPositive();
        Saturation back =
                equilibrium.saturationAtTemperature(byPressure.bubble().temperature());
        assertThat(back.bubble().pressure())
                .isCloseTo(
                        byTemperature.dew().pressure(),
                        within(SAME * byTemperature.dew().pressure()));
    }

    @Test
    void onePureSubstanceHasNoneOfItsOwn() {
        Equilibrium pure = EQUILIBRIA.of(CATALOG.find("R-134a").orElseThrow(), ReferenceState.IIR);
        assertThat(pure.incipientPhase(Variable.TEMPERATURE, 280, true)).isEmpty();
    }

    private static Equilibrium states(Mixture mixture) {
        return EQUILIBRIA.of(mixture, ReferenceState.IIR);
    }

    /** A phase as a mixture of its own, from its mole fractions. */
    private static Mixture phase(Mixture mixture, List<Double> moleFractions) {
        assertThat(moleFractions).hasSameSizeAs(mixture.components());
        double[] masses = IntStream.range(0, moleFractions.size())
                .mapToDouble(i -> moleFractions.get(i)
                        * mixture.components().get(i).fluid().molarMass())
                .toArray();
        double whole =
                IntStream.range(0, masses.length).mapToDouble(i -> masses[i]).sum();
        return CATALOG.mixture(new Composition(
                mixture.components().stream().map(c -> c.fluid().designation()).toList(),
                IntStream.range(0, masses.length)
                        .mapToObj(i -> masses[i] / whole)
                        .toList()));
    }
}
