package io.loopstate.engine.transport;

import io.loopstate.engine.eos.MolarState;
import java.util.Optional;

/**
 * What the correlations of one fluid read at one state.
 *
 * @param conformal the corresponding state of the reference fluid, present for fluids that have one
 */
record Point(MolarState state, Optional<ConformalState> conformal) {}
