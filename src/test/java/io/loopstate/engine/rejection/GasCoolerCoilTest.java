package io.loopstate.engine.rejection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.air.AirState;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.rejection.GasCoolerCoil.Operating;
import io.loopstate.engine.rejection.GasCoolerCoil.Segment;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** The gas cooler: balances close, heat flows downhill, and its integral is that of many small exchangers. */
class GasCoolerCoilTest {
    private static final Equilibrium CARBON_DIOXIDE = TestFluids.of("R-744");

    /** K within which the streams touch and any larger coil would do the same. */
    private static final double PINNED = 0.01;

    private static CoilAir air(double temperature, double flow) {
        return new CoilAir(new AirState(101325, temperature, 0.008), flow);
    }

    private static GasCoolerCoil coil(CoilAir air, Arrangement arrangement, double pressure) {
        return new GasCoolerCoil(CARBON_DIOXIDE, air, arrangement, pressure, 390);
    }

    @Property(tries = 150)
    void balancesCloseAndMoreIsBetter(
            @ForAll @DoubleRange(min = 278, max = 315) double temperature,
            @ForAll @DoubleRange(min = 0.6, max = 3) double flow,
            @ForAll @DoubleRange(min = 7.5e6, max = 13e6) double pressure,
            @ForAll @DoubleRange(min = 200, max = 1500) double conductance,
            @ForAll @DoubleRange(min = 0.02, max = 0.08) double refrigerant,
            @ForAll Arrangement arrangement) {
        CoilAir air = air(temperature, flow);
        GasCoolerCoil coil = coil(air, arrangement, pressure);
        Load load = Load.massFlow(refrigerant);
        Operating operating = coil.solve(conductance, load);
        double heat = refrigerant
                * (operating.inlet().specificEnthalpy() - operating.outlet().specificEnthalpy());
        assertThat(operating.heat()).isCloseTo(heat, within(1e-9 * heat));
        assertThat(air.capacityRate() * (operating.airOutlet() - temperature)).isCloseTo(heat, within(1e-9 * heat));
        assertThat(operating.segments().stream().mapToDouble(Segment::heat).sum())
                .isCloseTo(heat, within(1e-9 * heat));
        assertThat(operating.pinch()).isPositive();
        assertThat(operating.segments())
                .allSatisfy(segment -> assertThat(segment.refrigerantOutlet()).isGreaterThan(segment.airInlet()));
        double outlet = operating.outlet().temperature();
        if (operating.pinch() < PINNED) {
            return;
        }
        assertThat(operating.segments().stream().mapToDouble(Segment::share).sum())
                .isCloseTo(1, within(1e-7));
        assertThat(coil.solve(1.2 * conductance, load).outlet().temperature())
                .as("more conductance")
                .isLessThan(outlet);
        assertThat(coil.solve(conductance, Load.massFlow(1.2 * refrigerant))
                        .outlet()
                        .temperature())
                .as("more refrigerant")
                .isGreaterThan(outlet);
        assertThat(coil(air(temperature, 1.2 * flow), arrangement, pressure)
                        .solve(conductance, load)
                        .outlet()
                        .temperature())
                .as("more air")
                .isLessThan(outlet);
        assertThat(coil.fitting(outlet, load)).as("found again").isCloseTo(conductance, within(1e-5 * conductance));
        assertThat(coil.solve(conductance, Load.heat(heat)).outlet().temperature())
                .as("by its heat")
                .isCloseTo(outlet, within(1e-5));
    }

    /**
     * Two thousand counter-flow exchangers of equal heat with logarithmic means, their states asked from the equation of state one
     * by one, need the conductance of the integral: the definition of the method, independent of series and quadrature.
     */
    @Example
    void theIntegralIsThatOfManySmallExchangers() {
        for (double pressure : new double[] {7.45e6, 8e6, 9e6, 12e6}) {
            CoilAir air = air(303, 1.2);
            double refrigerant = 0.04;
            double outlet = 309;
            double hot = CARBON_DIOXIDE.atPressureTemperature(pressure, 390).specificEnthalpy();
            double cold = CARBON_DIOXIDE.atPressureTemperature(pressure, outlet).specificEnthalpy();
            int parts = 2000;
            double step = (hot - cold) / parts;
            double sum = 0;
            double below = outlet - 303;
            for (int i = 1; i <= parts; i++) {
                double h = cold + i * step;
                double over = CARBON_DIOXIDE.atPressureEnthalpy(pressure, h).temperature()
                        - 303
                        - refrigerant * (h - cold) / air.capacityRate();
                sum += refrigerant * step / LogMean.of(below, over).orElseThrow();
                below = over;
            }
            assertThat(coil(air, Arrangement.SERIES, pressure).fitting(outlet, Load.massFlow(refrigerant)))
                    .as("%g Pa", pressure)
                    .isCloseTo(sum, within(1e-5 * sum));
        }
    }

    /**
     * Far above the critical point the heat capacity hardly changes, and the gas cooler is the counter-flow exchanger of the
     * textbook: Kays and London, the relation that {@code effectiveness_ntu.csv} checks.
     */
    @Example
    void aGasOfConstantHeatCapacityIsTheTextbooksExchanger() {
        CoilAir air = air(460, 0.05);
        GasCoolerCoil coil = new GasCoolerCoil(CARBON_DIOXIDE, air, Arrangement.SERIES, 7.5e6, 500);
        Operating operating = coil.solve(60, Load.massFlow(0.04));
        double rate = operating.heat()
                / (operating.inlet().temperature() - operating.outlet().temperature());
        double smaller = Math.min(rate, air.capacityRate());
        double effectiveness =
                Effectiveness.COUNTER_FLOW.effectiveness(60 / smaller, smaller / Math.max(rate, air.capacityRate()));
        assertThat(operating.heat()).isCloseTo(effectiveness * smaller * 40, within(2e-3 * operating.heat()));
    }

    /** The pinch lies inside where the gas gives most of its heat near its pseudo-critical temperature. */
    @Example
    void thePinchMayLieInside() {
        Operating operating = coil(air(288, 0.36), Arrangement.SERIES, 8e6).solve(5000, Load.massFlow(0.06));
        assertThat(operating.pinchTemperature())
                .isBetween(
                        operating.outlet().temperature() + 1, operating.inlet().temperature() - 1);
        assertThat(operating.outlet().temperature() - 288).isGreaterThan(operating.pinch());
    }

    @Example
    void whatIsNoGasCoolerIsTold() {
        refused(() -> coil(air(300, 1), Arrangement.SERIES, 7e6), "pressure");
        refused(() -> coil(air(395, 1), Arrangement.SERIES, 9e6), "gasCoolerInletTemperature");
        refused(() -> coil(air(300, 1), Arrangement.CROSS_FLOW, 9e6).solve(10, Load.heat(50e3)), "conductance");
    }

    private static void refused(Runnable call, String input) {
        assertThatThrownBy(call::run)
                .isInstanceOfSatisfying(
                        EngineException.class, e -> assertThat(e.input()).contains(input));
    }
}
