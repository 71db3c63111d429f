package io.loopstate.web.mapping;

import io.loopstate.engine.compression.ComparisonGrid;
import io.loopstate.engine.compression.ComparisonGrid.Row;
import io.loopstate.engine.compression.ComparisonGrid.Summary;
import io.loopstate.engine.compression.ComparisonGrid.Worst;
import io.loopstate.engine.compression.MapCompressor;
import io.loopstate.engine.cycle.PropertyTable;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.dto.CompareDeviation;
import io.loopstate.web.dto.CompareGridReply;
import io.loopstate.web.dto.CompareGridRequest;
import io.loopstate.web.dto.CompareGridRow;
import io.loopstate.web.dto.CompareTemperatureDeviation;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** A rating map against a displacement model over a grid. */
public final class CompareGridMapping {
    private static final String SUPERHEAT = "suctionSuperheat";
    private static final String TEMPERATURE = "suctionTemperature";

    /** The calculation. */
    public static final Operation<CompareGridRequest, ComparisonGrid.Spec, ComparisonGrid.Result, CompareGridReply>
            OPERATION = new Operation<>(
                    CompareGridRequest.class,
                    CompareGridMapping::spec,
                    ComparisonGrid::calculate,
                    CompareGridMapping::reply,
                    inputs());

    private CompareGridMapping() {}

    private static Map<String, List<String>> inputs() {
        Map<String, List<String>> inputs = new HashMap<>(Machines.inputs(CompareGridRequest.class));
        inputs.put(RatingMapMapping.RATING, RatingMapMapping.RATING_MEMBERS);
        inputs.put("suction", List.of("evaporating.from"));
        inputs.put("discharge", List.of("condensing.from"));
        return inputs;
    }

    private static ComparisonGrid.Spec spec(Input<CompareGridRequest> input) {
        for (String range : List.of("evaporating", "condensing")) {
            for (String part : List.of("from", "to", "step")) {
                input.exactlyOne(range + '.' + part);
            }
        }
        input.exactlyOne(SUPERHEAT, TEMPERATURE);
        Machines.check(input, input.request().machine());
        Supplier<MapCompressor> map =
                RatingMapMapping.map(input, input.request().map());
        input.refuseFaults();
        boolean superheat = input.given(SUPERHEAT);
        return new ComparisonGrid.Spec(
                input.equilibrium(),
                range(input, "evaporating"),
                range(input, "condensing"),
                superheat ? Variable.SUPERHEAT : Variable.TEMPERATURE,
                input.si(superheat ? SUPERHEAT : TEMPERATURE).orElseThrow(),
                map.get(),
                Machines.machine(input.request().machine()),
                Guidances.of(input),
                input.explain());
    }

    private static PropertyTable.Range range(Input<?> input, String path) {
        try {
            return new PropertyTable.Range(
                    input.si(path + ".from").orElseThrow(),
                    input.si(path + ".to").orElseThrow(),
                    input.si(path + ".step").orElseThrow());
        } catch (EngineException e) {
            throw e.about(path + '.' + e.input().orElse("from"));
        }
    }

    private static CompareGridReply reply(Input<CompareGridRequest> input, ComparisonGrid.Result result, Trust trust) {
        Output out = input.output();
        Summary summary = result.summary();
        Worst temperature = summary.dischargeTemperature();
        return new CompareGridReply(
                summary.compared(),
                summary.refused(),
                deviation(out, summary.massFlow()),
                deviation(out, summary.power()),
                new CompareTemperatureDeviation(
                        out.of(QuantityKind.TEMPERATURE_DIFFERENCE, temperature.value()),
                        out.of(QuantityKind.TEMPERATURE, temperature.evaporating()),
                        out.of(QuantityKind.TEMPERATURE, temperature.condensing()),
                        out.of(QuantityKind.TEMPERATURE_DIFFERENCE, temperature.rootMeanSquare())),
                result.rows().stream().map(row -> row(input, row)).toList(),
                trust.working(input, result.steps()),
                trust.basis(input),
                trust.warnings(input, result.findings()),
                trust.cautions(input));
    }

    private static CompareDeviation deviation(Output out, Worst worst) {
        return new CompareDeviation(
                worst.value(),
                out.of(QuantityKind.TEMPERATURE, worst.evaporating()),
                out.of(QuantityKind.TEMPERATURE, worst.condensing()),
                worst.rootMeanSquare());
    }

    private static CompareGridRow row(Input<?> input, Row row) {
        Output out = input.output();
        Equilibrium equilibrium = input.equilibrium();
        return new CompareGridRow(
                out.of(QuantityKind.TEMPERATURE, row.evaporating()),
                out.of(QuantityKind.TEMPERATURE, row.condensing()),
                row.pressureRatio(equilibrium).orElse(null),
                row.figures().map(both -> CompareMapping.map(out, both)).orElse(null),
                row.figures().map(both -> CompareMapping.machine(out, both)).orElse(null),
                row.figures().map(both -> CompareMapping.difference(out, both)).orElse(null),
                row.figures().isPresent() ? null : Words.sentence(row.reason()));
    }
}
