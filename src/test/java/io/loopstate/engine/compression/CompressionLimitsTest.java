package io.loopstate.engine.compression;

import static io.loopstate.engine.compression.Processes.suction;
import static org.assertj.core.api.Assertions.assertThat;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.compression.ProcessMeasure.Kind;
import io.loopstate.engine.cycle.Basis;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.FindingCode;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.cycle.Guideline;
import io.loopstate.engine.cycle.Limit;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each limit of a compression on either side of its common value and of one of the client's own. The common values are trade
 * practice without a source; physics where they follow from the inputs.
 */
class CompressionLimitsTest {
    private static final Equilibrium REFRIGERANT = TestFluids.of("R-134a");

    /** What every operation with a suction and a discharge finds, from the same two ports. */
    static Stream<Arguments> operations() {
        return Stream.of(
                Arguments.of("process", (Function<Case, List<Finding>>) CompressionLimitsTest::process),
                Arguments.of("displacement", (Function<Case, List<Finding>>) CompressionLimitsTest::displacement),
                Arguments.of("rating map", (Function<Case, List<Finding>>) CompressionLimitsTest::map));
    }

    private record Case(SuctionCondition suction, DischargeLevel discharge, double efficiency, Guidance guidance) {
        Case with(Guideline guideline, double value) {
            return new Case(suction, discharge, efficiency, guidance.with(guideline, new Limit(value, "test")));
        }
    }

    private static Case of(SuctionCondition suction, double discharge, double efficiency) {
        return new Case(suction, DischargeLevel.pressure(discharge), efficiency, Guidance.common());
    }

    private static List<Finding> process(Case given) {
        return CompressionProcess.calculate(new CompressionProcess.Spec(
                        REFRIGERANT,
                        given.suction(),
                        given.discharge(),
                        new ProcessMeasure(Kind.ISENTROPIC_EFFICIENCY, given.efficiency()),
                        0,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Processes.ATMOSPHERE,
                        given.guidance(),
                        false))
                .findings();
    }

    private static List<Finding> displacement(Case given) {
        Rotor rotor = new Rotor(0.01, 0.9, OptionalDouble.empty(), given.efficiency());
        return DisplacementRating.calculate(new DisplacementRating.Spec(
                        REFRIGERANT,
                        given.suction(),
                        given.discharge(),
                        new Machine(rotor, Machines.lossless()),
                        Optional.empty(),
                        OptionalDouble.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        OptionalDouble.empty(),
                        Set.of(),
                        Processes.ATMOSPHERE,
                        given.guidance(),
                        false))
                .findings();
    }

    /** A map that at any temperatures has the power of the efficiency asked for. */
    private static List<Finding> map(Case given) {
        var inlet = given.suction().state(REFRIGERANT);
        double pressure = given.discharge().pressure(REFRIGERANT, inlet.pressure());
        double work = (REFRIGERANT
                                .atPressureEntropy(pressure, inlet.specificEntropy())
                                .specificEnthalpy()
                        - inlet.specificEnthalpy())
                / given.efficiency();
        MapCompressor map = new MapCompressor(
                Optional.of(constant(1)),
                Optional.empty(),
                constant(work),
                Optional.empty(),
                given.suction().given() == Variable.VAPOR_QUALITY
                        ? OutletCondition.quality(inlet.vaporQuality())
                        : OutletCondition.temperature(inlet.temperature()),
                OutletCondition.subcooling(0),
                0,
                0,
                Envelope.unlimited(),
                false);
        return MapRating.calculate(new MapRating.Spec(
                        REFRIGERANT,
                        given.suction(),
                        given.discharge(),
                        map,
                        Optional.empty(),
                        Processes.ATMOSPHERE,
                        given.guidance(),
                        false))
                .findings();
    }

    private static RatingPolynomial constant(double value) {
        return new RatingPolynomial(
                List.of(value, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0), CoefficientOrder.AHRI_540, 1, 0, 1);
    }

    private static Optional<Finding> found(List<Finding> findings, FindingCode code) {
        return findings.stream().filter(finding -> finding.code() == code).findFirst();
    }

    private static void about(List<Finding> findings, FindingCode code, String subject, String basis) {
        Finding finding = found(findings, code).orElseThrow(() -> new AssertionError(code + " not in " + findings));
        assertThat(finding.subject()).isEqualTo(subject);
        assertThat(finding.basis()).isEqualTo(basis);
        assertThat(finding.value()).isPresent();
        assertThat(finding.limit()).isPresent();
    }

