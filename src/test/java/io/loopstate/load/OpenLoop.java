package io.loopstate.load;

import io.loopstate.testing.HttpReply;
import java.io.ByteArrayInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.StandardSocketOptions;
import java.net.URI;
import java.nio.ByteBuffer;
import java.nio.channels.SelectionKey;
import java.nio.channels.Selector;
import java.nio.channels.SocketChannel;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/**
 * Sends a request at a steady rate, whatever the answers do, with two threads for all connections: one that sends, one that reads.
 * A thread for each connection would wait for a turn of the processors as long as what is to be measured.
 */
final class OpenLoop {
    private static final int CONNECTIONS = 64;

    private final URI server;
    private final byte[] request;

    OpenLoop(URI server, byte[] request) {
        this.server = server;
        this.request = request.clone();
    }

    /** So many requests a second; a latency counts from when its request was due. */
    Client.Run run(double seconds, double rate) throws IOException, InterruptedException {
        int count = (int) (seconds * rate);
        BlockingQueue<Line> idle = new ArrayBlockingQueue<>(CONNECTIONS);
        try (Selector selector = Selector.open()) {
            for (int i = 0; i < CONNECTIONS; i++) {
                idle.add(new Line(selector));
            }
            Reader reader = new Reader(selector, idle, count);
            reader.start();
            long start = System.nanoTime();
            for (int i = 0; i < count; i++) {
                long due = start + (long) (i * 1e9 / rate);
                while (System.nanoTime() < due) {
                    LockSupport.parkNanos(due - System.nanoTime());
                }
                Line line = idle.poll(10, TimeUnit.SECONDS);
                if (line == null) {
                    break;
                }
                line.send(due);
            }
            reader.join(TimeUnit.SECONDS.toMillis(10));
            double took = (System.nanoTime() - start) / 1e9;
            for (SelectionKey key : selector.keys()) {
                key.channel().close();
            }
            long[] latencies = Arrays.copyOf(reader.latencies, reader.answered);
            Arrays.sort(latencies);
            return new Client.Run(took, reader.answered, 0, count - reader.answered, reader.length, latencies);
        }
    }

    /** A connection, with a request under way or none. */
    private final class Line {
        private final SocketChannel channel;
        private final ByteBuffer in = ByteBuffer.allocate(256 * 1024);
        private volatile long due;

        Line(Selector selector) throws IOException {
            channel = SocketChannel.open(new InetSocketAddress(server.getHost(), server.getPort()));
            channel.setOption(StandardSocketOptions.TCP_NODELAY, true);
            channel.configureBlocking(false);
            channel.register(selector, SelectionKey.OP_READ, this);
        }

        void send(long when) throws IOException {
            due = when;
            ByteBuffer out = ByteBuffer.wrap(request);
            while (out.hasRemaining()) {
                channel.write(out);
            }
        }

        /** The answer, if it is here as a whole. */
        Optional<HttpReply> read() throws IOException {
            if (channel.read(in) < 0) {
                throw new EOFException("closed by the service");
            }
            try {
                HttpReply reply = HttpReply.read(new ByteArrayInputStream(in.array(), 0, in.position()));
                in.clear();
                return Optional.of(reply);
            } catch (EOFException notYet) {
                return Optional.empty();
            }
        }
    }

    /** Reads the answers; ends with the last one, or with the first connection that fails. */
    private static final class Reader extends Thread {
        private final Selector selector;
        private final BlockingQueue<Line> idle;
        private final long[] latencies;
        private int answered;
        private int length;

        Reader(Selector selector, BlockingQueue<Line> idle, int count) {
            this.selector = selector;
            this.idle = idle;
            latencies = new long[count];
        }

        @Override
        public void run() {
            try {
                while (answered < latencies.length) {
                    selector.select(key -> answer((Line) key.attachment()), 1000);
                }
            } catch (IllegalStateException | IOException e) {
                System.out.println("LOAD failed: " + e);
            }
        }

        private void answer(Line line) {
            try {
                Optional<HttpReply> reply = line.read();
                if (reply.isEmpty()) {
                    return;
                }
                if (reply.get().status() != 200) {
                    throw new IOException("status " + reply.get().status());
                }
                latencies[answered++] = System.nanoTime() - line.due;
                length = reply.get().body().length;
                idle.add(line);
            } catch (IOException e) {
                throw new IllegalStateException(e);
            }
        }
    }
}
