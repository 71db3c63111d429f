package io.loopstate.engine.compression;

import io.loopstate.engine.cycle.Basis;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.FindingCode;
import io.loopstate.engine.cycle.Findings;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.cycle.QuantityKind;
import io.loopstate.engine.cycle.Severity;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.cycle.Working;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * The ten coefficients of a rating polynomial from tabulated points, by least squares. Temperatures are moved and scaled to -1 to
 * 1 for the solution, by Householder QR, so that the conditioning is that of the points and not of the scale; the coefficients
 * are then those of the temperatures as given.
 */
public final class RatingFit {
    /** Above this the points do not fix ten coefficients. */
    private static final double SINGULAR = 1e8;
    /** Above this they hardly do. */
    private static final double POOR = 1e3;

    private RatingFit() {}

    /**
     * The fit.
     *
     * @throws EngineException {@code CONTRADICTORY_INPUTS} for fewer than ten points or points that do not fix ten coefficients
     */
    public static Result calculate(Spec spec) {
        int count = spec.values().size();
        requireLengths(spec, count);
        Scale suction = Scale.of(spec.suction());
        Scale discharge = Scale.of(spec.discharge());
        RealMatrix matrix = new Array2DRowRealMatrix(count, CoefficientOrder.COUNT);
        for (int row = 0; row < count; row++) {
            double s = suction.to(spec.suction().get(row));
            double d = discharge.to(spec.discharge().get(row));
            for (int k = 0; k < CoefficientOrder.COUNT; k++) {
                matrix.setEntry(
                        row,
                        k,
                        power(s, spec.order().suctionPower(k))
                                * power(d, spec.order().dischargePower(k)));
            }
        }
        SingularValueDecomposition singular = new SingularValueDecomposition(matrix);
        double condition = singular.getConditionNumber();
        if (!(condition < SINGULAR)) {
            throw FitPoints.of(spec).undetermined(singular.getRank(), condition);
        }
        double[] right = spec.values().stream().mapToDouble(Double::doubleValue).toArray();
        double[] scaled = new QRDecomposition(matrix)
                .getSolver()
                .solve(new ArrayRealVector(right, false))
                .toArray();
        List<Double> coefficients = expand(spec.order(), scaled, suction, discharge);
        return result(spec, coefficients, condition);
    }

    private static Result result(Spec spec, List<Double> coefficients, double condition) {
        RatingPolynomial polynomial = new RatingPolynomial(coefficients, spec.order(), 1, 0, 1);
        List<Double> residuals = new ArrayList<>();
        double squares = 0;
        double greatest = 0;
        double relative = 0;
        double mean = spec.values().stream()
                .mapToDouble(Double::doubleValue)
                .average()
                .orElseThrow();
        double spread = 0;
        for (int k = 0; k < spec.values().size(); k++) {
            double value = spec.values().get(k);
            double residual = value
                    - polynomial.at(spec.suction().get(k), spec.discharge().get(k));
            residuals.add(residual);
            squares += residual * residual;
            greatest = Math.max(greatest, Math.abs(residual));
            relative = value == 0 ? relative : Math.max(relative, Math.abs(residual / value));
            spread += (value - mean) * (value - mean);
        }
        if (!Double.isFinite(squares + spread)) {
            throw EngineException.of(
                    ErrorCode.IMPOSSIBLE_VALUE,
                    "These values are too large to be fitted.",
                    "values",
                    greatest,
                    Double.NaN,
                    Double.NaN);
        }
        int freedom = spec.values().size() - CoefficientOrder.COUNT;
        Findings findings = new Findings(spec.guidance());
        if (freedom == 0) {
            findings.add(
                    FindingCode.ILL_CONDITIONED,
                    Severity.CAUTION,
                    "values",
                    "Ten points fix ten coefficients exactly: errors of the points are fitted too, and nothing shows how good the"
                            + " fit is.",
                    Basis.DEFINITION);
        }
        if (condition > POOR) {
            findings.add(
                    FindingCode.ILL_CONDITIONED,
                    Severity.CAUTION,
                    "suctionTemperatures",
                    "The points hardly fix ten coefficients; the value is the condition number of the scaled problem.",
                    QuantityKind.RATIO,
                    condition,
                    POOR,
                    "choice of this engine, no source");
        }
        return new Result(
                coefficients,
                residuals,
                Math.sqrt(squares / spec.values().size()),
                greatest,
                relative,
                spread == 0 ? 1 : 1 - squares / spread,
                condition,
                freedom,
                findings.toList(),
                spec.explain() ? steps(Math.sqrt(squares / spec.values().size()), condition) : List.of());
    }

