package io.loopstate.web.batch;

import java.util.Optional;

/** Cuts bytes into rows as they arrive. Serves one stream and one thread. */
public interface RowSplitter {
    /** Rows are lines of at most so many bytes. */
    static RowSplitter lines(int longest) {
        return new LineSplitter(longest, false);
    }

    /**
     * Rows are records of separated text of at most so many bytes.
     *
     * @param separator between cells, ASCII
     */
    static RowSplitter records(int longest, char separator) {
        return new RecordSplitter(longest, separator);
    }

    /** Takes over the bytes that follow; only after {@link #next} has come to the end of those before. */
    void feed(byte[] bytes);

    /** The next complete row; empty where more bytes are needed. */
    Optional<Row> next();

    /** The next of the rows that no line feed ended; only after the last bytes, until there is none. */
    Optional<Row> last();

    /** Rows found so far. */
    long found();
}
