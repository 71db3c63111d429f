package io.loopstate.engine.cycle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.component.GlidingFluid;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.fluid.CriticalPoint;
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
                fluid, Variable.PRESSURE, 30e5, Variable.SUPERHEAT, 8, Optional.empty(), Guidance.common()));
        assertThat(result.superheat()).hasValueCloseTo(8.0, within(1e-9));
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

    private StateQuery.Result state(double pressure, double temperature) {
        return StateQuery.calculate(new StateQuery.Spec(
                fluid,
                Variable.PRESSURE,
                pressure,
                Variable.TEMPERATURE,
                temperature,
                Optional.empty(),
                Guidance.common()));
    }

    private static SaturationQuery.Result saturation(Equilibrium fluid, Variable given, double value) {
        return SaturationQuery.calculate(new SaturationQuery.Spec(fluid, given, value, Guidance.common()));
    }
}
