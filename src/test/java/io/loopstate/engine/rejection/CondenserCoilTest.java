package io.loopstate.engine.rejection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.air.AirState;
import io.loopstate.engine.component.GlidingFluid;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.rejection.CondenserCoil.Operating;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** The condensing coil: its zones are exchangers, its balances close, and more of anything good helps. */
class CondenserCoilTest {
    private static final OutletCondition SUBCOOLED = OutletCondition.subcooling(2);

    /** K within which the air, not the coil, holds the refrigerant. */
    private static final double PINNED = 0.01;

    private static CoilAir air(double temperature, double flow) {
        return new CoilAir(new AirState(101325, temperature, 0.01), flow);
    }

    private static Operating solve(
            Equilibrium fluid, double conductance, CoilAir air, Arrangement arrangement, double heat) {
        return new CondenserCoil(fluid, Conductance.uniform(conductance), air, arrangement)
                .solve(Load.heat(heat), CoilInlet.superheat(30), SUBCOOLED);
    }

    /** First law on both sides, the zones fill the coil, heat flows downhill everywhere; and more of anything good helps. */
    @Property(tries = 300)
    void balancesCloseAndMoreIsBetter(
            @ForAll @DoubleRange(min = 263, max = 318) double temperature,
            @ForAll @DoubleRange(min = 0.5, max = 3) double flow,
            @ForAll @DoubleRange(min = 300, max = 700) double conductance,
            @ForAll @DoubleRange(min = 4e3, max = 9e3) double heat,
            @ForAll Arrangement arrangement,
            @ForAll boolean gliding) {
        Equilibrium fluid = gliding ? new GlidingFluid(6) : TestFluids.of("R-134a");
        CoilAir air = air(temperature, flow);
        Operating coil = solve(fluid, conductance, air, arrangement, heat);
        double zones = coil.zones().stream().mapToDouble(CoilZone::heat).sum();
        assertThat(coil.heat()).isCloseTo(heat, within(1e-9 * heat));
        assertThat(zones).isCloseTo(heat, within(1e-9 * heat));
        assertThat(air.capacityRate() * (coil.airOutlet() - temperature)).isCloseTo(heat, within(1e-9 * heat));
        assertThat(coil.zones()).allSatisfy(zone -> assertThat(zone.pinch()).isPositive());
        if (coil.zones().stream().anyMatch(zone -> zone.pinch() < PINNED)) {
            return;
        }
        assertThat(coil.areaLeftOver()).isCloseTo(0, within(1e-8));
        double pressure = coil.pressure();
        assertThat(solve(fluid, conductance, air(temperature, 1.1 * flow), arrangement, heat)
                        .pressure())
                .as("more air")
                .isLessThan(pressure);
        assertThat(solve(fluid, 1.1 * conductance, air, arrangement, heat).pressure())
                .as("more conductance")
                .isLessThan(pressure);
        assertThat(solve(fluid, conductance, air(temperature + 2, flow), arrangement, heat)
                        .pressure())
                .as("hotter air")
                .isGreaterThan(pressure);
        assertThat(solve(fluid, conductance, air, arrangement, 0.9 * heat).pressure())
                .as("less heat")
                .isLessThan(pressure);
    }

    /** Rating turns sizing round: the conductance that explains a pressure is the one it came from. */
    @Property(tries = 200)
    void theConductanceIsFoundAgain(
            @ForAll @DoubleRange(min = 263, max = 318) double temperature,
            @ForAll @DoubleRange(min = 300, max = 700) double conductance,
            @ForAll @DoubleRange(min = 4e3, max = 9e3) double heat,
            @ForAll Arrangement arrangement) {
        CondenserCoil coil = new CondenserCoil(
                TestFluids.of("R-290"), Conductance.uniform(conductance), air(temperature, 1.5), arrangement);
        Operating operating = coil.solve(Load.heat(heat), CoilInlet.superheat(30), SUBCOOLED);
        if (operating.zones().stream().anyMatch(zone -> zone.pinch() < PINNED)) {
            return;
        }
        assertThat(coil.fitting(operating.pressure(), Load.heat(heat), CoilInlet.superheat(30), SUBCOOLED))
                .isCloseTo(conductance, within(1e-6 * conductance));
    }

