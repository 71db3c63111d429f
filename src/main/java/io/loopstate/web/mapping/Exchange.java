package io.loopstate.web.mapping;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.engine.error.EngineException;
import java.util.List;
import java.util.Map;

/** The one way of a request: read, one call of the engine, reply. */
public final class Exchange {
    private final RequestReader reader;
    private final Trust trust;

    /** Reads with a reader and puts what a reply rests on beside it. */
    public Exchange(RequestReader reader, Trust trust) {
        this.reader = reader;
        this.trust = trust;
    }

    /**
     * Answers a query.
     *
     * @throws io.loopstate.web.problem.ProblemException with every fault of the request, or with the engine's error
     */
    public <T, S, R, A> A answer(Operation<T, S, R, A> operation, Map<String, List<String>> parameters) {
        return answer(operation, new QuerySource(parameters));
    }

    /**
     * Answers a body; options may stand in the query.
     *
     * @throws io.loopstate.web.problem.ProblemException with every fault of the request, or with the engine's error
     */
    public <T, S, R, A> A answer(Operation<T, S, R, A> operation, JsonNode body, Map<String, List<String>> parameters) {
        return answer(operation, new BodySource(body, parameters));
    }

    private <T, S, R, A> A answer(Operation<T, S, R, A> operation, Source source) {
        Input<T> input = reader.read(operation.request(), source);
        R result;
        try {
            S spec = operation.spec().apply(input);
            result = operation.engine().apply(spec);
        } catch (EngineException e) {
            throw new EngineFaults(input, operation.inputs()).problem(e);
        }
        return operation.reply().of(input, result, trust);
    }
}
