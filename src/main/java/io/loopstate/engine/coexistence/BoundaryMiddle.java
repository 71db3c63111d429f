package io.loopstate.engine.coexistence;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.numerics.ChebyshevPieces;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** How bubble and dew line come together: in a critical point, or in a gap where the model has a false phase. */
interface BoundaryMiddle {
    double TOLERANCE = 1e-13;

    static BoundaryMiddle of(BoundaryBranches branches) {
        try {
            return BoundaryCenter.of(branches);
        } catch (EngineException e) {
            return BoundaryGap.of(branches).orElseThrow(() -> e);
        }
    }

    /** Where both phases are one. */
    BoundaryPoint critical();

    /** A quantity along the boundary over s = ln(density of the whole). */
    ChebyshevPieces pieces(ToDoubleFunction<BoundaryPoint> value);

    /** The same with its inverse, for ln T or ln p. */
    BoundaryLine line(ToDoubleFunction<BoundaryPoint> value);

    /** Whether the series are as good near the critical point as elsewhere. */
    boolean converged();

    /** Where the lines break off before a gap; empty where all of the boundary is known. */
    default Optional<Ends> ends() {
        return Optional.empty();
    }

    /** The last bubble and dew point, at one temperature. */
    record Ends(BoundaryPoint bubble, BoundaryPoint dew) {}
}
