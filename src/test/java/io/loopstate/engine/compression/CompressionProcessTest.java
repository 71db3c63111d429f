package io.loopstate.engine.compression;

import static io.loopstate.engine.compression.Processes.spec;
import static io.loopstate.engine.compression.Processes.suction;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.compression.CompressionProcess.Figures;
import io.loopstate.engine.compression.CompressionProcess.Result;
import io.loopstate.engine.compression.ProcessMeasure.Kind;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.FindingCode;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.numerics.DormandPrince;
import io.loopstate.engine.property.State;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Laws of compression: first and second law, definitions, limits; no published numbers. */
class CompressionProcessTest {
    private static final List<String> FLUIDS = List.of("R-134a", "R-290", "R-717", "R-744", "R-32", "R-1234yf");

    @Provide
    Arbitrary<String> fluids() {
        return Arbitraries.of(FLUIDS);
    }

    private static CompressionProcess.Spec of(
            String fluid, double superheat, double ratio, Kind kind, double value, double loss) {
        Equilibrium equilibrium = TestFluids.of(fluid);
        double pressure = 0.05 * equilibrium.refrigerant().criticalPoint().pressure();
        boolean triple = fluid.equals("R-744");
        return spec(
                equilibrium,
                suction(triple ? 3 * pressure : pressure, Variable.SUPERHEAT, superheat),
                DischargeLevel.ratio(ratio),
                kind,
                value,
                loss);
    }

    @Property(tries = 200)
    void energyIsConserved(
            @ForAll("fluids") String fluid,
            @ForAll @DoubleRange(min = 0, max = 30) double superheat,
            @ForAll @DoubleRange(min = 1.05, max = 4) double ratio,
            @ForAll @DoubleRange(min = 0.65, max = 1) double efficiency,
            @ForAll @DoubleRange(min = 0, max = 0.3) double loss) {
        for (Kind kind : List.of(Kind.ISENTROPIC_EFFICIENCY, Kind.POLYTROPIC_EFFICIENCY)) {
            Result result = CompressionProcess.calculate(of(fluid, superheat, ratio, kind, efficiency, loss));
            Figures figures = result.figures();
            double rise = result.points().get(1).state().specificEnthalpy()
                    - result.points().get(0).state().specificEnthalpy();
            assertThat(figures.work() - figures.heatLoss() - rise).isCloseTo(0, scaled(1e-9, figures.work()));
            assertThat(figures.heatLoss()).isCloseTo(loss * figures.work(), scaled(1e-9, figures.work()));
            // The second law: no path needs less than the isothermal one, and compression is the bound.
            result.isothermal().ifPresent(least -> assertThat(least.work()).isLessThan(figures.isentropicWork()));
            // A cooled shell may undercut compression without loss and without heat.
            if (loss == 0) {
                assertThat(figures.isentropicWork()).isLessThanOrEqualTo(figures.work() * (1 + 1e-9));
            }
        }
    }

    @Property(tries = 100)
    void moreRatioIsHotterAndTakesMoreWork(
            @ForAll("fluids") String fluid,
            @ForAll @DoubleRange(min = 1.1, max = 4) double ratio,
            @ForAll @DoubleRange(min = 0.65, max = 0.95) double efficiency) {
        for (Kind kind : List.of(Kind.ISENTROPIC_EFFICIENCY, Kind.POLYTROPIC_EFFICIENCY)) {
            Figures low = CompressionProcess.calculate(of(fluid, 10, ratio, kind, efficiency, 0))
                    .figures();
            Figures high = CompressionProcess.calculate(of(fluid, 10, 1.1 * ratio, kind, efficiency, 0))
                    .figures();
            assertThat(high.dischargeTemperature()).isGreaterThan(low.dischargeTemperature());
            assertThat(high.work()).isGreaterThan(low.work());
        }
    }

