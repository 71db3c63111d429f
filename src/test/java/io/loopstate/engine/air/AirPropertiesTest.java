package io.loopstate.engine.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.fluid.ReferenceState;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** Laws of moist air: every pair of variables leads back to the same air. */
class AirPropertiesTest {
    private static final List<AirVariable[]> PAIRS = List.of(
            pair(AirVariable.DRY_BULB, AirVariable.WET_BULB),
            pair(AirVariable.DRY_BULB, AirVariable.RELATIVE_HUMIDITY),
            pair(AirVariable.DRY_BULB, AirVariable.DEW_POINT),
            pair(AirVariable.DRY_BULB, AirVariable.HUMIDITY_RATIO),
            pair(AirVariable.DRY_BULB, AirVariable.SPECIFIC_ENTHALPY),
            pair(AirVariable.WET_BULB, AirVariable.RELATIVE_HUMIDITY),
            pair(AirVariable.WET_BULB, AirVariable.DEW_POINT),
            pair(AirVariable.WET_BULB, AirVariable.HUMIDITY_RATIO),
            pair(AirVariable.RELATIVE_HUMIDITY, AirVariable.DEW_POINT),
            pair(AirVariable.RELATIVE_HUMIDITY, AirVariable.HUMIDITY_RATIO),
            pair(AirVariable.RELATIVE_HUMIDITY, AirVariable.SPECIFIC_ENTHALPY),
            pair(AirVariable.DEW_POINT, AirVariable.SPECIFIC_ENTHALPY),
            pair(AirVariable.HUMIDITY_RATIO, AirVariable.SPECIFIC_ENTHALPY));

    private static AirVariable[] pair(AirVariable first, AirVariable second) {
        return new AirVariable[] {first, second};
    }

    /**
     * The enhancement factors of ice and of water differ by up to 6.3e-5 where the two meet, so next to 273.16 K two states of air, up to
     * 7.7e-4 K apart, may have the same wet bulb and the same humidity; either may be found.
     */
    private static final double TWO_STATES = 8e-4;

    @Property(tries = 3000)
    void everyPairLeadsBack(
            @ForAll @DoubleRange(min = 20e3, max = 120e3) double pressure,
            @ForAll @DoubleRange(min = 233.15, max = 323.15) double dryBulb,
            @ForAll @DoubleRange(min = 0.02, max = 0.98) double humidity) {
        leadsBack(pressure, dryBulb, humidity);
    }

    /** Drawn by the property in every fourth run or so, since its steps hit the temperature itself. */
    @Example
    void everyPairLeadsBackAtTheTriplePoint() {
        for (double pressure : new double[] {20e3, 40e3, 60e3, 80e3, 101325, 120e3}) {
            for (double humidity : new double[] {0.05, 0.3, 0.6, 0.95}) {
                leadsBack(pressure, WaterVapor.TRIPLE_POINT, humidity);
            }
        }
    }

    private static void leadsBack(double pressure, double dryBulb, double humidity) {
        AirSolver solver = new AirSolver(pressure);
        AirState air = solver.state(AirVariable.DRY_BULB, dryBulb, AirVariable.RELATIVE_HUMIDITY, humidity);
        MoistAir all = MoistAir.of(air);
        for (AirVariable[] pair : PAIRS) {
            AirState back = solver.state(pair[0], value(all, pair[0]), pair[1], value(all, pair[1]));
            String name = pair[0] + " " + pair[1];
            if (Math.abs(dryBulb - WaterVapor.TRIPLE_POINT) <= TWO_STATES) {
                MoistAir found = MoistAir.of(back);
                for (AirVariable given : pair) {
                    double wanted = value(all, given);
                    assertThat(value(found, given)).as(name).isCloseTo(wanted, within(1e-9 * Math.abs(wanted)));
                }
                assertThat(back.dryBulb()).as(name).isCloseTo(dryBulb, within(TWO_STATES));
                continue;
            }
            assertThat(back.dryBulb()).as(name).isCloseTo(dryBulb, within(1e-6));
            assertThat(back.humidityRatio())
                    .as(name)
                    .isCloseTo(air.humidityRatio(), within(1e-6 * air.humidityRatio() + 1e-11));
        }
    }

    private static double value(MoistAir air, AirVariable variable) {
        return switch (variable) {
            case DRY_BULB -> air.state().dryBulb();
            case WET_BULB -> air.wetBulb();
            case RELATIVE_HUMIDITY -> air.state().relativeHumidity();
            case DEW_POINT -> air.dewPoint().orElseThrow();
            case HUMIDITY_RATIO -> air.state().humidityRatio();
            case SPECIFIC_ENTHALPY -> air.state().specificEnthalpy();
        };
    }

