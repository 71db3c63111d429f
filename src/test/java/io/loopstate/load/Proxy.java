package io.loopstate.load;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.nio.ByteBuffer;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Hands requests to replicas in turn, as a service in a cluster does. A GET goes to another replica where one fails; whatever else
 * was sent and not answered is told as 502, since the proxy cannot know what came of it.
 */
final class Proxy implements AutoCloseable {
    private static final int TIMEOUT = 20_000;
    private static final byte[] BAD_GATEWAY =
            "HTTP/1.1 502 Bad Gateway\r\nContent-Length: 0\r\n\r\n".getBytes(StandardCharsets.US_ASCII);

    private final ServerSocket listener;
    private final List<URI> replicas;
    private final AtomicInteger turn = new AtomicInteger();
    private final AtomicInteger retried = new AtomicInteger();

    Proxy(List<URI> replicas) throws IOException {
        this.replicas = new CopyOnWriteArrayList<>(replicas);
        this.listener = new ServerSocket(0, 512, InetAddress.getLoopbackAddress());
        background(this::accept);
    }

    URI server() {
        return URI.create("http://127.0.0.1:" + listener.getLocalPort());
    }

    /** How many requests went to a second replica. */
    int retried() {
        return retried.get();
    }

    /** Sends it nothing more. */
    void drain(URI replica) {
        replicas.remove(replica);
    }

    void add(URI replica) {
        replicas.add(replica);
    }

    private static void background(Runnable work) {
        Thread thread = new Thread(work);
        thread.setDaemon(true);
        thread.start();
    }

    private void accept() {
        while (!listener.isClosed()) {
            try {
                Socket client = listener.accept();
                client.setTcpNoDelay(true);
                background(() -> serve(client));
            } catch (IOException e) {
                return;
            }
        }
    }

    private void serve(Socket client) {
        Map<URI, Line> lines = new HashMap<>();
        try (client) {
            InputStream in = new BufferedInputStream(client.getInputStream(), 32 * 1024);
            while (true) {
                client.getOutputStream().write(answer(message(in), lines));
            }
        } catch (IOException e) {
            // The client has gone.
        } finally {
            lines.values().forEach(Line::close);
        }
    }

    private byte[] answer(byte[] request, Map<URI, Line> lines) {
        boolean repeatable = request[0] == 'G';
        // Counted on from here, since a turn of its own for each attempt could lead to the broken replica every time.
        int first = turn.getAndIncrement();
        for (int attempt = 0; attempt < 3; attempt++) {
            List<URI> now = List.copyOf(replicas);
            if (now.isEmpty()) {
                break;
            }
            URI replica = now.get(Math.floorMod(first + attempt, now.size()));
            lines.keySet().stream()
                    .filter(uri -> !now.contains(uri))
                    .toList()
                    .forEach(uri -> lines.remove(uri).close());
            boolean sent = false;
            try {
                Line line = lines.get(replica);
                if (line != null && line.ended()) {
                    line.close();
                    line = null;
                }
                if (line == null) {
                    line = new Line(replica);
                    lines.put(replica, line);
                }
                sent = true;
                return line.exchange(request);
            } catch (IOException e) {
                Line broken = lines.remove(replica);
                if (broken != null) {
                    broken.close();
                }
                if (sent && !repeatable) {
                    return BAD_GATEWAY;
                }
                retried.incrementAndGet();
            }
        }
        return BAD_GATEWAY;
    }

    /** A connection to a replica. */
    private static final class Line {
        private final SocketChannel channel;
        private final InputStream in;

        Line(URI replica) throws IOException {
            channel = SocketChannel.open(new InetSocketAddress(replica.getHost(), replica.getPort()));
            channel.socket().setTcpNoDelay(true);
            channel.socket().setSoTimeout(TIMEOUT);
            in = new BufferedInputStream(channel.socket().getInputStream(), 64 * 1024);
        }

        /** Whether the replica has closed it while nothing was under way. */
        boolean ended() {
            try {
                channel.configureBlocking(false);
                int read = channel.read(ByteBuffer.allocate(1));
                channel.configureBlocking(true);
                return read != 0;
            } catch (IOException e) {
                return true;
            }
        }

        byte[] exchange(byte[] request) throws IOException {
            channel.socket().getOutputStream().write(request);
            return message(in);
        }

        void close() {
            try {
                channel.close();
            } catch (IOException e) {
                // closed all the same
            }
        }
    }

    /** The bytes of a message, head and body, by its length or in chunks. */
    private static byte[] message(InputStream in) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(16 * 1024);
        int length = 0;
        boolean chunked = false;
        for (String line = line(in, bytes); !line.isEmpty(); line = line(in, bytes)) {
            String lower = line.toLowerCase(Locale.ROOT);
            if (lower.startsWith("content-length:")) {
                length = Integer.parseInt(lower.substring(15).strip());
            }
            chunked |= lower.startsWith("transfer-encoding:") && lower.endsWith("chunked");
        }
        if (!chunked) {
            copy(in, bytes, length);
            return bytes.toByteArray();
        }
        for (int size = Integer.parseInt(line(in, bytes), 16); size > 0; size = Integer.parseInt(line(in, bytes), 16)) {
            copy(in, bytes, size);
            line(in, bytes);
        }
        line(in, bytes);
        return bytes.toByteArray();
    }

    private static void copy(InputStream in, ByteArrayOutputStream bytes, int length) throws IOException {
        byte[] part = in.readNBytes(length);
        if (part.length < length) {
            throw new EOFException();
        }
        bytes.write(part);
    }

    private static String line(InputStream in, ByteArrayOutputStream bytes) throws IOException {
        StringBuilder line = new StringBuilder(64);
        for (int next = in.read(); next != '\n'; next = in.read()) {
            if (next < 0) {
                throw new EOFException();
            }
            bytes.write(next);
            if (next != '\r') {
                line.append((char) next);
            }
        }
        bytes.write('\n');
        return line.toString();
    }

    @Override
    public void close() throws IOException {
        listener.close();
    }
}
