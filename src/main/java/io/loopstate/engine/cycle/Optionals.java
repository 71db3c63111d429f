package io.loopstate.engine.cycle;

import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;

/** What {@link OptionalDouble} lacks. */
final class Optionals {
    private Optionals() {}

    static OptionalDouble map(OptionalDouble value, DoubleUnaryOperator function) {
        return value.isPresent()
                ? OptionalDouble.of(function.applyAsDouble(value.getAsDouble()))
                : OptionalDouble.empty();
    }

    /** Of two values, empty unless both are there. */
    static OptionalDouble both(OptionalDouble first, OptionalDouble second, DoubleBinaryOperator function) {
        return first.isPresent() && second.isPresent()
                ? OptionalDouble.of(function.applyAsDouble(first.getAsDouble(), second.getAsDouble()))
                : OptionalDouble.empty();
    }

    static OptionalDouble or(OptionalDouble first, OptionalDouble second) {
        return first.isPresent() ? first : second;
    }

    static OptionalDouble when(boolean condition, double value) {
        return condition ? OptionalDouble.of(value) : OptionalDouble.empty();
    }
}
