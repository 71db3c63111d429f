package io.loopstate.web.verify;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One request and what is expected of its answer.
 *
 * @param id names it in the report
 * @param operation name of a calculation that exists
 * @param request body
 * @param expected values
 * @param problem code of the problem with which it has to be refused
 * @param status with which it has to be answered
 */
record Case(
        String id,
        String operation,
        JsonNode request,
        List<Expected> expected,
        Optional<String> problem,
        OptionalInt status) {

    /** Whether the request has to be refused. */
    boolean refusalExpected() {
        return problem.isPresent() || status.orElse(200) != 200;
    }
}
