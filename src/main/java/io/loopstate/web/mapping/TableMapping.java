package io.loopstate.web.mapping;

import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.PropertyTable;
import io.loopstate.engine.cycle.Transport;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.dto.TableReply;
import io.loopstate.web.dto.TableRequest;
import io.loopstate.web.dto.TableRow;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Tables of saturation and of superheated vapor. */
public final class TableMapping {
    private static final List<String> RANGES = List.of("temperature", "pressure", "superheat");

    /** The calculation. */
    public static final Operation<TableRequest, Spec, Result, TableReply> OPERATION = new Operation<>(
            TableRequest.class,
            TableMapping::spec,
            Spec::calculate,
            TableMapping::reply,
            Map.of(
                    "from", part("from"),
                    "to", part("to"),
                    "step", part("step"),
                    "pressure", List.of("atPressure")));

    /** One of two kinds of table. */
    record Spec(Optional<PropertyTable.SaturationSpec> saturation, Optional<PropertyTable.SuperheatSpec> superheat) {
        Result calculate() {
            return new Result(saturation.map(PropertyTable::saturation), superheat.map(PropertyTable::superheat));
        }
    }

    /** The table of that kind. */
    record Result(
            Optional<PropertyTable.SaturationResult> saturation, Optional<PropertyTable.SuperheatResult> superheat) {
        List<Finding> findings() {
            return saturation
                    .map(PropertyTable.SaturationResult::findings)
                    .orElseGet(() -> superheat.orElseThrow().findings());
        }
    }

    private TableMapping() {}

    private static List<String> part(String name) {
        return RANGES.stream().map(range -> range + '.' + name).toList();
    }

    private static Spec spec(Input<TableRequest> input) {
        String range = checkRange(input);
        input.refuseFaults();
        PropertyTable.Range steps = new PropertyTable.Range(
                si(input, range + ".from"), si(input, range + ".to"), si(input, range + ".step"));
        Variable over = Variable.valueOf(range.toUpperCase(Locale.ROOT));
        OptionalDouble pressure = input.si("atPressure");
        return pressure.isEmpty()
                ? new Spec(
                        Optional.of(new PropertyTable.SaturationSpec(input.equilibrium(), over, steps)),
                        Optional.empty())
                : new Spec(
                        Optional.empty(),
                        Optional.of(new PropertyTable.SuperheatSpec(
                                input.equilibrium(), pressure.getAsDouble(), over, steps)));
    }

    /** The range that is given; faults for what is missing of it, and for others. */
    private static String checkRange(Input<TableRequest> input) {
        List<String> given = RANGES.stream()
                .filter(range -> parts(range).anyMatch(input::given))
                .toList();
        if (given.isEmpty()) {
            input.exactlyOne(RANGES.stream().map(range -> range + ".from").toArray(String[]::new));
            return "";
        }
        for (String range : given) {
            parts(range)
                    .forEach(part ->
                            parts(range).forEach(other -> input.needs(part, other, "a range has three parts.")));
        }
        input.atMostOne(given.stream()
                .map(range -> parts(range).filter(input::given).findFirst().orElseThrow())
                .toArray(String[]::new));
        input.atMostOne("atPressure", "pressure.from");
        input.needs("superheat.from", "atPressure", "superheat counts from the dew point at one pressure.");
        return given.get(0);
    }

    private static Stream<String> parts(String range) {
        return Stream.of("from", "to", "step").map(part -> range + '.' + part);
    }

    private static double si(Input<TableRequest> input, String path) {
        return input.si(path).orElseThrow();
    }

    private static TableReply reply(Input<TableRequest> input, Result result, Trust trust) {
        Output out = input.output();
        Optional<Saturation> at = result.superheat().map(PropertyTable.SuperheatResult::saturation);
        return new TableReply(
                at.map(saturation -> States.of(out, saturation.bubble(), Transport.none()))
                        .orElse(null),
                at.map(saturation -> States.of(out, saturation.dew(), Transport.none()))
                        .orElse(null),
                result.saturation()
                        .map(table -> saturation(out, input.given("temperature.from"), table))
                        .orElseGet(() -> superheat(out, result.superheat().orElseThrow())),
                trust.working(input, List.of()),
                trust.basis(input),
                trust.warnings(input, result.findings()),
                trust.cautions(input));
    }

    private static List<TableRow> saturation(
            Output out, boolean overTemperature, PropertyTable.SaturationResult table) {
        return table.rows().stream()
                .map(PropertyTable.SaturationRow::saturation)
                .map(row -> new TableRow(
                        States.of(out, row.bubble(), Transport.none()),
                        States.of(out, row.dew(), Transport.none()),
                        out.of(
                                QuantityKind.TEMPERATURE_DIFFERENCE,
                                overTemperature ? Double.NaN : row.temperatureGlide()),
                        out.of(QuantityKind.PRESSURE_DIFFERENCE, overTemperature ? row.pressureGlide() : Double.NaN),
                        out.of(QuantityKind.SPECIFIC_ENERGY, row.latentHeat()),
                        null))
                .toList();
    }

    private static List<TableRow> superheat(Output out, PropertyTable.SuperheatResult table) {
        return table.rows().stream()
                .map(row -> new TableRow(
                        null,
                        null,
                        null,
                        null,
                        null,
                        States.of(
                                out,
                                row.state(),
                                OptionalDouble.of(row.superheat()),
                                OptionalDouble.empty(),
                                Transport.none())))
                .toList();
    }
}
