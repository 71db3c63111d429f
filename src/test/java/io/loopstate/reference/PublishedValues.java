package io.loopstate.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Published values against calculated ones. A value is met if it differs by no more than one unit of its last printed digit;
 * those that are not must stand in {@code known-deviations.csv} with a bound and the evidence, and must still deviate.
 */
final class PublishedValues {
    private static final String FOLDER = "/reference/";

    private record Known(double relativeBound, String evidence) {}

    private final Map<String, Known> known = new HashMap<>();
    private final Map<String, String> unexpected = new TreeMap<>();
    private final List<String> deviating = new ArrayList<>();
    private int met;

    /** @param table file of the checks this run is about */
    PublishedValues(String table) {
        for (NamedCsvRecord row : rows("known-deviations.csv")) {
            if (row.getField("table").equals(table)) {
                known.put(
                        row.getField("id") + " " + row.getField("column"),
                        new Known(Double.parseDouble(row.getField("relative_bound")), row.getField("evidence")));
            }
        }
    }

    static List<NamedCsvRecord> rows(String file) {
        try (InputStream stream = PublishedValues.class.getResourceAsStream(FOLDER + file);
                CsvReader<NamedCsvRecord> reader =
                        CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return reader.stream().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** One printed value, skipped where the cell is empty. */
    void check(NamedCsvRecord row, String column, double calculated) {
        String printed = row.getField(column);
        if (printed.isEmpty()) {
            return;
        }
        BigDecimal exact = new BigDecimal(printed);
        double unit = exact.ulp().doubleValue();
        double difference = Math.abs(calculated - exact.doubleValue());
        String key = row.getField("id") + " " + column;
        if (difference <= unit * (1 + 1e-9)) {
            met++;
            return;
        }
        Known bound = known.get(key);
        if (bound != null && difference <= bound.relativeBound() * Math.abs(exact.doubleValue())) {
            deviating.add(key);
            return;
        }
        unexpected.put(
                key,
                "printed " + printed + ", calculated " + calculated + ", relative "
                        + difference / Math.abs(exact.doubleValue()));
    }

    /** A value that a row's own note gives a relative tolerance for. */
    void checkWithin(NamedCsvRecord row, String column, double expected, double calculated, double relative) {
        if (Math.abs(calculated - expected) <= relative * Math.abs(expected)) {
            met++;
        } else {
            unexpected.put(row.getField("id") + " " + column, "expected " + expected + ", calculated " + calculated);
        }
    }

    /** Nothing but the known deviations, all of them, and as many values met as the tables hold. */
    void verify(int expectedMet) {
        assertEquals(Map.of(), unexpected);
        List<String> gone =
                known.keySet().stream().filter(key -> !deviating.contains(key)).toList();
        assertTrue(gone.isEmpty(), "listed as deviating, but met: " + gone);
        assertEquals(expectedMet, met, "values met");
    }
}
