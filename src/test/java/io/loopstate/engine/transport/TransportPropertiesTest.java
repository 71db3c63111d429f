package io.loopstate.engine.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.property.State;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TransportPropertiesTest {
    private static final Fluid R134A = Fixtures.fluid("R-134a");
    private static final TransportProperties TRANSPORT = Fixtures.transport("R-134a");

    private static State state(Phase phase, double temperature, double density) {
        double none = Double.NaN;
        return new State(
                phase,
                temperature,
                none,
                density,
                none,
                none,
                none,
                none,
                none,
                none,
                none,
                none,
                none,
                none,
                none,
                none);
    }

    @Test
    void everyDoorLeadsToTheSameNumbers() {
        double temperature = 300;
        double density = 1210;
        MolarState molar = Fixtures.state(R134A, temperature, density / R134A.molarMass());
        TransportValues values = TRANSPORT.at(molar);

        assertThat(values.viscosity())
                .hasValue(TRANSPORT.viscosity(temperature, density).orElseThrow());
        assertThat(values.viscosity()).hasValue(TRANSPORT.viscosity(molar).orElseThrow());
        assertThat(values.thermalConductivity())
                .hasValue(TRANSPORT.thermalConductivity(temperature, density).orElseThrow());
        assertThat(values.thermalConductivity())
                .hasValue(TRANSPORT.thermalConductivity(molar).orElseThrow());
        assertThat(TRANSPORT.at(state(Phase.LIQUID, temperature, density))).isEqualTo(values);
    }

    @Test
    void aMixtureOfPhasesHasNoTransportProperties() {
        assertThat(TRANSPORT.at(state(Phase.TWO_PHASE, 300, 600))).isEqualTo(TransportValues.NONE);
    }

    @Test
    void noAnswerBeyondTheSpinodal() {
        MolarState unstable = Fixtures.state(R134A, 300, R134A.criticalMolarDensity());
        assertThat(unstable.pressureByDensity()).isNegative();

        assertThat(TRANSPORT.at(unstable)).isEqualTo(TransportValues.NONE);
        assertThat(TRANSPORT.viscosity(unstable)).isEmpty();
    }

    @Test
    void sourcesAreCited() {
        assertThat(TRANSPORT.viscositySource().orElseThrow().doi()).contains("10.1021/ie0300880");
        assertThat(TRANSPORT.thermalConductivitySource().orElseThrow().doi()).contains("10.1016/S0140-7007(99)00024-9");
        assertThat(TRANSPORT.surfaceTensionSource().orElseThrow().text()).contains("Mulero");
        assertThat(Fixtures.transport("R-1234yf")
                        .viscositySource()
                        .orElseThrow()
                        .doi())
                .isEmpty();
    }

    private static void assertOutOfRange(ThrowingCallable call, Variable variable, double lower, double upper) {
        assertThatExceptionOfType(EngineException.class).isThrownBy(call).satisfies(e -> {
            assertThat(e.code()).isEqualTo(ErrorCode.OUT_OF_RANGE);
            assertThat(e.variable()).contains(variable);
            assertThat(e.lower()).isEqualTo(Double.valueOf(lower));
            assertThat(e.upper()).isEqualTo(Double.valueOf(upper));
        });
    }

    @ParameterizedTest
    @ValueSource(doubles = {169.8, 455.1, Double.NaN, Double.POSITIVE_INFINITY, -1})
    void temperatureOutsideTheEquationsLimits(double temperature) {
        assertOutOfRange(() -> TRANSPORT.viscosity(temperature, 1), Variable.TEMPERATURE, 169.85, 455);
        assertOutOfRange(() -> TRANSPORT.thermalConductivity(temperature, 1), Variable.TEMPERATURE, 169.85, 455);
        assertOutOfRange(() -> TRANSPORT.surfaceTension(temperature), Variable.TEMPERATURE, 169.85, 455);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void densityThatIsNone(double density) {
        assertOutOfRange(() -> TRANSPORT.viscosity(300, density), Variable.DENSITY, 0, Double.NaN);
    }

    @Test
    void pressureAboveTheEquationsLimit() {
        assertOutOfRange(() -> TRANSPORT.viscosity(300, 1500), Variable.PRESSURE, 0, 70e6);
    }

    /** Krauss et al. (1996) cover 240 to 440 K; the free volume of their correlation vanishes in the liquid at 220 K. */
    @Test
    void aTighterRangeOfTheSourceIsKept() {
        TransportProperties r152a = Fixtures.transport("R-152a");
        Fluid fluid = r152a.fluid();
        assertThat(r152a.viscosityRange()).isEqualTo(new CorrelationRange(240, 440, 20e6));

        assertThat(r152a.viscosity(230, 1055)).isEmpty();
        assertThat(r152a.viscosity(250, 1020)).isPresent();
        assertThat(fluid.limits().minTemperature()).isLessThan(230);
        assertThat(TRANSPORT.viscosityRange()).isEqualTo(CorrelationRange.UNBOUNDED);
    }

    @Test
    void surfaceTensionEndsWithTheSaturationLine() {
        assertThat(TRANSPORT.surfaceTension(374.3)).isEmpty();
        assertThat(TRANSPORT.surfaceTension(374.2)).isPresent();
        assertThat(TRANSPORT.surfaceTension(455)).isEmpty();
    }

    /** The deviation is stated in the documentation of the data: 11 to 17 % below the first choice at 293 K. */
    @ParameterizedTest
    @ValueSource(strings = {"R-1234yf", "R-1234ze(E)"})
    void residualEntropyScalingIsTheSecondChoice(String designation) {
        Fluid fluid = Fixtures.fluid(designation);
        var viscosities = new TransportReader(fluid, Fixtures.CATALOG).viscosities();
        assertThat(viscosities).hasSize(2);
        Viscosity second = viscosities.get(1).formula();
        assertThat(second).isInstanceOf(ResidualEntropyViscosity.class);
        Point point = Fixtures.point(fluid, 293, Fixtures.liquidDensity(fluid, 293));

        double first = Fixtures.transport(designation).viscosity(point.state()).orElseThrow();

        assertThat(second.at(point)).isBetween(0.825 * first, 0.895 * first);
        Point thin = Fixtures.point(fluid, 293, 1e-6);
        double dilute = Fixtures.transport(designation).viscosity(thin.state()).orElseThrow();
        assertThat(second.at(thin)).isCloseTo(dilute, within(1e-6 * dilute));
    }

    @Test
    void aLibraryBuildsEachFluidOnce() {
        TransportLibrary library = new TransportLibrary(Fixtures.CATALOG);

        assertThat(library.of(R134A)).isSameAs(library.of(R134A));
        assertThat(library.of(R134A).fluid()).isEqualTo(R134A);
    }
}
