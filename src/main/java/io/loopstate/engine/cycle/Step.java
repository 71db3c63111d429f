package io.loopstate.engine.cycle;

import java.util.List;
import java.util.Objects;

/**
 * One step of a worked calculation.
 *
 * @param name what is computed, in words
 * @param formula ASCII, in the symbols of the terms, e.g. {@code h2 = h1 + (h2s - h1) / eta}
 * @param inputs the numbers put in, in the order of the formula
 * @param result what comes out
 * @param source where the formula or the value comes from
 */
public record Step(String name, String formula, List<Term> inputs, Term result, String source) {
    /**
     * A number in a step.
     *
     * @param symbol as in the formula
     * @param value SI
     * @param kind what it is
     */
    public record Term(String symbol, double value, QuantityKind kind) {
        public Term {
            Objects.requireNonNull(symbol);
            Objects.requireNonNull(kind);
        }
    }

    public Step {
        Objects.requireNonNull(name);
        Objects.requireNonNull(formula);
        Objects.requireNonNull(result);
        Objects.requireNonNull(source);
        inputs = List.copyOf(inputs);
    }
}
