package io.loopstate.engine.error;

/** What went wrong in the engine; the outside world decides how each is reported. */
public enum ErrorCode {
    /** An input or the state that follows from the inputs lies outside the range of the equation of state. */
    OUT_OF_RANGE,
    /** There is no saturation at or above the critical point. */
    ABOVE_CRITICAL,
    /** Vapor quality outside 0 to 1, or a negative superheat or subcooling. */
    IMPOSSIBLE_VALUE,
    /** Temperature and pressure lie on the saturation line and do not fix the quality. */
    ON_SATURATION_LINE,
    /** Two or more states satisfy the inputs; the candidates are listed. */
    AMBIGUOUS_STATE,
    /** No state in the range of the equation satisfies the inputs. */
    NO_SUCH_STATE,
    /** States exist for the inputs, but none in the phase asked for; the candidates are listed. */
    NOT_IN_PHASE,
    /** The two variables given do not fix a state. */
    PAIR_NOT_INDEPENDENT,
    /** The reference state lies outside the saturation line of this refrigerant. */
    REFERENCE_STATE_UNDEFINED,
    /** The model has no states inside the dome (a pseudo-pure fluid), or none so close to the critical point (a blend). */
    TWO_PHASE_UNDEFINED,
    /** The model of a mixture has no bubble and dew line of the usual form. */
    NO_PHASE_BOUNDARY,
    /** An iteration did not converge; the message names it. */
    NOT_CONVERGED,
    /** The inputs of a cycle or of a set of readings contradict each other. */
    CONTRADICTORY_INPUTS,
    /** A machine has no steady state: the message says which of its components has none, and why. */
    NO_BALANCE
}
