package io.loopstate.engine.cycle;

import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;

/** What {@link OptionalDouble} lacks. */
public final class Optionals {
    private Optionals() {}

    /** Of a value, where there is one. */
    public static OptionalDouble map(OptionalDouble value, DoubleUnaryOperator function) {
        return value.isPresent()
                ? OptionalDouble.of(function.applyAsDouble(value.getAsDouble()))
                : OptionalDouble.empty();
    }

    /** Of two values, empty unless both are there. */
    public static OptionalDouble both(OptionalDouble first, OptionalDouble second, DoubleBinaryOperator function) {
        return first.isPresent() && second.isPresent()
                ? OptionalDouble.of(function.applyAsDouble(first.getAsDouble(), second.getAsDouble()))
                : OptionalDouble.empty();
    }

    /** The first that is there. */
    public static OptionalDouble or(OptionalDouble first, OptionalDouble second) {
        return first.isPresent() ? first : second;
    }

    /** A value under a condition. */
    public static OptionalDouble when(boolean condition, double value) {
        return condition ? OptionalDouble.of(value) : OptionalDouble.empty();
    }
}
