package io.loopstate.web.mapping;

import io.loopstate.web.problem.Fault;

/**
 * Where something stands in a request: in the body or in the query.
 *
 * @param pointer place in the body, {@code null} for the query
 * @param parameter name of the parameter, {@code null} for the body
 */
record Place(String pointer, String parameter) {
    static Place body(String pointer) {
        return new Place(pointer, null);
    }

    static Place query(String parameter) {
        return new Place(null, parameter);
    }

    boolean inQuery() {
        return parameter != null;
    }

    Fault fault(String code, String detail) {
        return inQuery() ? Fault.parameter(parameter, code, detail) : Fault.at(pointer, code, detail);
    }
}
