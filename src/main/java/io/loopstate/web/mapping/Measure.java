package io.loopstate.web.mapping;

import io.loopstate.units.QuantityKind;
import io.loopstate.units.UnitToken;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers of one kind on a chart: the same as in the reply, and their text with as many decimals as can be read off. */
record Measure(Output out, QuantityKind kind) {
    private static final int DIGITS = 4;

    /** The number in the unit of the reply. */
    double of(double si) {
        return out.units().fromSi(kind, si, out.atmosphere()).value();
    }

    /** Back from the unit of the reply. */
    double si(double value) {
        return unit().toSi(value, out.atmosphere());
    }

    UnitToken unit() {
        return out.units().unitFor(kind);
    }

    String symbol() {
        return unit().symbol();
    }

    /** Number and unit: four digits, temperatures one decimal. */
    String words(double si) {
        return number(si) + '\u00a0' + symbol();
    }

    String number(double si) {
        double value = of(si);
        return kind == QuantityKind.TEMPERATURE || kind == QuantityKind.TEMPERATURE_DIFFERENCE
                ? plain(value, 1)
                : figures(value);
    }

    /** Four digits, none of them after the point of a number that has as many before it. */
    static String figures(double value) {
        int before = value == 0 ? 1 : (int) Math.floor(Math.log10(Math.abs(value))) + 1;
        return plain(value, Math.min(8, Math.max(0, DIGITS - before)));
    }

    private static String plain(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
        return (rounded.signum() == 0 ? BigDecimal.ZERO.setScale(decimals) : rounded).toPlainString();
    }
}
