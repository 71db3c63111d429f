package io.loopstate.engine.component;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;

/**
 * The state in which the refrigerant leaves a heat exchanger whose outlet pressure is known.
 *
 * @param given {@code SUPERHEAT}, {@code SUBCOOLING}, {@code TEMPERATURE} or {@code VAPOR_QUALITY}
 * @param value K, K, K or kg/kg
 */
public record OutletCondition(Variable given, double value) {
    public OutletCondition {
        boolean possible = switch (given) {
            case SUPERHEAT, SUBCOOLING -> value >= 0;
            case TEMPERATURE -> value > 0;
            case VAPOR_QUALITY -> value >= 0 && value <= 1;
            default -> throw new IllegalArgumentException(given + " is no outlet condition");
        };
        if (!possible || Double.isInfinite(value)) {
            throw EngineException.of(
                    ErrorCode.IMPOSSIBLE_VALUE,
                    "The value is negative or not a number, or a quality above 1.",
                    given,
                    value,
                    0,
                    given == Variable.VAPOR_QUALITY ? 1 : Double.NaN);
        }
    }

    /** K above the dew point. */
    public static OutletCondition superheat(double kelvin) {
        return new OutletCondition(Variable.SUPERHEAT, kelvin);
    }

    /** K below the bubble point. */
    public static OutletCondition subcooling(double kelvin) {
        return new OutletCondition(Variable.SUBCOOLING, kelvin);
    }

    /** K. */
    public static OutletCondition temperature(double kelvin) {
        return new OutletCondition(Variable.TEMPERATURE, kelvin);
    }

    /** Mass of vapor per mass of mixture. */
    public static OutletCondition quality(double share) {
        return new OutletCondition(Variable.VAPOR_QUALITY, share);
    }
}
