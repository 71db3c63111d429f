package io.loopstate.load;

import io.loopstate.testing.HttpReply;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.locks.LockSupport;

/** Connections that send requests again and again; it costs little, since it shares the processors with the service. */
final class Client {
    private static final int MOST_SAMPLES = 400_000;

    private final URI server;
    private final List<byte[]> requests;

    /** Sends these bytes, a whole request with its head. */
    Client(URI server, byte[] request) {
        this(server, List.of(request));
    }

    /** Sends these in turn, each connection from another one on. */
    Client(URI server, List<byte[]> requests) {
        this.server = server;
        this.requests = List.copyOf(requests);
    }

    static byte[] get(String target) {
        return ("GET " + target + " HTTP/1.1\r\nHost: localhost\r\n\r\n").getBytes(StandardCharsets.US_ASCII);
    }

    static byte[] post(String target, byte[] body) {
        byte[] head = ("POST " + target
                        + " HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nContent-Length: "
                        + body.length + "\r\n\r\n")
                .getBytes(StandardCharsets.US_ASCII);
        byte[] whole = Arrays.copyOf(head, head.length + body.length);
        System.arraycopy(body, 0, whole, head.length, body.length);
        return whole;
    }

    /**
     * What came of a run.
     *
     * @param seconds that it took
     * @param answered with 200
     * @param shed with 429 or 503
     * @param failed with anything else, or not at all
     * @param bytes of the last body
     * @param latencies of those answered, ns, sorted
     */
    record Run(double seconds, long answered, long shed, long failed, int bytes, long[] latencies) {
        double rate() {
            return answered / seconds;
        }

        double milliseconds(double share) {
            return latencies.length == 0
                    ? Double.NaN
                    : latencies[Math.min(latencies.length - 1, (int) (share * latencies.length))] / 1e6;
        }
    }

    /** As fast as the answers come. */
    Run run(int connections, double seconds) throws InterruptedException {
        return run(connections, seconds, Double.POSITIVE_INFINITY);
    }

    /** At so many requests a second at most; a latency counts from when its request was due. */
    Run run(int connections, double seconds, double rate) throws InterruptedException {
        AtomicBoolean stop = new AtomicBoolean();
        Line[] lines = new Line[connections];
        long start = System.nanoTime();
        for (int i = 0; i < connections; i++) {
            lines[i] = new Line(stop, Double.isInfinite(rate) ? 0 : (long) (1e9 * connections / rate), i, connections);
            lines[i].start();
        }
        Thread.sleep((long) (seconds * 1000));
        stop.set(true);
        for (Line line : lines) {
            line.join();
        }
        double took = (System.nanoTime() - start) / 1e9;
        long[] all = new long[0];
        long answered = 0;
        long shed = 0;
        long failed = 0;
        for (Line line : lines) {
            int from = all.length;
            all = Arrays.copyOf(all, from + line.samples);
            System.arraycopy(line.latencies, 0, all, from, line.samples);
            answered += line.answered;
            shed += line.shed;
            failed += line.failed;
        }
        Arrays.sort(all);
        return new Run(took, answered, shed, failed, lines[0].length, all);
    }

    /** One connection. */
    private final class Line extends Thread {
        private final AtomicBoolean stop;
        private final long interval;
        private final long offset;
        private final long[] latencies;
        private int samples;
        private long answered;
        private long shed;
        private long failed;
        private int length;
        private int next;

        Line(AtomicBoolean stop, long interval, int number, int connections) {
            this.stop = stop;
            this.interval = interval;
            this.offset = interval * number / connections;
            this.next = number * requests.size() / connections;
            this.latencies = new long[Math.max(1000, MOST_SAMPLES / connections)];
        }

        @Override
        public void run() {
            long due = System.nanoTime() + offset;
            while (!stop.get()) {
                try (Socket socket = new Socket(server.getHost(), server.getPort())) {
                    socket.setTcpNoDelay(true);
                    socket.setSoTimeout(10_000);
                    InputStream in = new BufferedInputStream(socket.getInputStream(), 64 * 1024);
                    while (!stop.get()) {
                        if (interval > 0) {
                            LockSupport.parkNanos(due - System.nanoTime());
                        } else {
                            due = System.nanoTime();
                        }
                        socket.getOutputStream().write(requests.get(next++ % requests.size()));
                        count(reply(in), System.nanoTime() - due);
                        due += interval;
                    }
                } catch (IOException e) {
                    failed++;
                }
            }
        }

        private void count(int status, long nanoseconds) {
            if (status == 200) {
                answered++;
                if (samples < latencies.length) {
                    latencies[samples++] = nanoseconds;
                }
            } else if (status == 429 || status == 503) {
                shed++;
            } else {
                failed++;
            }
        }

        private int reply(InputStream in) throws IOException {
            HttpReply reply = HttpReply.read(in);
            length = reply.body().length;
            return reply.status();
        }
    }
}
