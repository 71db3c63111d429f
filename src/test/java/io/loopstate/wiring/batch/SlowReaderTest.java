package io.loopstate.wiring.batch;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

/** A client that sends a stream and does not read the answers stops the service reading, instead of filling its memory. */
@QuarkusTest
class SlowReaderTest {
    private static final int BUFFER = 64 * 1024;
    /** Bytes of rows, more than all buffers on the way hold; their answers would be half a gigabyte. */
    private static final long ALL = 24 << 20;

    private static final long HELD = 32 << 20;
    private static final int ROWS_READ = 3000;

    @TestHTTPResource
    URI server;

    @Test
    void senderWaitsForTheReader() throws IOException, InterruptedException {
        long before = used();
        AtomicLong sent = new AtomicLong();
        try (Socket socket = new Socket()) {
            socket.setReceiveBufferSize(BUFFER);
            socket.setSendBufferSize(BUFFER);
            socket.connect(new InetSocketAddress(server.getHost(), server.getPort()));
            Thread sender = new Thread(() -> send(socket, sent));
            sender.start();
            long held = untilNothingMoves(sent);
            assertThat(held).isLessThan(ALL / 2);
            assertThat(sender.isAlive()).isTrue();
            assertThat(used() - before).isLessThan(HELD);
            assertThat(answersInOrder(socket)).isEqualTo(ROWS_READ);
            assertThat(untilNothingMoves(sent)).isGreaterThan(held);
        }
    }

    private static void send(Socket socket, AtomicLong sent) {
        String padding = "x".repeat(190);
        try {
            OutputStream out = socket.getOutputStream();
            out.write(("POST /v1/batch?operation=properties/saturation HTTP/1.1\r\nHost: localhost\r\n"
                            + "Content-Type: application/x-ndjson\r\nTransfer-Encoding: chunked\r\n\r\n")
                    .getBytes(StandardCharsets.US_ASCII));
            for (int i = 0; sent.get() < ALL; i++) {
                String row = "{\"id\":\"" + i + padding
                        + "\",\"request\":{\"refrigerant\":\"R-134a\",\"temperature\":\"20 degC\"}}\n";
                byte[] chunk =
                        (Integer.toHexString(row.length()) + "\r\n" + row + "\r\n").getBytes(StandardCharsets.US_ASCII);
                out.write(chunk);
                sent.addAndGet(chunk.length);
            }
        } catch (IOException e) {
            // the test has closed the connection
        }
    }

    /** The count after a second without any progress. */
    private static long untilNothingMoves(AtomicLong count) throws InterruptedException {
        long last = -1;
        long now = count.get();
        while (now != last) {
            last = now;
            Thread.sleep(1000);
            now = count.get();
        }
        return now;
    }

    private static int answersInOrder(Socket socket) throws IOException {
        BufferedReader in = new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
        int next = 0;
        while (next < ROWS_READ) {
            String line = in.readLine();
            if (line.startsWith("{\"index\"")) {
                assertThat(line).startsWith("{\"index\":" + next + ",\"id\":\"" + next + 'x');
                assertThat(line).contains("\"status\":200");
                next++;
            }
        }
        return next;
    }

    private static long used() throws InterruptedException {
        System.gc();
        Thread.sleep(200);
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory();
    }
}
