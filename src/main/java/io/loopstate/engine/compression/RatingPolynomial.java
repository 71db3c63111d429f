package io.loopstate.engine.compression;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import java.util.List;
import java.util.Objects;

/**
 * A polynomial of ten terms over suction and discharge dew temperature, in the units it is printed in: those of the temperatures
 * and of the value come as scales to SI, so that its coefficients stay as they are. Source: AHRI 540, EN 12900 (from memory).
 *
 * @param coefficients ten
 * @param order which term each belongs to
 * @param degree K in one degree of its temperatures
 * @param zero K at the zero of its temperatures
 * @param unit SI units in one unit of its value
 */
public record RatingPolynomial(
        List<Double> coefficients, CoefficientOrder order, double degree, double zero, double unit) {
    public RatingPolynomial {
        coefficients = List.copyOf(coefficients);
        Objects.requireNonNull(order);
        if (coefficients.size() != CoefficientOrder.COUNT) {
            throw EngineException.of(
                    ErrorCode.IMPOSSIBLE_VALUE,
                    "A rating polynomial has ten coefficients.",
                    "coefficients",
                    coefficients.size(),
                    CoefficientOrder.COUNT,
                    CoefficientOrder.COUNT);
        }
    }

    /** The value, SI, at suction and discharge dew temperature (K). */
    public double at(double suction, double discharge) {
        double s = (suction - zero) / degree;
        double d = (discharge - zero) / degree;
        double sum = 0;
        for (int k = 0; k < CoefficientOrder.COUNT; k++) {
            sum += coefficients.get(k) * Math.pow(s, order.suctionPower(k)) * Math.pow(d, order.dischargePower(k));
        }
        return sum * unit;
    }
}
