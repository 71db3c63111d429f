package io.loopstate.web.batch;

/** The answer to one row, ready to be sent. */
public final class Answered {
    /** Status of what is sent among the answers and answers no row. */
    public static final int NO_ROW = 0;

    private final int status;
    private final byte[] bytes;

    /** Takes over the bytes: nobody else may change them. */
    public Answered(int status, byte[] bytes) {
        this.status = status;
        this.bytes = bytes;
    }

    /** The status that the row would have had on its own. */
    public int status() {
        return status;
    }

    /** What is to be sent, with the end of its line; not to be changed. */
    public byte[] bytes() {
        return bytes;
    }
}
