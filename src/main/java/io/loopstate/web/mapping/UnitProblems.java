package io.loopstate.web.mapping;

import io.loopstate.units.UnitFault;
import io.loopstate.units.UnitFaultCode;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.ProblemKind;
import java.util.Locale;

/** What a fault of a quantity is to a client. */
final class UnitProblems {
    private UnitProblems() {}

    /** Unreadable, or readable and impossible; a new code does not compile until it is placed here. */
    static ProblemKind kind(UnitFaultCode code) {
        return switch (code) {
            case NUMBER_MISSING,
                    NUMBER_MALFORMED,
                    NUMBER_NOT_FINITE,
                    DECIMAL_COMMA,
                    DECIMAL_POINT,
                    GROUPING_SEPARATOR,
                    TEXT_TOO_LONG,
                    UNIT_MISSING,
                    UNKNOWN_UNIT,
                    AMBIGUOUS_UNIT,
                    UNIT_OF_ANOTHER_KIND,
                    GAUGE_OR_ABSOLUTE_MISSING,
                    UNKNOWN_UNIT_SYSTEM,
                    UNKNOWN_KIND,
                    SELECTION_MALFORMED -> ProblemKind.INVALID_REQUEST;
            case PRESSURE_BELOW_ABSOLUTE_ZERO,
                    VACUUM_BELOW_ABSOLUTE_ZERO,
                    VACUUM_NEGATIVE,
                    TEMPERATURE_BELOW_ABSOLUTE_ZERO -> ProblemKind.IMPOSSIBLE_INPUT;
            case ALTITUDE_OUT_OF_RANGE, ATMOSPHERIC_PRESSURE_OUT_OF_RANGE -> ProblemKind.OUT_OF_RANGE;
        };
    }

    /** The fault at the place of the value. */
    static Fault fault(Given given, UnitFault fault) {
        String code = fault.code().name().toLowerCase(Locale.ROOT).replace('_', '-');
        return given.place()
                .fault(code, fault.getMessage())
                .withGot(given.words())
                .withAllowed(orAbsent(fault.allowed()))
                .withHint(orAbsent(fault.hint()));
    }

    private static String orAbsent(String text) {
        return text.isEmpty() ? null : text;
    }
}
