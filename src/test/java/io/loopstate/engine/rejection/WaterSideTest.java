package io.loopstate.engine.rejection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.cycle.FindingCode;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.fluid.ReferenceState;
import io.loopstate.engine.rejection.AirSide.Coil;
import io.loopstate.engine.rejection.WaterSide.Figures;
import io.loopstate.engine.rejection.WaterSide.Result;
import io.loopstate.engine.rejection.WaterSide.Spec;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** The water of a coil: any three of four, the energy balance, textbook examples. */
class WaterSideTest {
    private static final Equilibrium WATER = TestFluids.of("R-718", ReferenceState.NORMAL_BOILING_POINT);
    private static final OptionalDouble NONE = OptionalDouble.empty();

    private static Result water(
            Coil coil, OptionalDouble entering, OptionalDouble leaving, OptionalDouble flow, OptionalDouble heat) {
        return WaterSide.calculate(new Spec(
                WATER,
                coil,
                3e5,
                entering,
                leaving,
                NONE,
                flow,
                heat,
                NONE,
                Optional.empty(),
                0,
                Optional.empty(),
                Guidance.common(),
                true));
    }

    private static OptionalDouble some(double value) {
        return OptionalDouble.of(value);
    }

    @Property(tries = 200)
    void anyThreeGiveTheFourth(
            @ForAll @DoubleRange(min = 280, max = 320) double entering,
            @ForAll @DoubleRange(min = 1, max = 6) double change,
            @ForAll @Scale(4) @DoubleRange(min = 1e-4, max = 1) double flow,
            @ForAll Coil coil) {
        double leaving = coil == Coil.CONDENSER ? entering + change : entering - change;
        Figures base =
                water(coil, some(entering), some(leaving), some(flow), NONE).figures();
        Figures byHeat = water(coil, some(entering), some(leaving), NONE, some(base.heat()))
                .figures();
        assertThat(byHeat.volumeFlow()).isCloseTo(flow, within(1e-9 * flow));
        Figures out =
                water(coil, some(entering), NONE, some(flow), some(base.heat())).figures();
        assertThat(out.leaving()).isCloseTo(leaving, within(1e-6));
        Figures in =
                water(coil, NONE, some(leaving), some(flow), some(base.heat())).figures();
        assertThat(in.entering()).isCloseTo(entering, within(1e-6));
        for (Figures figures : new Figures[] {base, byHeat, out, in}) {
            assertThat(figures.massFlow() * figures.heatCapacity() * figures.temperatureChange())
                    .isCloseTo(figures.heat(), within(1e-9 * figures.heat()));
        }
    }

    /** Source: HUNDY, example 6.2: 930 kW and 5.2 K need 43 kg/s; evaluated from read inputs, two digits. */
    @Example
    void waterOfACondenser() {
        Figures figures = water(Coil.CONDENSER, some(298.15), some(303.35), NONE, some(930e3))
                .figures();
        assertThat(figures.massFlow()).isCloseTo(43, within(0.5));
    }

    /**
     * Source: HUNDY, example 6.4: 700 kW of cooling and 170 kW of compressor power, solids 0.0012 in the bleed and 0.00056 in
     * the make-up, 2420 kJ/kg: 0.3595 kg/s evaporate, 0.31 are bled, 0.67 made up; evaluated from read inputs.
     */
    @Example
    void waterOfATower() {
        double heat = 700e3 + 170e3;
        CoolingTower tower =
                CoolingTower.of(new CoolingTower.Conditions(some(293), some(0.0012 / 0.00056)), heat, 2420e3, 300, 305);
        assertThat(heat).isEqualTo(870e3);
        assertThat(tower.evaporation()).isCloseTo(0.3595, within(0.00005));
        assertThat(tower.bleed().orElseThrow()).isCloseTo(0.31, within(0.005));
        assertThat(tower.makeUp().orElseThrow()).isCloseTo(0.67, within(0.005));
        assertThat(tower.approach().orElseThrow()).isEqualTo(7);
    }

    @Example
    void glycolAndFrostAreWarnedOf() {
        Result result = WaterSide.calculate(new Spec(
                WATER,
                Coil.EVAPORATOR,
                3e5,
                some(280),
                some(275),
                NONE,
                some(1e-3),
                NONE,
                some(272),
                Optional.empty(),
                0,
                Optional.empty(),
                Guidance.common(),
                false));
        assertThat(result.findings())
                .filteredOn(finding -> finding.code() == FindingCode.FREEZING_RISK)
                .extracting(finding -> finding.subject())
                .containsExactlyInAnyOrder("leavingTemperature", "saturationTemperature");
    }

    private static Result brine(
            OptionalDouble entering, OptionalDouble leaving, OptionalDouble flow, OptionalDouble heat) {
        return WaterSide.calculate(new Spec(
                WATER,
                Coil.EVAPORATOR,
                3e5,
                entering,
                leaving,
                NONE,
                flow,
                heat,
                NONE,
                Optional.empty(),
                0.3,
                Optional.of(new Brine(1045, 3700)),
                Guidance.common(),
                true));
    }

    /** A brine is arithmetic: Q = V rho cp dT; every three give the fourth, below the freezing point of water too. */
    @Example
    void aBrineIsItsMakersFigures() {
        double heat = 1e-3 * 1045 * 3700 * 5;
        Result base = brine(some(268), some(263), some(1e-3), NONE);
        assertThat(base.figures().heat()).isCloseTo(heat, within(1e-9 * heat));
        assertThat(base.figures().factor()).isEqualTo(1045.0 * 3700);
        assertThat(brine(some(268), NONE, some(1e-3), some(heat)).figures().leaving())
                .isCloseTo(263, within(1e-9));
        assertThat(brine(NONE, some(263), some(1e-3), some(heat)).figures().entering())
                .isCloseTo(268, within(1e-9));
        assertThat(brine(some(268), some(263), NONE, some(heat)).figures().volumeFlow())
                .isCloseTo(1e-3, within(1e-12));
        assertThat(base.findings()).extracting(finding -> finding.code()).containsExactly(FindingCode.APPROXIMATION);
    }

    /** What is iterated is shown: entering water whose volume flow depends on its own density. */
    @Example
    void theSearchIsShown() {
        Result result = water(Coil.CONDENSER, NONE, some(305), some(1e-3), some(2e4));
        assertThat(result.steps().get(0).inputs())
                .extracting(term -> term.symbol())
                .contains("trials", "residual");
    }
}
