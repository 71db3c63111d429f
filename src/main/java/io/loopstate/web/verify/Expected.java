package io.loopstate.web.verify;

import com.fasterxml.jackson.core.JsonPointer;
import io.loopstate.units.UnitToken;
import java.util.Optional;

/**
 * What is expected at one place of a reply: a number with tolerances, or words.
 *
 * @param pointer place in the reply
 * @param number the number; empty for words
 * @param words a text or a truth value; empty for a number
 */
public record Expected(JsonPointer pointer, Optional<Number> number, Optional<Words> words) {

    /**
     * A number.
     *
     * @param value the reference
     * @param unit of the value; empty for a plain number
     * @param absolute largest difference, in steps of the unit
     * @param relative largest difference over |value|
     */
    public record Number(double value, Optional<UnitToken> unit, double absolute, double relative) {}

    /**
     * Words.
     *
     * @param text the text, or {@code true} or {@code false}
     * @param flag whether it is a truth value
     */
    public record Words(String text, boolean flag) {}

    static Expected number(JsonPointer pointer, Number number) {
        return new Expected(pointer, Optional.of(number), Optional.empty());
    }

    static Expected words(JsonPointer pointer, Words words) {
        return new Expected(pointer, Optional.empty(), Optional.of(words));
    }
}
