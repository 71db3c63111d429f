package io.loopstate.web.batch;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.loopstate.web.form.Leaf;
import io.loopstate.web.form.Renderer;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.mapping.SweepPicture;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.Pointer;
import io.loopstate.web.problem.Problem;
import io.loopstate.web.problem.ProblemException;
import io.loopstate.web.problem.ProblemMappers;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;

/** One calculation over a range of one or two inputs, as a table or as a picture. */
public final class Sweep {
    private static final String WARNINGS = "warnings";
    private static final String STATUS = "status";
    private static final String ERROR = "error";
    private static final int OK = 200;

    private final ObjectMapper mapper;
    private final Exchange exchange;
    private final InOrder tasks;
    private final Bounds bounds;

    /** Answers with these threads. */
    public Sweep(ObjectMapper mapper, Exchange exchange, Executor threads, Bounds bounds) {
        this.mapper = mapper;
        this.exchange = exchange;
        this.tasks = new InOrder(threads, bounds.window());
        this.bounds = bounds;
    }

    /**
     * Limits of a sweep.
     *
     * @param window points under way
     * @param points most points
     * @param values most values of all points together
     */
    public record Bounds(int window, int points, int values) {}

    /** What came of a point: the reply, or the problem. */
    private record Outcome(Object reply, JsonNode tree, Problem problem) {}

    /** A point as a row: values by name, status, and the reasons of a refusal in words. */
    private record Point(List<JsonNode> inputs, Map<String, Leaf> values, int status, String error) {}

    /**
     * The table.
     *
     * @param parameters options of the query
     * @throws ProblemException where the sweep as such cannot be read or takes too long; a point that is refused has an error in
     *     its row
     */
    public SweepReply answer(JsonNode body, Map<String, List<String>> parameters) {
        SweepQuery query = SweepQuery.read(body, parameters, exchange, bounds.points());
        Tally tally = new Tally();
        List<ObjectNode> rows = new ArrayList<>();
        run(query, point -> {
            tally.add(point.status());
            rows.add(row(query, point));
        });
        return new SweepReply(rows, tally.summary(Optional.empty()));
    }

    /**
     * The picture of the picked values.
     *
     * @return {@code image/svg+xml}
     * @throws ProblemException as {@link #answer}, and where there is nothing to draw
     */
    public String draw(JsonNode body, Map<String, List<String>> parameters) {
        SweepQuery query = SweepQuery.read(body, parameters, exchange, bounds.points());
        SweepPicture picture = SweepPicture.of(query.name(), query.request(), query.varied(), query.picks());
        List<SweepPicture.Point> points = new ArrayList<>();
        run(query, point -> points.add(new SweepPicture.Point(point.inputs(), point.values())));
        return picture.draw(points);
    }

    private void run(SweepQuery query, Consumer<Point> sink) {
        long end = exchange.deadline();
        int count = query.points();
        Values values = new Values(query.picks());
        AtomicInteger place = new AtomicInteger();
        try {
            tasks.run(count, point -> outcome(query, point, end), outcome -> {
                Point point = point(query, place.getAndIncrement(), outcome, values);
                refuseTooMany(point.values().size(), count);
                sink.accept(point);
            });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        refuseAbsent(values);
    }

    /** All rows are held until the last is there, so that what they may hold together is bounded. */
    private void refuseTooMany(int values, int points) {
        if ((long) values * points > bounds.values()) {
            throw ProblemException.invalid(
                    Fault.at(Pointer.child(Pointer.ROOT, "pick"), "too-many-values", "The table has too many values.")
                            .withGot(values + " values at each of " + points + " points")
                            .withAllowed("at most " + bounds.values() + " together")
                            .withHint("Pick the values that matter, or send whole replies through /v1/batch."));
        }
    }

    /** Picks stand in the body here. */
    private static void refuseAbsent(Values values) {
        try {
            values.refuseAbsent();
        } catch (ProblemException e) {
            Fault fault = e.problem().errors().get(0);
            throw ProblemException.invalid(fault.atParameter(null).atPointer(Pointer.child(Pointer.ROOT, "pick")));
        }
    }

    private Outcome outcome(SweepQuery query, int place, long end) {
        if (System.nanoTime() - end > 0) {
            throw new ProblemException(ProblemMappers.deadlineExceeded());
        }
        ObjectNode request = query.request(place);
        try {
            Object reply =
                    exchange.answer(query.operation(), request, query.options().optionsFor(request));
            return new Outcome(reply, mapper.valueToTree(reply), null);
        } catch (RuntimeException | StackOverflowError e) {
            return new Outcome(null, null, ProblemMappers.ofCalculation(e));
        }
    }

    private static Point point(SweepQuery query, int place, Outcome outcome, Values values) {
        List<JsonNode> inputs = query.values(place);
        if (outcome.problem() != null) {
            return new Point(inputs, Map.of(), outcome.problem().status(), Renderer.inline(outcome.problem()));
        }
        Map<String, Leaf> picked =
                values.of(outcome.reply().getClass(), outcome.tree(), leaf -> taken(query, leaf.name()));
        return new Point(inputs, picked, OK, "");
    }

    private static boolean taken(SweepQuery query, String name) {
        return name.equals(STATUS)
                || name.equals(ERROR)
                || query.varied().stream().anyMatch(input -> input.name().equals(name));
    }

    private ObjectNode row(SweepQuery query, Point point) {
        ObjectNode row = mapper.createObjectNode();
        for (int i = 0; i < point.inputs().size(); i++) {
            row.set(query.varied().get(i).name(), point.inputs().get(i));
        }
        point.values().forEach((name, leaf) -> {
            if (name.equals(WARNINGS)) {
                codes(row, leaf.value().asText());
            } else if (leaf.unit().isPresent()) {
                ObjectNode quantity = row.putObject(name);
                quantity.set("value", leaf.value());
                quantity.put("unit", leaf.unit().get());
            } else {
                row.set(name, leaf.value());
            }
        });
        row.put(STATUS, point.status());
        if (!point.error().isEmpty()) {
            row.put(ERROR, point.error());
        }
        return row;
    }

    private static void codes(ObjectNode row, String codes) {
        ArrayNode list = row.putArray(WARNINGS);
        if (!codes.isEmpty()) {
            List.of(codes.split("; ")).forEach(list::add);
        }
    }
}
