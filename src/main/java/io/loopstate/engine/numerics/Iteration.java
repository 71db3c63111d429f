package io.loopstate.engine.numerics;

import java.util.concurrent.atomic.LongAdder;

/**
 * The iterations of the engine, and how much work they have been since the start of the process: counts for whoever watches
 * the service. No result depends on them.
 */
public enum Iteration {
    /** A root in a bracket. */
    BRACKET,
    /** A density at a temperature and a pressure. */
    DENSITY,
    /** A temperature and a density at two conditions; where it gives up a bracketed search follows. */
    STATE,
    /** Liquid and vapor of a pure fluid. */
    SATURATION,
    /** A point of the bubble or dew line of a mixture. */
    BOUNDARY,
    /** A mixture divided into liquid and vapor. */
    DIVISION,
    /** The two pressures of a machine. */
    BALANCE;

    private final LongAdder steps = new LongAdder();
    private final LongAdder converged = new LongAdder();
    private final LongAdder givenUp = new LongAdder();

    /** Notes an iteration that converged. */
    public void converged(int withSteps) {
        steps.add(withSteps);
        converged.increment();
    }

    /** Notes an iteration that gave up; its caller may know another way. */
    public void gaveUp(int afterSteps) {
        steps.add(afterSteps);
        givenUp.increment();
    }

    /** Steps of all iterations of this kind. */
    public long steps() {
        return steps.sum();
    }

    /** Iterations of this kind that converged. */
    public long converged() {
        return converged.sum();
    }

    /** Iterations of this kind that gave up. */
    public long givenUp() {
        return givenUp.sum();
    }
}