    /** There and back: the efficiency that made a discharge temperature is the one that it shows. */
    @Property(tries = 60)
    void measuredTemperatureGivesTheEfficiencyBack(
            @ForAll("fluids") String fluid,
            @ForAll @DoubleRange(min = 1.2, max = 4) double ratio,
            @ForAll @DoubleRange(min = 0.65, max = 0.95) double efficiency,
            @ForAll @DoubleRange(min = 0, max = 0.2) double loss) {
        double hot = CompressionProcess.calculate(of(fluid, 20, ratio, Kind.POLYTROPIC_EFFICIENCY, efficiency, loss))
                .figures()
                .dischargeTemperature();
        Figures back = CompressionProcess.calculate(of(fluid, 20, ratio, Kind.DISCHARGE_TEMPERATURE, hot, loss))
                .figures();
        assertThat(back.polytropicEfficiency().orElseThrow()).isCloseTo(efficiency, scaled(1e-9, 1));
    }

    /** The path of constant efficiency against 4000 stages of constant enthalpy slope, extrapolated from 2000 (Richardson). */
    @ParameterizedTest
    @CsvSource({"R-134a, 1.5e5, 1.2e6, 0.7", "R-744, 2.5e6, 9e6, 0.75", "R-717, 2e5, 1.5e6, 0.8", "R-290, 3e5, 2e6, 0.6"
    })
    void pathIsThatOfManySmallStages(String fluid, double low, double high, double efficiency) {
        Equilibrium equilibrium = TestFluids.of(fluid);
        State inlet = equilibrium.state(Variable.PRESSURE, low, Variable.SUPERHEAT, 10);
        double coarse = Processes.stages(equilibrium, inlet, high, 1 / efficiency, 2000);
        double fine = Processes.stages(equilibrium, inlet, high, 1 / efficiency, 4000);
        double extrapolated = fine + (fine - coarse) / 3;
        assertThat(PolytropicPath.enthalpyRise(equilibrium, inlet, high, 1 / efficiency))
                .isCloseTo(extrapolated, scaled(1e-9, extrapolated));
    }

    /** A path close to saturation and far from it, by steps that know nothing of smoothness. */
    @ParameterizedTest
    @CsvSource({"R-134a, 0, 1.5e5, 1.2e6, 0.7", "R-744, 0, 2e6, 12e6, 0.75", "R-717, 40, 1e5, 8e5, 0.9"})
    void collocationAgreesWithSteps(String fluid, double superheat, double low, double high, double efficiency) {
        Equilibrium equilibrium = TestFluids.of(fluid);
        State inlet = equilibrium.state(Variable.PRESSURE, low, Variable.SUPERHEAT, superheat);
        double steps = DormandPrince.integrate(
                (x, rise) -> Math.exp(x)
                        * equilibrium
                                .atPressureEnthalpy(Math.exp(x), inlet.specificEnthalpy() + rise)
                                .specificVolume()
                        / efficiency,
                Math.log(low),
                0,
                Math.log(high),
                1e-7,
                "test");
        assertThat(PolytropicPath.enthalpyRise(equilibrium, inlet, high, 1 / efficiency))
                .isCloseTo(steps, scaled(1e-10, steps));
    }

    /** Without loss the path of constant efficiency is that of constant entropy, also from inside the dome. */
    @ParameterizedTest
    @CsvSource({"R-134a, 1", "R-134a, 0.9", "R-717, 0.95", "R-744, 0.85"})
    void withoutLossThePathIsIsentropic(String fluid, double quality) {
        Equilibrium equilibrium = TestFluids.of(fluid);
        double low = fluid.equals("R-744") ? 2.5e6 : 2e5;
        State inlet = equilibrium.state(Variable.PRESSURE, low, Variable.VAPOR_QUALITY, quality);
        State end = PolytropicPath.end(equilibrium, inlet, 3 * low, 1);
        double work = end.specificEnthalpy() - inlet.specificEnthalpy();
        double expected =
                equilibrium.atPressureEntropy(3 * low, inlet.specificEntropy()).specificEnthalpy()
                        - inlet.specificEnthalpy();
        assertThat(work).isCloseTo(expected, scaled(1e-9, expected));
    }

