package io.loopstate.web.form;

import com.fasterxml.jackson.databind.JsonNode;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.List;

/** Separated text: RFC 4180, with cells that a spreadsheet would run as a formula made harmless. */
public final class SeparatedText {
    private static final String BYTE_ORDER_MARK = "\uFEFF";
    private static final String FORMULA_STARTS = "=+-@\t\r";

    private SeparatedText() {}

    /** A sheet with its head. */
    static String of(Sheet sheet, Layout layout) {
        StringWriter text = new StringWriter();
        if (layout.byteOrderMark()) {
            text.write(BYTE_ORDER_MARK);
        }
        try (CsvWriter csv = writer(text, layout)) {
            csv.writeRecord(sheet.columns().stream()
                    .map(Sheet.Column::header)
                    .map(SeparatedText::harmless)
                    .toList());
            for (List<JsonNode> row : sheet.rows()) {
                csv.writeRecord(row.stream().map(cell -> cell(cell, layout)).toList());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /** A writer of rows in a layout. */
    public static CsvWriter writer(Writer out, Layout layout) {
        return CsvWriter.builder()
                .fieldSeparator(layout.separator())
                .lineDelimiter(LineDelimiter.CRLF)
                .build(out);
    }

    /** A value as a cell. */
    public static String cell(JsonNode value, Layout layout) {
        return value.isNumber() ? layout.text(value) : harmless(layout.text(value));
    }

    /** Text that no spreadsheet runs. */
    public static String harmless(String text) {
        return !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0 ? '\'' + text : text;
    }
}
