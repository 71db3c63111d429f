package io.loopstate.web.verify;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.engine.error.DeadlineException;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.mapping.Operation;
import io.loopstate.web.mapping.Operations;
import io.loopstate.web.problem.ProblemMappers;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Answers requests the way of any other, refusals and defects included: there is always an answer, unless the time for all of
 * them is up.
 */
public final class Answers {

    private final Exchange exchange;
    private final ObjectMapper mapper;

    /**
     * Asks this exchange.
     *
     * @param mapper writes replies as clients get them
     */
    public Answers(Exchange exchange, ObjectMapper mapper) {
        this.exchange = exchange;
        this.mapper = mapper;
    }

    /**
     * The answer to a body.
     *
     * @param operation name of a calculation that exists
     */
    public Answer toBody(String operation, JsonNode body) {
        return answer(() -> exchange.answer(named(operation), body, Map.of()));
    }

    /**
     * The answer to a query.
     *
     * @param operation name of a calculation that exists
     */
    public Answer toQuery(String operation, Map<String, List<String>> parameters) {
        return answer(() -> exchange.answer(named(operation), parameters));
    }

    private static Operation<?, ?, ?, ?> named(String operation) {
        return Operations.named(operation).orElseThrow();
    }

    private Answer answer(Supplier<Object> calculation) {
        Object reply;
        try {
            reply = calculation.get();
        } catch (DeadlineException e) {
            // Nothing is known of this request, and the others have no time left either.
            throw e;
        } catch (RuntimeException e) {
            // The other requests are still worth their answers.
            reply = ProblemMappers.ofCalculation(e);
        }
        return new Answer(mapper.valueToTree(reply), reply);
    }
}
