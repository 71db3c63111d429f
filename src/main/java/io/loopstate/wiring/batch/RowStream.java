package io.loopstate.wiring.batch;

import io.loopstate.web.batch.Answered;
import io.loopstate.web.batch.OrderedWork;
import io.loopstate.web.batch.Row;
import io.loopstate.web.batch.RowFormat;
import io.loopstate.web.batch.RowSplitter;
import io.loopstate.web.batch.Tally;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.Problem;
import io.loopstate.web.problem.ProblemKind;
import io.vertx.core.Context;
import io.vertx.core.Vertx;
import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.core.http.HttpServerResponse;
import io.vertx.ext.web.RoutingContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/**
 * One body of rows and the answers to it, both at the same time. Everything but the answering happens on the event loop of the
 * connection, one piece of the body after the other.
 */
public final class RowStream {
    private static final int WRITE_BYTES = 64 * 1024;
    private static final int QUEUE_BYTES = 256 * 1024;
    private static final long PATIENCE_MILLISECONDS = 2_000;
    /** Trailer with the summary of rows in whose form it has no place. */
    private static final String SUMMARY = "Batch-Summary";

    /**
     * Limits of a stream.
     *
     * @param rows most rows that are answered
     * @param threads that answer at the same time
     * @param window rows under way
     * @param waitingBytes of answers that wait for the reader
     */
    public record Bounds(int rows, int threads, int window, long waitingBytes) {}

    private enum Stage {
        /** The leading rows are gathered. */
        GATHERING,
        /** The leading rows are answered. */
        BEGINNING,
        /** Rows go in and answers come out. */
        RUNNING,
        /** Nothing happens any more. */
        OVER
    }

    private final HttpServerRequest request;
    private final HttpServerResponse response;
    private final Vertx vertx;
    private final Context context;
    private final RowFormat format;
    private final Bounds bounds;
    private final Executor threads;
    private final Consumer<Throwable> refuse;
    private final Runnable done;
    private final RowSplitter splitter;
    private final OrderedWork<Row> work;
    private final Tally tally = new Tally();

    private final int leadingRows;
    private List<Row> leading = new ArrayList<>();
    private Stage stage;
    private boolean asked;
    private boolean ended;
    private Optional<Problem> problem = Optional.empty();

    /**
     * A stream that has not begun.
     *
     * @param threads answer the rows
     * @param refuse answers what the format refuses as a whole
     * @param done called once at the end, however it comes
     */
    public RowStream(
            RoutingContext route,
            RowFormat format,
            Bounds bounds,
            Executor threads,
            Consumer<Throwable> refuse,
            Runnable done) {
        this.vertx = route.vertx();
        this.context = vertx.getOrCreateContext();
        this.request = route.request();
        this.response = route.response();
        route.addEndHandler(nothing -> close());
        this.format = format;
        this.bounds = bounds;
        this.threads = threads;
        this.refuse = refuse;
        this.done = done;
        splitter = format.splitter();
        leadingRows = Math.min(format.leading(), bounds.rows());
        stage = leadingRows > 0 ? Stage.GATHERING : Stage.RUNNING;
        work = new OrderedWork<>(
                threads,
                bounds.threads(),
                bounds.window(),
                bounds.waitingBytes(),
                format::answer,
                () -> context.runOnContext(nothing -> advance()));
    }

    /** Begins to read. */
    public void start() {
        request.pause();
        request.handler(this::received);
        request.endHandler(nothing -> {
            ended = true;
            advance();
        });
        request.exceptionHandler(gone -> close());
        response.setWriteQueueMaxSize(QUEUE_BYTES);
        response.drainHandler(nothing -> advance());
        if (request.headers().contains("Expect")) {
            response.writeContinue();
        }
        advance();
    }

    private void received(Buffer bytes) {
        asked = false;
        splitter.feed(bytes.getBytes());
        advance();
    }

