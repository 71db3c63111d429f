package io.loopstate.web.mapping;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.numerics.Deadline;
import io.loopstate.web.chart.Svg;
import io.loopstate.web.dto.Options;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/** The one way of a request: read, one call of the engine, reply. */
public final class Exchange {
    private final RequestReader reader;
    private final Trust trust;
    private final LongSupplier deadline;
    private final Consumer<ErrorCode> errors;

    /** Reads with a reader and puts what a reply rests on beside it; calculations have years. */
    public Exchange(RequestReader reader, Trust trust) {
        this(reader, trust, () -> System.nanoTime() + Long.MAX_VALUE / 2, code -> {});
    }

    /**
     * As above, with a deadline.
     *
     * @param deadline when the request that is being answered has to be done, as {@link System#nanoTime} counts
     * @param errors is told of every error that a calculation ended in
     */
    public Exchange(RequestReader reader, Trust trust, LongSupplier deadline, Consumer<ErrorCode> errors) {
        this.reader = reader;
        this.trust = trust;
        this.deadline = deadline;
        this.errors = errors;
    }

    /**
     * Answers a query.
     *
     * @throws io.loopstate.web.problem.ProblemException with every fault of the request, or with the engine's error
     */
    public <T, S, R, A> A answer(Operation<T, S, R, A> operation, Map<String, List<String>> parameters) {
        return inTime(() -> answer(operation, new QuerySource(parameters)));
    }

    /**
     * Answers a body; options may stand in the query.
     *
     * @throws io.loopstate.web.problem.ProblemException with every fault of the request, or with the engine's error
     */
    public <T, S, R, A> A answer(Operation<T, S, R, A> operation, JsonNode body, Map<String, List<String>> parameters) {
        return inTime(() -> answer(operation, new BodySource(body, parameters)));
    }

    /**
     * Draws the answer to a query.
     *
     * @return the picture as {@code image/svg+xml}
     * @throws io.loopstate.web.problem.ProblemException with every fault of the request, or with the engine's error
     */
    public <T, S, R> String draw(Picture<T, S, R> picture, Map<String, List<String>> parameters) {
        ChartChoice choice = ChartChoice.of(picture, parameters);
        return inTime(() -> draw(picture, choice, new QuerySource(choice.others())));
    }

    /**
     * Draws the answer to a body; options may stand in the query.
     *
     * @return the picture as {@code image/svg+xml}
     * @throws io.loopstate.web.problem.ProblemException with every fault of the request, or with the engine's error
     */
    public <T, S, R> String draw(Picture<T, S, R> picture, JsonNode body, Map<String, List<String>> parameters) {
        ChartChoice choice = ChartChoice.of(picture, parameters);
        return inTime(() -> draw(picture, choice, new BodySource(body, choice.others())));
    }

    /** When the request that this thread is answering has to be done, as {@link System#nanoTime} counts. */
    public long deadline() {
        return deadline.getAsLong();
    }

    private <A> A inTime(Supplier<A> calculation) {
        return Deadline.within(deadline.getAsLong(), calculation);
    }

    private <T, S, R> String draw(Picture<T, S, R> picture, ChartChoice choice, Source source) {
        Input<T> input = reader.read(picture.operation().request(), source, choice.faults());
        R result = calculate(picture.operation(), input);
        try {
            return Svg.of(picture.drawing().of(input, result, choice.name()));
        } catch (EngineException e) {
            errors.accept(e.code());
            throw new EngineFaults(input, picture.operation().inputs()).problem(e);
        }
    }

    /**
     * Checks options that are to hold for several requests.
     *
     * @throws io.loopstate.web.problem.ProblemException with every fault
     */
    public void checkOptions(Map<String, List<String>> options) {
        reader.read(Options.class, new QuerySource(options)).refuseFaults();
    }

    private <T, S, R, A> A answer(Operation<T, S, R, A> operation, Source source) {
        Input<T> input = reader.read(operation.request(), source);
        return operation.reply().of(input, calculate(operation, input), trust);
    }

    private <T, S, R> R calculate(Operation<T, S, R, ?> operation, Input<T> input) {
        try {
            S spec = operation.spec().apply(input);
            return operation.engine().apply(spec);
        } catch (EngineException e) {
            errors.accept(e.code());
            throw new EngineFaults(input, operation.inputs()).problem(e);
        }
    }
}
