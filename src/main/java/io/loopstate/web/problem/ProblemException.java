package io.loopstate.web.problem;

import java.util.List;

/** A refusal on its way to the client. */
public final class ProblemException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Problem problem;

    /** A refusal with this problem as its body. */
    public ProblemException(Problem problem) {
        // A refusal is an ordinary answer: collecting a stack trace would only cost time.
        super(problem.detail(), null, false, false);
        this.problem = problem;
    }

    /** A refusal of a kind with its faults, whose detail counts them. */
    public ProblemException(ProblemKind kind, List<Fault> faults) {
        this(Problem.of(kind, faults));
    }

    /** A refusal of a kind with one fault. */
    public ProblemException(ProblemKind kind, Fault fault) {
        this(kind, List.of(fault));
    }

    /** The refusal of a request that cannot be read, for one reason. */
    public static ProblemException invalid(Fault fault) {
        return new ProblemException(ProblemKind.INVALID_REQUEST, fault);
    }

    /** The body of the reply. */
    public Problem problem() {
        return problem;
    }
}
