package io.loopstate.web.mapping;

import com.fasterxml.jackson.databind.node.TextNode;
import io.loopstate.web.form.LayoutReader;
import io.loopstate.web.form.PickedNumber;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.Nearest;
import io.loopstate.web.problem.ProblemKind;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The parameters of a query. */
final class QuerySource implements Source {
    /** Spreadsheets add it to defeat their own cache. */
    private static final String CACHE_BUSTER = "_";

    private final Map<String, List<String>> parameters;

    QuerySource(Map<String, List<String>> parameters) {
        this.parameters = parameters;
    }

    @Override
    public Optional<Given> value(String path) {
        List<String> values = parameters.isEmpty() ? null : parameters.get(Paths.flat(path));
        return values == null || values.isEmpty()
                ? Optional.empty()
                : Optional.of(new Given(TextNode.valueOf(values.get(0)), place(path)));
    }

    @Override
    public boolean within(String path, Shape shape) {
        for (String leaf : shape.leaves().keySet()) {
            if (value(leaf).isPresent()) {
                return true;
            }
        }
        return false;
    }

    @Override
    public Place place(String path) {
        return Place.query(Paths.flat(path));
    }

    @Override
    public Place missing(String path) {
        return place(path);
    }

    @Override
    public String name(String path) {
        return Paths.flat(path);
    }

    @Override
    public Optional<String> soleNumber(Class<?> reply) {
        return PickedNumber.sole(parameters, reply);
    }

    @Override
    public void open(Shape shape, Faults faults) {
        refuseUnknown(shape.queryNames(), faults);
    }

    /** Adds a fault for each parameter that is not one of the known, and for each that is given twice. */
    void refuseUnknown(Set<String> known, Faults faults) {
        LayoutReader.faults(parameters).forEach(fault -> faults.add(ProblemKind.INVALID_REQUEST, fault));
        List<String> refused = new ArrayList<>();
        parameters.forEach((name, values) -> {
            if (!name.equals(CACHE_BUSTER) && (values.size() > 1 || !isKnown(name, known))) {
                refused.add(name);
            }
        });
        Collections.sort(refused);
        refused.forEach(name -> faults.add(ProblemKind.INVALID_REQUEST, fault(name, known)));
    }

    private static boolean isKnown(String name, Set<String> known) {
        return known.contains(name) || LayoutReader.NAMES.contains(name);
    }

    private Fault fault(String name, Set<String> known) {
        return isKnown(name, known)
                ? Fault.parameter(name, "duplicate-parameter", "This parameter is given more than once.")
                        .withGot(String.join(", ", parameters.get(name)))
                        .withAllowed("one value")
                : Fault.parameter(name, "unknown-parameter", "There is no parameter of this name here.")
                        .withGot(name)
                        .withAllowed(String.join(", ", known))
                        .withHint(Nearest.hint(name, withLayout(known)));
    }

    private static List<String> withLayout(Set<String> known) {
        List<String> all = new ArrayList<>(known);
        all.addAll(LayoutReader.NAMES);
        return all;
    }
}
