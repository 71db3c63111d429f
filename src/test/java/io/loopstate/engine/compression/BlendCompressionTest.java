package io.loopstate.engine.compression;

import static io.loopstate.engine.compression.Machines.hermetic;
import static io.loopstate.engine.compression.Machines.open;
import static io.loopstate.engine.compression.Machines.piston;
import static io.loopstate.engine.compression.Machines.semiHermetic;
import static org.assertj.core.api.Assertions.assertThat;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.compression.ProcessMeasure.Kind;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.FindingCode;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibria;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.Composition;
import io.loopstate.engine.fluid.ReferenceState;
import io.loopstate.engine.property.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Compression of zeotropic blends, catalogued and of a client's own composition: first and second law, definitions of superheat
 * and subcooling, and integration by small stages; no published numbers.
 */
class BlendCompressionTest {
    private static final String OWN = "R-32/1234yf (72/28)";
    private static final double EVAPORATING = 268.15;
    private static final double CONDENSING = 313.15;
    private static final double SUPERHEAT = 10;
    private static final Percentage CLOSED = Percentage.withPercentage(1e-7);
    private static final Equilibrium OWN_BLEND =
            new Equilibria().of(Catalog.bundled().mixture(Composition.parse(OWN)), ReferenceState.IIR);

    private static Equilibrium blend(String name) {
        return name.equals(OWN) ? OWN_BLEND : TestFluids.of(name);
    }

    private static SuctionCondition suction(Variable given, double value) {
        return new SuctionCondition(SaturationLevel.temperature(EVAPORATING), given, value);
    }

    private static DischargeLevel discharge() {
        return DischargeLevel.of(SaturationLevel.temperature(CONDENSING));
    }

    private static CompressionProcess.Result process(String name, Kind kind, double value, double loss) {
        return CompressionProcess.calculate(
                Processes.spec(blend(name), suction(Variable.SUPERHEAT, SUPERHEAT), discharge(), kind, value, loss));
    }

    /** A level by temperature and the superheat are both those of the dew point, never of the bubble point or a mean. */
    @ParameterizedTest
    @ValueSource(strings = {"R-454B", "R-448A", OWN})
    void superheatCountsFromTheDewPoint(String name) {
        State inlet = process(name, Kind.ISENTROPIC_EFFICIENCY, 0.7, 0)
                .points()
                .get(0)
                .state();
        var saturation = blend(name).saturationAtPressure(inlet.pressure());
        assertThat(saturation.dew().temperature()).isCloseTo(EVAPORATING, Offset.offset(1e-7));
        assertThat(inlet.temperature() - EVAPORATING).isCloseTo(SUPERHEAT, Offset.offset(1e-7));
        assertThat(saturation.bubble().temperature()).isLessThan(EVAPORATING - 0.8);
    }

    /** Enthalpy out = enthalpy in + work - heat, whatever is known of the compression. */
    @ParameterizedTest
    @ValueSource(strings = {"R-454B", "R-448A", OWN})
    void energyIsConservedByEveryMeasure(String name) {
        double hot =
                process(name, Kind.POLYTROPIC_EFFICIENCY, 0.72, 0.08).figures().dischargeTemperature();
        for (CompressionProcess.Result result : List.of(
                process(name, Kind.ISENTROPIC_EFFICIENCY, 0.7, 0.1),
                process(name, Kind.POLYTROPIC_EFFICIENCY, 0.75, 0.05),
                process(name, Kind.POLYTROPIC_INDEX, 1.05, 0),
                process(name, Kind.DISCHARGE_TEMPERATURE, hot, 0.08))) {
            CompressionProcess.Figures figures = result.figures();
            double rise = result.points().get(1).state().specificEnthalpy()
                    - result.points().get(0).state().specificEnthalpy();
            assertThat(figures.work() - figures.heatLoss()).isCloseTo(rise, CLOSED);
            assertThat(result.flow().orElseThrow().power()).isCloseTo(figures.work(), CLOSED);
            assertThat(result.isothermal()
                            .map(CompressionProcess.Isothermal::work)
                            .orElse(0.0))
                    .isLessThan(figures.isentropicWork());
        }
        assertThat(process(name, Kind.DISCHARGE_TEMPERATURE, hot, 0.08)
                        .figures()
                        .polytropicEfficiency()
                        .orElseThrow())
                .isCloseTo(0.72, Offset.offset(1e-8));
    }