    /** Far from saturation the real gas follows the formulas of the ideal one. */
    @Test
    void thinAirIsNearlyIdeal() {
        Result result = CompressionProcess.calculate(spec(
                Processes.air(),
                suction(1e4, Variable.TEMPERATURE, 300),
                DischargeLevel.ratio(2),
                Kind.POLYTROPIC_EFFICIENCY,
                0.8,
                0));
        CompressionProcess.IdealGas ideal = result.idealGas().orElseThrow();
        assertThat(result.figures().work()).isCloseTo(ideal.work(), Percentage.withPercentage(0.2));
        assertThat(result.figures().dischargeTemperature()).isCloseTo(ideal.dischargeTemperature(), Offset.offset(0.3));
        assertThat(result.isothermal().orElseThrow().work())
                .isCloseTo(ideal.isothermalWork(), Percentage.withPercentage(0.01));
    }

    @Test
    void wetSuctionIsAnsweredAndWarnedOf() {
        Result result = CompressionProcess.calculate(
                spec("R-134a", suction(2e5, Variable.VAPOR_QUALITY, 0.9), 9e5, Kind.ISENTROPIC_EFFICIENCY, 0.7));
        CompressionProcess.Liquid liquid = result.liquid().orElseThrow();
        assertThat(liquid.massShare()).isCloseTo(0.1, Offset.offset(1e-12));
        assertThat(liquid.volumeShare()).isBetween(1e-4, 0.01);
        assertThat(codes(result)).contains(FindingCode.LIQUID_AT_COMPRESSOR);
        assertThat(result.idealGas()).isEmpty();
    }

    @Test
    void compressionThatEndsWetSaysSo() {
        Result result = CompressionProcess.calculate(
                spec("R-134a", suction(2e5, Variable.VAPOR_QUALITY, 0.6), 9e5, Kind.ISENTROPIC_EFFICIENCY, 0.9));
        assertThat(result.liquid().orElseThrow().outletQuality().orElseThrow()).isLessThan(1);
        assertThat(codes(result)).contains(FindingCode.WET_DISCHARGE);
    }

    @Test
    void dischargeColderThanWithoutLossIsWarnedOf() {
        Result result = CompressionProcess.calculate(
                spec("R-134a", suction(2e5, Variable.SUPERHEAT, 10), 9e5, Kind.DISCHARGE_TEMPERATURE, 315));
        assertThat(result.figures().isentropicEfficiency()).isGreaterThan(1);
        assertThat(codes(result)).contains(FindingCode.EFFICIENCY_IMPLAUSIBLE);
    }

    @Test
    void limitsAreNamed() {
        Result result = CompressionProcess.calculate(
                spec("R-717", suction(0.5e5, Variable.SUPERHEAT, 10), 6e5, Kind.ISENTROPIC_EFFICIENCY, 0.8));
        assertThat(codes(result))
                .contains(
                        FindingCode.HIGH_PRESSURE_RATIO,
                        FindingCode.HIGH_DISCHARGE_TEMPERATURE,
                        FindingCode.VACUUM_SUCTION);
    }

    @Test
    void liquidIsRefused() {
        assertThatThrownBy(() -> CompressionProcess.calculate(
                        spec("R-134a", suction(2e5, Variable.TEMPERATURE, 250), 9e5, Kind.ISENTROPIC_EFFICIENCY, 0.7)))
                .isInstanceOfSatisfying(EngineException.class, e -> {
                    assertThat(e.code()).isEqualTo(ErrorCode.CONTRADICTORY_INPUTS);
                    assertThat(e.input()).contains("suction");
                });
    }

    @Test
    void stepsFollowOneAnother() {
        for (Kind kind : Kind.values()) {
            double value = kind == Kind.DISCHARGE_TEMPERATURE ? 340 : kind == Kind.POLYTROPIC_INDEX ? 1.05 : 0.8;
            Result result = CompressionProcess.calculate(
                    spec("R-134a", suction(2e5, Variable.SUPERHEAT, 10), 9e5, kind, value));
            assertThat(result.steps()).hasSizeGreaterThan(8).allSatisfy(step -> {
                assertThat(step.result().value()).isFinite();
                assertThat(step.source()).isNotBlank();
            });
        }
    }

    private static List<FindingCode> codes(Result result) {
        return result.findings().stream().map(Finding::code).toList();
    }

    private static Offset<Double> scaled(double share, double size) {
        return Offset.offset(share * Math.abs(size));
    }
}
