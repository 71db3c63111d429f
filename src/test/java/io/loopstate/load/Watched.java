package io.loopstate.load;

import io.loopstate.testing.HttpReply;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;

/** A connection that sends a request again and again until it is closed, and notes what came of the last one. */
final class Watched extends Thread {
    private final URI server;
    private final byte[] request;
    private final List<Integer> statuses = new ArrayList<>();
    private long lastSent;
    private boolean begun;
    private String end = "";

    Watched(URI server, byte[] request) {
        this.server = server;
        this.request = request.clone();
        setDaemon(true);
    }

    @Override
    public void run() {
        try (Socket socket = new Socket(server.getHost(), server.getPort())) {
            socket.setTcpNoDelay(true);
            socket.setSoTimeout(20_000);
            InputStream in = new BufferedInputStream(socket.getInputStream(), 64 * 1024);
            for (boolean last = false; !last; ) {
                begun = false;
                lastSent = System.nanoTime();
                socket.getOutputStream().write(request);
                in.mark(1);
                if (in.read() < 0) {
                    end = "closed without an answer";
                    return;
                }
                in.reset();
                begun = true;
                HttpReply reply = HttpReply.read(in);
                statuses.add(reply.status());
                last = reply.last();
            }
            end = "closed behind an answer";
        } catch (IOException e) {
            end = (begun ? "broken inside an answer: " : "closed without an answer: ") + e;
        }
    }

    List<Integer> statuses() {
        return List.copyOf(statuses);
    }

    /** {@link System#nanoTime} at which the last request was sent. */
    long lastSent() {
        return lastSent;
    }

    boolean unanswered() {
        return end.startsWith("closed without");
    }

    String end() {
        return end;
    }
}
