package io.loopstate.engine.compression;

import static io.loopstate.engine.compression.Processes.suction;
import static org.assertj.core.api.Assertions.assertThat;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.compression.Staging.Result;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import java.util.OptionalDouble;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two stages: textbooks on air, and that the optimum is one. Sources: the collection's column {@code source}. */
class StagingTest {
    private static final double SHARE = 0.01;

    private static Result stages(
            Equilibrium equilibrium,
            SuctionCondition suction,
            double discharge,
            Staging.Kind kind,
            double value,
            double intercooler,
            OptionalDouble intermediate) {
        return Staging.calculate(new Staging.Spec(
                equilibrium,
                suction,
                DischargeLevel.pressure(discharge),
                kind,
                value,
                value,
                intercooler,
                intermediate,
                Processes.ATMOSPHERE,
                Guidance.common(),
                true));
    }

    /** P. K. Nag, example 19.7: 1 to 9 bar, n = 1.3, perfect intercooling. */
    @Test
    void nagOfPerfectIntercooling() {
        PublishedExample example = PublishedExample.of("NAG-19-7");
        double inlet = example.given("inlet temperature");
        Result result = stages(
                Processes.air(),
                suction(example.given("inlet pressure"), Variable.TEMPERATURE, inlet),
                example.given("delivery pressure"),
                Staging.Kind.INDEX,
                example.given("polytropic index"),
                inlet,
                OptionalDouble.empty());
        example.check("intermediate pressure", result.squareRoot().intermediatePressure(), 1e-9);
        example.check("intermediate pressure", result.optimum().intermediatePressure(), SHARE);
        example.check("minimum work", result.stages().work(), SHARE);
        example.check("heat rejected in intercooler", result.stages().intercoolerHeat(), SHARE);
    }

    /** R. Joel, example 14.2: 0.2 m3/s, 0.1 to 0.7 MPa, n = 1.25; the temperature is not given and cancels. */
    @Test
    void joelOfTwoStages() {
        PublishedExample example = PublishedExample.of("JOEL-14-2");
        double inlet = 288.15;
        Result result = stages(
                Processes.air(),
                suction(example.given("intake pressure"), Variable.TEMPERATURE, inlet),
                example.given("delivery pressure"),
                Staging.Kind.INDEX,
                example.given("index"),
                inlet,
                OptionalDouble.empty());
        example.check("intermediate pressure", result.squareRoot().intermediatePressure(), SHARE);
        example.check("intermediate pressure", result.optimum().intermediatePressure(), SHARE);
        double flow = example.given("intake flow") * result.suction().density();
        example.check("cycle power", flow * result.stages().work(), SHARE);
        double highVolume = flow / result.stages().cooled().density() / example.given("speed");
        example.check("HP cylinder volume", highVolume, SHARE);
    }

    /** No other intermediate pressure needs less, with ammonia and cooling that is far from perfect. */
    @Test
    void optimumIsTheLeast() {
        Equilibrium ammonia = TestFluids.of("R-717");
        SuctionCondition suction = suction(0.8e5, Variable.SUPERHEAT, 5);
        Result best = stages(ammonia, suction, 13e5, Staging.Kind.EFFICIENCY, 0.75, 300, OptionalDouble.empty());
        double pressure = best.optimum().intermediatePressure();
        for (double factor : new double[] {0.8, 0.95, 0.999, 1.001, 1.05, 1.25}) {
            Result other = stages(
                    ammonia, suction, 13e5, Staging.Kind.EFFICIENCY, 0.75, 300, OptionalDouble.of(factor * pressure));
            assertThat(other.stages().work())
                    .isGreaterThanOrEqualTo(best.stages().work() * (1 - 1e-11));
        }
        assertThat(best.optimum().work()).isLessThanOrEqualTo(best.squareRoot().work());
        assertThat(best.workSaved()).isPositive();
        assertThat(best.steps()).hasSizeGreaterThan(8);
    }

    /** Warm cooling leaves a hump of the work below the optimum; a scan of pressures finds nothing less. */
    @ParameterizedTest
    @CsvSource({
        "R-134a, 285",
        "R-134a, 320",
        "R-134a, 330",
        "R-134a, 336",
        "R-717, 330",
        "R-717, 360",
        "R-744, 310",
        "R-448A, 325"
    })
    void noPressureOfAScanNeedsLess(String fluid, double intercooler) {
        Equilibrium equilibrium = TestFluids.of(fluid);
        double low = fluid.equals("R-744") ? 12e5 : 0.8e5;
        double high = fluid.equals("R-744") ? 90e5 : 12e5;
        SuctionCondition suction = suction(low, Variable.SUPERHEAT, 8);
        double least = stages(
                        equilibrium, suction, high, Staging.Kind.EFFICIENCY, 0.7, intercooler, OptionalDouble.empty())
                .optimum()
                .work();
        for (int k = 1; k < 60; k++) {
            double pressure = low * Math.pow(high / low, k / 60.0);
            double work = stages(
                            equilibrium,
                            suction,
                            high,
                            Staging.Kind.EFFICIENCY,
                            0.7,
                            intercooler,
                            OptionalDouble.of(pressure))
                    .stages()
                    .work();
            assertThat(work).as("at %s Pa", pressure).isGreaterThanOrEqualTo(least * (1 - 1e-11));
        }
    }

    /** The intercooler stops at the dew point. */
    @Test
    void secondStageStaysDry() {
        Result result = stages(
                TestFluids.of("R-134a"),
                suction(1e5, Variable.SUPERHEAT, 5),
                12e5,
                Staging.Kind.EFFICIENCY,
                0.75,
                250,
                OptionalDouble.of(3.5e5));
        assertThat(result.stages().cooled().vaporQuality()).isEqualTo(1);
        assertThat(result.findings()).isNotEmpty();
        assertThat(result.stages().low().work() + result.stages().high().work())
                .isCloseTo(result.stages().work(), Percentage.withPercentage(1e-10));
    }
}
