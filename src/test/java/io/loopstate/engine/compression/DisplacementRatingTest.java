package io.loopstate.engine.compression;

import static io.loopstate.engine.compression.Machines.hermetic;
import static io.loopstate.engine.compression.Machines.lossless;
import static io.loopstate.engine.compression.Machines.open;
import static io.loopstate.engine.compression.Machines.piston;
import static io.loopstate.engine.compression.Machines.semiHermetic;
import static io.loopstate.engine.compression.Machines.spec;
import static io.loopstate.engine.compression.Machines.withCircuit;
import static io.loopstate.engine.compression.Processes.suction;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.compression.DisplacementRating.Figures;
import io.loopstate.engine.compression.DisplacementRating.Result;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.FindingCode;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws of machines: energy, mass, monotonic physics; no published numbers. */
class DisplacementRatingTest {
    private static final double BALANCE = 1e-9;

    static Stream<Arguments> kinds() {
        return Stream.of(
                Arguments.of("open reciprocating", "R-134a", new Machine(piston(0.04, 0.75), open())),
                Arguments.of(
                        "hermetic reciprocating, motor in the suction vapor",
                        "R-290",
                        new Machine(piston(0.03, 0.8), hermetic(MotorCooling.SUCTION_GAS))),
                Arguments.of(
                        "hermetic rotary, shell at discharge pressure",
                        "R-32",
                        new Machine(rotor(OptionalDouble.empty()), hermetic(MotorCooling.DISCHARGE_GAS))),
                Arguments.of(
                        "hermetic scroll",
                        "R-134a",
                        new Machine(rotor(OptionalDouble.of(2.6)), hermetic(MotorCooling.SUCTION_GAS))),
                Arguments.of(
                        "semi-hermetic reciprocating, suction cooled",
                        "R-744",
                        new Machine(piston(0.05, 0.7), semiHermetic(MotorCooling.SUCTION_GAS))),
                Arguments.of(
                        "semi-hermetic reciprocating, air cooled",
                        "R-134a",
                        new Machine(piston(0.05, 0.7), semiHermetic(MotorCooling.SURROUNDINGS))),
                Arguments.of("open screw", "R-717", new Machine(rotor(OptionalDouble.of(3)), open())),
                Arguments.of(
                        "open centrifugal",
                        "R-134a",
                        new Machine(new Impeller(0.5, 200, 1, OptionalDouble.of(0.6), 0.78), open())));
    }

    private static Rotor rotor(OptionalDouble builtIn) {
        return new Rotor(0.004, 0.93, builtIn, 0.8);
    }

    private static SuctionCondition suctionOf(String fluid) {
        double critical = TestFluids.of(fluid).refrigerant().criticalPoint().pressure();
        return suction((fluid.equals("R-744") ? 0.4 : 0.06) * critical, Variable.SUPERHEAT, 8);
    }

