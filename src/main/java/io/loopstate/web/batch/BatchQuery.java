package io.loopstate.web.batch;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.web.mapping.Contract;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.mapping.Operation;
import io.loopstate.web.mapping.Operations;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.Nearest;
import io.loopstate.web.problem.ProblemException;
import io.loopstate.web.problem.ProblemKind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the query of a batch says for all of its rows.
 *
 * @param operation of rows that name none
 * @param options of rows that do not say otherwise
 */
public record BatchQuery(Optional<String> operation, Map<String, List<String>> options) {
    /** Name of the parameter for the calculation. */
    public static final String OPERATION = "operation";

    private static final String NO_OPERATION = "There is no calculation of this name.";
    private static final String CACHE_BUSTER = "_";
    static final List<String> AIR_PRESSURE = List.of("atmosphericPressure", "altitude");

    /**
     * Reads the parameters.
     *
     * @param own names of further parameters, which the caller reads
     * @throws ProblemException with every fault
     */
    public static BatchQuery read(Map<String, List<String>> parameters, List<String> own, Exchange exchange) {
        List<String> known = new ArrayList<>(own);
        known.add(OPERATION);
        known.addAll(Contract.options());
        List<Fault> faults = unknown(parameters, known);
        Optional<String> operation =
                Optional.ofNullable(parameters.get(OPERATION)).map(values -> values.get(0));
        operation
                .filter(name -> Operations.named(name).isEmpty())
                .ifPresent(name -> faults.add(
                        noSuchOperation(Fault.parameter(OPERATION, "unknown-operation", NO_OPERATION), name)));
        Map<String, List<String>> options = new LinkedHashMap<>(parameters);
        options.keySet().retainAll(Contract.options());
        try {
            exchange.checkOptions(options);
        } catch (ProblemException e) {
            faults.addAll(e.problem().errors());
        }
        if (!faults.isEmpty()) {
            throw new ProblemException(ProblemKind.INVALID_REQUEST, faults);
        }
        return new BatchQuery(operation, options);
    }

    private static List<Fault> unknown(Map<String, List<String>> parameters, List<String> known) {
        List<Fault> faults = new ArrayList<>();
        parameters.keySet().stream().sorted().forEach(name -> {
            if (name.equals(CACHE_BUSTER)) {
                return;
            }
            if (!known.contains(name)) {
                faults.add(Fault.parameter(name, "unknown-parameter", "There is no parameter of this name here.")
                        .withGot(name)
                        .withAllowed(String.join(", ", known))
                        .withHint(Nearest.hint(name, known)));
            } else if (parameters.get(name).size() > 1) {
                faults.add(Fault.parameter(name, "duplicate-parameter", "This parameter is given more than once.")
                        .withGot(String.join(", ", parameters.get(name)))
                        .withAllowed("one value"));
            }
        });
        return faults;
    }

    /** The calculation of a name, at a pointer. */
    static Operation<?, ?, ?, ?> named(String name, String pointer) {
        return Operations.named(name)
                .orElseThrow(() -> new ProblemException(
                        ProblemKind.INVALID_REQUEST,
                        noSuchOperation(Fault.at(pointer, "unknown-operation", NO_OPERATION), name)));
    }

    private static Fault noSuchOperation(Fault fault, String name) {
        return fault.withGot(name)
                .withAllowed(String.join(", ", Operations.names()))
                .withHint(Nearest.hint(name, Operations.names()));
    }

    /** The options for a row: what its request says itself comes first. */
    Map<String, List<String>> optionsFor(JsonNode request) {
        if (options.isEmpty() || options.keySet().stream().noneMatch(name -> says(request, name))) {
            return options;
        }
        Map<String, List<String>> others = new LinkedHashMap<>(options);
        others.keySet().removeIf(name -> says(request, name));
        return others;
    }

    private static boolean says(JsonNode request, String option) {
        return AIR_PRESSURE.contains(option) ? AIR_PRESSURE.stream().anyMatch(request::has) : request.has(option);
    }
}
