package io.loopstate.engine.compression;

import io.loopstate.engine.component.Require;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.numerics.Roots;
import java.util.List;

/**
 * Head and efficiency of a centrifugal stage over its flow, without dimensions, so that one curve serves every speed (the fan
 * laws). Between the points a cubic that overshoots nowhere: F. N. Fritsch, J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300
 * (from memory).
 *
 * @param flowCoefficients V / (u D^2), rising
 * @param headCoefficients isentropic head of a stage over u^2; from their highest on falling
 * @param efficiencies isentropic, above 0 to 1
 */
public record HeadCurve(List<Double> flowCoefficients, List<Double> headCoefficients, List<Double> efficiencies) {
    private static final int LEAST = 3;
    private static final double TOLERANCE = 1e-14;

    public HeadCurve {
        flowCoefficients = List.copyOf(flowCoefficients);
        headCoefficients = List.copyOf(headCoefficients);
        efficiencies = List.copyOf(efficiencies);
        int size = flowCoefficients.size();
        if (size < LEAST || headCoefficients.size() != size || efficiencies.size() != size) {
            throw EngineException.of(
                    ErrorCode.CONTRADICTORY_INPUTS,
                    "A curve has three points at least, and a head and an efficiency for each flow.",
                    "flowCoefficients",
                    size,
                    LEAST,
                    Double.NaN);
        }
        for (int k = 0; k < size; k++) {
            Require.positive("flowCoefficients", flowCoefficients.get(k));
            Require.positive("headCoefficients", headCoefficients.get(k));
            Require.efficiency("efficiencies", efficiencies.get(k));
            if (k > 0 && !(flowCoefficients.get(k) > flowCoefficients.get(k - 1))) {
                throw EngineException.of(
                                ErrorCode.CONTRADICTORY_INPUTS,
                                "The points of a curve follow each other with rising flow.")
                        .about("flowCoefficients");
            }
        }
        int peak = peak(headCoefficients);
        if (peak == size - 1) {
            throw falling();
        }
        for (int k = peak + 1; k < size; k++) {
            if (!(headCoefficients.get(k) < headCoefficients.get(k - 1))) {
                throw falling();
            }
        }
    }

    private static EngineException falling() {
        return EngineException.of(
                        ErrorCode.CONTRADICTORY_INPUTS,
                        "From its highest point on the head falls with the flow: left of that the machine surges.")
                .about("headCoefficients");
    }

    private static int peak(List<Double> heads) {
        int peak = 0;
        for (int k = 1; k < heads.size(); k++) {
            peak = heads.get(k) > heads.get(peak) ? k : peak;
        }
        return peak;
    }

    /** Flow coefficient of the highest head, below which the machine surges. */
    public double surge() {
        return flowCoefficients.get(peak(headCoefficients));
    }

    /** Flow coefficient of the last point, beyond which the machine chokes. */
    public double choke() {
        return flowCoefficients.get(flowCoefficients.size() - 1);
    }

    /**
     * The flow coefficient at which a stage gives a head.
     *
     * @param headCoefficient that is needed
     * @throws EngineException {@code CONTRADICTORY_INPUTS} about {@code headCoefficients} where the machine surges or chokes
     */
    public double flow(double headCoefficient) {
        double most = headCoefficients.get(peak(headCoefficients));
        double least = headCoefficients.get(headCoefficients.size() - 1);
        if (headCoefficient > most || headCoefficient < least) {
            throw EngineException.of(
                            ErrorCode.CONTRADICTORY_INPUTS,
                            "Each stage needs a head coefficient of " + rounded(headCoefficient)
                                    + " at this tip speed; its curve holds from " + rounded(least) + " (choke) to "
                                    + rounded(most) + " (surge). "
                                    + (headCoefficient > most
                                            ? "The machine surges: it takes more speed, more stages or less lift."
                                            : "The machine chokes: it takes less speed or more lift."))
                    .about("headCoefficients");
        }
        return Roots.brent(
                flow -> at(headCoefficients, flow) - headCoefficient,
                surge(),
                choke(),
                TOLERANCE,
                "flow of an impeller");
    }

    /** Isentropic efficiency at a flow coefficient on the curve. */
    public double efficiency(double flowCoefficient) {
        return at(efficiencies, flowCoefficient);
    }

    private static double rounded(double value) {
        return Math.round(1e4 * value) / 1e4;
    }

    private double at(List<Double> values, double flow) {
        int k = 0;
        while (k < flowCoefficients.size() - 2 && flow > flowCoefficients.get(k + 1)) {
            k++;
        }
        double width = flowCoefficients.get(k + 1) - flowCoefficients.get(k);
        double t = (flow - flowCoefficients.get(k)) / width;
        double u = 1 - t;
        // Cubic of Hermite.
        return values.get(k) * u * u * (1 + 2 * t)
                + values.get(k + 1) * t * t * (3 - 2 * t)
                + width * t * u * (slope(values, k) * u - slope(values, k + 1) * t);
    }

    /** Slope at a point: the harmonic mean of its neighbors, 0 at a turn; at an end that of the side. */
    private double slope(List<Double> values, int k) {
        if (k == 0) {
            return secant(values, 0);
        }
        if (k == values.size() - 1) {
            return secant(values, k - 1);
        }
        double left = secant(values, k - 1);
        double right = secant(values, k);
        if (left * right <= 0) {
            return 0;
        }
        double before = flowCoefficients.get(k) - flowCoefficients.get(k - 1);
        double behind = flowCoefficients.get(k + 1) - flowCoefficients.get(k);
        double weight = (before + 2 * behind) / (3 * (before + behind));
        return left * right / (weight * right + (1 - weight) * left);
    }

    private double secant(List<Double> values, int k) {
        return (values.get(k + 1) - values.get(k)) / (flowCoefficients.get(k + 1) - flowCoefficients.get(k));
    }
}
