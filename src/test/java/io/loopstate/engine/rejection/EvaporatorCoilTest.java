package io.loopstate.engine.rejection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.air.AirState;
import io.loopstate.engine.component.GlidingFluid;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.rejection.EvaporatorCoil.Operating;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** The evaporating coil: balances close, and more of anything good raises the pressure. */
class EvaporatorCoilTest {
    private static final OutletCondition SUPERHEATED = OutletCondition.superheat(5);

    /** Of areas: vapor close to the air makes them steep in the pressure, which has its own rounding. */
    private static final double AREA = 1e-8;
    /** K below the air within which it is the air that holds the vapor. */
    private static final double PINNED = 0.01;

    private static EvaporatorCoil coil(
            Equilibrium fluid, double conductance, double temperature, double humidity, double flow) {
        double water = AirState.humidityRatio(101325, temperature, humidity);
        return new EvaporatorCoil(
                fluid, conductance, conductance, new CoilAir(new AirState(101325, temperature, water), flow));
    }

    private static double liquid(Equilibrium fluid, boolean gliding) {
        return gliding ? 290e3 : fluid.saturationAtTemperature(308).bubble().specificEnthalpy();
    }

    @Property(tries = 300)
    void balancesCloseAndMoreIsBetter(
            @ForAll @DoubleRange(min = 270, max = 305) double temperature,
            @ForAll @DoubleRange(min = 0.1, max = 0.95) double humidity,
            @ForAll @DoubleRange(min = 0.3, max = 2) double flow,
            @ForAll @DoubleRange(min = 500, max = 2000) double conductance,
            @ForAll @Scale(4) @DoubleRange(min = 0.01, max = 0.04) double refrigerant,
            @ForAll boolean gliding) {
        Equilibrium fluid = gliding ? new GlidingFluid(6) : TestFluids.of("R-134a");
        double inlet = liquid(fluid, gliding);
        EvaporatorCoil coil = coil(fluid, conductance, temperature, humidity, flow);
        Operating operating = coil.solve(refrigerant, inlet, SUPERHEATED);
        AirState in = coil.air().state();
        AirState out = operating.airOutlet();
        double given = flow * (in.specificEnthalpy() - out.specificEnthalpy())
                - operating.condensate() * AirFactors.waterEnthalpy(out.dryBulb());
        assertThat(given).isCloseTo(operating.heat(), within(1e-9 * operating.heat()));
        assertThat(operating.condensate()).isGreaterThanOrEqualTo(0);
        assertThat(out.dryBulb()).isLessThan(temperature);
        if (temperature - operating.outlet().temperature() < PINNED) {
            // The superheat, not the coil, sets the pressure.
            assertThat(operating.areaLeftOver()).isGreaterThan(-0.01);
            return;
        }
        assertThat(operating.areaLeftOver()).isCloseTo(0, within(AREA));
        assertThat(coil.massFlow(operating.pressure(), inlet, SUPERHEATED))
                .isCloseTo(refrigerant, within(AREA * refrigerant));
        double pressure = operating.pressure();
        assertThat(coil(fluid, 1.1 * conductance, temperature, humidity, flow)
                        .solve(refrigerant, inlet, SUPERHEATED)
                        .pressure())
                .as("more conductance")
                .isGreaterThan(pressure);
        assertThat(coil.solve(1.1 * refrigerant, inlet, SUPERHEATED).pressure())
                .as("more refrigerant")
                .isLessThan(pressure);
    }

    /** Moisture on the coil carries heat: humid air holds the pressure up. */
    @Example
    void humidAirHelps() {
        Equilibrium fluid = TestFluids.of("R-134a");
        double inlet = liquid(fluid, false);
        Operating dry = coil(fluid, 1000, 298, 0.1, 0.8).solve(0.02, inlet, SUPERHEATED);
        Operating humid = coil(fluid, 1000, 298, 0.7, 0.8).solve(0.02, inlet, SUPERHEATED);
        assertThat(dry.condensate()).isZero();
        assertThat(humid.condensate()).isPositive();
        assertThat(humid.pressure()).isGreaterThan(dry.pressure());
    }

    /** Rating turns sizing round, wet or dry, by flow or by heat, by enthalpy or by quality. */
    @Property(tries = 200)
    void theConductanceIsFoundAgain(
            @ForAll @DoubleRange(min = 275, max = 305) double temperature,
            @ForAll @DoubleRange(min = 0.1, max = 0.95) double humidity,
            @ForAll @DoubleRange(min = 500, max = 2000) double conductance,
            @ForAll @DoubleRange(min = 2e3, max = 7e3) double heat,
            @ForAll @DoubleRange(min = 0.05, max = 0.35) double quality,
            @ForAll boolean gliding) {
        Equilibrium fluid = gliding ? new GlidingFluid(6) : TestFluids.of("R-290");
        EvaporatorCoil coil = coil(fluid, conductance, temperature, humidity, 1);
        EvaporatorInlet inlet = EvaporatorInlet.quality(quality);
        Operating operating = coil.solve(Load.heat(heat), inlet, SUPERHEATED);
        assertThat(operating.heat()).isCloseTo(heat, within(1e-9 * heat));
        double zones =
                operating.zones().stream().mapToDouble(EvaporatorZone::heat).sum();
        assertThat(zones).isCloseTo(heat, within(1e-9 * heat));
        if (temperature - operating.outlet().temperature() < PINNED) {
            return;
        }
        assertThat(coil.fitting(operating.pressure(), Load.heat(heat), inlet, SUPERHEATED))
                .isCloseTo(conductance, within(1e-6 * conductance));
        assertThat(coil.fitting(operating.pressure(), Load.massFlow(operating.massFlow()), inlet, SUPERHEATED))
                .isCloseTo(conductance, within(1e-6 * conductance));
    }

    /**
     * Boiling without glide or superheat is the textbook's exchanger with one stream changing phase; a wet one is that of the
     * bypass factor, with the enthalpy in place of the temperature: all air that meets the surface leaves saturated as cold as it.
     */
    @Example
    void pureBoilingIsOneMinusExp() {
        for (double humidity : new double[] {0.05, 0.8}) {
            Equilibrium fluid = TestFluids.of("R-134a");
            EvaporatorCoil coil = coil(fluid, 900, 298, humidity, 0.7);
            Operating operating =
                    coil.solve(Load.massFlow(0.02), EvaporatorInlet.quality(0.2), OutletCondition.superheat(0));
            double surface = operating.saturation().dew().temperature();
            AirState in = coil.air().state();
            double effectiveness = -Math.expm1(-900 / coil.air().capacityRate());
            double most = humidity < 0.1
                    ? coil.air().capacityRate() * (298 - surface)
                    : 0.7 * enthalpyToSaturation(in, surface);
            assertThat(operating.surface().wet()).isEqualTo(humidity > 0.1);
            assertThat(effectiveness * most).isCloseTo(operating.heat(), within(1e-6 * operating.heat()));
            assertThat(1 - operating.zones().get(0).effectiveness()).isCloseTo(1 - effectiveness, within(1e-12));
        }
    }

    private static double enthalpyToSaturation(AirState in, double surface) {
        double water = AirState.saturatedHumidityRatio(in.pressure(), surface);
        return in.specificEnthalpy()
                - new AirState(in.pressure(), surface, water).specificEnthalpy()
                - (in.humidityRatio() - water) * AirFactors.waterEnthalpy(surface);
    }
}
