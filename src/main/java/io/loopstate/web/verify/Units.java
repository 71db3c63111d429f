package io.loopstate.web.verify;

import io.loopstate.units.QuantityKind;
import io.loopstate.units.QuantityParser;
import io.loopstate.units.Reading;
import io.loopstate.units.UnitFault;
import io.loopstate.units.UnitFaultCode;
import io.loopstate.units.UnitSystem;
import io.loopstate.units.UnitToken;
import java.util.Locale;

/** What the units of an expectation mean before its reply is known, and the units of differences. */
final class Units {
    /** Why a temperature has no relative tolerance. */
    static final String NO_RELATIVE =
            "A temperature has no relative tolerance: the zero of its scale is arbitrary, so 1 % of 50 degF is not 1 % of "
                    + "10 degC.";

    private Units() {}

    /**
     * The unit that a text means, whatever its kind.
     *
     * @throws UnitFault where no kind has such a unit
     */
    static UnitToken anyKind(String text) {
        UnitFault telling = null;
        for (QuantityKind kind : QuantityKind.values()) {
            try {
                return QuantityParser.parse(kind, 0, text).unit();
            } catch (UnitFault fault) {
                boolean unknown = fault.code() == UnitFaultCode.UNKNOWN_UNIT
                        || fault.code() == UnitFaultCode.UNIT_OF_ANOTHER_KIND;
                telling = telling == null && !unknown ? fault : telling;
            }
        }
        if (telling != null) {
            throw telling;
        }
        return UnitToken.of(text);
    }

    /** The kind of the difference of two quantities of a kind. */
    static QuantityKind ofDifferences(QuantityKind kind) {
        return switch (kind) {
            case TEMPERATURE -> QuantityKind.TEMPERATURE_DIFFERENCE;
            case PRESSURE -> QuantityKind.PRESSURE_DIFFERENCE;
            default -> kind;
        };
    }

    /** Whether a unit measures temperatures and no differences of them. */
    static boolean pointsOnly(UnitToken unit) {
        return unit.measures(QuantityKind.TEMPERATURE) && !unit.measures(QuantityKind.TEMPERATURE_DIFFERENCE);
    }

    /** The unit of a difference of two numbers in a unit. */
    static UnitToken stepOf(UnitToken unit) {
        QuantityKind differences = ofDifferences(unit.kind());
        if (unit.measures(differences)) {
            return unit;
        }
        UnitToken inchPound = differences.replyUnit(UnitSystem.IP);
        return inchPound.factor() == unit.factor()
                ? inchPound
                : differences.units().stream()
                        .filter(step -> step.factor() == unit.factor())
                        .findFirst()
                        .orElseThrow(() -> new IllegalStateException("no difference of " + unit));
    }

    /** A difference in steps of a unit. */
    static double steps(Reading difference, UnitToken unit) {
        UnitToken own = difference.unit();
        return own.factor() == unit.factor() ? difference.value() : difference.value() * own.factor() / unit.factor();
    }

    /** The code of a fault on the wire. */
    static String code(UnitFault fault) {
        return fault.code().name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
