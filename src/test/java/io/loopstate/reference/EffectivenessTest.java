package io.loopstate.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.rejection.Effectiveness;
import io.loopstate.engine.rejection.LogMean;
import org.junit.jupiter.api.Test;

/**
 * Every row of {@code effectiveness_ntu.csv} (published relations evaluated by a library's tests, textbooks, and rows worked out
 * from relations that were remembered), to the printed digits or 1e-12 where a double is printed; and the worked examples on heat
 * exchangers, which name their sources.
 */
class EffectivenessTest {
    @Test
    void everyRow() {
        new PublishedTable("effectiveness_ntu").compare(10, row -> {
            double effectiveness = relation(row.text("arrangement")).effectiveness(row.given("NTU"), row.given("Cr"));
            String printed = row.text("effectiveness");
            if (row.text("id").equals("hol-10-7")) {
                // NTU and Cr stand there with eight digits.
                row.checkWithin("effectiveness", Double.parseDouble(printed), effectiveness, 1e-7);
            } else if (printed.length() > 10) {
                row.checkWithin("effectiveness", Double.parseDouble(printed), effectiveness, 1e-12);
            } else {
                row.check("effectiveness", effectiveness);
            }
        });
    }

    private static Effectiveness relation(String arrangement) {
        return switch (arrangement) {
            case "counter flow", "one stream changing phase (Cr = 0)" -> Effectiveness.COUNTER_FLOW;
            case "cross flow, Cmax mixed" -> Effectiveness.CROSS_FLOW_LARGER_MIXED;
            default -> throw new IllegalStateException(arrangement);
        };
    }

    /**
     * INCROP11, example 11.4: finned cross flow, both streams unmixed. The effectiveness is read from a chart there, for which the
     * collection allows 3 %; what follows from it is worked out from the chart's value.
     */
    @Test
    void gasAndWaterOffDesign() {
        double gas = 1.5 * 1000;
        double water = 1.0 * 4197;
        double ratio = gas / water;
        double transferUnits = 100.0 * 40 / gas;
        assertThat(ratio).isCloseTo(0.357, within(0.0005));
        assertThat(transferUnits).isCloseTo(2.67, within(0.005));
        double chart = 0.82;
        assertThat(Effectiveness.CROSS_FLOW_UNMIXED.effectiveness(transferUnits, ratio))
                .isCloseTo(chart, within(0.03 * chart));
        double heat = chart * gas * (250 - 35);
        assertThat(heat).isCloseTo(2.64e5, within(0.005e5));
        assertThat(250 - heat / gas).isCloseTo(73.7, within(0.05));
        assertThat(35 + heat / water).isCloseTo(98.0, within(0.05));
    }

    /** INCROP11, example 11.5: 2e9 W into 3e4 kg/s of water of 4179 J/(kg K) from 20 degC: 36.0 degC. */
    @Test
    void steamCondenser() {
        double outlet = 20 + 2e9 / (3e4 * 4179);
        assertThat(outlet).isCloseTo(36.0, within(0.05));
        double mean = LogMean.of(50 - 20, 50 - outlet).orElseThrow();
        double transferUnits = 2e9 / mean / (3e4 * 4179);
        assertThat(Effectiveness.COUNTER_FLOW.effectiveness(transferUnits, 0))
                .isCloseTo((outlet - 20) / 30, within(1e-12));
    }

    /** HOLMAN10, example 10-4: counter flow, 37.44 K, 189.5 kW, 15.82 m2. */
    @Test
    void oilAndWater() {
        double heat = 68.0 / 60 * 4180 * (75 - 35);
        double mean = LogMean.of(110 - 75, 75 - 35).orElseThrow();
        assertThat(heat / 1000).isCloseTo(189.5, within(0.05));
        assertThat(mean).isCloseTo(37.44, within(0.005));
        // The book goes on with the rounded numbers.
        assertThat(189.5e3 / (320 * 37.44)).isCloseTo(15.82, within(0.005));
        assertThat(heat / (320 * mean)).isCloseTo(15.82, within(0.001 * 15.82));
    }

    /** HUNDY, example 1.10: water from 11.5 to 6.4 degC against 3 degC: 5.566 K, with 110 W/(m2 K) on 420 m2 257 kW. */
    @Test
    void waterCooler() {
        double mean = LogMean.of(11.5 - 3, 6.4 - 3).orElseThrow();
        assertThat(mean).isCloseTo(5.566, within(0.0005));
        assertThat(110 * 420 * mean / 1000).isCloseTo(257, within(0.5));
    }

    /** HUNDY, example 25.3: 16.4 kW by R-134a from liquid of 33 degC to vapor of 9 degC at 5 degC: 158.52 kJ/kg, 0.103 kg/s. */
    @Test
    void refrigerantOfAChiller() {
        var fluid = TestFluids.of("R-134a");
        double pressure = fluid.saturationAtTemperature(278.15).dew().pressure();
        double vapor = fluid.atPressureTemperature(pressure, 282.15).specificEnthalpy();
        double liquid = fluid.saturationAtTemperature(306.15).bubble().specificEnthalpy();
        assertThat((vapor - liquid) / 1000).isCloseTo(158.52, within(1.5852));
        assertThat(16.4e3 / (vapor - liquid)).isCloseTo(0.103, within(0.001));
    }
}