    private void advance() {
        if (stage == Stage.GATHERING) {
            gather();
        } else if (stage == Stage.RUNNING) {
            deliver();
            fill();
            if (work.isEmpty() && (ended || problem.isPresent())) {
                finish();
            }
        }
    }

    /** Rows into the window while it has room; more bytes where they are used up. */
    private void fill() {
        while (problem.isEmpty() && work.hasRoom()) {
            Optional<Row> row = next();
            if (row.isEmpty()) {
                return;
            }
            if (row.get().index() >= bounds.rows()) {
                problem = Optional.of(tooManyRows());
                return;
            }
            work.offer(row.get());
        }
    }

    private Optional<Row> next() {
        Optional<Row> row = splitter.next();
        if (row.isPresent()) {
            return row;
        }
        if (ended) {
            return splitter.last();
        }
        if (!asked) {
            asked = true;
            request.fetch(1);
        }
        return Optional.empty();
    }

    /** Answers that are ready, while the connection takes them. */
    private void deliver() {
        while (!response.writeQueueFull()) {
            Buffer bytes = Buffer.buffer();
            Optional<Answered> answer = work.take();
            while (answer.isPresent()) {
                tally.add(answer.get().status());
                bytes.appendBytes(answer.get().bytes());
                answer = bytes.length() < WRITE_BYTES ? work.take() : Optional.empty();
            }
            if (bytes.length() == 0) {
                return;
            }
            write(bytes);
        }
    }

    private void gather() {
        Optional<Row> row = next();
        while (row.isPresent()) {
            leading.add(row.get());
            row = leading.size() < leadingRows ? next() : Optional.empty();
        }
        if (leading.size() == leadingRows || ended) {
            stage = Stage.BEGINNING;
            List<Row> rows = leading;
            leading = List.of();
            threads.execute(() -> begin(rows));
        }
    }

    private void begin(List<Row> rows) {
        try {
            List<Answered> answers = format.begin(rows);
            context.runOnContext(nothing -> begun(answers));
        } catch (RuntimeException e) {
            context.runOnContext(nothing -> refused(e));
        }
    }

    private void refused(RuntimeException e) {
        if (stage == Stage.BEGINNING) {
            refuse.accept(e);
            discard();
        }
    }

    private void begun(List<Answered> answers) {
        if (stage == Stage.BEGINNING) {
            Buffer bytes = Buffer.buffer();
            answers.forEach(answer -> {
                tally.add(answer.status());
                bytes.appendBytes(answer.bytes());
            });
            write(bytes);
            stage = Stage.RUNNING;
            advance();
        }
    }

    private void write(Buffer bytes) {
        response.write(headed(bytes));
    }

    private Buffer headed(Buffer bytes) {
        if (!response.headWritten()) {
            response.setChunked(true).putHeader("Content-Type", format.contentType());
            if (format.summaryInTrailer()) {
                response.putHeader("Trailer", SUMMARY);
            }
        }
        return bytes;
    }

    private void finish() {
        Buffer last = headed(Buffer.buffer(format.end(tally, problem)));
        if (format.summaryInTrailer()) {
            response.putTrailer(SUMMARY, format.trailer(tally, problem));
        }
        response.end(last);
        discard();
    }

    /** The rest of a body that is not going to be read; a client that does not stop is cut off. */
    private void discard() {
        close();
        if (!ended) {
            request.handler(nothing -> {});
            request.endHandler(nothing -> ended = true);
            request.resume();
            vertx.setTimer(PATIENCE_MILLISECONDS, id -> {
                if (!ended) {
                    request.connection().close();
                }
            });
        }
    }

    private void close() {
        if (stage != Stage.OVER) {
            stage = Stage.OVER;
            work.cancel();
            done.run();
        }
    }

    private Problem tooManyRows() {
        Fault fault = Fault.request("too-many-rows", "The rows that follow are more than one request may have.")
                .withAllowed("at most " + bounds.rows() + " rows")
                .withHint("Send the rest in another request.");
        return Problem.of(ProblemKind.BODY_TOO_LARGE, List.of(fault));
    }
}
