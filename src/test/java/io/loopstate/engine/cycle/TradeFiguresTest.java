package io.loopstate.engine.cycle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.SaturationLevel;
import java.util.stream.DoubleStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Whole cycles against figures of the trade that are generic and hold within a band. */
class TradeFiguresTest {
    /**
     * Heat rejection factors of open compressors, any refrigerant. Source: Mechelec Group, air-cooled condenser selection
     * data, Table A; generic to about 5 %. An open compressor gives the heat of its losses largely to the room, so that the
     * table is close to the loss-free cycle, which is what it is compared to.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/examples/heat-rejection-factors-open.csv", numLinesToSkip = 1)
    void heatRejectionFactorsOfOpenCompressors(double evaporating, double condensing, double factor, double tolerance) {
        for (String refrigerant : new String[] {"R-134a", "R-22", "R-717", "R-290", "R-12"}) {
            double ours = TestCycles.of(refrigerant, evaporating + 273.15, condensing + 273.15)
                    .evaporatorOutlet(OutletCondition.superheat(0))
                    .condenserOutlet(OutletCondition.subcooling(0))
                    .efficiency(1)
                    .result()
                    .performance()
                    .heatRejectionFactor();
            assertThat(ours).as(refrigerant).isCloseTo(factor, within(tolerance * factor));
        }
    }

    /**
     * Best gas cooler pressure of R-744. Source: S. M. Liao, T. S. Zhao, A. Jakobsen, Appl. Therm. Eng. 20 (2000) 831-841;
     * the formula is from memory, its numbers evaluated. Published correlations differ by several bar with the compressor
     * assumed, so that they are a band; here the compressor is free of losses.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/examples/transcritical-optimum.csv", numLinesToSkip = 1)
    void bestGasCoolerPressure(double outlet, double evaporating, double optimum, double tolerance) {
        double best = DoubleStream.iterate(0.85 * optimum, bar -> bar < 1.2 * optimum, bar -> bar + 0.5)
                .boxed()
                .max((one, other) ->
                        Double.compare(coefficient(outlet, evaporating, one), coefficient(outlet, evaporating, other)))
                .orElseThrow();
        assertThat(best).isCloseTo(optimum, within(tolerance * optimum));
    }

    private static double coefficient(double outlet, double evaporating, double bar) {
        return TestCycles.of("R-744", evaporating + 273.15, 300)
                .condensing(SaturationLevel.pressure(bar * 1e5))
                .condenserOutlet(OutletCondition.temperature(outlet + 273.15))
                .evaporatorOutlet(OutletCondition.superheat(0))
                .efficiency(1)
                .result()
                .performance()
                .coefficientOfPerformance();
    }
}
