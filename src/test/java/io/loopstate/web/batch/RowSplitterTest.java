package io.loopstate.web.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Rows come out the same however the bytes were cut on their way. */
class RowSplitterTest {
    private static final int LONGEST = 10;

    @Test
    void linesEndAtLineFeeds() {
        assertThat(texts(RowSplitter.lines(LONGEST), "a\nbc\r\n\n \t\r\nd")).containsExactly("a", "bc", "d");
        assertThat(texts(RowSplitter.lines(LONGEST), "")).isEmpty();
        assertThat(texts(RowSplitter.lines(LONGEST), "\n\r\n")).isEmpty();
    }

    @Test
    void byteOrderMarkIsDroppedAtTheBeginningAlone() {
        assertThat(texts(RowSplitter.lines(LONGEST), "\uFEFFa\n\uFEFFb")).containsExactly("a", "\uFEFFb");
    }

    @Test
    void longLineIsMarkedAndTheNextIsNot() {
        List<Row> rows =
                rows(RowSplitter.lines(LONGEST), "0123456789\r\n0123456789a\n" + "x".repeat(50) + "\nshort", 7);
        assertThat(rows.stream().map(Row::tooLong)).containsExactly(false, true, true, false);
        assertThat(rows.stream().map(row -> row.bytes().length)).allMatch(length -> length <= LONGEST + 1);
        assertThat(rows.stream().map(Row::index)).containsExactly(0L, 1L, 2L, 3L);
    }

    /** RFC 4180, section 2, rules 6 and 7. */
    @Test
    void recordsKeepLineFeedsBetweenQuotes() {
        String text = "a,\"b\nc\"\r\n\"d\"\"\n\",e\r\n\"\"\r\nf";
        assertThat(texts(RowSplitter.records(20), text)).containsExactly("a,\"b\nc\"", "\"d\"\"\n\",e", "\"\"", "f");
    }

    @Test
    void quoteThatNobodyClosesCostsItsOwnRow() {
        List<Row> rows = rows(RowSplitter.records(LONGEST), "a,\"b" + "\nx".repeat(20) + "\nc,d\ne,f\n", 3);
        assertThat(rows.get(0).tooLong()).isTrue();
        assertThat(texts(rows).subList(rows.size() - 2, rows.size())).containsExactly("c,d", "e,f");
    }

    @Test
    void cutsOnTheWayChangeNothing() {
        String text = "\uFEFFab\ncd,\"e\nf\"\r\n\n" + "y".repeat(30) + "\n°F\nlast";
        List<String> whole = texts(RowSplitter.records(LONGEST), text);
        Random random = new Random(20_260_111);
        for (int i = 0; i < 200; i++) {
            assertThat(texts(rows(RowSplitter.records(LONGEST), text, 1 + random.nextInt(12))))
                    .isEqualTo(whole);
        }
    }

    private static List<String> texts(RowSplitter splitter, String text) {
        return texts(rows(splitter, text, 1000));
    }

    private static List<String> texts(List<Row> rows) {
        return rows.stream()
                .map(row -> row.tooLong() ? "too long" : new String(row.bytes(), StandardCharsets.UTF_8))
                .toList();
    }

    private static List<Row> rows(RowSplitter splitter, String text, int piece) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        List<Row> rows = new ArrayList<>();
        for (int at = 0; at < bytes.length; at += piece) {
            splitter.feed(Arrays.copyOfRange(bytes, at, Math.min(bytes.length, at + piece)));
            for (Optional<Row> row = splitter.next(); row.isPresent(); row = splitter.next()) {
                rows.add(row.get());
            }
        }
        splitter.last().ifPresent(rows::add);
        assertThat(splitter.found()).isEqualTo(rows.size());
        return rows;
    }
}
