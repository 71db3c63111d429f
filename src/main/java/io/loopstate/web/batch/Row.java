package io.loopstate.web.batch;

/** One row as it arrived, without the end of its line. */
public final class Row {
    private final long index;
    private final byte[] bytes;
    private final boolean tooLong;

    Row(long index, byte[] bytes, boolean tooLong) {
        this.index = index;
        this.bytes = bytes;
        this.tooLong = tooLong;
    }

    /** Its place among the rows, from 0. */
    public long index() {
        return index;
    }

    /** Whether it was longer than a row may be; then its bytes are the beginning alone. */
    boolean tooLong() {
        return tooLong;
    }

    /** Not to be changed. */
    public byte[] bytes() {
        return bytes;
    }
}