    /** One end-to-end example per kind: evaporator + power - losses = rejected, each from its own states. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("kinds")
    void energyOfTheCircuitCloses(String name, String fluid, Machine machine) {
        double ratio = fluid.equals("R-744") ? 2.2 : 3;
        Result result = DisplacementRating.calculate(
                withCircuit(spec(TestFluids.of(fluid), suctionOf(fluid), DischargeLevel.ratio(ratio), machine), 4));
        EnergyBalance balance = result.balance().orElseThrow();
        assertThat(Math.abs(balance.residual())).isLessThan(BALANCE);
        assertThat(balance.refrigeratingCapacity() + balance.electricalPower() - balance.heatLoss())
                .isCloseTo(balance.heatRejected(), Percentage.withPercentage(100 * BALANCE));
        Figures figures = result.figures();
        boolean outside = machine.drive().cooling() == MotorCooling.SURROUNDINGS;
        assertThat(figures.heatLoss())
                .isCloseTo(
                        figures.shellLoss() + figures.driveLoss() + (outside ? figures.motorLoss() : 0),
                        Offset.offset(1e-9 * figures.electricalPower()));
        assertThat(figures.electricalPower())
                .isCloseTo(
                        figures.indicatedPower() + figures.frictionLoss() + figures.driveLoss() + figures.motorLoss(),
                        Offset.offset(1e-9 * figures.electricalPower()));
        assertThat(figures.current().orElseThrow())
                .isCloseTo(figures.electricalPower() / (Math.sqrt(3) * 400 * 0.85), Percentage.withPercentage(1e-9));
        assertThat(result.steps()).hasSizeGreaterThan(8);
    }

    /** The interface for iterations gives the same numbers. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("kinds")
    void unitAndRatingAgree(String name, String fluid, Machine machine) {
        Equilibrium equilibrium = TestFluids.of(fluid);
        double ratio = fluid.equals("R-744") ? 2.2 : 3;
        State suction = suctionOf(fluid).state(equilibrium);
        CompressorUnit.Running running = machine.run(equilibrium, suction, ratio * suction.pressure());
        double flow = running.massFlow() * (running.discharge().specificEnthalpy() - suction.specificEnthalpy());
        assertThat(flow)
                .isCloseTo(running.electricalPower() - running.heatLoss(), Percentage.withPercentage(100 * BALANCE));
    }

    /** The motor's heat in the suction vapor satisfies its own equation, and costs flow and work. */
    @Test
    void motorInTheSuctionVaporCostsFlow() {
        Equilibrium equilibrium = TestFluids.of("R-134a");
        State suction = suctionOf("R-134a").state(equilibrium);
        double high = 3 * suction.pressure();
        Machine inside = new Machine(piston(0.04, 0.75), semiHermetic(MotorCooling.SUCTION_GAS));
        Machine outside = new Machine(piston(0.04, 0.75), semiHermetic(MotorCooling.SURROUNDINGS));
        Machine.Detail warm = inside.detail(equilibrium, suction, high);
        Machine.Detail cold = outside.detail(equilibrium, suction, high);
        double heat = warm.running().massFlow() * (warm.port().specificEnthalpy() - suction.specificEnthalpy());
        assertThat(heat).isCloseTo(warm.motorLoss(), Percentage.withPercentage(1e-9));
        assertThat(warm.running().massFlow()).isLessThan(cold.running().massFlow());
        assertThat(warm.running().discharge().temperature())
                .isGreaterThan(cold.running().discharge().temperature());
    }

    @Property(tries = 100)
    void moreClearanceIsLessFlow(
            @ForAll @DoubleRange(min = 0, max = 0.08) double clearance,
            @ForAll @DoubleRange(min = 0.5, max = 1) double efficiency,
            @ForAll @DoubleRange(min = 1.5, max = 7) double ratio) {
        Figures less = rate(piston(clearance, efficiency), ratio);
        Figures more = rate(piston(clearance + 0.01, efficiency), ratio);
        assertThat(more.massFlow()).isLessThan(less.massFlow());
        assertThat(more.volumetricEfficiency()).isLessThan(less.volumetricEfficiency());
    }

    @Property(tries = 60)
    void moreRatioIsHotterAndLessFlow(
            @ForAll @DoubleRange(min = 1.5, max = 6) double ratio,
            @ForAll @DoubleRange(min = 0.01, max = 0.08) double clearance) {
        Figures low = rate(piston(clearance, 0.8), ratio);
        Figures high = rate(piston(clearance, 0.8), 1.1 * ratio);
        assertThat(high.dischargeTemperature()).isGreaterThan(low.dischargeTemperature());
        assertThat(high.massFlow()).isLessThan(low.massFlow());
    }

    /** A built-in ratio that fits loses nothing; any other loses something, on both sides. */
    @Property(tries = 60)
    void mismatchIsNeverAGain(@ForAll @DoubleRange(min = 1, max = 6) double builtIn) {
        Equilibrium equilibrium = TestFluids.of("R-134a");
        State suction = suctionOf("R-134a").state(equilibrium);
        State ideal = equilibrium.atPressureEntropy(3 * suction.pressure(), suction.specificEntropy());
        double fitting = suction.specificVolume() / ideal.specificVolume();
        double work = new Rotor(1, 1, OptionalDouble.of(builtIn), 1)
                .stroke(equilibrium, suction, 3 * suction.pressure())
                .work();
        double least = new Rotor(1, 1, OptionalDouble.of(fitting), 1)
                .stroke(equilibrium, suction, 3 * suction.pressure())
                .work();
        double isentropic = ideal.specificEnthalpy() - suction.specificEnthalpy();
        assertThat(least).isCloseTo(isentropic, Percentage.withPercentage(1e-7));
        assertThat(work).isGreaterThanOrEqualTo(least * (1 - 1e-9));
    }

