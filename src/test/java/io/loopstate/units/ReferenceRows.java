package io.loopstate.units;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** Published values, and the tolerance that their printed digits carry. */
final class ReferenceRows {
    private ReferenceRows() {}

    static List<NamedCsvRecord> of(String file) {
        String resource = "/reference/units/" + file;
        try (Reader reader = new InputStreamReader(
                        Objects.requireNonNull(ReferenceRows.class.getResourceAsStream(resource), resource),
                        StandardCharsets.UTF_8);
                CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(reader)) {
            return rows.stream().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Half a unit of the last printed digit. */
    static double halfUnit(String printed) {
        return new BigDecimal(printed).ulp().doubleValue() / 2;
    }
}
