package io.loopstate.web.verify;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.mapping.Operation;
import io.loopstate.web.mapping.Operations;
import io.loopstate.web.problem.ProblemException;
import io.loopstate.web.problem.ProblemMappers;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.jboss.logging.Logger;

/** Answers requests the way of any other, refusals and defects included: there is always an answer. */
public final class Answers {
    private static final Logger LOG = Logger.getLogger(Answers.class);

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
        return answer(operation, () -> exchange.answer(named(operation), body, Map.of()));
    }

    /**
     * The answer to a query.
     *
     * @param operation name of a calculation that exists
     */
    public Answer toQuery(String operation, Map<String, List<String>> parameters) {
        return answer(operation, () -> exchange.answer(named(operation), parameters));
    }

    private static Operation<?, ?, ?, ?> named(String operation) {
        return Operations.named(operation).orElseThrow();
    }

    private Answer answer(String operation, Supplier<Object> calculation) {
        Object reply;
        try {
            reply = calculation.get();
        } catch (ProblemException refusal) {
            reply = refusal.problem();
        } catch (RuntimeException defect) {
            // The other requests are still worth their answers.
            LOG.errorf(defect, "defect operation=%s", operation);
            reply = ProblemMappers.internalError();
        }
        return new Answer(mapper.valueToTree(reply), reply);
    }
}
