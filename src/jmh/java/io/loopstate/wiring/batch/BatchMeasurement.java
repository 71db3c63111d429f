package io.loopstate.wiring.batch;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.web.batch.Answered;
import io.loopstate.web.batch.BatchQuery;
import io.loopstate.web.batch.JsonRows;
import io.loopstate.web.batch.NdjsonFormat;
import io.loopstate.web.batch.Row;
import io.loopstate.web.batch.RowFormat;
import io.loopstate.web.batch.RowSplitter;
import io.loopstate.web.batch.Tally;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.mapping.Operations;
import io.loopstate.web.problem.Problem;
import io.loopstate.web.problem.ProblemMappers;
import io.loopstate.wiring.Assembly;
import io.vertx.core.Vertx;
import io.vertx.core.http.HttpServer;
import io.vertx.ext.web.Router;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/**
 * Rows a second of design cycles through a stream of lines, against rows that are parsed and answered with the same ready-made
 * answer, as bytes or written each time, through the same code, sockets included. A program and not a benchmark of methods, since what is measured are
 * connections:
 *
 * <p>{@code java -Xmx128m -cp ... io.loopstate.wiring.batch.BatchMeasurement 100000}
 */
public final class BatchMeasurement {
    private static final ObjectMapper MAPPER = Assembly.mapper();
    private static final int THREADS = Runtime.getRuntime().availableProcessors();
    /** The last ones count: rates rise until the compilers are done, for some 500,000 rows. */
    private static final int ROUNDS = 10;

    private BatchMeasurement() {}

    /** Rows a second and the time to the first answer. */
    private record Figures(double rate, double firstMilliseconds, long bytes) {}

    /** Makes an answer without a calculation. */
    private interface Answering {
        byte[] answer() throws IOException;
    }

    /** An answer as it stands on its line. */
    private record Line(long index, String id, int status, Object reply) {
        byte[] written() throws IOException {
            byte[] line = MAPPER.writeValueAsBytes(this);
            byte[] ended = Arrays.copyOf(line, line.length + 1);
            ended[line.length] = '\n';
            return ended;
        }
    }

    /** Parses each row and gives the same answer. */
    private record ReadyMade(Answering answering, RowFormat real) implements RowFormat {
        @Override
        public String contentType() {
            return real.contentType();
        }

        @Override
        public RowSplitter splitter() {
            return real.splitter();
        }

        @Override
        public int leading() {
            return 0;
        }

        @Override
        public List<Answered> begin(List<Row> rows) {
            return List.of();
        }

        @Override
        public Answered answer(Row row) {
            try {
                JsonNode tree = MAPPER.readTree(row.bytes());
                return new Answered(200, tree.has("request") ? answering.answer() : new byte[0]);
            } catch (IOException e) {
                throw new IllegalStateException(e);
            }
        }

        @Override
        public byte[] end(Tally tally, Optional<Problem> problem) {
            return real.end(tally, problem);
        }
    }

    /** The argument is the number of rows. */
    public static void main(String... arguments) throws IOException, InterruptedException, ExecutionException {
        int rows = arguments.length == 0 ? 100_000 : Integer.parseInt(arguments[0]);
        Exchange exchange = Assembly.exchange();
        BatchQuery query = BatchQuery.read(Map.of(), List.of(), exchange);
        RowFormat real =
                new NdjsonFormat(new JsonRows(MAPPER, exchange, query, 65_536, ProblemMappers::ofCalculation), 65_536);
        Row first = firstOf(real);
        byte[] sample = real.answer(first).bytes();
        JsonNode request = MAPPER.readTree(first.bytes()).get("request");
        Object reply = exchange.answer(Operations.named("cycle-points/design").orElseThrow(), request, Map.of());
        Line unwritten = new Line(0, "r0", 200, reply);
        if (!Arrays.equals(sample, unwritten.written())) {
            throw new IllegalStateException("what is compared has not the same bytes");
        }
        ExecutorService threads = Executors.newFixedThreadPool(THREADS);
        Vertx vertx = Vertx.vertx();
        Router router = Router.router(vertx);
        route(router, "/real", real, threads);
        route(router, "/ready", new ReadyMade(sample::clone, real), threads);
        route(router, "/written", new ReadyMade(unwritten::written, real), threads);
        HttpServer server = vertx.createHttpServer()
                .requestHandler(router)
                .listen(0)
                .toCompletionStage()
                .toCompletableFuture()
                .get();
        for (int round = 0; round < ROUNDS; round++) {
            int count = round == 0 ? rows / 5 : rows;
            Figures ready = run(server.actualPort(), "/ready", count);
            Figures written = run(server.actualPort(), "/written", count);
            Figures calculated = run(server.actualPort(), "/real", count);
            System.out.printf(
                    Locale.ROOT,
                    "rows=%d ready=%.0f/s first=%.1fms written=%.0f/s calculated=%.0f/s first=%.1fms ratio=%.3f of written=%.3f bytes/row=%d heapUsed=%dMB heapMax=%dMB%n",
                    count,
                    ready.rate(),
                    ready.firstMilliseconds(),
                    written.rate(),
                    calculated.rate(),
                    calculated.firstMilliseconds(),
                    calculated.rate() / ready.rate(),
                    calculated.rate() / written.rate(),
                    calculated.bytes() / count,
                    ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() >> 20,
                    Runtime.getRuntime().maxMemory() >> 20);
        }
        vertx.close();
        threads.shutdownNow();
    }