    /** Without loss the outlet is the isentropic one, by either efficiency. */
    @ParameterizedTest
    @ValueSource(strings = {"R-454B", "R-448A", OWN})
    void withoutLossTheEntropyStays(String name) {
        for (Kind kind : List.of(Kind.ISENTROPIC_EFFICIENCY, Kind.POLYTROPIC_EFFICIENCY)) {
            CompressionProcess.Result result = process(name, kind, 1, 0);
            assertThat(result.points().get(1).state().specificEntropy())
                    .isCloseTo(result.points().get(0).state().specificEntropy(), Percentage.withPercentage(1e-8));
            assertThat(result.figures().dischargeTemperature())
                    .isCloseTo(result.figures().isentropicDischargeTemperature(), Offset.offset(1e-6));
        }
    }

    /** dh = v dp / efficiency over 400 and 800 stages by the midpoint rule, extrapolated to none (Richardson). */
    @ParameterizedTest
    @ValueSource(strings = {"R-454B", "R-448A", OWN})
    void polytropicPathIsThatOfSmallStages(String name) {
        CompressionProcess.Result result = process(name, Kind.POLYTROPIC_EFFICIENCY, 0.7, 0);
        State inlet = result.points().get(0).state();
        double high = result.points().get(1).state().pressure();
        double coarse = Processes.stages(blend(name), inlet, high, 1 / 0.7, 400);
        double fine = Processes.stages(blend(name), inlet, high, 1 / 0.7, 800);
        double rise = fine + (fine - coarse) / 3;
        assertThat(result.figures().work()).isCloseTo(rise, Percentage.withPercentage(1e-7));
    }

    /** Wet suction: the share of liquid is told, and it cools the discharge. */
    @ParameterizedTest
    @ValueSource(strings = {"R-454B", "R-448A", OWN})
    void wetSuctionIsComputedAndWarnedOf(String name) {
        double dryTemperature =
                process(name, Kind.ISENTROPIC_EFFICIENCY, 0.7, 0).figures().dischargeTemperature();
        CompressionProcess.Result wet = CompressionProcess.calculate(Processes.spec(
                blend(name), suction(Variable.VAPOR_QUALITY, 0.95), discharge(), Kind.ISENTROPIC_EFFICIENCY, 0.7, 0));
        assertThat(wet.liquid().orElseThrow().massShare()).isCloseTo(0.05, Offset.offset(1e-9));
        assertThat(wet.liquid().orElseThrow().volumeShare()).isBetween(1e-5, 0.01);
        assertThat(wet.findings()).extracting(Finding::code).contains(FindingCode.LIQUID_AT_COMPRESSOR);
        assertThat(wet.figures().dischargeTemperature()).isLessThan(dryTemperature);
    }

    static Stream<Arguments> machines() {
        Rotor scroll = new Rotor(0.004, 0.93, OptionalDouble.of(2.6), 0.75);
        return Stream.of(
                Arguments.of("R-454B", new Machine(scroll, hermetic(MotorCooling.SUCTION_GAS))),
                Arguments.of(
                        "R-454B",
                        new Machine(
                                new Rotor(0.002, 0.95, OptionalDouble.empty(), 0.7),
                                hermetic(MotorCooling.DISCHARGE_GAS))),
                Arguments.of("R-448A", new Machine(piston(0.04, 0.72), semiHermetic(MotorCooling.SUCTION_GAS))),
                Arguments.of("R-448A", new Machine(new Rotor(0.05, 0.9, OptionalDouble.of(3), 0.75), open())),
                Arguments.of(OWN, new Machine(piston(0.05, 0.7), open())),
                Arguments.of(OWN, new Machine(new Impeller(0.5, 200, 2, OptionalDouble.of(0.6), 0.78), open())));
    }

    /** Evaporator + power - losses = rejected, from states; subcooling counts from the bubble point. */
    @ParameterizedTest
    @MethodSource("machines")
    void energyOfTheCircuitCloses(String name, Machine machine) {
        Equilibrium equilibrium = blend(name);
        double subcooling = 5;
        DisplacementRating.Result result = DisplacementRating.calculate(Machines.withCircuit(
                Machines.spec(equilibrium, suction(Variable.SUPERHEAT, SUPERHEAT), discharge(), machine), subcooling));
        State inlet = result.points().get(0).state();
        State outlet = result.points().get(1).state();
        double bubble =
                equilibrium.saturationAtPressure(outlet.pressure()).bubble().temperature();
        double liquid = equilibrium
                .atPressureTemperature(outlet.pressure(), bubble - subcooling)
                .specificEnthalpy();
        double flow = result.figures().massFlow();
        EnergyBalance balance = result.balance().orElseThrow();
        assertThat(balance.refrigeratingCapacity()).isCloseTo(flow * (inlet.specificEnthalpy() - liquid), CLOSED);
        assertThat(balance.heatRejected()).isCloseTo(flow * (outlet.specificEnthalpy() - liquid), CLOSED);
        assertThat(balance.refrigeratingCapacity() + balance.electricalPower() - balance.heatLoss())
                .isCloseTo(balance.heatRejected(), CLOSED);
        assertThat(Math.abs(balance.residual())).isLessThan(1e-9);
    }

