package io.loopstate.web.batch;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.ByteArrayBuilder;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.mapping.Operation;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.JsonFaults;
import io.loopstate.web.problem.Nearest;
import io.loopstate.web.problem.Pointer;
import io.loopstate.web.problem.Problem;
import io.loopstate.web.problem.ProblemException;
import io.loopstate.web.problem.ProblemKind;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Answers rows of JSON: {@code {"id": ..., "operation": ..., "request": {...}}}. Serves any number of threads. */
public final class JsonRows {
    private static final List<String> MEMBERS = List.of("id", "operation", "request");
    private static final String REQUEST = Pointer.child(Pointer.ROOT, "request");
    private static final int LONGEST_ID = 200;

    private final ObjectMapper mapper;
    private final ObjectWriter writer;
    private final Exchange exchange;
    private final BatchQuery query;
    private final int longestRow;
    private final Function<Throwable, Problem> failures;

    /**
     * Answers with an exchange.
     *
     * @param query what holds for all rows
     * @param longestRow in bytes, for the refusal of a longer one
     * @param failures the problem for anything thrown that is no refusal
     */
    public JsonRows(
            ObjectMapper mapper,
            Exchange exchange,
            BatchQuery query,
            int longestRow,
            Function<Throwable, Problem> failures) {
        this.mapper = mapper;
        this.writer = mapper.writer();
        this.exchange = exchange;
        this.query = query;
        this.longestRow = longestRow;
        this.failures = failures;
    }

    /** The answer to a line, as a line. */
    public Answered answer(Row row) {
        if (row.tooLong()) {
            return refusal(row.index(), null, tooLong());
        }
        JsonNode tree;
        try {
            tree = mapper.readTree(row.bytes());
        } catch (JsonProcessingException e) {
            return refusal(row.index(), null, Problem.of(ProblemKind.INVALID_REQUEST, List.of(JsonFaults.ofRow(e))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return answer(row.index(), tree);
    }

    /** The answer to a row that was read, as a line. */
    public Answered answer(long index, JsonNode row) {
        String id = row.path("id").textValue();
        try {
            Operation<?, ?, ?, ?> operation = operation(row);
            Object reply = answer(operation, row.get("request"));
            return new Answered(200, line(index, id, 200, "reply", reply));
        } catch (ProblemException e) {
            return refusal(index, id, e.problem());
        } catch (RuntimeException | IOException | StackOverflowError e) {
            return refusal(index, id, failures.apply(e));
        }
    }

    /** The last line. */
    public byte[] end(Tally tally, Optional<Problem> problem) {
        try (ByteArrayBuilder out = new ByteArrayBuilder();
                JsonGenerator json = mapper.getFactory().createGenerator(out)) {
            json.writeStartObject();
            json.writeFieldName("summary");
            writer.writeValue(json, tally.summary(problem));
            json.writeEndObject();
            json.flush();
            out.append('\n');
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Object answer(Operation<?, ?, ?, ?> operation, JsonNode request) {
        try {
            return exchange.answer(operation, request, query.optionsFor(request));
        } catch (ProblemException e) {
            throw new ProblemException(below(e.problem()));
        }
    }

    /** Pointers of a request become pointers of its row. */
    private static Problem below(Problem problem) {
        return problem.retold(fault -> fault.pointer() == null
                ? fault
                : fault.atPointer(REQUEST + fault.pointer().substring(1)));
    }

    private Operation<?, ?, ?, ?> operation(JsonNode row) {
        List<Fault> faults = new ArrayList<>();
        if (!row.isObject()) {
            faults.add(Fault.at(Pointer.ROOT, "wrong-type", "A row has the wrong type.")
                    .withAllowed("an object with " + String.join(", ", MEMBERS)));
            throw new ProblemException(ProblemKind.INVALID_REQUEST, faults);
        }
        row.fieldNames().forEachRemaining(name -> {
            if (!MEMBERS.contains(name)) {
                faults.add(Fault.at(Pointer.child(Pointer.ROOT, name), "unknown-name", "A row has no such member.")
                        .withGot(name)
                        .withAllowed(String.join(", ", MEMBERS))
                        .withHint(Nearest.hint(name, MEMBERS)));
            }
        });
        JsonNode id = row.path("id");
        if (!id.isMissingNode()
                && !id.isNull()
                && !(id.isTextual() && id.textValue().length() <= LONGEST_ID)) {
            faults.add(wrongType("id", "a string of at most " + LONGEST_ID + " characters"));
        }
        JsonNode request = row.path("request");
        if (!request.isObject()) {
            faults.add(
                    request.isMissingNode()
                            ? missing("request", "The request of this row is missing.")
                            : wrongType("request", "an object"));
        }
        Optional<String> name = name(row.path("operation"), faults);
        if (!faults.isEmpty()) {
            throw new ProblemException(ProblemKind.INVALID_REQUEST, faults);
        }
        return BatchQuery.named(name.orElseThrow(), Pointer.child(Pointer.ROOT, "operation"));
    }

    private Optional<String> name(JsonNode operation, List<Fault> faults) {
        if (operation.isTextual()) {
            return Optional.of(operation.textValue());
        }
        if (!operation.isMissingNode() && !operation.isNull()) {
            faults.add(wrongType("operation", "a string"));
        } else if (query.operation().isEmpty()) {
            faults.add(missing("operation", "The calculation is missing.")
                    .withHint("It may stand in the query as well, for all rows: operation=cycle-points/design."));
        }
        return query.operation();
    }

    private static Fault missing(String member, String detail) {
        return Fault.at(Pointer.child(Pointer.ROOT, member), "missing", detail);
    }

    private static Fault wrongType(String member, String allowed) {
        return Fault.at(Pointer.child(Pointer.ROOT, member), "wrong-type", "This value has the wrong type.")
                .withAllowed(allowed);
    }

    private Problem tooLong() {
        Fault fault = Fault.at(Pointer.ROOT, "row-too-long", "This row is longer than a row may be.")
                .withAllowed("at most " + longestRow + " bytes");
        return Problem.of(ProblemKind.BODY_TOO_LARGE, List.of(fault));
    }

    private Answered refusal(long index, String id, Problem problem) {
        try {
            return new Answered(problem.status(), line(index, id, problem.status(), "problem", problem));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private byte[] line(long index, String id, int status, String name, Object value) throws IOException {
        try (ByteArrayBuilder out = new ByteArrayBuilder();
                JsonGenerator json = mapper.getFactory().createGenerator(out)) {
            json.writeStartObject();
            json.writeNumberField("index", index);
            if (id != null) {
                json.writeStringField("id", id);
            }
            json.writeNumberField("status", status);
            json.writeFieldName(name);
            writer.writeValue(json, value);
            json.writeEndObject();
            json.flush();
            out.append('\n');
            return out.toByteArray();
        }
    }
}
