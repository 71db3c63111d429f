package io.loopstate.web.mapping;

import java.util.Optional;

/**
 * A request before it is read. Paths are the names of a request's members with dots between, {@code
 * evaporating.temperature}, for every kind of source.
 */
interface Source {
    /** Comes before every other call: adds a fault for each name that the request does not have. */
    void open(Shape shape, Faults faults);

    /** The value at a path, empty if there is none. */
    Optional<Given> value(String path);

    /** Whether any member of the record at a path is given. */
    boolean within(String path, Shape shape);

    /** Where the value at a path stands or would stand. */
    Place place(String path);

    /** Where the value at a path is missing: the innermost place that would have to be added. */
    Place missing(String path);

    /** The name of a path as the client knows it. */
    String name(String path);

    /** The last part of the name of the one number that is shown of the reply; empty where more is. */
    Optional<String> soleNumber(Class<?> reply);
}
