package io.loopstate.testing;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;

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

    /** Sends a GET, or with a body a POST, and waits for the reply; anew where the connection had been closed meanwhile. */
    public HttpReply send(String target, String body, String accept) throws IOException {
        byte[] content = body.getBytes(StandardCharsets.UTF_8);
        String head = (body.isEmpty() ? "GET " : "POST ") + target + " HTTP/1.1\r\nHost: localhost\r\n"
                + (accept.isEmpty() ? "" : "Accept: " + accept + "\r\n")
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

    private HttpReply exchange(String head, byte[] content) throws IOException {
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
        HttpReply reply = HttpReply.read(in);
        if (reply.last()) {
            close();
        }
        return reply;
    }

    @Override
    public void close() throws IOException {
        if (socket != null) {
            socket.close();
            socket = null;
        }
    }
}
