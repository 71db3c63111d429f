package io.loopstate.web.batch;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.loopstate.web.mapping.Contract;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.mapping.Operation;
import io.loopstate.web.mapping.VariedInput;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.Nearest;
import io.loopstate.web.problem.Pointer;
import io.loopstate.web.problem.ProblemException;
import io.loopstate.web.problem.ProblemKind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One calculation over a range of one or two inputs, as it was asked for.
 *
 * @param name of the calculation
 * @param operation the calculation
 * @param request without the varied inputs
 * @param varied one or two inputs
 * @param picks values of the replies, empty for all of them
 * @param options that stand in the query
 */
public record SweepQuery(
        String name,
        Operation<?, ?, ?, ?> operation,
        ObjectNode request,
        List<VariedInput> varied,
        List<String> picks,
        BatchQuery options) {
    private static final List<String> MEMBERS = List.of("operation", "request", "vary", "pick");
    private static final int MOST_VARIED = 2;
    private static final int MOST_PICKS = 100;

    /** Copies the lists. */
    public SweepQuery {
        varied = List.copyOf(varied);
        picks = List.copyOf(picks);
    }

    /**
     * Reads a body and the options of its query.
     *
     * @param mostPoints of all values of both inputs
     * @throws ProblemException with what is wrong
     */
    static SweepQuery read(JsonNode body, Map<String, List<String>> parameters, Exchange exchange, int mostPoints) {
        shape(body);
        exchange.checkOptions(parameters);
        String name = body.get("operation").textValue();
        Operation<?, ?, ?, ?> operation = BatchQuery.named(name, Pointer.child(Pointer.ROOT, "operation"));
        Map<String, List<String>> options = new LinkedHashMap<>(parameters);
        options.keySet().retainAll(Contract.options());
        ObjectNode request = (ObjectNode) body.get("request");
        List<String> picks = new ArrayList<>();
        body.path("pick").forEach(pick -> picks.add(pick.textValue()));
        String mark = options.getOrDefault("dec", List.of(request.path("dec").asText()))
                .get(0);
        return new SweepQuery(
                name,
                operation,
                request,
                varied(operation, body, mark.equals(","), mostPoints),
                picks,
                new BatchQuery(Optional.empty(), options));
    }

    /** How many points there are. */
    int points() {
        return varied.stream().mapToInt(input -> input.values().size()).reduce(1, (one, other) -> one * other);
    }

    /** The values of the inputs at a point; of two inputs the last changes fastest. */
    List<JsonNode> values(int point) {
        if (varied.size() == 1) {
            return List.of(varied.get(0).values().get(point));
        }
        List<JsonNode> fast = varied.get(1).values();
        return List.of(varied.get(0).values().get(point / fast.size()), fast.get(point % fast.size()));
    }

    /** The whole request of a point. */
    ObjectNode request(int point) {
        ObjectNode whole = request.deepCopy();
        List<JsonNode> values = values(point);
        for (int i = 0; i < values.size(); i++) {
            varied.get(i).put(whole, values.get(i));
        }
        return whole;
    }

    private static void shape(JsonNode body) {
        List<Fault> faults = new ArrayList<>();
        if (!body.isObject()) {
            throw ProblemException.invalid(Fault.at(Pointer.ROOT, "wrong-type", "The body has the wrong type.")
                    .withAllowed("an object with " + String.join(", ", MEMBERS)));
        }
        body.fieldNames().forEachRemaining(name -> {
            if (!MEMBERS.contains(name)) {
                faults.add(at(name, "unknown-name", "There is no member of this name here.")
                        .withGot(name)
                        .withAllowed(String.join(", ", MEMBERS))
                        .withHint(Nearest.hint(name, MEMBERS)));
            }
        });
        require(body, "operation", body.path("operation").isTextual(), "a string", faults);
        require(body, "request", body.path("request").isObject(), "an object", faults);
        int inputs = body.path("vary").size();
        boolean vary = body.path("vary").isArray() && inputs > 0 && inputs <= MOST_VARIED;
        require(body, "vary", vary, "an array of one or two inputs", faults);
        JsonNode pick = body.path("pick");
        boolean picks =
                pick.isMissingNode() || pick.isNull() || pick.isArray() && pick.size() <= MOST_PICKS && texts(pick);
        require(body, "pick", picks, "an array of up to " + MOST_PICKS + " names or pointers", faults);
        if (!faults.isEmpty()) {
            throw new ProblemException(ProblemKind.INVALID_REQUEST, faults);
        }
    }

    private static boolean texts(JsonNode array) {
        for (JsonNode element : array) {
            if (!element.isTextual() || element.textValue().isBlank()) {
                return false;
            }
        }
        return true;
    }

    private static void require(JsonNode body, String member, boolean right, String allowed, List<Fault> faults) {
        if (!right) {
            faults.add((body.has(member)
                            ? at(member, "wrong-type", "This value has the wrong type.")
                            : at(member, "missing", "This is required."))
                    .withAllowed(allowed));
        }
    }

    private static List<VariedInput> varied(
            Operation<?, ?, ?, ?> operation, JsonNode body, boolean decimalComma, int mostPoints) {
        List<VariedInput> varied = new ArrayList<>();
        String vary = Pointer.child(Pointer.ROOT, "vary");
        long points = 1;
        for (int i = 0; i < body.get("vary").size(); i++) {
            String pointer = Pointer.child(vary, i);
            VariedInput input = VariedInput.of(operation, body.get("vary").get(i), pointer, decimalComma, mostPoints);
            boolean twice = varied.stream().anyMatch(other -> other.name().equals(input.name()));
            if (twice || input.isIn(body.get("request"))) {
                throw ProblemException.invalid(Fault.at(pointer, "too-many-inputs", "This input is given twice.")
                        .withGot(input.name())
                        .withHint(twice ? "Vary it once." : "Leave it out of the request."));
            }
            varied.add(input);
            points *= input.values().size();
        }
        if (points > mostPoints) {
            throw ProblemException.invalid(Fault.at(vary, "too-many-rows", "The table has too many points.")
                    .withGot(points + " points")
                    .withAllowed("at most " + mostPoints + " points"));
        }
        return varied;
    }

    private static Fault at(String member, String code, String detail) {
        return Fault.at(Pointer.child(Pointer.ROOT, member), code, detail);
    }
}
