package io.loopstate.web.batch;

import java.io.ByteArrayOutputStream;
import java.util.Optional;

/**
 * Cuts bytes into rows as they arrive. Rows end at a line feed, a carriage return before it is dropped, empty lines are no rows,
 * and so is a byte order mark at the beginning. Serves one stream and one thread.
 */
public final class RowSplitter {
    private static final byte[] BYTE_ORDER_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};
    private static final byte[] NOTHING = {};

    private final int longest;
    private final boolean quotes;
    private final ByteArrayOutputStream begun = new ByteArrayOutputStream();

    private byte[] chunk = NOTHING;
    private int at;
    private long found;
    private boolean first = true;
    private boolean tooLong;
    private boolean quoted;

    private RowSplitter(int longest, boolean quotes) {
        this.longest = longest;
        this.quotes = quotes;
    }

    /** Rows are lines of at most so many bytes. */
    public static RowSplitter lines(int longest) {
        return new RowSplitter(longest, false);
    }

    /** Rows are records of separated text, in which a line feed between quotes ends nothing (RFC 4180). */
    public static RowSplitter records(int longest) {
        return new RowSplitter(longest, true);
    }

    /** Takes over the bytes that follow; only after {@link #next} has come to the end of those before. */
    public void feed(byte[] bytes) {
        chunk = bytes;
        at = 0;
    }

    /** The next complete row; empty where more bytes are needed. */
    public Optional<Row> next() {
        while (at < chunk.length) {
            int end = lineFeed();
            add(at, end);
            boolean complete = end < chunk.length;
            at = complete ? end + 1 : end;
            if (complete) {
                Optional<Row> row = cut();
                if (row.isPresent()) {
                    return row;
                }
            }
        }
        return Optional.empty();
    }

    /** The last row, where no line feed ended it. */
    public Optional<Row> last() {
        return cut();
    }

    /** Rows found so far. */
    public long found() {
        return found;
    }

    private int lineFeed() {
        for (int i = at; i < chunk.length; i++) {
            if (chunk[i] == '\n' && !quoted) {
                return i;
            }
            if (quotes && chunk[i] == '"') {
                quoted = !quoted;
            }
        }
        return chunk.length;
    }

    private void add(int from, int to) {
        // One more than allowed, which may be the carriage return.
        int room = Math.max(0, Math.min(to - from, longest + 1 - begun.size()));
        begun.write(chunk, from, room);
        if (to - from > room) {
            tooLong = true;
            // A quote that nobody closed: the rows behind it are not to be lost with it.
            quoted = false;
        }
    }

    private Optional<Row> cut() {
        byte[] all = begun.toByteArray();
        begun.reset();
        boolean over = tooLong;
        tooLong = false;
        quoted = false;
        int from = first && startsWithMark(all) ? BYTE_ORDER_MARK.length : 0;
        first = false;
        int to = all.length > from && all[all.length - 1] == '\r' ? all.length - 1 : all.length;
        if (blank(all, from, to)) {
            return Optional.empty();
        }
        byte[] bytes = new byte[to - from];
        System.arraycopy(all, from, bytes, 0, bytes.length);
        return Optional.of(new Row(found++, bytes, over || bytes.length > longest));
    }

    private static boolean startsWithMark(byte[] bytes) {
        return bytes.length >= 3
                && bytes[0] == BYTE_ORDER_MARK[0]
                && bytes[1] == BYTE_ORDER_MARK[1]
                && bytes[2] == BYTE_ORDER_MARK[2];
    }

    private static boolean blank(byte[] bytes, int from, int to) {
        for (int i = from; i < to; i++) {
            if (bytes[i] != ' ' && bytes[i] != '\t') {
                return false;
            }
        }
        return true;
    }
}
