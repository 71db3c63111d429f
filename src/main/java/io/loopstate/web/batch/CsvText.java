package io.loopstate.web.batch;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import io.loopstate.web.form.Layout;
import io.loopstate.web.form.Leaf;
import io.loopstate.web.form.SeparatedText;
import io.loopstate.web.form.Sheet;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Rows of a table as bytes and as cells.
 *
 * @param layout of both tables
 * @param charset of the rows that are read; those that are written are UTF-8
 */
record CsvText(Layout layout, Charset charset) {
    static final String NOT_TEXT = "These bytes are no text in the charset of the table.";
    static final String HOW_TO_SAVE =
            "Save the table as CSV UTF-8, or name its charset: Content-Type: text/csv; charset=windows-1252";

    /** What is wrong with a row of which the cells cannot be found. */
    static final String UNREADABLE =
            "A quote is not closed, or a carriage return stands alone: lines end with a line feed.";

    private static final Pattern POINT = Pattern.compile("[-+]?[0-9]*\\.?[0-9]+([eE][-+]?[0-9]+)?");
    private static final Pattern COMMA = Pattern.compile("[-+]?[0-9]*,?[0-9]+([eE][-+]?[0-9]+)?");

    /**
     * The cells of a row.
     *
     * @throws CsvParseException if a quote is not closed, or a carriage return stands alone
     * @throws CharacterCodingException if the bytes are no text
     */
    List<String> cells(Row row) throws CharacterCodingException {
        if (RecordSplitter.staysOpen(row.bytes(), false, layout.separator())) {
            throw new CsvParseException("a quote is not closed");
        }
        String text = charset.newDecoder().decode(ByteBuffer.wrap(row.bytes())).toString();
        try (CsvReader<CsvRecord> csv =
                CsvReader.builder().fieldSeparator(layout.separator()).ofCsvRecord(text)) {
            Iterator<CsvRecord> records = csv.iterator();
            List<String> cells = records.next().getFields();
            if (records.hasNext()) {
                throw new CsvParseException("a carriage return ends a line");
            }
            return cells;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A cell that was sent, as it is sent back: a number as it is, other text so that no spreadsheet runs it. */
    String passed(String cell) {
        boolean number =
                (layout.decimalMark() == ',' ? COMMA : POINT).matcher(cell).matches();
        return number ? cell : SeparatedText.harmless(cell);
    }

    /** A value in its column, nothing for {@code null}; in a unit that the heading does not tell it carries it itself. */
    String value(Leaf leaf, Sheet.Column column) {
        if (leaf == null) {
            return "";
        }
        String text = SeparatedText.cell(leaf.value(), layout);
        return leaf.unit().equals(column.unit())
                ? text
                : text + ' ' + leaf.unit().orElse("");
    }

    /** A row as it is written. */
    byte[] bytes(List<String> cells, boolean byteOrderMark) {
        StringWriter text = new StringWriter();
        if (byteOrderMark) {
            text.write('\uFEFF');
        }
        try (CsvWriter csv = SeparatedText.writer(text, layout)) {
            csv.writeRecord(cells);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }
}
