package io.loopstate.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A table of published values against calculated ones.
 *
 * <p>A value is met if it rounds to the printed one, so within half a unit of the last printed digit. Those that are not
 * must stand in {@code known-deviations.csv} with the evidence and must deviate by as much as is stated there. Every number
 * in a row has to be either an input or compared, so no column can drop out, and the number of rows is that of the source.
 */
final class PublishedTable {
    private static final String FOLDER = "/reference/";
    /** Columns without numbers of their own. */
    private static final Set<String> TEXT = Set.of(
            "id",
            "fluid",
            "refrigerant",
            "designation",
            "name",
            "CAS",
            "components",
            "safety_group",
            "assessment",
            "basis",
            "composition_mole",
            "inputs",
            "quantity",
            "arrangement",
            "compressor_type",
            "unit_system",
            "temperature_unit",
            "pressure_unit",
            "value_unit",
            "unit",
            "p_kind",
            "reference_state",
            "source",
            "place_in_source",
            "origin",
            "where_read",
            "note");
    /** Where rounding puts a calculated value exactly half-way. */
    private static final double HALF = 0.5 * (1 + 1e-9);

    private final String name;
    private final KnownDeviations known;
    private final PrintedDigits digits;
    private final Map<String, String> unexpected = new TreeMap<>();

    PublishedTable(String name) {
        this.name = name;
        this.known = new KnownDeviations(name);
        this.digits = new PrintedDigits(name);
    }

    /** Rows of a file of the reference folder. */
    static List<NamedCsvRecord> records(String file) {
        try (InputStream stream = PublishedTable.class.getResourceAsStream(FOLDER + file);
                CsvReader<NamedCsvRecord> reader =
                        CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return reader.stream().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Compares every row.
     *
     * @param rows how many the table must have
     * @param comparison of one row
     */
    void compare(int rows, Consumer<Row> comparison) {
        List<NamedCsvRecord> records = records("checks/" + name + ".csv");
        assertEquals(rows, records.size(), name + ": rows");
        for (NamedCsvRecord record : records) {
            Row row = new Row(record);
            comparison.accept(row);
            row.requireComplete();
        }
        assertEquals(Map.of(), unexpected, name + ": not as printed");
        known.requireAllSeen();
    }

    /** One row, with a record of which of its numbers were used. */
    final class Row {
        private final NamedCsvRecord csv;
        private final Set<String> used = new HashSet<>(TEXT);
        private boolean skipped;

        private Row(NamedCsvRecord csv) {
            this.csv = csv;
        }

        String text(String column) {
            return csv.getField(column);
        }

        boolean has(String column) {
            return !csv.getField(column).isEmpty();
        }

        boolean hasColumn(String column) {
            return csv.getHeader().contains(column);
        }

        /** A number that the calculation starts from. */
        double given(String column) {
            used.add(column);
            return Double.parseDouble(csv.getField(column));
        }

        /** Leaves the whole row to other tests. */
        void skip() {
            skipped = true;
        }

        /** A printed number, if the row has the column and a number in it. */
        void check(String column, double calculated) {
            if (hasColumn(column) && has(column)) {
                used.add(column);
                check(column, csv.getField(column), calculated);
            }
        }

        /** Whether a calculated value rounds to the printed one. */
        boolean rounds(String column, double calculated) {
            return units(column, csv.getField(column), calculated) <= HALF;
        }

        /** A number that is printed in the note, as the first group of a pattern. */
        void checkNote(String pattern, double calculated) {
            Matcher matcher = Pattern.compile(pattern).matcher(text("note"));
            if (matcher.find()) {
                check("note: " + pattern.split(" [=(]")[0], matcher.group(1), calculated);
            }
        }

        /** A number within a relative bound that the row's own note states. */
        void checkWithin(String column, double expected, double calculated, double relative) {
            used.add(column);
            if (!(Math.abs(calculated - expected) <= relative * Math.abs(expected))) {
                unexpected.put(text("id") + " " + column, "printed " + expected + ", calculated " + calculated);
            }
        }

        private void check(String column, String printed, double calculated) {
            double units = units(column, printed, calculated);
            if (!(units <= HALF) && !known.covers(text("id"), column, printed, units)) {
                unexpected.put(
                        text("id") + " " + column,
                        "printed " + printed + ", calculated " + calculated + ", units of the last digit " + units);
            }
        }

        private double units(String column, String printed, double calculated) {
            double unit = digits.unit(text("id"), column, printed);
            return Math.abs(calculated - new BigDecimal(printed).doubleValue()) / unit;
        }

        private void requireComplete() {
            for (String column : csv.getHeader()) {
                if (!skipped && has(column) && !used.contains(column)) {
                    unexpected.put(text("id") + " " + column, "printed " + text(column) + ", not compared");
                }
            }
        }
    }
}