    /** 225 degF, or the oil's own limit. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("operations")
    void dischargeAboveTheLimitOfTheOil(String name, Function<Case, List<Finding>> operation) {
        Case hot = of(suction(1.5e5, Variable.SUPERHEAT, 15), 14e5, 0.5);
        about(operation.apply(hot), FindingCode.HIGH_DISCHARGE_TEMPERATURE, "discharge", Basis.COMMON_PRACTICE);
        Case oil = hot.with(Guideline.MAX_DISCHARGE_TEMPERATURE, 273.15 + 160);
        assertThat(found(operation.apply(oil), FindingCode.HIGH_DISCHARGE_TEMPERATURE))
                .isEmpty();
        Case mild = of(suction(3e5, Variable.SUPERHEAT, 8), 9e5, 0.8);
        assertThat(found(operation.apply(mild), FindingCode.HIGH_DISCHARGE_TEMPERATURE))
                .isEmpty();
        about(
                operation.apply(mild.with(Guideline.MAX_DISCHARGE_TEMPERATURE, 300)),
                FindingCode.HIGH_DISCHARGE_TEMPERATURE,
                "discharge",
                "test");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("operations")
    void pressureRatio(String name, Function<Case, List<Finding>> operation) {
        SuctionCondition suction = suction(1.1e5, Variable.SUPERHEAT, 8);
        about(
                operation.apply(of(suction, 11.1e5, 0.8)),
                FindingCode.HIGH_PRESSURE_RATIO,
                "discharge",
                Basis.COMMON_PRACTICE);
        assertThat(found(operation.apply(of(suction, 10.9e5, 0.8)), FindingCode.HIGH_PRESSURE_RATIO))
                .isEmpty();
        Case strict = of(suction, 4e5, 0.8).with(Guideline.MAX_PRESSURE_RATIO, 3);
        about(operation.apply(strict), FindingCode.HIGH_PRESSURE_RATIO, "discharge", "test");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("operations")
    void vacuum(String name, Function<Case, List<Finding>> operation) {
        about(
                operation.apply(of(suction(1.01e5, Variable.SUPERHEAT, 8), 5e5, 0.8)),
                FindingCode.VACUUM_SUCTION,
                "suction",
                "atmospheric pressure given");
        assertThat(found(
                        operation.apply(of(suction(1.02e5, Variable.SUPERHEAT, 8), 5e5, 0.8)),
                        FindingCode.VACUUM_SUCTION))
                .isEmpty();
    }

    /** Critical pressure of R-134a: 4.059 MPa; condensing from 90 % of it and near the critical temperature. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("operations")
    void condensingNearTheCriticalPoint(String name, Function<Case, List<Finding>> operation) {
        SuctionCondition suction = suction(12e5, Variable.SUPERHEAT, 6);
        about(
                operation.apply(of(suction, 37.5e5, 1)),
                FindingCode.NEAR_CRITICAL,
                "discharge",
                "choice of this engine, no source");
        // a poor compressor makes the vapor hot, which does not keep it from condensing there
        about(
                operation.apply(of(suction(4e5, Variable.SUPERHEAT, 6), 37.5e5, 0.5)),
                FindingCode.NEAR_CRITICAL,
                "discharge",
                "choice of this engine, no source");
        assertThat(found(operation.apply(of(suction, 35e5, 1)), FindingCode.NEAR_CRITICAL))
                .isEmpty();
        about(
                operation.apply(of(suction, 35e5, 1).with(Guideline.NEAR_CRITICAL_PRESSURE, 0.8)),
                FindingCode.NEAR_CRITICAL,
                "discharge",
                "test");
    }

    /** The share of liquid and what it does; superheat below and above the usual. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("operations")
    void suctionThatIsWetOrNearlySo(String name, Function<Case, List<Finding>> operation) {
        List<Finding> wet = operation.apply(of(suction(3e5, Variable.VAPOR_QUALITY, 0.93), 9e5, 0.8));
        about(wet, FindingCode.LIQUID_AT_COMPRESSOR, "suction", Basis.DEFINITION);
        Finding liquid = found(wet, FindingCode.LIQUID_AT_COMPRESSOR).orElseThrow();
        assertThat(liquid.value().orElseThrow()).isCloseTo(0.07, Offset.offset(1e-9));
        assertThat(liquid.message()).contains("washes the oil off", "breaks valves");
        Case near = of(suction(3e5, Variable.SUPERHEAT, 2), 9e5, 0.8);
        about(operation.apply(near), FindingCode.LOW_SUPERHEAT, "suction", Basis.COMMON_PRACTICE);
        assertThat(found(operation.apply(near.with(Guideline.MIN_SUPERHEAT, 1)), FindingCode.LOW_SUPERHEAT))
                .isEmpty();
        Case far = of(suction(3e5, Variable.SUPERHEAT, 25), 9e5, 0.8);
        about(operation.apply(far), FindingCode.HIGH_SUPERHEAT, "suction", Basis.COMMON_PRACTICE);
        assertThat(found(operation.apply(far.with(Guideline.MAX_SUPERHEAT, 40)), FindingCode.HIGH_SUPERHEAT))
                .isEmpty();
    }

    /** So little suction vapor that most of the compression is of liquid that evaporates: the discharge is wet. */
    @Test
    void wetDischarge() {
        about(
                process(of(suction(3e5, Variable.VAPOR_QUALITY, 0.6), 9e5, 1)),
                FindingCode.WET_DISCHARGE,
                "discharge",
                Basis.DEFINITION);
    }

    /** Two stages: each of them against the limits, the first at the pressure between where that was given. */
    @Test
    void stages() {
        List<Finding> given = stages(OptionalDouble.of(9e5), Guidance.common());
        assertThat(given)
                .anyMatch(finding -> finding.code() == FindingCode.HIGH_PRESSURE_RATIO
                        && finding.subject().equals("intermediatePressure"));
        assertThat(given)
                .anyMatch(finding -> finding.code() == FindingCode.VACUUM_SUCTION
                        && finding.subject().equals("suction"));
        List<Finding> best = stages(
                OptionalDouble.empty(), Guidance.common().with(Guideline.MAX_PRESSURE_RATIO, new Limit(1.4, "test")));
        assertThat(best.stream().filter(finding -> finding.code() == FindingCode.HIGH_PRESSURE_RATIO))
                .hasSize(2)
                .allMatch(finding -> finding.subject().equals("discharge"));
    }

    private static List<Finding> stages(OptionalDouble intermediate, Guidance guidance) {
        return Staging.calculate(new Staging.Spec(
                        REFRIGERANT,
                        new SuctionCondition(SaturationLevel.pressure(0.8e5), Variable.SUPERHEAT, 8),
                        DischargeLevel.pressure(12e5),
                        Staging.Kind.EFFICIENCY,
                        0.7,
                        0.7,
                        305,
                        intermediate,
                        Processes.ATMOSPHERE,
                        guidance,
                        false))
                .findings();
    }
}
