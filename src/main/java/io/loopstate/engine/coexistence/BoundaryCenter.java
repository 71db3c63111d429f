package io.loopstate.engine.coexistence;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.numerics.ChebyshevPieces;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;

/** The usual form: one series leads through the critical point. */
final class BoundaryCenter implements BoundaryMiddle {
    /** Half-widths of the series around the critical point that are tried, widest first. */
    private static final double[] WIDTHS = {0.3, 0.15, 0.075, 0.0375};

    private static final double CONVERGED = 1e-12;
    /** How far from the critical density the highest temperature and pressure are looked for, in s. */
    private static final double TOP_WITHIN = 0.9;

    private final BoundaryBranches branches;
    private final BoundaryPoint critical;
    private final double middle;
    private final double width;
    private final double tail;

    private BoundaryCenter(BoundaryBranches branches, BoundaryPoint critical) {
        this.branches = branches;
        this.critical = critical;
        middle = Math.log(critical.density());
        double best = 0;
        double smallest = Double.POSITIVE_INFINITY;
        for (double half : WIDTHS) {
            double t = tail(half);
            if (t < smallest) {
                best = half;
                smallest = t;
            }
            if (t <= CONVERGED) {
                break;
            }
        }
        if (best == 0) {
            throw EngineException.of(ErrorCode.NOT_CONVERGED, "phase boundary near the critical point");
        }
        width = best;
        tail = smallest;
    }

    static BoundaryCenter of(BoundaryBranches branches) {
        BoundaryPoint near = branches.bubbles().nearCritical();
        branches.dews().nearCritical();
        return new BoundaryCenter(
                branches,
                CriticalMixturePoint.near(
                        branches.feed(), near.temperature(), Math.sqrt(near.density() * near.incipientDensity())));
    }

    private BoundaryPoint at(double s) {
        return (s > middle ? branches.bubbles() : branches.dews()).at(s);
    }

    /** How far the series are from convergence; closest to the critical point the solver may fail. */
    private double tail(double half) {
        double largest = 0;
        for (int i = 0; i < branches.feed().size(); i++) {
            int component = i;
            try {
                largest = Math.max(
                        largest,
                        ChebyshevPieces.single(
                                        s -> Math.log(at(s).incipient()[component]), middle - half, middle + half)
                                .firstTail());
            } catch (EngineException e) {
                return Double.POSITIVE_INFINITY;
            }
        }
        return largest;
    }

    @Override
    public BoundaryPoint critical() {
        return critical;
    }

    @Override
    public ChebyshevPieces pieces(ToDoubleFunction<BoundaryPoint> value) {
        DoubleUnaryOperator function = s -> value.applyAsDouble(at(s));
        return ChebyshevPieces.graded(function, middle - width, branches.thin(), width, TOLERANCE)
                .then(ChebyshevPieces.single(function, middle - width, middle + width))
                .then(ChebyshevPieces.graded(function, middle + width, branches.dense(), width, TOLERANCE));
    }

    @Override
    public BoundaryLine line(ToDoubleFunction<BoundaryPoint> value) {
        return BoundaryLine.closed(
                pieces(value),
                Math.max(middle - TOP_WITHIN, branches.thin()),
                Math.min(middle + TOP_WITHIN, branches.dense()));
    }

    @Override
    public boolean converged() {
        return tail <= CONVERGED;
    }
}
