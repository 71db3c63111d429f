package io.loopstate.testing;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/** Separated text as rows of cells. */
public final class Csv {
    private Csv() {}

    /** Every row, the head included. */
    public static List<List<String>> read(String text, char separator) {
        List<List<String>> rows = new ArrayList<>();
        try (CsvReader<CsvRecord> csv =
                CsvReader.builder().fieldSeparator(separator).ofCsvRecord(text)) {
            csv.forEach(row -> rows.add(row.getFields()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows;
    }
}
