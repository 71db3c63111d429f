package io.loopstate.web.mapping;

import io.loopstate.web.dto.Quantity;
import java.util.OptionalDouble;

/** Members of a request that was read, in SI. */
final class Si {
    private Si() {}

    static OptionalDouble optional(Quantity quantity) {
        return quantity == null ? OptionalDouble.empty() : OptionalDouble.of(quantity.value());
    }

    static OptionalDouble optional(Double number) {
        return number == null ? OptionalDouble.empty() : OptionalDouble.of(number);
    }

    static double orZero(Quantity quantity) {
        return quantity == null ? 0 : quantity.value();
    }

    static double orZero(Double number) {
        return number == null ? 0 : number;
    }
}
