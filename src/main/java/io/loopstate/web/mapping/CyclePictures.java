package io.loopstate.web.mapping;

import io.loopstate.engine.cycle.DesignCycle;
import io.loopstate.engine.cycle.FieldReadings;
import io.loopstate.engine.cycle.Point;
import io.loopstate.engine.cycle.PointName;
import io.loopstate.engine.cycle.SaturationTemperatures;
import io.loopstate.engine.diagram.Plane;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.chart.Chart;
import io.loopstate.web.dto.ChartName;
import io.loopstate.web.dto.DesignRequest;
import io.loopstate.web.dto.ReadingsRequest;
import java.util.List;
import java.util.Optional;

/** Cycles on property diagrams. */
public final class CyclePictures {
    /** The cycle from design conditions. */
    public static final Picture<DesignRequest, DesignCycle.Spec, DesignCycle.Result> DESIGN =
            new Picture<>(DesignMapping.OPERATION, true, CyclePictures::design);

    /** What readings determine of a cycle. */
    public static final Picture<ReadingsRequest, FieldReadings.Spec, FieldReadings.Result> READINGS =
            new Picture<>(ReadingsMapping.OPERATION, true, CyclePictures::readings);

    private CyclePictures() {}

    private static Chart design(Input<DesignRequest> input, DesignCycle.Result result, ChartName name) {
        String subtitle = levels(input, result.evaporating(), result.condensing(), result.points())
                + ". Coefficient of performance "
                + Measure.figures(result.performance().coefficientOfPerformance()) + '.';
        return chart(input, result.points(), name, subtitle);
    }

    private static Chart readings(Input<ReadingsRequest> input, FieldReadings.Result result, ChartName name) {
        Measure difference = new Measure(input.output(), QuantityKind.TEMPERATURE_DIFFERENCE);
        String subtitle = levels(input, result.evaporating(), result.condensing(), result.points())
                + ". Superheat " + difference.words(result.superheat())
                + (result.subcooling().isPresent()
                        ? ", subcooling " + difference.words(result.subcooling().getAsDouble())
                        : "")
                + '.';
        return chart(input, result.points(), name, subtitle);
    }

    private static String levels(
            Input<?> input,
            SaturationTemperatures evaporating,
            Optional<SaturationTemperatures> condensing,
            List<Point> points) {
        Measure temperature = new Measure(input.output(), QuantityKind.TEMPERATURE);
        Measure pressure = new Measure(input.output(), QuantityKind.PRESSURE);
        String high = condensing
                .map(level -> "condensing at " + pressure.words(level.pressure()) + " (dew point "
                        + temperature.words(level.dew()) + ')')
                .orElseGet(() -> points.stream()
                        .filter(point -> point.name() == PointName.GAS_COOLER_INLET
                                || point.name() == PointName.COMPRESSOR_OUTLET)
                        .reduce((first, last) -> last)
                        .map(point -> "heat rejected above the critical pressure, at "
                                + pressure.words(point.state().pressure()))
                        .orElse("high side above the critical pressure"));
        return "Evaporating at " + pressure.words(evaporating.pressure()) + " (dew point "
                + temperature.words(evaporating.dew()) + "), " + high;
    }

    private static Chart chart(Input<?> input, List<Point> points, ChartName name, String subtitle) {
        return new CycleChart(input.equilibrium(), plane(name), points, input.output()).chart("the loop", subtitle);
    }

    static Plane plane(ChartName name) {
        return name == ChartName.TEMPERATURE_ENTROPY ? Plane.TEMPERATURE_ENTROPY : Plane.PRESSURE_ENTHALPY;
    }
}