    /**
     * Each zone is the published cross flow with the refrigerant mixed: Kays and London, both forms of the relation. Source: the
     * same relations that {@code effectiveness_ntu.csv} checks.
     */
    @Example
    void zonesAreThePublishedCrossFlow() {
        Operating coil = solve(new GlidingFluid(6), 2000, air(303, 1.2), Arrangement.CROSS_FLOW, 6e3);
        for (CoilZone zone : coil.zones()) {
            double airRate = zone.heat() / (zone.airOutlet() - zone.airInlet());
            double refrigerantRate = zone.heat() / (zone.refrigerantInlet() - zone.refrigerantOutlet());
            boolean airSmaller = airRate < refrigerantRate;
            double smaller = Math.min(airRate, refrigerantRate);
            double effectiveness = (airSmaller
                            ? Effectiveness.CROSS_FLOW_LARGER_MIXED
                            : Effectiveness.CROSS_FLOW_SMALLER_MIXED)
                    .effectiveness(zone.conductance() / smaller, smaller / Math.max(airRate, refrigerantRate));
            assertThat(effectiveness * smaller * (zone.refrigerantInlet() - zone.airInlet()))
                    .as(zone.kind().name())
                    .isCloseTo(zone.heat(), within(1e-9 * zone.heat()));
        }
    }

    /** Air in series meets the cold liquid first: the counter flow lowers the pressure. */
    @Example
    void seriesSubcoolsWithTheColdestAir() {
        Operating series = solve(TestFluids.of("R-134a"), 1500, air(305, 1), Arrangement.SERIES, 5e3);
        CoilZone subcooling = series.zones().get(2);
        assertThat(subcooling.kind()).isEqualTo(CoilZone.Kind.SUBCOOLING);
        assertThat(subcooling.airInlet()).isEqualTo(305);
        assertThat(series.zones().get(0).airOutlet()).isCloseTo(series.airOutlet(), within(1e-9));
    }

    /** Liquid never leaves colder than the air: where the coil is large that, and not the coil, sets the pressure. */
    @Example
    void theOutletSetsThePressureOfALargeCoil() {
        Operating coil = new CondenserCoil(
                        TestFluids.of("R-134a"), Conductance.uniform(4000), air(300, 2), Arrangement.CROSS_FLOW)
                .solve(Load.heat(1e3), CoilInlet.superheat(20), OutletCondition.subcooling(8));
        assertThat(coil.saturation().bubble().temperature()).isCloseTo(308, within(1e-6));
        assertThat(coil.areaLeftOver()).isGreaterThan(0.1);
        assertThat(coil.heat()).isCloseTo(1e3, within(1e-6));
    }

    @Example
    void aCoilThatCannotIsToldSo() {
        Equilibrium carbonDioxide = TestFluids.of("R-744");
        refused(() -> solve(carbonDioxide, 1500, air(310, 1), Arrangement.CROSS_FLOW, 5e3), "entering.dryBulb");
        refused(() -> solve(TestFluids.of("R-134a"), 10, air(310, 1), Arrangement.CROSS_FLOW, 50e3), "conductance");
        refused(() -> solve(TestFluids.of("R-134a"), 1e6, air(310, 0.01), Arrangement.SERIES, 50e3), "conductance");
    }

    private static void refused(Runnable call, String input) {
        assertThatThrownBy(call::run).isInstanceOfSatisfying(EngineException.class, e -> {
            assertThat(e.code()).isEqualTo(ErrorCode.CONTRADICTORY_INPUTS);
            assertThat(e.input()).contains(input);
        });
    }

    /** A saturated inlet and outlet of a fluid without glide: the textbook's exchanger with one stream changing phase. */
    @Example
    void pureCondensingIsOneMinusExp() {
        CoilAir air = air(300, 1);
        Operating coil = new CondenserCoil(
                        TestFluids.of("R-134a"), Conductance.uniform(1200), air, Arrangement.CROSS_FLOW)
                .solve(Load.heat(6e3), CoilInlet.superheat(0), OutletCondition.subcooling(0));
        double effectiveness = Effectiveness.COUNTER_FLOW.effectiveness(1200 / air.capacityRate(), 0);
        double condensing = coil.saturation().dew().temperature();
        assertThat(effectiveness * air.capacityRate() * (condensing - 300)).isCloseTo(6e3, within(1e-6 * 6e3));
    }
}