    private static List<Step> steps(double rootMeanSquare, double condition) {
        Working working = new Working();
        working.formula(
                "conditioning of the points, temperatures scaled to -1 to 1",
                "kappa = sigma_max / sigma_min",
                "singular values of the matrix of terms",
                Working.ratio("kappa", condition));
        working.formula(
                "coefficients of least squares by Householder QR; what is left",
                "rms = sqrt(sum (x - sum c_k S^i D^j)^2 / N)",
                MapRating.POLYNOMIAL,
                Working.ratio("rms", rootMeanSquare));
        return working.toList();
    }

    private static void requireLengths(Spec spec, int count) {
        if (spec.suction().size() != count || spec.discharge().size() != count) {
            throw EngineException.of(
                    ErrorCode.CONTRADICTORY_INPUTS,
                    "Each value belongs to one suction and one discharge temperature: the three lists have the same length.",
                    spec.suction().size() == count ? "dischargeTemperatures" : "suctionTemperatures",
                    spec.suction().size() == count
                            ? spec.discharge().size()
                            : spec.suction().size(),
                    count,
                    count);
        }
        FitPoints points = FitPoints.of(spec);
        points.requireFinite();
        points.requireEnough();
    }

    /** Coefficients over s and d from those over (s - a)/b and (d - c)/e, by the binomial theorem. */
    private static List<Double> expand(CoefficientOrder order, double[] scaled, Scale suction, Scale discharge) {
        List<Double> coefficients = new ArrayList<>();
        for (int k = 0; k < CoefficientOrder.COUNT; k++) {
            double sum = 0;
            for (int j = 0; j < CoefficientOrder.COUNT; j++) {
                sum += scaled[j]
                        * suction.part(order.suctionPower(j), order.suctionPower(k))
                        * discharge.part(order.dischargePower(j), order.dischargePower(k));
            }
            coefficients.add(sum);
        }
        return coefficients;
    }

    private static double power(double base, int exponent) {
        double product = 1;
        for (int k = 0; k < exponent; k++) {
            product *= base;
        }
        return product;
    }

    /** The move to -1 to 1. */
    private record Scale(double middle, double half) {
        static Scale of(List<Double> values) {
            double low = values.stream().mapToDouble(Double::doubleValue).min().orElse(0);
            double high = values.stream().mapToDouble(Double::doubleValue).max().orElse(0);
            return new Scale((low + high) / 2, high > low ? (high - low) / 2 : 1);
        }

        double to(double value) {
            return (value - middle) / half;
        }

        /** Factor of x^to in ((x - middle)/half)^from. */
        double part(int from, int to) {
            if (to > from) {
                return 0;
            }
            double binomial = 1;
            for (int k = 0; k < to; k++) {
                binomial = binomial * (from - k) / (k + 1);
            }
            return binomial * power(-middle, from - to) / power(half, from);
        }
    }

    /**
     * Points, in the units of the table.
     *
     * @param suction dew temperatures
     * @param discharge dew temperatures
     * @param values one for each pair
     * @param order of the coefficients wanted
     * @param guidance limits for the findings
     * @param explain whether the result shows its working
     */
    public record Spec(
            List<Double> suction,
            List<Double> discharge,
            List<Double> values,
            CoefficientOrder order,
            Guidance guidance,
            boolean explain) {
        public Spec {
            suction = List.copyOf(suction);
            discharge = List.copyOf(discharge);
            values = List.copyOf(values);
        }
    }

    /**
     * The fit, in the units of the table.
     *
     * @param coefficients in the order asked for
     * @param residuals value less polynomial, in the order of the points
     * @param rootMeanSquare of the residuals
     * @param maxResidual greatest
     * @param maxRelativeResidual greatest, as a share of the value
     * @param determination share of the spread that the fit explains, 1 for all of it
     * @param conditionNumber of the problem with temperatures scaled to -1 to 1
     * @param degreesOfFreedom points beyond ten
     * @param findings what is worth knowing
     * @param steps the working; empty unless asked for
     */
    public record Result(
            List<Double> coefficients,
            List<Double> residuals,
            double rootMeanSquare,
            double maxResidual,
            double maxRelativeResidual,
            double determination,
            double conditionNumber,
            int degreesOfFreedom,
            List<Finding> findings,
            List<Step> steps) {
        public Result {
            steps = List.copyOf(steps);
            coefficients = List.copyOf(coefficients);
            residuals = List.copyOf(residuals);
            findings = List.copyOf(findings);
        }
    }
}
