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

/** Sends rows and reads answers on one connection at the same time, which common clients do not. */
public final class RowClient implements Closeable {
    private final Socket socket;
    private final InputStream in;
    private int left;
    private boolean headRead;

    /** Sends the head of a POST whose body comes in chunks. */
    public RowClient(URI server, String target, String contentType) throws IOException {
        socket = new Socket(server.getHost(), server.getPort());
        socket.setSoTimeout(30_000);
        socket.setTcpNoDelay(true);
        in = new BufferedInputStream(socket.getInputStream());
        write("POST " + target + " HTTP/1.1\r\nHost: localhost\r\nContent-Type: " + contentType
                + "\r\nTransfer-Encoding: chunked\r\n\r\n");
    }

    /** Sends a piece of the body. */
    public void send(String piece) throws IOException {
        byte[] bytes = piece.getBytes(StandardCharsets.UTF_8);
        write(Integer.toHexString(bytes.length) + "\r\n" + piece + "\r\n");
    }

    /** Sends the end of the body. */
    public void end() throws IOException {
        write("0\r\n\r\n");
    }

    /** The next line of the reply's body, empty after the last. */
    public String line() throws IOException {
        if (!headRead) {
            String status = rawLine();
            if (!status.contains(" 200 ")) {
                throw new IOException(status);
            }
            for (String header = rawLine(); !header.isEmpty(); header = rawLine()) {
                // Nothing in the head matters here.
            }
            headRead = true;
        }
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        for (int next = next(); next >= 0 && next != '\n'; next = next()) {
            line.write(next);
        }
        return line.toString(StandardCharsets.UTF_8);
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }

    private int next() throws IOException {
        if (left == 0) {
            String size = rawLine();
            left = Integer.parseInt(size.isEmpty() ? rawLine() : size, 16);
            if (left == 0) {
                return -1;
            }
        }
        left--;
        return read();
    }

    private String rawLine() throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        for (int next = read(); next != '\n'; next = read()) {
            if (next != '\r') {
                line.write(next);
            }
        }
        return line.toString(StandardCharsets.UTF_8);
    }

    private int read() throws IOException {
        int next = in.read();
        if (next < 0) {
            throw new EOFException();
        }
        return next;
    }

    private void write(String text) throws IOException {
        socket.getOutputStream().write(text.getBytes(StandardCharsets.UTF_8));
        socket.getOutputStream().flush();
    }
}
