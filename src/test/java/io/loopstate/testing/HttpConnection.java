package io.loopstate.testing;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** One connection after another, for many requests that common clients would repair or refuse. Not for several threads. */
public final class HttpConnection implements Closeable {
    private static final int PATIENCE = 60_000;

    private final URI server;
    private Socket socket;
    private InputStream in;

    /** Connects with the first request. */
    public HttpConnection(URI server) {
        this.server = server;
    }

    /** Status, media type and body of a reply. */
    public record Reply(int status, String contentType, String body) {}

    /** Sends a GET, or with a body a POST, and waits for the reply; anew where the connection had been closed meanwhile. */
    public Reply send(String target, String body) throws IOException {
        byte[] content = body.getBytes(StandardCharsets.UTF_8);
        String head = (body.isEmpty() ? "GET " : "POST ") + target + " HTTP/1.1\r\nHost: localhost\r\n"
                + (body.isEmpty() ? "" : "Content-Type: application/json\r\nContent-Length: " + content.length + "\r\n")
                + "\r\n";
        boolean fresh = socket == null;
        try {
            return exchange(head, content);
        } catch (IOException e) {
            close();
            if (fresh) {
                throw e;
            }
            return exchange(head, content);
        }
    }

    private Reply exchange(String head, byte[] content) throws IOException {
        if (socket == null) {
            socket = new Socket(server.getHost(), server.getPort());
            socket.setSoTimeout(PATIENCE);
            socket.setTcpNoDelay(true);
            in = new BufferedInputStream(socket.getInputStream());
        }
        ByteArrayOutputStream request = new ByteArrayOutputStream();
        request.writeBytes(head.getBytes(StandardCharsets.ISO_8859_1));
        request.writeBytes(content);
        socket.getOutputStream().write(request.toByteArray());
        int status = Integer.parseInt(line().split(" ")[1]);
        String type = "";
        int length = 0;
        boolean chunked = false;
        boolean last = false;
        for (String line = line(); !line.isEmpty(); line = line()) {
            String[] header = line.split(":", 2);
            String value = header[1].strip();
            switch (header[0].toLowerCase(Locale.ROOT)) {
                case "content-type" -> type = value;
                case "content-length" -> length = Integer.parseInt(value);
                case "transfer-encoding" -> chunked = value.equals("chunked");
                case "connection" -> last = value.equals("close");
                default -> {
                    // nothing that matters here
                }
            }
        }
        byte[] body = chunked ? chunks() : in.readNBytes(length);
        if (last) {
            close();
        }
        return new Reply(status, type, new String(body, StandardCharsets.UTF_8));
    }

    private byte[] chunks() throws IOException {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        for (int size = Integer.parseInt(line(), 16); size > 0; size = Integer.parseInt(line(), 16)) {
            body.write(in.readNBytes(size));
            line();
        }
        line();
        return body.toByteArray();
    }

    private String line() throws IOException {
        StringBuilder line = new StringBuilder();
        for (int next = in.read(); next != '\n'; next = in.read()) {
            if (next < 0) {
                throw new EOFException();
            }
            if (next != '\r') {
                line.append((char) next);
            }
        }
        return line.toString();
    }

    @Override
    public void close() throws IOException {
        if (socket != null) {
            socket.close();
            socket = null;
        }
    }
}
