package io.loopstate.web.batch;

/** The answer to one row, ready to be sent. */
public final class Answered {
    private final int status;
    private final byte[] bytes;

    /** Takes over the bytes: nobody else may change them. */
    Answered(int status, byte[] bytes) {
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
