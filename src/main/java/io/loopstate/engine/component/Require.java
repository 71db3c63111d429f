package io.loopstate.engine.component;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import java.util.OptionalDouble;

/** Checks of inputs that stand for themselves, whatever the refrigerant. Each throws {@code IMPOSSIBLE_VALUE}. */
public final class Require {
    /** SI, of whatever kind: smaller or larger than this is no machine, and products of several stay finite. */
    private static final double SMALLEST = 1e-15;

    private static final double LARGEST = 1e15;
    /** The same of an efficiency. */
    private static final double LEAST_EFFICIENCY = 1e-6;

    private Require() {}

    /** Above zero and of a size that something can have. */
    public static void positive(String input, double value) {
        check(value > 0 && !Double.isNaN(value), input, "The value must be above zero.", value, 0, Double.NaN);
        check(
                value >= SMALLEST && value <= LARGEST,
                input,
                "Nothing is of this size: check the number and its unit.",
                value,
                SMALLEST,
                LARGEST);
    }

    /** As above, where given. */
    public static void positive(String input, OptionalDouble value) {
        value.ifPresent(number -> positive(input, number));
    }

    /** Zero or more and finite. */
    public static void notNegative(String input, double value) {
        check(value >= 0 && Double.isFinite(value), input, "The value must not be negative.", value, 0, Double.NaN);
    }

    /** A number. */
    public static void finite(String input, double value) {
        check(Double.isFinite(value), input, "The value must be a number.", value, Double.NaN, Double.NaN);
    }

    /** One millionth to 1. */
    public static void efficiency(String input, double value) {
        check(value > 0 && value <= 1, input, "An efficiency is above 0 and at most 1.", value, 0, 1);
        check(
                value >= LEAST_EFFICIENCY,
                input,
                "Nothing is as inefficient: check the number.",
                value,
                LEAST_EFFICIENCY,
                1);
    }

    /** As above, where given. */
    public static void efficiency(String input, OptionalDouble value) {
        value.ifPresent(number -> efficiency(input, number));
    }

    /** 0 to below 1. */
    public static void properShare(String input, double value) {
        check(value >= 0 && value < 1, input, "The share is 0 or more and below 1.", value, 0, 1);
    }

    private static void check(
            boolean possible, String input, String message, double value, double lower, double upper) {
        if (!possible) {
            throw EngineException.of(ErrorCode.IMPOSSIBLE_VALUE, message, input, value, lower, upper);
        }
    }
}
