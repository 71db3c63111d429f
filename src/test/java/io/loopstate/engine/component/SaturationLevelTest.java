package io.loopstate.engine.component;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is counted from dew, midpoint and bubble temperature: users' formulas C1, C2 and C6, by definition. */
class SaturationLevelTest {
    private static final double GLIDE = 6;

    private final Equilibrium gliding = new GlidingFluid(GLIDE);

    @ParameterizedTest
    @EnumSource(value = SaturationBasis.class, mode = EnumSource.Mode.EXCLUDE, names = "INLET_TO_DEW")
    void theTemperatureAtThePressureFoundIsTheOneGiven(SaturationBasis basis) {
        double pressure = SaturationLevel.temperature(280, basis).pressure(gliding);
        Saturation saturation = gliding.saturationAtPressure(pressure);
        double dew = saturation.dew().temperature();
        double bubble = saturation.bubble().temperature();
        double found = switch (basis) {
            case DEW -> dew;
            case MIDPOINT -> (dew + bubble) / 2;
            case BUBBLE -> bubble;
            case INLET_TO_DEW -> throw new AssertionError("see DesignCycleTest");
        };
        assertThat(found).isCloseTo(280, within(1e-9));
        assertThat(dew - bubble).isCloseTo(GLIDE, within(1e-9));
    }

    @ParameterizedTest
    @EnumSource(value = SaturationBasis.class, mode = EnumSource.Mode.EXCLUDE, names = "INLET_TO_DEW")
    void aPureFluidHasOnePressure(SaturationBasis basis) {
        Equilibrium r134a = TestFluids.of("R-134a");
        assertThat(SaturationLevel.temperature(280, basis).pressure(r134a))
                .isEqualTo(r134a.saturationAtTemperature(280).dew().pressure());
    }

    @Test
    void aTemperatureWithoutBasisIsADewTemperature() {
        assertThat(SaturationLevel.temperature(280).pressure(gliding))
                .isEqualTo(SaturationLevel.temperature(280, SaturationBasis.DEW).pressure(gliding))
                .isLessThan(
                        SaturationLevel.temperature(280, SaturationBasis.BUBBLE).pressure(gliding));
    }

    @Test
    void aPressureStaysWhatItIs() {
        assertThat(SaturationLevel.pressure(3e5).pressure(gliding)).isEqualTo(3e5);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void onlyPositiveNumbersAreLevels(double value) {
        assertThatThrownBy(() -> SaturationLevel.pressure(value)).isInstanceOf(EngineException.class);
        assertThatThrownBy(() -> SaturationLevel.temperature(value)).isInstanceOf(EngineException.class);
    }

    @Test
    void superheatCountsFromTheDewPointAndSubcoolingFromTheBubblePoint() {
        double bubble = GlidingFluid.bubbleTemperature(2e5);
        assertThat(SaturationMargin.superheat(gliding, gliding.atPressureTemperature(2e5, bubble + GLIDE + 5)))
                .hasValueCloseTo(5.0, within(1e-9));
        assertThat(SaturationMargin.subcooling(gliding, gliding.atPressureTemperature(2e5, bubble - 4)))
                .hasValueCloseTo(4.0, within(1e-9));
    }

    @Test
    void marginsApplyToTheirOwnPhaseBelowTheCriticalPressure() {
        Equilibrium r744 = TestFluids.of("R-744");
        Saturation saturation = r744.saturationAtPressure(40e5);
        assertThat(SaturationMargin.superheat(r744, saturation.dew())).hasValue(0);
        assertThat(SaturationMargin.subcooling(r744, saturation.dew())).isEmpty();
        assertThat(SaturationMargin.subcooling(r744, saturation.bubble())).hasValue(0);
        assertThat(SaturationMargin.superheat(r744, saturation.bubble())).isEmpty();
        assertThat(SaturationMargin.superheat(r744, r744.atPressureTemperature(90e5, 320)))
                .isEmpty();
        assertThat(SaturationMargin.subcooling(r744, r744.atPressureTemperature(90e5, 290)))
                .isEmpty();
        // Below the triple-point pressure of 5.18 bar there is vapor, but no dew point.
        assertThat(SaturationMargin.superheat(r744, r744.atPressureTemperature(1e5, 250)))
                .isEmpty();
    }
}
