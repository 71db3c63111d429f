package io.loopstate.engine.component;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.property.State;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

class HeatExchangersTest {
    private static final double PRESSURE = 10e5;

    private final Equilibrium fluid = TestFluids.of("R-134a");
    private final Saturation saturation = fluid.saturationAtPressure(PRESSURE);
    private final State hot = fluid.atPressureTemperature(PRESSURE, 340);
    private final State cool = Condenser.outlet(fluid, PRESSURE, OutletCondition.subcooling(6));

    @Test
    void theCondensersHeatSplitsAtDewAndBubblePoint() {
        HeatRejection heat = Condenser.heatRejection(fluid, hot, cool);
        assertThat(heat.desuperheating())
                .isCloseTo(hot.specificEnthalpy() - saturation.dew().specificEnthalpy(), within(1e-6));
        assertThat(heat.condensing()).isCloseTo(saturation.latentHeat(), within(1e-6));
        assertThat(heat.subcooling())
                .isCloseTo(saturation.bubble().specificEnthalpy() - cool.specificEnthalpy(), within(1e-6));
        assertThat(heat.gasCooling()).isZero();
        assertThat(heat.total()).isCloseTo(hot.specificEnthalpy() - cool.specificEnthalpy(), within(1e-6));
    }

    @Test
    void wetVaporHasNothingToDesuperheatAndWetLiquidIsNotSubcooled() {
        State wetIn = fluid.state(Variable.PRESSURE, PRESSURE, Variable.VAPOR_QUALITY, 0.9);
        State wetOut = Condenser.outlet(fluid, PRESSURE, OutletCondition.quality(0.1));
        HeatRejection heat = Condenser.heatRejection(fluid, wetIn, wetOut);
        assertThat(heat.desuperheating()).isZero();
        assertThat(heat.subcooling()).isZero();
        assertThat(heat.condensing()).isCloseTo(0.8 * saturation.latentHeat(), within(1e-4));
    }

    /** A temperature and its own saturation pressure say the same, whatever the last digit of the one from the other. */
    @Test
    void outletsAtTheSaturationTemperatureAreSaturated() {
        for (double t = 200; t < 373; t += 0.37) {
            double pressure = fluid.saturationAtTemperature(t).dew().pressure();
            OutletCondition given = OutletCondition.temperature(t);
            assertThat(Condenser.outlet(fluid, pressure, given).vaporQuality()).isZero();
            assertThat(Evaporator.outlet(fluid, pressure, given).vaporQuality()).isEqualTo(1);
        }
    }

    @Test
    void aPressureDropMovesTheBubblePoint() {
        State out = Condenser.outlet(fluid, 0.9 * PRESSURE, OutletCondition.subcooling(6));
        HeatRejection heat = Condenser.heatRejection(fluid, hot, out);
        assertThat(heat.total()).isCloseTo(hot.specificEnthalpy() - out.specificEnthalpy(), within(1e-6));
        assertThat(heat.subcooling())
                .isCloseTo(
                        fluid.saturationAtPressure(0.9 * PRESSURE).bubble().specificEnthalpy() - out.specificEnthalpy(),
                        within(1e-6));
    }

    @Test
    void aboveTheCriticalPressureAllOfItIsGasCooling() {
        Equilibrium r744 = TestFluids.of("R-744");
        State in = r744.atPressureTemperature(95e5, 380);
        State out = Condenser.outlet(r744, 95e5, OutletCondition.temperature(308.15));
        HeatRejection heat = Condenser.heatRejection(r744, in, out);
        assertThat(heat.gasCooling()).isEqualTo(in.specificEnthalpy() - out.specificEnthalpy());
        assertThat(heat.total()).isEqualTo(heat.gasCooling());
        contradictory(() -> Condenser.outlet(r744, 95e5, OutletCondition.subcooling(3)));
    }

    @Test
    void temperatureAndMarginMeanTheSame() {
        double dew = saturation.dew().temperature();
        assertThat(Evaporator.outlet(fluid, PRESSURE, OutletCondition.temperature(dew + 7))
                        .specificEnthalpy())
                .isCloseTo(
                        Evaporator.outlet(fluid, PRESSURE, OutletCondition.superheat(7))
                                .specificEnthalpy(),
                        within(1e-6));
        assertThat(Condenser.outlet(fluid, PRESSURE, OutletCondition.temperature(dew - 6))
                        .specificEnthalpy())
                .isCloseTo(cool.specificEnthalpy(), within(1e-6));
        assertThat(Evaporator.outlet(fluid, PRESSURE, OutletCondition.superheat(0)))
                .isEqualTo(saturation.dew());
        assertThat(Condenser.outlet(fluid, PRESSURE, OutletCondition.subcooling(0)))
                .isEqualTo(saturation.bubble());
    }

    @Test
    void temperaturesOnTheWrongSideOfSaturationAreContradictory() {
        double saturated = saturation.dew().temperature();
        contradictory(() -> Evaporator.outlet(fluid, PRESSURE, OutletCondition.temperature(saturated - 1)));
        contradictory(() -> Condenser.outlet(fluid, PRESSURE, OutletCondition.temperature(saturated + 1)));
    }

    @Test
    void conditionsAreNotNegative() {
        assertThatThrownBy(() -> OutletCondition.superheat(-1)).isInstanceOf(EngineException.class);
        assertThatThrownBy(() -> OutletCondition.subcooling(Double.NaN)).isInstanceOf(EngineException.class);
        assertThatThrownBy(() -> OutletCondition.quality(1.1)).isInstanceOf(EngineException.class);
    }

    @Test
    void theValveKeepsTheEnthalpyAndMustLowerThePressure() {
        State behind = ExpansionValve.expand(fluid, cool, 2e5);
        assertThat(behind.specificEnthalpy()).isCloseTo(cool.specificEnthalpy(), within(1e-4));
        assertThat(behind.specificEntropy()).isGreaterThan(cool.specificEntropy());
        contradictory(() -> ExpansionValve.expand(fluid, cool, PRESSURE));
    }

    @Test
    void linesAddHeatAndLosePressure() {
        State vapor = Evaporator.outlet(fluid, 2e5, OutletCondition.superheat(5));
        assertThat(Line.outlet(fluid, vapor, 0, 0)).isSameAs(vapor);
        State heated = Line.outlet(fluid, vapor, 1e4, 5e3);
        assertThat(heated.pressure()).isCloseTo(1.9e5, within(1e-6));
        assertThat(heated.specificEnthalpy() - vapor.specificEnthalpy()).isCloseTo(5e3, within(1e-4));
        State warmer = Line.suctionOutlet(fluid, vapor, 1e4, SuctionLineGain.temperatureRise(10));
        assertThat(warmer.temperature() - vapor.temperature()).isCloseTo(10, within(1e-9));
        State given = Line.suctionOutlet(fluid, vapor, 1e4, SuctionLineGain.compressorInletTemperature(290));
        assertThat(given.temperature()).isCloseTo(290, within(1e-9));
        contradictory(() -> Line.outlet(fluid, vapor, 2e5, 0));
    }

    private static void contradictory(ThrowingCallable call) {
        assertThatThrownBy(call)
                .isInstanceOfSatisfying(
                        EngineException.class,
                        exception -> assertThat(exception.code()).isEqualTo(ErrorCode.CONTRADICTORY_INPUTS));
    }
}
