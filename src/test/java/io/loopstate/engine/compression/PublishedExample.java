package io.loopstate.engine.compression;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoubleUnaryOperator;

/**
 * One worked example of a textbook, as collected in {@code reference/checks/worked_examples.csv}; source and number of the
 * example stand in each row.
 */
record PublishedExample(String id, List<NamedCsvRecord> rows) {
    /** Units of the textbooks: NIST Special Publication 811, appendix B; TR as the example itself gives it. */
    private static final Map<String, DoubleUnaryOperator> TO_SI = Map.ofEntries(
            Map.entry("", value -> value),
            Map.entry("%", value -> value / 100),
            Map.entry("C", value -> value + 273.15),
            Map.entry("K", value -> value),
            Map.entry("MPa", value -> value * 1e6),
            Map.entry("bar", value -> value * 1e5),
            Map.entry("kPa", value -> value * 1e3),
            Map.entry("ton", value -> value * 3516.8528420667),
            Map.entry("m", value -> value),
            Map.entry("1/min", value -> value / 60),
            Map.entry("1/s", value -> value),
            Map.entry("kg/s", value -> value),
            Map.entry("kg/min", value -> value / 60),
            Map.entry("kW", value -> value * 1e3),
            Map.entry("TR", value -> value * 14_000e3 / 3600),
            Map.entry("kJ/kg", value -> value * 1e3),
            Map.entry("kJ/(kg K)", value -> value * 1e3),
            Map.entry("m3/kg", value -> value),
            Map.entry("dm3/kg", value -> value / 1e3),
            Map.entry("dm3", value -> value / 1e3),
            Map.entry("m3/s", value -> value),
            Map.entry("m3/min", value -> value / 60));

    /** What has been checked so far, "example quantity". */
    private static final Set<String> CHECKED = ConcurrentHashMap.newKeySet();

    /** What has been checked so far in this run, as {@code example quantity}. */
    static Set<String> checked() {
        return Set.copyOf(CHECKED);
    }

    static PublishedExample of(String id) {
        try (Reader reader = new InputStreamReader(
                        Objects.requireNonNull(
                                PublishedExample.class.getResourceAsStream("/reference/checks/worked_examples.csv")),
                        StandardCharsets.UTF_8);
                CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(reader)) {
            return new PublishedExample(
                    id,
                    csv.stream()
                            .filter(row -> row.getField("example_id").equals(id))
                            .toList());
        } catch (IOException exception) {
            throw new UncheckedIOException(exception);
        }
    }

    /** A given input, SI. */
    double given(String quantity) {
        return number("given", quantity, "");
    }

    double given(String quantity, String state) {
        return number("given", quantity, state);
    }

    /** A property from the book's own table, SI. */
    double table(String quantity, String state) {
        return number("table_value", quantity, state);
    }

    /** Asserts that our value agrees with the printed result within a share of it. */
    void check(String quantity, double ours, double share) {
        double printed = number("result", quantity, "");
        CHECKED.add(id + ' ' + quantity);
        assertThat(Math.abs(ours - printed))
                .as("%s %s: here %s, printed %s (SI)", id, quantity, ours, printed)
                .isLessThanOrEqualTo(share * Math.abs(printed));
    }

    /** Asserts that our temperature (K) agrees with the printed one. */
    void checkTemperature(String quantity, double ours, double kelvin) {
        double printed = number("result", quantity, "");
        CHECKED.add(id + ' ' + quantity);
        assertThat(Math.abs(ours - printed))
                .as("%s %s: here %s K, printed %s K", id, quantity, ours, printed)
                .isLessThanOrEqualTo(kelvin);
    }

    double result(String quantity) {
        return number("result", quantity, "");
    }

    private double number(String role, String quantity, String state) {
        return rows.stream()
                .filter(row -> row.getField("role").equals(role)
                        && row.getField("quantity").equals(quantity)
                        && (state.isEmpty() || row.getField("state").equals(state)))
                .findFirst()
                .map(row -> Objects.requireNonNull(TO_SI.get(row.getField("unit")), row.getField("unit"))
                        .applyAsDouble(Double.parseDouble(row.getField("value"))))
                .orElseThrow(() -> new NoSuchElementException(id + " has no " + role + ' ' + quantity + ' ' + state));
    }
}
