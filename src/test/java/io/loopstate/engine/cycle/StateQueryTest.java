package io.loopstate.engine.cycle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.component.GlidingFluid;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibria;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.Composition;
import io.loopstate.engine.fluid.CriticalPoint;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.Mixture;
import io.loopstate.engine.fluid.ReferenceState;
import io.loopstate.engine.transport.TransportProperties;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StateQueryTest {
    private final Equilibrium fluid = TestFluids.of("R-744");

    @Test
    void aStateCarriesItsDistanceFromSaturation() {
        double saturated = fluid.saturationAtPressure(30e5).dew().temperature();
        assertThat(state(30e5, saturated + 8).superheat()).hasValueCloseTo(8.0, within(1e-9));
        assertThat(state(30e5, saturated + 8).subcooling()).isEmpty();
        assertThat(state(30e5, saturated - 8).subcooling()).hasValueCloseTo(8.0, within(1e-9));
        assertThat(state(30e5, saturated - 8).superheat()).isEmpty();
        assertThat(state(100e5, 320).superheat()).isEmpty();
    }

    @Test
    void superheatAndSubcoolingAreInputsToo() {
        StateQuery.Result result = StateQuery.calculate(new StateQuery.Spec(
                fluid,
                Variable.PRESSURE,
                30e5,
                Variable.SUPERHEAT,
                8,
                Optional.empty(),
                Optional.empty(),
                Guidance.common()));
        assertThat(result.superheat()).hasValueCloseTo(8.0, within(1e-9));
    }

    /** Cold R-509A has a dew point at this pressure; its bubble point lies below the range. */
    @Test
    void aSuperheatThatWasGivenHoldsWhereTheBubblePointIsOutOfRange() {
        Equilibrium cold =
                new Equilibria().of(Catalog.bundled().refrigerant("R-509A").orElseThrow(), ReferenceState.IIR);
        StateQuery.Result result = StateQuery.calculate(new StateQuery.Spec(
                cold,
                Variable.SUPERHEAT,
                43,
                Variable.PRESSURE,
                5916,
                Optional.empty(),
                Optional.empty(),
                Guidance.common()));
        assertThat(result.superheat()).hasValue(43);
    }

    /** Lines that do not meet ended in a recursion without an end. */
    @Test
    void aMixtureWithoutAUsualBoundaryIsRefused() {
        Mixture mixture = Catalog.bundled().mixture(Composition.parse("R-14/R-C318 (26.8/73.2)"));
        assertThatThrownBy(() -> new Equilibria().of(mixture, ReferenceState.NORMAL_BOILING_POINT))
                .isInstanceOfSatisfying(
                        EngineException.class,
                        refusal -> assertThat(refusal.code()).isEqualTo(ErrorCode.NO_PHASE_BOUNDARY));
    }

    @Test
    void statesNearTheCriticalPointAreMarked() {
        CriticalPoint critical = fluid.refrigerant().criticalPoint();
        assertThat(state(1.02 * critical.pressure(), 1.01 * critical.temperature())
                        .findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.code()).isEqualTo(FindingCode.NEAR_CRITICAL));
        assertThat(state(0.8 * critical.pressure(), critical.temperature()).findings())
                .isEmpty();
        assertThat(state(critical.pressure(), 1.2 * critical.temperature()).findings())
                .isEmpty();
        assertThat(state(2 * critical.pressure(), critical.temperature()).findings())
                .isEmpty();
    }

    @Test
    void saturationMarksGlideAndTheCriticalPoint() {
        CriticalPoint critical = fluid.refrigerant().criticalPoint();
        assertThat(saturation(fluid, Variable.PRESSURE, 0.95 * critical.pressure())
                        .findings())
                .extracting(Finding::code)
                .containsExactly(FindingCode.NEAR_CRITICAL);
        assertThat(saturation(fluid, Variable.TEMPERATURE, 260).findings()).isEmpty();
        assertThat(saturation(new GlidingFluid(4), Variable.PRESSURE, 1e5).findings())
                .extracting(Finding::code)
                .containsExactly(FindingCode.HIGH_GLIDE);
    }

    @Test
    void anImpossibleValueNamesItself() {
        assertThatThrownBy(() -> saturation(fluid, Variable.PRESSURE, -1))
                .isInstanceOfSatisfying(
                        EngineException.class,
                        exception -> assertThat(exception.input()).contains("pressure"));
    }

    /** Single phases have viscosity and conductivity, both edges of the dome the same surface tension, a mixture only that. */
    @Test
    void transportPropertiesGoWithTheState() {
        Catalog catalog = Catalog.bundled();
        Fluid r134a = catalog.find("R-134a").orElseThrow();
        Equilibrium equilibrium = new Equilibria().of(r134a, ReferenceState.IIR);
        TransportProperties transport = TransportProperties.of(r134a, catalog);
        SaturationQuery.Result saturation = SaturationQuery.calculate(new SaturationQuery.Spec(
                equilibrium, Variable.TEMPERATURE, 280, Optional.of(transport), Guidance.common()));
        assertThat(saturation.bubbleTransport().viscosity())
                .isEqualTo(transport.at(saturation.saturation().bubble()).viscosity())
                .isPresent();
        assertThat(saturation.bubbleTransport().surfaceTension())
                .isEqualTo(saturation.dewTransport().surfaceTension())
                .isEqualTo(transport.surfaceTension(280));
        StateQuery.Result mixture = StateQuery.calculate(new StateQuery.Spec(
                equilibrium,
                Variable.TEMPERATURE,
                280,
                Variable.VAPOR_QUALITY,
                0.5,
                Optional.empty(),
                Optional.of(transport),
                Guidance.common()));
        assertThat(mixture.transport().viscosity()).isEmpty();
        assertThat(mixture.transport().surfaceTension()).isEqualTo(transport.surfaceTension(280));
    }

    private StateQuery.Result state(double pressure, double temperature) {
        return StateQuery.calculate(new StateQuery.Spec(
                fluid,
                Variable.PRESSURE,
                pressure,
                Variable.TEMPERATURE,
                temperature,
                Optional.empty(),
                Optional.empty(),
                Guidance.common()));
    }

    @Test
    void aGlideIsToldAlsoWhereTheTemperatureIsGiven() {
        Equilibrium blend = TestFluids.of("R-448A");
        Finding glide = saturation(blend, Variable.TEMPERATURE, 280).findings().get(0);
        assertThat(glide.code()).isEqualTo(FindingCode.HIGH_GLIDE);
        double dewPressure = blend.saturationAtTemperature(280).dew().pressure();
        assertThat(glide.value().orElseThrow())
                .isEqualTo(blend.saturationAtPressure(dewPressure).temperatureGlide());
        assertThat(saturation(TestFluids.of("R-410A"), Variable.TEMPERATURE, 280)
                        .findings())
                .isEmpty();
    }

    /** So cold that the bubble point of the dew pressure lies outside the range: nothing is said of the glide. */
    @Test
    void noGlideIsToldWhereItsPressureHasNoBubblePoint() {
        Equilibrium blend = TestFluids.of("R-445A");
        double cold = 200;
        double dewPressure = blend.saturationAtTemperature(cold).dew().pressure();
        assertThatThrownBy(() -> blend.saturationAtPressure(dewPressure))
                .isInstanceOfSatisfying(
                        EngineException.class, e -> assertThat(e.code()).isEqualTo(ErrorCode.OUT_OF_RANGE));
        assertThat(saturation(blend, Variable.TEMPERATURE, cold).findings()).isEmpty();
    }

    private static SaturationQuery.Result saturation(Equilibrium fluid, Variable given, double value) {
        return SaturationQuery.calculate(
                new SaturationQuery.Spec(fluid, given, value, Optional.empty(), Guidance.common()));
    }
}