    @Test
    void mismatchIsWarnedOf() {
        Result over = rateRotor(OptionalDouble.of(5), 2);
        Result under = rateRotor(OptionalDouble.of(1.5), 6);
        assertThat(codes(over)).contains(FindingCode.BUILT_IN_RATIO_MISMATCH);
        assertThat(codes(under)).contains(FindingCode.BUILT_IN_RATIO_MISMATCH);
        assertThat(over.inside().orElseThrow().endPressure())
                .isGreaterThan(over.points().get(1).state().pressure());
        assertThat(under.inside().orElseThrow().endPressure())
                .isLessThan(under.points().get(1).state().pressure());
    }

    /** Valve drops cost work and flow. */
    @Test
    void valvesCostWorkAndFlow() {
        Piston free = piston(0.04, 0.8);
        Piston throttled = new Piston(0.005, 0.04, 1e4, 3e4, 0, OptionalDouble.of(0.8), OptionalDouble.empty());
        Figures before = rate(free, 4);
        Figures after = rate(throttled, 4);
        assertThat(after.massFlow()).isLessThan(before.massFlow());
        assertThat(after.indicatedPower() / after.massFlow())
                .isGreaterThan(before.indicatedPower() / before.massFlow());
        assertThat(after.shaftEfficiency()).isLessThan(before.shaftEfficiency());
    }

    @Test
    void clearanceThatFillsTheCylinderIsRefused() {
        assertThatThrownBy(() -> rate(piston(0.5, 0.8), 6)).isInstanceOfSatisfying(EngineException.class, e -> {
            assertThat(e.code()).isEqualTo(ErrorCode.CONTRADICTORY_INPUTS);
            assertThat(e.input()).contains("clearance");
        });
    }

    @Test
    void impellerThatIsTooSlowIsRefused() {
        Machine machine = new Machine(new Impeller(0.5, 100, 1, OptionalDouble.of(0.55), 0.78), open());
        assertThatThrownBy(() -> DisplacementRating.calculate(
                        spec(TestFluids.of("R-134a"), suctionOf("R-134a"), DischargeLevel.ratio(3), machine)))
                .isInstanceOfSatisfying(
                        EngineException.class, e -> assertThat(e.input()).contains("headCoefficient"));
    }

    @Test
    void impellerNeedsItsHead() {
        Machine machine = new Machine(new Impeller(0.5, 180, 2, OptionalDouble.empty(), 0.78), lossless());
        Result result = DisplacementRating.calculate(
                spec(TestFluids.of("R-134a"), suctionOf("R-134a"), DischargeLevel.ratio(3), machine));
        DisplacementRating.Head head = result.head().orElseThrow();
        assertThat(head.neededCoefficient() * 2 * 180 * 180).isCloseTo(head.needed(), Percentage.withPercentage(1e-9));
        assertThat(head.machNumber().orElseThrow()).isBetween(0.5, 2.0);
    }

    @Test
    void motorsStandWhereTheirHousingHasThem() {
        assertThatThrownBy(() -> new Drive(Housing.OPEN, MotorCooling.SUCTION_GAS, 0.9, 1, 1, 0))
                .isInstanceOf(EngineException.class);
        assertThatThrownBy(() -> new Drive(Housing.HERMETIC, MotorCooling.SURROUNDINGS, 0.9, 1, 1, 0))
                .isInstanceOf(EngineException.class);
        assertThatThrownBy(() -> new Drive(Housing.HERMETIC, MotorCooling.SUCTION_GAS, 0.9, 0.95, 1, 0))
                .isInstanceOf(EngineException.class);
    }

    private static Figures rate(Displacer displacer, double ratio) {
        return DisplacementRating.calculate(spec(
                        TestFluids.of("R-134a"),
                        suctionOf("R-134a"),
                        DischargeLevel.ratio(ratio),
                        new Machine(displacer, lossless())))
                .figures();
    }

    private static Result rateRotor(OptionalDouble builtIn, double ratio) {
        return DisplacementRating.calculate(spec(
                TestFluids.of("R-134a"),
                suctionOf("R-134a"),
                DischargeLevel.ratio(ratio),
                new Machine(rotor(builtIn), lossless())));
    }

    private static List<FindingCode> codes(Result result) {
        return result.findings().stream().map(Finding::code).toList();
    }
}