    /** By definition: frost or dew comes first, the wick is never warmer than the air. */
    @Property(tries = 3000)
    void temperaturesKeepTheirOrder(
            @ForAll @DoubleRange(min = 20e3, max = 120e3) double pressure,
            @ForAll @DoubleRange(min = 173.15, max = 473.15) double dryBulb,
            @ForAll @DoubleRange(min = 0, max = 1) double humidity) {
        AirState air;
        try {
            air = new AirSolver(pressure).state(AirVariable.DRY_BULB, dryBulb, AirVariable.RELATIVE_HUMIDITY, humidity);
        } catch (EngineException beyondBoiling) {
            assertThat(beyondBoiling.code()).isEqualTo(ErrorCode.CONTRADICTORY_INPUTS);
            return;
        }
        MoistAir all = MoistAir.of(air);
        assertThat(all.wetBulb()).isLessThanOrEqualTo(dryBulb);
        all.dewPoint().ifPresent(dew -> assertThat(dew).isLessThanOrEqualTo(all.wetBulb() + 0.02));
        assertThat(all.degreeOfSaturation()).isBetween(0.0, 1 + 1e-9);
    }

    /** Source: the equation of state of water (IAPWS-95) in this engine, whose own tables are met; from 0.01 to 200 degC. */
    @Property(tries = 200)
    void saturationOverWaterIsThatOfTheEquationOfState(
            @ForAll @DoubleRange(min = 273.16, max = 473.15) double temperature) {
        double exact = TestFluids.of("R-718", ReferenceState.NORMAL_BOILING_POINT)
                .saturationAtTemperature(temperature)
                .dew()
                .pressure();
        assertThat(WaterVapor.saturationPressure(temperature)).isCloseTo(exact, within(1e-4 * exact));
    }

    /** Source: IAPWS R14-08 (2011), table 3 (from memory): 8.94735e-6 MPa at 230 K. */
    @Example
    void saturationOverIceIsThatOfItsVerificationTable() {
        assertThat(WaterVapor.saturationPressure(230)).isCloseTo(8.94735, within(0.000005));
    }

    @Example
    void impossibleAirIsRefusedByName() {
        AirSolver solver = new AirSolver(101325);
        refused(solver, AirVariable.DRY_BULB, 300, AirVariable.WET_BULB, 301, ErrorCode.CONTRADICTORY_INPUTS);
        refused(solver, AirVariable.DRY_BULB, 300, AirVariable.WET_BULB, 270, ErrorCode.CONTRADICTORY_INPUTS);
        refused(solver, AirVariable.DRY_BULB, 300, AirVariable.RELATIVE_HUMIDITY, 1.1, ErrorCode.IMPOSSIBLE_VALUE);
        refused(solver, AirVariable.DRY_BULB, 300, AirVariable.DEW_POINT, 305, ErrorCode.CONTRADICTORY_INPUTS);
        refused(solver, AirVariable.DRY_BULB, 300, AirVariable.HUMIDITY_RATIO, 0.1, ErrorCode.CONTRADICTORY_INPUTS);
        refused(solver, AirVariable.DRY_BULB, 300, AirVariable.SPECIFIC_ENTHALPY, 0, ErrorCode.CONTRADICTORY_INPUTS);
        refused(solver, AirVariable.DEW_POINT, 280, AirVariable.HUMIDITY_RATIO, 0.01, ErrorCode.PAIR_NOT_INDEPENDENT);
        refused(solver, AirVariable.WET_BULB, 280, AirVariable.SPECIFIC_ENTHALPY, 3e4, ErrorCode.PAIR_NOT_INDEPENDENT);
        refused(solver, AirVariable.DRY_BULB, 300, AirVariable.DEW_POINT, 100, ErrorCode.OUT_OF_RANGE);
        assertThatThrownBy(() -> solver.state(AirVariable.DRY_BULB, 600, AirVariable.HUMIDITY_RATIO, 0))
                .isInstanceOfSatisfying(
                        EngineException.class, e -> assertThat(e.input()).contains("dryBulb"));
    }

    private static void refused(
            AirSolver solver, AirVariable first, double a, AirVariable second, double b, ErrorCode code) {
        assertThatThrownBy(() -> solver.state(first, a, second, b)).isInstanceOfSatisfying(EngineException.class, e -> {
            assertThat(e.code()).isEqualTo(code);
            assertThat(e.input()).contains(second.input());
        });
    }
}
