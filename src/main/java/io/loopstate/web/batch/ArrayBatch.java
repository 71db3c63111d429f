package io.loopstate.web.batch;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.Pointer;
import io.loopstate.web.problem.ProblemException;
import io.loopstate.web.problem.ProblemKind;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.Executor;

/** Answers an array of rows in order, several at a time, as one JSON object. */
public final class ArrayBatch {
    private static final byte[] ITEMS = "{\"items\":[\n".getBytes(StandardCharsets.UTF_8);
    private static final byte[] SUMMARY = "],".getBytes(StandardCharsets.UTF_8);

    private final InOrder tasks;
    private final int mostRows;

    /**
     * Answers with these threads.
     *
     * @param window rows under way
     * @param mostRows of an array
     */
    public ArrayBatch(Executor threads, int window, int mostRows) {
        this.tasks = new InOrder(threads, window);
        this.mostRows = mostRows;
    }

    /**
     * Checks an array.
     *
     * @throws ProblemException if it is none, or too long
     */
    public void check(JsonNode body) {
        if (!body.isArray()) {
            Fault fault = Fault.at(Pointer.ROOT, "wrong-type", "The body has the wrong type.")
                    .withAllowed("an array of rows")
                    .withHint("One row alone is an array too: put [ ] around it.");
            throw ProblemException.invalid(fault);
        }
        if (body.size() > mostRows) {
            Fault fault = Fault.at(Pointer.ROOT, "too-many-rows", "The array has too many rows.")
                    .withGot(body.size() + " rows")
                    .withAllowed("at most " + mostRows + " rows")
                    .withHint("Send one row a line, with Content-Type: application/x-ndjson.");
            throw new ProblemException(ProblemKind.BODY_TOO_LARGE, fault);
        }
    }

    /** Writes the answers to a checked array as they come; a reader that is gone ends the work. */
    public void write(JsonNode body, JsonRows rows, OutputStream out) throws IOException {
        Tally tally = new Tally();
        out.write(ITEMS);
        tasks.run(body.size(), place -> rows.answer(place, body.get(place)), answer -> {
            if (tally.count() > 0) {
                out.write(',');
            }
            tally.add(answer.status());
            out.write(answer.bytes());
        });
        byte[] end = rows.end(tally, Optional.empty());
        out.write(SUMMARY);
        // without its opening brace
        out.write(end, 1, end.length - 1);
    }
}
