package io.loopstate.engine.compression;

import static io.loopstate.engine.compression.Processes.spec;
import static io.loopstate.engine.compression.Processes.suction;
import static org.assertj.core.api.Assertions.assertThat;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.compression.CompressionProcess.Result;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.property.State;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * Compressions of textbooks from what they give to what they print, properties included. Sources: column {@code source} of
 * the collection with the number of the example. Tolerances are those of the collection: about 1 %, where older property
 * tables were used 2 to 3 %.
 */
class ProcessExamplesTest {
    private static final double SHARE = 0.01;
    private static final double OLD_TABLES = 0.03;

    /** M. J. Moran, H. N. Shapiro, example 10.3: R-134a, -10 degC to 9 bar, efficiency 80 %. */
    @Test
    void moranShapiroOfAnEfficiency() {
        PublishedExample example = PublishedExample.of("MS-10-3");
        Result result = saturated(
                "R-134a",
                example.given("evaporating temperature"),
                example.given("condensing pressure"),
                example.given("isentropic efficiency"));
        double isentropic = example.table("enthalpy", "2s") - example.table("enthalpy", "1");
        assertThat(result.figures().isentropicWork()).isCloseTo(isentropic, within(isentropic));
        example.check(
                "compressor power",
                example.given("mass flow rate") * result.figures().work(),
                SHARE);
    }

    /** P. K. Nag, example 14.10: R-12, from suction and discharge temperature to the efficiency. */
    @Test
    void nagOfAMeasuredDischarge() {
        PublishedExample example = PublishedExample.of("NAG-14-10");
        Result result = CompressionProcess.calculate(spec(
                "R-12",
                suction(example.given("pressure", "1"), Variable.TEMPERATURE, example.given("temperature", "1")),
                example.given("pressure", "2"),
                ProcessMeasure.Kind.DISCHARGE_TEMPERATURE,
                example.given("temperature", "2")));
        State inlet = result.points().get(0).state();
        // The book's own volume: 0.0703 m3/kg, which its tables have at 2.5, not 2.4 bar (the product p v of a vapor
        // hardly
        // changes there, so it should be 4 % more), hence the flow is checked with it and the deviation is held.
        double printed = example.table("specific volume", "1");
        double flow = example.given("inlet volume flow") / printed;
        assertThat(inlet.specificVolume() / printed).isBetween(1.035, 1.050);
        example.check("mass flow rate", flow, SHARE);
        example.check("compressor power", flow * result.figures().work(), OLD_TABLES);
        example.check("isentropic efficiency", result.figures().isentropicEfficiency(), OLD_TABLES);
    }

    /** A. V. Arasu, example 6.6: dry saturated ammonia at -15 degC to 35 degC without loss. */
    @Test
    void arasuOfAmmonia() {
        PublishedExample example = PublishedExample.of("AR-6-6");
        Result result = CompressionProcess.calculate(spec(
                TestFluids.of("R-717"),
                new SuctionCondition(
                        SaturationLevel.temperature(example.given("evaporating temperature")), Variable.SUPERHEAT, 0),
                DischargeLevel.of(SaturationLevel.temperature(example.given("condensing temperature"))),
                ProcessMeasure.Kind.ISENTROPIC_EFFICIENCY,
                1,
                0));
        example.checkTemperature("discharge temperature", result.figures().dischargeTemperature(), 3);
        double printed = example.table("enthalpy", "2") - example.table("enthalpy", "1");
        assertThat(result.figures().isentropicWork()).isCloseTo(printed, Offset.offset(OLD_TABLES * printed));
        State inlet = result.points().get(0).state();
        assertThat(inlet.specificVolume())
                .isCloseTo(example.table("specific volume", "1"), within(example.table("specific volume", "1")));
    }

    /** A. V. Arasu, example 6.16: CO2 drawn in so wet that compression without loss ends just dry. */
    @Test
    void arasuOfWetCarbonDioxide() {
        PublishedExample example = PublishedExample.of("AR-6-16");
        Result result = CompressionProcess.calculate(spec(
                "R-744",
                suction(example.given("pressure low"), Variable.VAPOR_QUALITY, example.result("quality")),
                example.given("pressure high"),
                ProcessMeasure.Kind.ISENTROPIC_EFFICIENCY,
                1));
        State outlet = result.points().get(1).state();
        double dryness = outlet.phase() == Phase.TWO_PHASE ? outlet.vaporQuality() : 1;
        assertThat(dryness).isCloseTo(1, Offset.offset(0.03));
        assertThat(result.liquid()).isPresent();
        assertThat(result.liquid().get().massShare()).isCloseTo(1 - example.result("quality"), Offset.offset(1e-12));
    }

