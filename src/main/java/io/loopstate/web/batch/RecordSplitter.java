package io.loopstate.web.batch;

import java.io.ByteArrayOutputStream;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * Rows are records of separated text, in which a line feed between quotes ends nothing (RFC 4180). A quote opens a cell only at its
 * beginning; anywhere else it is a character. One that nobody closes costs the line it stands in and no other: the lines that it
 * took in are cut again.
 */
final class RecordSplitter implements RowSplitter {
    /** A record of more lines has a quote that nobody closes. It bounds how often a line is looked at. */
    private static final int MOST_LINES = 50;

    private final LineSplitter lines;
    private final int longest;
    private final char separator;
    private final Deque<Row> again = new ArrayDeque<>();
    private final List<Row> begun = new ArrayList<>();
    private int size;
    private boolean open;
    private long found;

    RecordSplitter(int longest, char separator) {
        // a carriage return more
        this.lines = new LineSplitter(longest + 1, true);
        this.longest = longest;
        this.separator = separator;
    }

    @Override
    public void feed(byte[] bytes) {
        lines.feed(bytes);
    }

    @Override
    public Optional<Row> next() {
        Optional<Row> row = Optional.empty();
        for (Optional<Row> line = line(); line.isPresent(); line = line()) {
            row = add(line.get());
            if (row.isPresent()) {
                return row;
            }
        }
        return row;
    }

    @Override
    public Optional<Row> last() {
        Optional<Row> row = next();
        if (row.isEmpty()) {
            row = lines.last().flatMap(this::add);
        }
        return row.isPresent() || begun.isEmpty() ? row : Optional.of(giveUp());
    }

    @Override
    public long found() {
        return found;
    }

    private Optional<Row> line() {
        return again.isEmpty() ? lines.next() : Optional.of(again.remove());
    }

    private Optional<Row> add(Row line) {
        byte[] bytes = line.bytes();
        if (begun.isEmpty() && LineSplitter.blank(bytes, 0, length(bytes))) {
            return Optional.empty();
        }
        begun.add(line);
        size += bytes.length + 1;
        open = staysOpen(bytes, open, separator);
        if (begun.size() == 1 && (line.tooLong() || !open)) {
            return Optional.of(take(bytes, line.tooLong() || length(bytes) > longest));
        }
        if (line.tooLong() || begun.size() > MOST_LINES || size > longest) {
            return Optional.of(giveUp());
        }
        return open ? Optional.empty() : Optional.of(take(joined(), false));
    }

    /** The first line alone, with its quote; the others are cut again. */
    private Row giveUp() {
        Row first = begun.get(0);
        for (int i = begun.size() - 1; i > 0; i--) {
            again.addFirst(begun.get(i));
        }
        return take(first.bytes(), first.tooLong());
    }

    private Row take(byte[] bytes, boolean tooLong) {
        begun.clear();
        size = 0;
        open = false;
        byte[] row = new byte[length(bytes)];
        System.arraycopy(bytes, 0, row, 0, row.length);
        return new Row(found++, row, tooLong);
    }

    private byte[] joined() {
        ByteArrayOutputStream all = new ByteArrayOutputStream(size);
        for (Row line : begun) {
            if (all.size() > 0) {
                all.write('\n');
            }
            all.writeBytes(line.bytes());
        }
        return all.toByteArray();
    }

    /** Without a carriage return at the end. */
    private static int length(byte[] line) {
        return line.length > 0 && line[line.length - 1] == '\r' ? line.length - 1 : line.length;
    }

    /** Whether a quoted cell is open at the end of a text that begins inside of one, or at a cell. */
    static boolean staysOpen(byte[] text, boolean inside, char separator) {
        boolean quoted = inside;
        boolean start = !inside;
        boolean closed = false;
        for (byte character : text) {
            if (quoted) {
                quoted = character != '"';
                closed = !quoted;
            } else if (character == '"' && (start || closed)) {
                // one at the beginning, or the second of two that stand for one
                quoted = true;
                closed = false;
            } else {
                start = character == separator;
                closed = false;
                continue;
            }
            start = false;
        }
        return quoted;
    }
}
