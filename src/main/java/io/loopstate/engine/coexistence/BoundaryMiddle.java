package io.loopstate.engine.coexistence;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.numerics.ChebyshevPieces;
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

    /** Whether there is a gap, which hides the highest temperature and pressure. */
    boolean hidden();

    /** Highest temperature that is known, K. */
    double maxTemperature();

    /** Highest pressure that is known on the denser or the thinner side, Pa. */
    double maxPressure(boolean denser);

    /** Refuses a temperature (K) or pressure (Pa) above the highest known. */
    void requireKnown(Variable variable, double got, double lower, double upper);
}
