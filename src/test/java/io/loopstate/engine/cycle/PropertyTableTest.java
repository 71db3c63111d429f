package io.loopstate.engine.cycle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.cycle.PropertyTable.Range;
import io.loopstate.engine.cycle.PropertyTable.SaturationRow;
import io.loopstate.engine.cycle.PropertyTable.SaturationSpec;
import io.loopstate.engine.cycle.PropertyTable.SuperheatResult;
import io.loopstate.engine.cycle.PropertyTable.SuperheatRow;
import io.loopstate.engine.cycle.PropertyTable.SuperheatSpec;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

class PropertyTableTest {
    private final Equilibrium fluid = TestFluids.of("R-134a");

    @Test
    void rowsStepFromEndToEnd() {
        List<SaturationRow> rows = PropertyTable.saturation(
                        new SaturationSpec(fluid, Variable.TEMPERATURE, new Range(253.15, 323.15, 10)))
                .rows();
        assertThat(rows)
                .extracting(SaturationRow::at)
                .containsExactly(253.15, 263.15, 273.15, 283.15, 293.15, 303.15, 313.15, 323.15);
        for (SaturationRow row : rows) {
            assertThat(row.saturation()).isEqualTo(fluid.saturationAtTemperature(row.at()));
        }
    }

    @Test
    void aStepThatMissesTheEndStopsBeforeIt() {
        assertThat(pressures(new Range(1e5, 4.5e5, 1e5))).hasSize(4);
        assertThat(pressures(new Range(1e5, 1e5, 1e5))).hasSize(1);
        // 0.1 has no exact binary form: three steps of it must still meet the end.
        assertThat(PropertyTable.saturation(
                                new SaturationSpec(fluid, Variable.TEMPERATURE, new Range(273.15, 273.45, 0.1)))
                        .rows())
                .hasSize(4);
    }

    @Test
    void superheatStepsOverSuperheatOrTemperature() {
        SuperheatResult bySuperheat =
                PropertyTable.superheat(new SuperheatSpec(fluid, 2e5, Variable.SUPERHEAT, new Range(0, 40, 10)));
        double dew = bySuperheat.saturation().dew().temperature();
        SuperheatResult byTemperature = PropertyTable.superheat(
                new SuperheatSpec(fluid, 2e5, Variable.TEMPERATURE, new Range(dew, dew + 40, 10)));
        assertThat(bySuperheat.rows()).hasSize(5);
        assertThat(bySuperheat.rows().get(0).state())
                .isEqualTo(bySuperheat.saturation().dew());
        for (int i = 0; i < 5; i++) {
            SuperheatRow row = bySuperheat.rows().get(i);
            assertThat(row.superheat()).isCloseTo(10 * i, within(1e-9));
            assertThat(byTemperature.rows().get(i).state().specificEnthalpy())
                    .isCloseTo(row.state().specificEnthalpy(), within(1e-4));
        }
    }

    @Test
    void rangesOffTheSaturationLineNameTheEndAndTheLimit() {
        fault(
                () -> PropertyTable.saturation(
                        new SaturationSpec(fluid, Variable.TEMPERATURE, new Range(300, 400, 10))),
                ErrorCode.ABOVE_CRITICAL,
                "to",
                exception -> assertThat(exception.upper())
                        .isCloseTo(fluid.refrigerant().criticalPoint().temperature(), within(1e-3)));
        fault(
                () -> PropertyTable.saturation(
                        new SaturationSpec(fluid, Variable.TEMPERATURE, new Range(100, 300, 10))),
                ErrorCode.OUT_OF_RANGE,
                "from",
                exception -> assertThat(exception.lower())
                        .isCloseTo(fluid.refrigerant().minSaturationTemperature(), within(1e-6)));
        fault(
                () -> PropertyTable.superheat(new SuperheatSpec(fluid, 50e5, Variable.SUPERHEAT, new Range(0, 10, 1))),
                ErrorCode.ABOVE_CRITICAL,
                "pressure",
                exception -> assertThat(exception.got()).isEqualTo(50e5));
        fault(
                () -> PropertyTable.superheat(
                        new SuperheatSpec(fluid, 2e5, Variable.TEMPERATURE, new Range(250, 300, 10))),
                ErrorCode.CONTRADICTORY_INPUTS,
                "from",
                exception -> assertThat(exception.lower())
                        .isCloseTo(fluid.saturationAtPressure(2e5).dew().temperature(), within(1e-9)));
    }

    @Test
    void aTableHasAtMostFiveHundredRows() {
        assertThat(pressures(new Range(1e5, 1e5 + 499 * 100, 100))).hasSize(PropertyTable.MAX_ROWS);
        fault(
                () -> new Range(1e5, 1e5 + 500 * 100, 100),
                ErrorCode.IMPOSSIBLE_VALUE,
                "step",
                exception -> assertThat(exception.lower()).isCloseTo(500.0 / 499 * 100, within(1e-9)));
        fault(
                () -> new Range(2, 1, 1),
                ErrorCode.CONTRADICTORY_INPUTS,
                "to",
                exception -> assertThat(exception.got()).isEqualTo(1));
        fault(
                () -> new Range(1, 2, 0),
                ErrorCode.IMPOSSIBLE_VALUE,
                "step",
                exception -> assertThat(exception.got()).isZero());
    }

    private List<SaturationRow> pressures(Range range) {
        return PropertyTable.saturation(new SaturationSpec(fluid, Variable.PRESSURE, range))
                .rows();
    }

    private static void fault(
            ThrowingCallable call,
            ErrorCode code,
            String input,
            org.assertj.core.api.ThrowingConsumer<EngineException> more) {
        assertThatThrownBy(call).isInstanceOfSatisfying(EngineException.class, exception -> {
            assertThat(exception.code()).isEqualTo(code);
            assertThat(exception.input()).contains(input);
            more.accept(exception);
        });
    }
}