    /** The nameplate of a machine gives its displacement and efficiencies back. */
    @ParameterizedTest
    @MethodSource("machines")
    void nameplateIsTheMachineBackwards(String name, Machine machine) {
        DisplacementRating.Result forward = DisplacementRating.calculate(Machines.withCircuit(
                Machines.spec(blend(name), suction(Variable.SUPERHEAT, SUPERHEAT), discharge(), machine), 5));
        Nameplate.Figures back = Nameplate.calculate(new Nameplate.Spec(
                        blend(name),
                        suction(Variable.SUPERHEAT, SUPERHEAT),
                        discharge(),
                        Optional.of(new Circuit(OutletCondition.subcooling(5), OptionalDouble.empty())),
                        OptionalDouble.of(forward.balance().orElseThrow().refrigeratingCapacity()),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.of(forward.figures().volumetricEfficiency()),
                        OptionalDouble.of(forward.figures().electricalPower()),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        1,
                        OptionalDouble.empty(),
                        false,
                        Processes.ATMOSPHERE,
                        Guidance.common(),
                        false))
                .figures();
        assertThat(back.massFlow()).isCloseTo(forward.figures().massFlow(), CLOSED);
        assertThat(back.displacement().orElseThrow())
                .isCloseTo(machine.displacer().sweptFlow(), CLOSED);
        assertThat(back.overallEfficiency().orElseThrow())
                .isCloseTo(forward.figures().overallEfficiency(), CLOSED);
    }

    /**
     * A map fitted to a machine over dew temperatures stands for the machine to 1 %, which is what a cubic can do over this range; the
     * circuit closes.
     */
    @ParameterizedTest
    @ValueSource(strings = {"R-454B", "R-448A", OWN})
    void fittedMapStandsForTheMachine(String name) {
        Equilibrium equilibrium = blend(name);
        Machine machine = new Machine(piston(0.04, 0.72), semiHermetic(MotorCooling.SURROUNDINGS));
        List<Double> suction = new ArrayList<>();
        List<Double> discharge = new ArrayList<>();
        List<Double> flows = new ArrayList<>();
        List<Double> powers = new ArrayList<>();
        for (double s = 258.15; s <= 278.2; s += 5) {
            for (double d = 303.15; d <= 323.2; d += 5) {
                CompressorUnit.Running running = running(equilibrium, machine, s, d);
                suction.add(s);
                discharge.add(d);
                flows.add(running.massFlow());
                powers.add(running.electricalPower());
            }
        }
        MapCompressor map = new MapCompressor(
                Optional.of(fitted(suction, discharge, flows)),
                Optional.empty(),
                fitted(suction, discharge, powers),
                Optional.empty(),
                OutletCondition.superheat(SUPERHEAT),
                OutletCondition.subcooling(0),
                MapCompressor.USUAL_FACTOR,
                0.05,
                new Envelope(258.15, 278.2, 303.15, 323.2),
                false);
        MapRating.Result result = MapRating.calculate(new MapRating.Spec(
                equilibrium,
                suction(Variable.SUPERHEAT, SUPERHEAT),
                discharge(),
                map,
                Optional.of(new Circuit(OutletCondition.subcooling(5), OptionalDouble.empty())),
                Processes.ATMOSPHERE,
                Guidance.common(),
                true));
        CompressorUnit.Running running = running(equilibrium, machine, EVAPORATING, CONDENSING);
        assertThat(result.figures().suctionDew()).isCloseTo(EVAPORATING, Offset.offset(1e-7));
        assertThat(result.figures().massFlow()).isCloseTo(running.massFlow(), Percentage.withPercentage(1));
        assertThat(result.figures().power()).isCloseTo(running.electricalPower(), Percentage.withPercentage(1));
        assertThat(Math.abs(result.balance().orElseThrow().residual())).isLessThan(1e-9);
    }

