package io.loopstate.testing;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.engine.flash.Equilibria;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.transport.TransportLibrary;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.mapping.Operation;
import io.loopstate.web.mapping.Picture;
import io.loopstate.web.mapping.Refrigerants;
import io.loopstate.web.mapping.RequestReader;
import io.loopstate.web.mapping.SafetyGroups;
import io.loopstate.web.mapping.Trust;
import io.loopstate.web.problem.Problem;
import io.loopstate.web.problem.ProblemException;
import io.loopstate.wiring.Constraints;
import io.loopstate.wiring.JsonSettings;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.LongSupplier;

/** The service from request to bytes, without a server around it. */
public final class Service {
    private static final Catalog CATALOG = Catalog.bundled();
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final RequestReader READER = new RequestReader(
            new Refrigerants(CATALOG, new Equilibria(), new TransportLibrary(CATALOG)), Constraints.validator());
    private static final Trust TRUST = new Trust("test", SafetyGroups.bundled());
    private static final Exchange EXCHANGE = new Exchange(READER, TRUST);

    static {
        new JsonSettings().customize(MAPPER);
    }

    private Service() {}

    /** Status and body of an answer. */
    public record Answer(int status, String body) {
        /** The body as a tree. */
        public JsonNode json() {
            try {
                return MAPPER.readTree(body);
            } catch (JsonProcessingException e) {
                throw new IllegalStateException(e);
            }
        }
    }

    /** Answers with a deadline of its own, as {@link System#nanoTime} counts. */
    public static Exchange exchange(LongSupplier deadline) {
        return new Exchange(READER, TRUST, deadline, code -> {});
    }

    /** Answers a query; any exception but a refusal is a defect and passes through. */
    public static Answer get(Operation<?, ?, ?, ?> operation, Map<String, String> parameters) {
        Map<String, List<String>> query = new LinkedHashMap<>();
        parameters.forEach((name, value) -> query.put(name, List.of(value)));
        try {
            return new Answer(200, text(EXCHANGE.answer(operation, query)));
        } catch (ProblemException refusal) {
            return answer(refusal.problem());
        }
    }

    /** Answers a body; any exception but a refusal is a defect and passes through. */
    public static Answer post(Operation<?, ?, ?, ?> operation, JsonNode body) {
        try {
            return new Answer(200, text(EXCHANGE.answer(operation, body, Map.of())));
        } catch (ProblemException refusal) {
            return answer(refusal.problem());
        }
    }

    /** Draws the answer to a query; any exception but a refusal is a defect and passes through. */
    public static Answer draw(Picture<?, ?, ?> picture, Map<String, String> parameters) {
        Map<String, List<String>> query = new LinkedHashMap<>();
        parameters.forEach((name, value) -> query.put(name, List.of(value)));
        try {
            return new Answer(200, EXCHANGE.draw(picture, query));
        } catch (ProblemException refusal) {
            return answer(refusal.problem());
        }
    }

    /** Draws the answer to a body. */
    public static Answer draw(Picture<?, ?, ?> picture, JsonNode body, Map<String, List<String>> parameters) {
        try {
            return new Answer(200, EXCHANGE.draw(picture, body, parameters));
        } catch (ProblemException refusal) {
            return answer(refusal.problem());
        }
    }

    private static Answer answer(Problem problem) {
        return new Answer(problem.status(), text(problem));
    }

    private static String text(Object reply) {
        try {
            return MAPPER.writeValueAsString(reply);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }
}
