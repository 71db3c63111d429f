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
        String text = "a,\"b\r\n\r\nc\"\r\n\"d\"\"\n\",e\r\n\"\"\r\n\r\nf";
        assertThat(texts(records(20), text)).containsExactly("a,\"b\r\n\r\nc\"", "\"d\"\"\n\",e", "\"\"", "f");
    }

    @Test
    void quoteWithinACellOpensNothing() {
        assertThat(texts(records(20), "5\" pipe,a\nb,\"c\"d\",e\nf\n"))
                .containsExactly("5\" pipe,a", "b,\"c\"d\",e", "f");
    }

    @Test
    void quoteThatNobodyClosesCostsItsOwnRow() {
        List<String> behind = texts(records(1000), "a,\"b\nc,d\ne,\"f\ng\"\n");
        // The quote of e closes that of b; what follows is a row of its own again.
        assertThat(behind).containsExactly("a,\"b\nc,d\ne,\"f", "g\"");
        assertThat(texts(records(1000), "a,\"b\nc,d\r\ne,f")).containsExactly("a,\"b", "c,d", "e,f");
        assertThat(texts(records(1000), "a,\"b" + "\nx".repeat(100) + "\nc,d\n"))
                .hasSize(102)
                .startsWith("a,\"b", "x")
                .endsWith("x", "c,d");
        assertThat(texts(records(LONGEST), "a,\"b\n0123456789\nc\n")).containsExactly("a,\"b", "0123456789", "c");
        assertThat(texts(records(LONGEST), "\"" + "x".repeat(30) + "\nc\n")).containsExactly("too long", "c");
    }

    @Test
    void longRecordIsMarkedAndTheNextIsNot() {
        List<Row> rows = rows(records(LONGEST), "0123456789\r\n0123456789a\n" + "x".repeat(50) + "\nshort", 7);
        assertThat(rows.stream().map(Row::tooLong)).containsExactly(false, true, true, false);
    }

    @Test
    void cutsOnTheWayChangeNothing() {
        String text = "\uFEFFab\ncd,\"e\nf\"\r\n\n" + "y".repeat(30) + "\n°F\n\"open\nnext\nlast";
        List<String> whole = texts(records(LONGEST), text);
        assertThat(whole).containsExactly("ab", "cd,\"e\nf\"", "too long", "°F", "\"open", "next", "last");
        Random random = new Random(20_260_111);
        for (int i = 0; i < 200; i++) {
            assertThat(texts(rows(records(LONGEST), text, 1 + random.nextInt(12))))
                    .isEqualTo(whole);
        }
    }

    private static RowSplitter records(int longest) {
        return RowSplitter.records(longest, ',');
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
        for (Optional<Row> row = splitter.last(); row.isPresent(); row = splitter.last()) {
            rows.add(row.get());
        }
        assertThat(splitter.found()).isEqualTo(rows.size());
        return rows;
    }
}