    private static Row firstOf(RowFormat format) {
        RowSplitter splitter = format.splitter();
        splitter.feed((row(0) + '\n').getBytes(StandardCharsets.UTF_8));
        return splitter.next().orElseThrow();
    }

    private static void route(Router router, String path, RowFormat format, ExecutorService threads) {
        router.post(path)
                .handler(context -> new RowStream(
                                context,
                                format,
                                new RowStream.Bounds(10_000_000, THREADS, 128, 2 << 20),
                                threads,
                                e -> context.fail(500),
                                () -> {})
                        .start());
    }

    /** Made once, so that the client costs little; each with temperatures of its own, and its chunk around it. */
    private static final byte[][] CHUNKS = new byte[4096][];

    static {
        for (int i = 0; i < CHUNKS.length; i++) {
            String row = row(i) + '\n';
            CHUNKS[i] =
                    (Integer.toHexString(row.length()) + "\r\n" + row + "\r\n").getBytes(StandardCharsets.ISO_8859_1);
        }
    }

    private static String row(int i) {
        return String.format(
                Locale.ROOT,
                "{\"id\":\"r%d\",\"operation\":\"cycle-points/design\",\"request\":{\"refrigerant\":\"R-134a\","
                        + "\"evaporating\":{\"temperature\":\"%.3f degC\"},\"condensing\":{\"temperature\":\"%.3f degC\"},"
                        + "\"superheat\":\"8 K\",\"subcooling\":\"5 K\",\"isentropicEfficiency\":0.7,"
                        + "\"refrigeratingCapacity\":\"3 kW\"}}",
                i,
                -20 + i % 401 * 0.05,
                30 + i % 977 * 0.02);
    }

    private static Figures run(int port, String path, int count) throws IOException, InterruptedException {
        try (Socket socket = new Socket("127.0.0.1", port)) {
            String head = "POST " + path + " HTTP/1.1\r\nHost: localhost\r\nTransfer-Encoding: chunked\r\n\r\n";
            long start = System.nanoTime();
            Thread sender = new Thread(() -> send(socket, head, count));
            sender.start();
            InputStream in = socket.getInputStream();
            byte[] buffer = new byte[256 * 1024];
            long bytes = 0;
            double first = 0;
            String last = "";
            while (!last.endsWith("\r\n0\r\n\r\n")) {
                int read = in.read(buffer);
                if (read < 0) {
                    throw new IOException("closed after " + bytes + " bytes");
                }
                first = first == 0 ? (System.nanoTime() - start) / 1e6 : first;
                bytes += read;
                int tail = Math.min(read, 16);
                last += new String(buffer, read - tail, tail, StandardCharsets.ISO_8859_1);
                last = last.substring(Math.max(0, last.length() - 16));
            }
            double seconds = (System.nanoTime() - start) / 1e9;
            sender.join();
            return new Figures(count / seconds, first, bytes);
        }
    }

    private static void send(Socket socket, String head, int count) {
        try {
            OutputStream out = new BufferedOutputStream(socket.getOutputStream(), 32 * 1024);
            out.write(head.getBytes(StandardCharsets.ISO_8859_1));
            for (int i = 0; i < count; i++) {
                out.write(CHUNKS[i % CHUNKS.length]);
                if (i == 0) {
                    out.flush();
                }
            }
            out.write("0\r\n\r\n".getBytes(StandardCharsets.ISO_8859_1));
            out.flush();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
