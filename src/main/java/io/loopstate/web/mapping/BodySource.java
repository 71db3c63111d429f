package io.loopstate.web.mapping;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.web.dto.Options;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.Nearest;
import io.loopstate.web.problem.Pointer;
import io.loopstate.web.problem.ProblemKind;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A JSON body. What every calculation understands beside its inputs may stand in the query as well. */
final class BodySource implements Source {
    /** Their paths are their names in the query. */
    private static final Set<String> OPTIONS = Shape.of(Options.class).queryNames();

    private final JsonNode body;
    private final QuerySource query;
    /** What stands at the members of the request, by path. */
    private final Map<String, Given> given = new HashMap<>();

    BodySource(JsonNode body, Map<String, List<String>> parameters) {
        this.body = body;
        this.query = new QuerySource(parameters);
    }

    @Override
    public Optional<Given> value(String path) {
        Optional<Given> option = OPTIONS.contains(path) ? query.value(path) : Optional.empty();
        return option.isPresent() ? option : inBody(path);
    }

    private Optional<Given> inBody(String path) {
        return Optional.ofNullable(given.get(path));
    }

    @Override
    public boolean within(String path, Shape shape) {
        return inBody(path).isPresent()
                && shape.leaves().keySet().stream()
                        .anyMatch(leaf -> inBody(leaf).isPresent());
    }

    @Override
    public Place place(String path) {
        return Place.body(Paths.pointer(path));
    }

    @Override
    public Place missing(String path) {
        String parent = Paths.parent(path);
        return parent.isEmpty() || inBody(parent).isPresent() ? place(path) : missing(parent);
    }

    @Override
    public String name(String path) {
        return path;
    }

    @Override
    public Optional<String> soleNumber(Class<?> reply) {
        return query.soleNumber(reply);
    }

    @Override
    public void open(Shape shape, Faults faults) {
        if (!body.isObject()) {
            Given whole = new Given(body, Place.body(Pointer.ROOT));
            faults.add(
                    ProblemKind.INVALID_REQUEST,
                    whole.place()
                            .fault("wrong-type", "The body has the wrong type.")
                            .withGot(whole.typed())
                            .withAllowed("an object"));
            // Members that are missing from what is no object are not worth telling.
            faults.refuse();
        }
        take(body, "", shape, faults);
        query.refuseUnknown(OPTIONS, faults);
        for (String option : OPTIONS) {
            if (query.value(option).isPresent() && inBody(option).isPresent()) {
                faults.add(
                        option,
                        ProblemKind.INVALID_REQUEST,
                        place(option)
                                .fault("duplicate-parameter", "This option stands in the body and in the query.")
                                .withAllowed("one of the two"));
            }
        }
    }

    /** A member that is null is a member that is absent; so is an empty list, since some clients write all lists they know. */
    private void take(JsonNode object, String path, Shape shape, Faults faults) {
        for (Map.Entry<String, JsonNode> field : object.properties()) {
            Shape.Member member = shape.names().get(field.getKey());
            if (member == null) {
                faults.add(
                        ProblemKind.INVALID_REQUEST,
                        unknown(path, field.getKey(), shape.names().keySet()));
                continue;
            }
            boolean emptyList = member.type() == List.class
                    && field.getValue().isArray()
                    && field.getValue().isEmpty();
            if (!field.getValue().isNull() && !emptyList) {
                given.put(member.path(), new Given(field.getValue(), place(member.path())));
            }
            if (member.nested() != null && field.getValue().isObject()) {
                take(field.getValue(), member.path(), member.nested(), faults);
            }
        }
    }

    private static Fault unknown(String path, String name, Set<String> known) {
        return Fault.at(
                        Pointer.child(Paths.pointer(path), name),
                        "unknown-name",
                        "There is no member of this name here.")
                .withGot(name)
                .withAllowed(String.join(", ", known))
                .withHint(Nearest.hint(name, known));
    }
}
