package io.loopstate.engine.cycle;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.component.CompressorKind;
import io.loopstate.engine.component.CompressorModel;
import io.loopstate.engine.component.LineLosses;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.cycle.DesignCycle.Performance;
import io.loopstate.engine.cycle.DesignCycle.Result;
import io.loopstate.engine.cycle.DesignCycle.Sizing;
import io.loopstate.engine.cycle.DesignCycle.Spec;
import io.loopstate.engine.cycle.Examples.Example;
import io.loopstate.engine.cycle.Examples.Row;
import io.loopstate.engine.property.State;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Whole worked examples of textbooks, from what they give to what they print, properties included. Sources: the column {@code
 * source} of the file, with the example's number.
 *
 * <p>Enthalpies and entropies are compared as differences to the compressor's inlet, since the books use other data.
 */
class DesignExamplesTest {
    /** W in a ton of refrigeration: NIST Special Publication 811, 12 000 Btu/h. */
    private static final double TON = 3516.8528420667;

    @TestFactory
    Stream<DynamicContainer> examples() {
        return Examples.of("design").stream().map(example -> {
            Result result = DesignCycle.calculate(spec(example));
            return DynamicContainer.dynamicContainer(
                    example.name(),
                    example.checks().stream()
                            .filter(row -> !datum(row))
                            .map(row -> DynamicTest.dynamicTest(row.title(), () -> check(example, row, result))));
        });
    }

    private static boolean datum(Row row) {
        return row.ours().endsWith(" COMPRESSOR_INLET");
    }

    private static void check(Example example, Row row, Result result) {
        double printed = row.si();
        double ours;
        if (row.ours().startsWith("enthalpy ")) {
            printed -= example.printed("enthalpy COMPRESSOR_INLET").si();
            ours = difference(row, result, State::specificEnthalpy);
        } else if (row.ours().startsWith("entropy ")) {
            printed -= example.printed("entropy COMPRESSOR_INLET").si();
            ours = difference(row, result, State::specificEntropy);
        } else {
            ours = value(row.ours(), result);
        }
        row.check(ours, printed);
    }

    private static double difference(Row row, Result result, ToDoubleFunction<State> property) {
        PointName name = PointName.valueOf(row.ours().substring(row.ours().indexOf(' ') + 1));
        return property.applyAsDouble(result.point(name).state())
                - property.applyAsDouble(
                        result.point(PointName.COMPRESSOR_INLET).state());
    }

    private static double value(String name, Result result) {
        Performance performance = result.performance();
        Sizing sizing = result.sizing().orElseThrow();
        return switch (name) {
            case "compressorWork" -> performance.compressorWork();
            case "refrigeratingEffect" -> performance.refrigeratingEffect();
            case "coefficientOfPerformance" -> performance.coefficientOfPerformance();
            case "coefficientOfPerformanceWithoutLoss" ->
                performance.refrigeratingEffect() / performance.isentropicWork();
            case "coefficientOfPerformanceOnElectricalPower" ->
                sizing.refrigeratingCapacity() / sizing.electricalPower().orElseThrow();
            case "carnotCoefficientOfPerformance" ->
                performance.carnotCoefficientOfPerformance().orElseThrow();
            case "carnotShare" -> performance.carnotShare().orElseThrow();
            case "dischargeTemperature" -> performance.dischargeTemperature();
            case "isentropicDischargeTemperature" ->
                result.point(PointName.ISENTROPIC_COMPRESSOR_OUTLET).state().temperature();
            case "specificVolume" ->
                result.point(PointName.COMPRESSOR_INLET).state().specificVolume();
            case "condensingPressure" -> result.condensing().orElseThrow().pressure();
            case "condensingTemperature" -> result.condensing().orElseThrow().dew();
            case "massFlow" -> sizing.massFlow();
            case "refrigeratingCapacity" -> sizing.refrigeratingCapacity();
            case "compressorPower" -> sizing.compressorPower();
            case "electricalPower" -> sizing.electricalPower().orElseThrow();
            case "powerPerCapacity" -> sizing.compressorPower() / sizing.refrigeratingCapacity();
            case "suctionVolumeFlow" -> sizing.suctionVolumeFlow();
            default -> throw new IllegalArgumentException(name);
        };
    }

    private static Spec spec(Example example) {
        return new Spec(
                TestFluids.of(example.refrigerant()),
                level(example, "evaporating"),
                condensing(example),
                evaporatorOutlet(example),
                example.has("liquidTemperature")
                        ? OutletCondition.temperature(example.given("liquidTemperature"))
                        : OutletCondition.subcooling(0),
                compressor(example),
                LineLosses.none(),
                size(example),
                101_325,
                Guidance.common(),
                false);
    }

    private static SaturationLevel level(Example example, String name) {
        return example.has(name + "Pressure")
                ? SaturationLevel.pressure(example.given(name + "Pressure"))
                : SaturationLevel.temperature(example.given(name + "Temperature"));
    }

    /** An example that gives the liquid's temperature only takes its enthalpy from the saturated liquid. */
    private static SaturationLevel condensing(Example example) {
        return example.has("condensingPressure") || example.has("condensingTemperature")
                ? level(example, "condensing")
                : SaturationLevel.temperature(example.given("liquidTemperature"));
    }

    private static OutletCondition evaporatorOutlet(Example example) {
        if (example.has("evaporatorOutletQuality")) {
            return OutletCondition.quality(example.given("evaporatorOutletQuality"));
        }
        return example.has("evaporatorOutletTemperature")
                ? OutletCondition.temperature(example.given("evaporatorOutletTemperature"))
                : OutletCondition.superheat(0);
    }

    private static CompressorModel compressor(Example example) {
        return new CompressorModel(
                CompressorKind.OPEN,
                optional(example, "isentropicEfficiency").orElse(1),
                0,
                optional(example, "volumetricEfficiency"),
                optional(example, "motorEfficiency"));
    }

    /** An example without a size is one that counts per ton. */
    private static Optional<Size> size(Example example) {
        return Optional.of(
                example.has("massFlow")
                        ? Size.massFlow(example.given("massFlow"))
                        : Size.refrigeratingCapacity(
                                optional(example, "refrigeratingCapacity").orElse(TON)));
    }

    private static OptionalDouble optional(Example example, String name) {
        return example.has(name) ? OptionalDouble.of(example.given(name)) : OptionalDouble.empty();
    }
}
