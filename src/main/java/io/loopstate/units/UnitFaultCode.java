package io.loopstate.units;

/** Why a quantity was refused. The names are part of the contract with clients. */
public enum UnitFaultCode {
    /** No number where one was expected. */
    NUMBER_MISSING,
    /** Not a decimal number: hexadecimal, two decimal marks, foreign digits. */
    NUMBER_MALFORMED,
    /** NaN, infinity, or a number too large or too small for a double. */
    NUMBER_NOT_FINITE,
    /** {@code 41,5} where the decimal mark is a point. */
    DECIMAL_COMMA,
    /** {@code 41.5} where the caller has declared a decimal comma. */
    DECIMAL_POINT,
    /** {@code 1,234.5}, {@code 1 234} or {@code 1'234}. */
    GROUPING_SEPARATOR,
    /** Longer than any quantity can be. */
    TEXT_TOO_LONG,
    /** A number without its unit. */
    UNIT_MISSING,
    /** A unit nobody knows. */
    UNKNOWN_UNIT,
    /** A unit that means different things to different people. */
    AMBIGUOUS_UNIT,
    /** A unit of another kind of quantity. */
    UNIT_OF_ANOTHER_KIND,
    /** A pressure that does not say what it is counted from. */
    GAUGE_OR_ABSOLUTE_MISSING,
    /** An absolute pressure below zero, given or found from a gauge reading. */
    PRESSURE_BELOW_ABSOLUTE_ZERO,
    /** A vacuum reading deeper than the surrounding atmosphere. */
    VACUUM_BELOW_ABSOLUTE_ZERO,
    /** A vacuum reading with a minus sign. */
    VACUUM_NEGATIVE,
    /** A temperature below absolute zero. */
    TEMPERATURE_BELOW_ABSOLUTE_ZERO,
    /** An altitude outside the range of the atmosphere's formula. */
    ALTITUDE_OUT_OF_RANGE,
    /** An atmospheric pressure that no barometer on a job site shows, or one that is not absolute. */
    ATMOSPHERIC_PRESSURE_OUT_OF_RANGE,
    /** Neither SI nor IP. */
    UNKNOWN_UNIT_SYSTEM,
    /** No such kind of quantity. */
    UNKNOWN_KIND,
    /** A selection of reply units that cannot be read. */
    SELECTION_MALFORMED
}