    private static CompressorUnit.Running running(Equilibrium equilibrium, Machine machine, double s, double d) {
        State inlet =
                new SuctionCondition(SaturationLevel.temperature(s), Variable.SUPERHEAT, SUPERHEAT).state(equilibrium);
        return machine.run(
                equilibrium, inlet, equilibrium.saturationAtTemperature(d).dew().pressure());
    }

    private static RatingPolynomial fitted(List<Double> suction, List<Double> discharge, List<Double> values) {
        RatingFit.Result fit = RatingFit.calculate(
                new RatingFit.Spec(suction, discharge, values, CoefficientOrder.AHRI_540, Guidance.common(), false));
        return new RatingPolynomial(fit.coefficients(), CoefficientOrder.AHRI_540, 1, 0, 1);
    }

    /** The intercooler stops at the dew point, both stages conserve energy, and the optimum is one. */
    @ParameterizedTest
    @ValueSource(strings = {"R-454B", "R-448A", OWN})
    void twoStagesConserveEnergy(String name) {
        Staging.Result best = stages(name, 303.15, OptionalDouble.empty());
        Staging.Stages stages = best.stages();
        double work = stages.high().outlet().specificEnthalpy()
                - best.suction().specificEnthalpy()
                + stages.intercoolerHeat();
        assertThat(stages.work()).isCloseTo(work, CLOSED);
        for (double factor : new double[] {0.9, 1.1}) {
            Staging.Result other = stages(name, 303.15, OptionalDouble.of(factor * stages.intermediatePressure()));
            assertThat(other.stages().work()).isGreaterThanOrEqualTo(stages.work() * (1 - 1e-11));
        }
        State dry = stages(name, 250, OptionalDouble.of(7e5)).stages().cooled();
        assertThat(dry.temperature())
                .isCloseTo(blend(name).saturationAtPressure(7e5).dew().temperature(), Offset.offset(1e-6));
    }

    private static Staging.Result stages(String name, double intercooler, OptionalDouble intermediate) {
        return Staging.calculate(new Staging.Spec(
                blend(name),
                new SuctionCondition(SaturationLevel.temperature(238.15), Variable.SUPERHEAT, SUPERHEAT),
                discharge(),
                Staging.Kind.EFFICIENCY,
                0.7,
                0.7,
                intercooler,
                intermediate,
                Processes.ATMOSPHERE,
                Guidance.common(),
                true));
    }

    /** work + heat = change of energy in a cylinder of superheated blend, by each path. */
    @ParameterizedTest
    @ValueSource(strings = {"R-454B", "R-448A", OWN})
    void cylinderConservesEnergy(String name) {
        for (ClosedCylinder.Path path : ClosedCylinder.Path.values()) {
            boolean free = path == ClosedCylinder.Path.FREE_EXPANSION;
            ClosedCylinder.Result result = ClosedCylinder.calculate(new ClosedCylinder.Spec(
                    blend(name),
                    2e5,
                    300,
                    1e-3,
                    OptionalDouble.of(free ? 2e-3 : 0.5e-3),
                    OptionalDouble.empty(),
                    path,
                    path == ClosedCylinder.Path.POLYTROPIC ? OptionalDouble.of(1.05) : OptionalDouble.empty(),
                    11,
                    Processes.ATMOSPHERE,
                    Guidance.common(),
                    true));
            double change = result.figures().mass()
                    * (result.end().specificInternalEnergy() - result.start().specificInternalEnergy());
            assertThat(result.figures().work() + result.figures().heat()).isCloseTo(change, Offset.offset(1e-6));
            assertThat(result.end().density() / result.start().density())
                    .isCloseTo(free ? 0.5 : 2, Percentage.withPercentage(1e-7));
        }
    }

    /** The composition decides: more of the lighter component at the same pressures runs hotter and takes more work. */
    @Test
    void compositionMatters() {
        CompressionProcess.Figures catalogued =
                process("R-454B", Kind.ISENTROPIC_EFFICIENCY, 0.7, 0).figures();
        CompressionProcess.Figures own =
                process(OWN, Kind.ISENTROPIC_EFFICIENCY, 0.7, 0).figures();
        assertThat(own.dischargeTemperature()).isGreaterThan(catalogued.dischargeTemperature());
        assertThat(own.work()).isGreaterThan(catalogued.work());
    }
}
