package io.loopstate.testing;

import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * A reply as it came over a connection that stays open.
 *
 * @param status of the reply
 * @param contentType empty where there is none
 * @param last whether the connection ends behind it
 * @param body its bytes
 */
public record HttpReply(int status, String contentType, boolean last, byte[] body) {
    /** Reads one reply, by its length or in chunks. */
    public static HttpReply read(InputStream in) throws IOException {
        int status = Integer.parseInt(line(in).split(" ")[1]);
        String type = "";
        int length = 0;
        boolean chunked = false;
        boolean last = false;
        for (String line = line(in); !line.isEmpty(); line = line(in)) {
            int colon = line.indexOf(':');
            String value = line.substring(colon + 1).strip();
            switch (line.substring(0, colon).toLowerCase(Locale.ROOT)) {
                case "content-type" -> type = value;
                case "content-length" -> length = Integer.parseInt(value);
                case "transfer-encoding" -> chunked = value.equals("chunked");
                case "connection" -> last = value.equals("close");
                default -> {
                    // nothing that matters here
                }
            }
        }
        return new HttpReply(status, type, last, chunked ? chunks(in) : whole(in, length));
    }

    /** The body as text. */
    public String text() {
        return new String(body, StandardCharsets.UTF_8);
    }

    private static byte[] whole(InputStream in, int length) throws IOException {
        byte[] body = in.readNBytes(length);
        if (body.length < length) {
            throw new EOFException("the connection ended inside a body");
        }
        return body;
    }

    private static byte[] chunks(InputStream in) throws IOException {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        for (int size = Integer.parseInt(line(in), 16); size > 0; size = Integer.parseInt(line(in), 16)) {
            body.write(whole(in, size));
            line(in);
        }
        line(in);
        return body.toByteArray();
    }

    private static String line(InputStream in) throws IOException {
        StringBuilder line = new StringBuilder(64);
        for (int next = in.read(); next != '\n'; next = in.read()) {
            if (next < 0) {
                throw new EOFException("the connection ended before the end of a line");
            }
            if (next != '\r') {
                line.append((char) next);
            }
        }
        return line.toString();
    }
}
