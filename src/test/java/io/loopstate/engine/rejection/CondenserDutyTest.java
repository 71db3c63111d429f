package io.loopstate.engine.rejection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.component.CompressorKind;
import io.loopstate.engine.component.CompressorModel;
import io.loopstate.engine.component.GlidingFluid;
import io.loopstate.engine.component.HeatRejection;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.cycle.FindingCode;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.cycle.PointName;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.rejection.CondenserDuty.Compression;
import io.loopstate.engine.rejection.CondenserDuty.CondensingSide;
import io.loopstate.engine.rejection.CondenserDuty.Machine;
import io.loopstate.engine.rejection.CondenserDuty.Result;
import io.loopstate.engine.rejection.CondenserDuty.Spec;
import io.loopstate.engine.rejection.CondenserDuty.Totals;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** The balances of a condenser's duty. */
class CondenserDutyTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();

    private static Machine machine(double capacity, double power, double shell, double oil) {
        return new Machine(
                CompressorKind.HERMETIC,
                NONE,
                OptionalDouble.of(capacity),
                power > 0 ? OptionalDouble.of(power) : NONE,
                NONE,
                shell,
                oil);
    }

    private static Result compressed(String refrigerant, double low, double high, double efficiency, Machine machine) {
        return CondenserDuty.calculate(new Spec(
                TestFluids.of(refrigerant),
                Optional.of(new CondensingSide(
                        SaturationLevel.temperature(high),
                        NONE,
                        Optional.of(new Compression(
                                SaturationLevel.temperature(low),
                                OutletCondition.superheat(6),
                                CompressorModel.of(efficiency))),
                        OutletCondition.subcooling(4))),
                machine,
                Guidance.common(),
                true));
    }

    /** First law: what evaporator and compressor put in leaves by condenser, shell and oil cooler. */
    @Property(tries = 300)
    void theBalanceOfTheMachineCloses(
            @ForAll @DoubleRange(min = 243, max = 283) double low,
            @ForAll @DoubleRange(min = 298, max = 333) double high,
            @ForAll @DoubleRange(min = 0.4, max = 1) double efficiency,
            @ForAll @DoubleRange(min = 100, max = 1e6) double capacity,
            @ForAll @DoubleRange(min = 0, max = 0.05) double share) {
        Totals totals = compressed(
                        "R-134a", low, high, efficiency, machine(capacity, 0, share * capacity, share * capacity))
                .totals();
        double in = totals.refrigeratingCapacity().orElseThrow()
                + totals.refrigerantPower().orElseThrow();
        double out = totals.heatRejected().orElseThrow() + totals.shellHeatLoss() + totals.oilCoolerHeat();
        assertThat(out).isCloseTo(in, within(1e-9 * in));
        HeatRejection parts = totals.parts().orElseThrow();
        assertThat(parts.total())
                .isCloseTo(
                        totals.heatRejected().orElseThrow(),
                        within(1e-9 * totals.heatRejected().orElseThrow()));
    }

    @Example
    void anOpenCompressorBringsTheShaftPowerOnlyAHermeticOneAllOfIt() {
        Machine hermetic = machine(10e3, 3e3, 0, 0);
        Machine open = new Machine(
                CompressorKind.OPEN,
                NONE,
                OptionalDouble.of(10e3),
                OptionalDouble.of(3e3),
                OptionalDouble.of(0.9),
                0,
                0);
        assertThat(balance(hermetic)).isCloseTo(13e3, within(1e-9));
        assertThat(balance(open)).isCloseTo(12.7e3, within(1e-9));
    }

    private static double balance(Machine machine) {
        return CondenserDuty.calculate(
                        new Spec(TestFluids.of("R-134a"), Optional.empty(), machine, Guidance.common(), false))
                .totals()
                .heatRejected()
                .orElseThrow();
    }

    @Example
    void statesAndBalanceCheckEachOther() {
        Result apart = compressed("R-134a", 263, 313, 0.7, machine(10e3, 6e3, 0, 0));
        assertThat(apart.findings()).anyMatch(finding -> finding.code() == FindingCode.HEAT_BALANCE_OFF);
        double power = compressed("R-134a", 263, 313, 0.7, machine(10e3, 0, 0, 0))
                .totals()
                .refrigerantPower()
                .orElseThrow();
        Result together = compressed("R-134a", 263, 313, 0.7, machine(10e3, power, 0, 0));
        assertThat(together.totals().balanceDifference().orElseThrow()).isCloseTo(0, within(1e-12));
        assertThat(together.findings()).noneMatch(finding -> finding.code() == FindingCode.HEAT_BALANCE_OFF);
        assertThat(together.steps()).isNotEmpty();
    }

    /** A blend condenses from its dew point to its bubble point. */
    @Example
    void glideBelongsToCondensing() {
        Equilibrium fluid = new GlidingFluid(8);
        Result result = CondenserDuty.calculate(new Spec(
                fluid,
                Optional.of(new CondensingSide(
                        SaturationLevel.pressure(20e5),
                        OptionalDouble.of(GlidingFluid.bubbleTemperature(20e5) + 8 + 30),
                        Optional.empty(),
                        OutletCondition.subcooling(5))),
                new Machine(CompressorKind.OPEN, OptionalDouble.of(0.1), NONE, NONE, NONE, 0, 0),
                Guidance.common(),
                true));
        HeatRejection parts = result.parts().orElseThrow();
        assertThat(parts.desuperheating()).isCloseTo(30e3, within(1e-6));
        assertThat(parts.condensing()).isCloseTo(208e3, within(1e-6));
        assertThat(parts.subcooling()).isCloseTo(5e3, within(1e-6));
        assertThat(result.condensing().orElseThrow().glide()).isCloseTo(8, within(1e-9));
        assertThat(result.totals().heatRejected().orElseThrow()).isCloseTo(24.3e3, within(1e-6));
    }

    @Example
    void aboveTheCriticalPressureAllIsGasCooling() {
        Result result = CondenserDuty.calculate(new Spec(
                TestFluids.of("R-744"),
                Optional.of(new CondensingSide(
                        SaturationLevel.pressure(95e5),
                        OptionalDouble.of(370),
                        Optional.empty(),
                        OutletCondition.temperature(308))),
                new Machine(CompressorKind.OPEN, OptionalDouble.of(0.1), NONE, NONE, NONE, 0, 0),
                Guidance.common(),
                true));
        assertThat(result.inlet().orElseThrow().name()).isEqualTo(PointName.GAS_COOLER_INLET);
        assertThat(result.condensing()).isEmpty();
        assertThat(result.parts().orElseThrow().gasCooling())
                .isEqualTo(result.perMass().orElseThrow().heatRejection());
        assertThat(result.findings()).anyMatch(finding -> finding.code() == FindingCode.TRANSCRITICAL);
    }
}
