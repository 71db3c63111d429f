package io.loopstate.web.problem;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;

/** Ends the reading of a body of unannounced length at the limit, with a problem instead of an empty reply. */
public final class LimitedInputStream extends FilterInputStream {
    private final long limit;
    private long left;

    /** At most {@code limit} bytes of {@code body}. */
    public LimitedInputStream(InputStream body, long limit) {
        super(body);
        this.limit = limit;
        this.left = limit;
    }

    @Override
    public int read() throws IOException {
        int read = super.read();
        count(read < 0 ? 0 : 1);
        return read;
    }

    @Override
    public int read(byte[] buffer, int offset, int length) throws IOException {
        int read = super.read(buffer, offset, length);
        count(Math.max(0, read));
        return read;
    }

    private void count(int read) {
        left -= read;
        if (left < 0) {
            throw new ProblemException(tooLarge(limit, null));
        }
    }

    /** The problem for a body over the limit, both in bytes; {@code got} is {@code null} where it is not known. */
    public static Problem tooLarge(long limit, String got) {
        Fault fault = Fault.request("body-too-large", "The body is longer than the limit.")
                .withGot(got == null ? null : got + " bytes")
                .withAllowed("at most " + limit + " bytes")
                .withHint("Send fewer rows per request.");
        return Problem.of(ProblemKind.BODY_TOO_LARGE, List.of(fault));
    }
}
