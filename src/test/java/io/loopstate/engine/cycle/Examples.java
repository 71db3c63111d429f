package io.loopstate.engine.cycle;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;

/**
 * Worked examples of textbooks. A row gives a quantity as printed, the name that it has here (column {@code ours}) and, for
 * what is to be checked, the tolerance: a share, or kelvins. Tolerances are those of the collection: about 1 %, since the books
 * use other property tables. A row that cannot be met says why in the column {@code not_met} and is checked to miss, so that
 * the reason is looked at again should it ever be met.
 */
final class Examples {
    /**
     * Units of the textbooks. Sources: NIST Special Publication 811, appendix B (exact or derived from exact definitions);
     * TR is the ton of refrigeration as the example itself gives it.
     */
    private static final Map<String, DoubleUnaryOperator> TO_SI = Map.ofEntries(
            Map.entry("", value -> value),
            Map.entry("%", value -> value / 100),
            Map.entry("C", value -> value + 273.15),
            Map.entry("F", value -> (value + 459.67) / 1.8),
            Map.entry("R", value -> value / 1.8),
            Map.entry("bar", value -> value * 1e5),
            Map.entry("kPa", value -> value * 1e3),
            Map.entry("psia", value -> value * 6894.757293168),
            Map.entry("kg/s", value -> value),
            Map.entry("kg/min", value -> value / 60),
            Map.entry("lb/min", value -> value * 0.45359237 / 60),
            Map.entry("lb/(min ton)", value -> value * 0.45359237 / 60),
            Map.entry("kW", value -> value * 1e3),
            Map.entry("kW/kW", value -> value),
            Map.entry("ton", value -> value * 3516.8528420667),
            Map.entry("TR", value -> value * 3890),
            Map.entry("hp/ton", value -> value * 745.69987158227),
            Map.entry("kJ/kg", value -> value * 1e3),
            Map.entry("Btu/lb", value -> value * 2326),
            Map.entry("kJ/(kg K)", value -> value * 1e3),
            Map.entry("Btu/(lb R)", value -> value * 4186.8),
            Map.entry("m3/kg", value -> value),
            Map.entry("ft3/lb", value -> value * 0.028316846592 / 0.45359237),
            Map.entry("m3/s", value -> value),
            Map.entry("m3/min", value -> value / 60),
            Map.entry("cfm/ton", value -> value * 0.028316846592 / 60));

    private Examples() {}

    /** A row of the file. */
    record Row(
            String example,
            String calculation,
            String role,
            String quantity,
            String state,
            String text,
            String unit,
            String ours,
            String tolerance,
            String notMet,
            String source,
            String place) {
        static Row of(NamedCsvRecord fields) {
            return new Row(
                    fields.getField("example"),
                    fields.getField("calculation"),
                    fields.getField("role"),
                    fields.getField("quantity"),
                    fields.getField("state"),
                    fields.getField("value"),
                    fields.getField("unit"),
                    fields.getField("ours"),
                    fields.getField("tolerance"),
                    fields.getField("not_met"),
                    fields.getField("source"),
                    fields.getField("place"));
        }

        boolean given() {
            return role.equals("given");
        }

        double si() {
            return Objects.requireNonNull(TO_SI.get(unit), unit).applyAsDouble(Double.parseDouble(text));
        }

        /** Asserts that our value (SI) agrees with the printed one, or misses it where the row says so. */
        void check(double ours, double printed) {
            assertThat(Math.abs(ours - printed) <= allowed(printed))
                    .as("%s: here %s, printed %s (SI) %s", title(), ours, printed, notMet)
                    .isEqualTo(notMet.isEmpty());
        }

        private double allowed(double size) {
            String[] parts = tolerance.split(" ");
            double number = Double.parseDouble(parts[0]);
            return parts[1].equals("%") ? number / 100 * Math.abs(size) : number;
        }

        String title() {
            return "%s %s: %s %s %s %s".formatted(source, place, quantity, state, text, unit);
        }
    }

    /** The rows of one example. */
    record Example(String name, List<Row> rows) {
        String calculation() {
            return rows.get(0).calculation();
        }

        boolean has(String ours) {
            return rows.stream().anyMatch(row -> row.given() && row.ours().equals(ours));
        }

        double given(String ours) {
            return row(ours).si();
        }

        String refrigerant() {
            return row("refrigerant").text();
        }

        List<Row> checks() {
            return rows.stream().filter(row -> !row.given()).toList();
        }

        /** The row of what the example prints under one of our names. */
        Row printed(String ours) {
            return checks().stream()
                    .filter(row -> row.ours().equals(ours))
                    .findFirst()
                    .orElseThrow(() -> new NoSuchElementException(name + " prints no " + ours));
        }

        private Row row(String ours) {
            return rows.stream()
                    .filter(row -> row.given() && row.ours().equals(ours))
                    .findFirst()
                    .orElseThrow(() -> new NoSuchElementException(name + " gives no " + ours));
        }
    }

    /** The examples of one kind of calculation, in file order. */
    static List<Example> of(String calculation) {
        return rows().stream()
                .filter(row -> row.calculation().equals(calculation))
                .collect(Collectors.groupingBy(Row::example, LinkedHashMap::new, Collectors.toList()))
                .entrySet()
                .stream()
                .map(entry -> new Example(entry.getKey(), entry.getValue()))
                .toList();
    }

    private static List<Row> rows() {
        try (Reader reader = new InputStreamReader(
                        Objects.requireNonNull(
                                Examples.class.getResourceAsStream("/reference/examples/vapor-compression.csv")),
                        StandardCharsets.UTF_8);
                CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(reader)) {
            return csv.stream().map(Row::of).toList();
        } catch (IOException exception) {
            throw new UncheckedIOException(exception);
        }
    }
}
