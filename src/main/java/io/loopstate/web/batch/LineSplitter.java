package io.loopstate.web.batch;

import java.io.ByteArrayOutputStream;
import java.util.Optional;

/**
 * Rows are lines: they end at a line feed, a carriage return before it is dropped, empty lines are no rows, and so is a byte order
 * mark at the beginning.
 */
final class LineSplitter implements RowSplitter {
    private static final byte[] BYTE_ORDER_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};
    private static final byte[] NOTHING = {};

    private final int longest;
    private final boolean whole;
    private final ByteArrayOutputStream begun = new ByteArrayOutputStream();

    private byte[] chunk = NOTHING;
    private int at;
    private long found;
    private boolean first = true;
    private boolean tooLong;

    /**
     * Lines of at most so many bytes.
     *
     * @param whole whether empty lines are rows too, and carriage returns stay
     */
    LineSplitter(int longest, boolean whole) {
        this.longest = longest;
        this.whole = whole;
    }

    @Override
    public void feed(byte[] bytes) {
        chunk = bytes;
        at = 0;
    }

    @Override
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

    @Override
    public Optional<Row> last() {
        return begun.size() == 0 && !tooLong ? Optional.empty() : cut();
    }

    @Override
    public long found() {
        return found;
    }

    private int lineFeed() {
        for (int i = at; i < chunk.length; i++) {
            if (chunk[i] == '\n') {
                return i;
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
        }
    }

    private Optional<Row> cut() {
        byte[] all = begun.toByteArray();
        begun.reset();
        boolean over = tooLong;
        tooLong = false;
        int from = first && startsWithMark(all) ? BYTE_ORDER_MARK.length : 0;
        first = false;
        int to = !whole && all.length > from && all[all.length - 1] == '\r' ? all.length - 1 : all.length;
        if (!whole && blank(all, from, to)) {
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

    static boolean blank(byte[] bytes, int from, int to) {
        for (int i = from; i < to; i++) {
            if (bytes[i] != ' ' && bytes[i] != '\t' && bytes[i] != '\r') {
                return false;
            }
        }
        return true;
    }
}
