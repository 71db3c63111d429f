package io.loopstate.engine.component;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import org.junit.jupiter.api.Test;

class LiquidLineTest {
    private final Equilibrium fluid = TestFluids.of("R-22");
    private final State liquid = Condenser.outlet(fluid, 15e5, OutletCondition.subcooling(5));

    @Test
    void withoutLiftAndLossTheMarginIsTheSubcooling() {
        assertThat(LiquidLine.flashMargin(fluid, liquid, 0, 0).margin()).isCloseTo(5, within(1e-6));
    }

    /**
     * Static loss of R-22, 0.5 to 0.55 psi per foot at a density of 73 to 76 lb/ft3: common practice, no source. The liquid
     * here is close to that, at {@code 1.13e3 kg/m3} or 71 lb/ft3, so the upper half is not reached.
     */
    @Test
    void liftCostsTheColumnsWeight() {
        double lost = liquid.pressure()
                - LiquidLine.flashMargin(fluid, liquid, 0.3048, 0).valvePressure();
        assertThat(lost / 6894.757293168).isBetween(0.45, 0.55);
        assertThat(lost).isCloseTo(liquid.density() * 9.80665 * 0.3048, within(1e-6));
    }

    @Test
    void aFallingLineGains() {
        assertThat(LiquidLine.flashMargin(fluid, liquid, -5, 0).margin()).isGreaterThan(5);
        assertThat(LiquidLine.flashMargin(fluid, liquid, -5, 60e3).margin())
                .isLessThan(LiquidLine.flashMargin(fluid, liquid, -5, 0).margin());
    }

    @Test
    void thePermissibleLiftUsesUpTheSubcooling() {
        double lift = LiquidLine.permissibleLift(fluid, liquid);
        assertThat(LiquidLine.flashMargin(fluid, liquid, lift, 0).margin()).isCloseTo(0, within(1e-6));
    }

    /**
     * Source: G. F. Hundy, A. R. Trott, T. C. Welch, Refrigeration and Air-Conditioning, 4th edition, example 11.1: 1.51 bar
     * between saturation at 34 and 30 degC lift liquid of 1022 kg/m3 by 15.1 m (evaluated from the inputs read).
     */
    @Test
    void liftOfAPublishedPressureDifference() {
        assertThat(LiquidLine.column(15.69e5 - 14.18e5, 1022)).isCloseTo(15.1, within(0.05));
    }

    @Test
    void aLiftBeyondThePressureIsImpossible() {
        assertThatThrownBy(() -> LiquidLine.flashMargin(fluid, liquid, 1000, 0))
                .isInstanceOfSatisfying(
                        EngineException.class,
                        exception -> assertThat(exception.input()).contains("liquidLift"));
    }
}