    /** W. F. Stoecker, J. W. Jones, example 10-1 (from memory): R-22, -10 degC to 35 degC. */
    @Test
    void stoeckerJonesOfTheStandardCycle() {
        PublishedExample example = PublishedExample.of("SJ-10-1");
        Result result = CompressionProcess.calculate(spec(
                TestFluids.of("R-22"),
                new SuctionCondition(
                        SaturationLevel.temperature(example.given("evaporating temperature")), Variable.SUPERHEAT, 0),
                DischargeLevel.of(SaturationLevel.temperature(example.given("condensing temperature"))),
                ProcessMeasure.Kind.ISENTROPIC_EFFICIENCY,
                1,
                0));
        example.check(
                "compressor power",
                example.result("mass flow rate") * result.figures().work(),
                SHARE);
        example.checkTemperature("discharge temperature", result.figures().dischargeTemperature(), 1);
        State inlet = result.points().get(0).state();
        example.check("suction volume flow", example.result("mass flow rate") / inlet.density(), SHARE);
    }

    /** R. Joel, example 14.1: air in a cylinder with n = 1.3. */
    @Test
    void joelOfAirWithAnIndex() {
        PublishedExample example = PublishedExample.of("JOEL-14-1");
        Result result = CompressionProcess.calculate(spec(
                Processes.air(),
                suction(example.given("intake pressure"), Variable.TEMPERATURE, example.given("intake temperature")),
                DischargeLevel.pressure(example.given("delivery pressure")),
                ProcessMeasure.Kind.POLYTROPIC_INDEX,
                example.given("polytropic index"),
                0));
        example.checkTemperature("delivery temperature", result.figures().dischargeTemperature(), 1);
        example.check("isothermal efficiency", result.isothermal().orElseThrow().efficiency(), SHARE);
        // The formulas of the ideal gas are those of the book.
        example.checkTemperature(
                "delivery temperature", result.idealGas().orElseThrow().dischargeTemperature(), 0.1);
    }

    /** R. Joel, example 14.3: three stages, 1 to 15 bar, perfect intercooling, n = 1.3, so equal ratios. */
    @Test
    void joelOfThreeStages() {
        PublishedExample example = PublishedExample.of("JOEL-14-3");
        double low = example.given("intake pressure");
        double ratio = Math.cbrt(example.given("delivery pressure") / low);
        double work = 0;
        double pressure = low;
        for (int k = 0; k < 3; k++) {
            Result stage = CompressionProcess.calculate(spec(
                    Processes.air(),
                    suction(pressure, Variable.TEMPERATURE, example.given("intake temperature")),
                    DischargeLevel.ratio(ratio),
                    ProcessMeasure.Kind.POLYTROPIC_INDEX,
                    example.given("index"),
                    0));
            work += stage.figures().work();
            pressure *= ratio;
            // The book's air is ideal: so is ours to 0.1 K by the same formula, and real to 1.2 K at 15 bar.
            example.checkTemperature(
                    "delivery temperature", stage.idealGas().orElseThrow().dischargeTemperature(), 0.1);
            example.checkTemperature("delivery temperature", stage.figures().dischargeTemperature(), 1.2);
        }
        example.check("intermediate pressure 2", low * ratio, SHARE);
        example.check("intermediate pressure 3", low * ratio * ratio, SHARE);
        // The book takes 0.29 kJ/(kg K) for air, 1 % more than it has.
        example.check("work per kg", work * example.given("gas constant") / 287.05, SHARE);
    }

    private static Result saturated(String fluid, double evaporating, double discharge, double efficiency) {
        return CompressionProcess.calculate(spec(
                TestFluids.of(fluid),
                new SuctionCondition(SaturationLevel.temperature(evaporating), Variable.SUPERHEAT, 0),
                DischargeLevel.pressure(discharge),
                ProcessMeasure.Kind.ISENTROPIC_EFFICIENCY,
                efficiency,
                0));
    }

    private static Offset<Double> within(double size) {
        return Offset.offset(SHARE * size);
    }
}
