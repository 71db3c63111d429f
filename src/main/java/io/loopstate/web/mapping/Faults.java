package io.loopstate.web.mapping;

import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.ProblemException;
import io.loopstate.web.problem.ProblemKind;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Gathers the faults of one request. A request that cannot be read outweighs one that asks for the impossible. */
final class Faults {
    /** More than this many faults help nobody. */
    private static final int LIMIT = 50;

    private final List<Fault> faults = new ArrayList<>();
    private final Set<String> paths = new HashSet<>();
    /** Told where nothing else is: who checks the members of a record tells better what of it is missing. */
    private final List<Fault> otherwise = new ArrayList<>();

    private ProblemKind kind;

    /** Adds a fault of the value at a path. */
    void add(String path, ProblemKind faultKind, Fault fault) {
        paths.add(path);
        add(faultKind, fault);
    }

    /** Adds a fault that belongs to no path. */
    void add(ProblemKind faultKind, Fault fault) {
        if (kind == null || faultKind.status() < kind.status()) {
            kind = faultKind;
        }
        if (faults.size() < LIMIT) {
            faults.add(fault);
        }
    }

    /** Adds a fault of the request that is told if no other is. */
    void addLast(Fault fault) {
        otherwise.add(fault);
    }

    /** Whether the value at a path, or one that holds it, has a fault. */
    boolean at(String path) {
        if (paths.isEmpty()) {
            return false;
        }
        for (String part = path; !part.isEmpty(); part = Paths.parent(part)) {
            if (paths.contains(part)) {
                return true;
            }
        }
        return false;
    }

    /** Ends the request if there was any fault. */
    void refuse() {
        if (kind == null) {
            otherwise.forEach(fault -> add(ProblemKind.INVALID_REQUEST, fault));
        }
        if (kind != null) {
            throw new ProblemException(kind, faults);
        }
    }
}
