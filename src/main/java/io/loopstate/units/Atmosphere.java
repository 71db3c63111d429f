package io.loopstate.units;

import java.util.Locale;
import java.util.OptionalDouble;

/**
 * The surrounding air, from which gauge and vacuum readings are counted. Immutable.
 *
 * <p>Source: U.S. Standard Atmosphere, 1976 (NOAA-S/T 76-1562), layer 0 to 11 km of geopotential altitude, in the
 * closed form of ASHRAE Handbook Fundamentals 2017, chapter 1, equation 3, with one more digit in the exponent.
 */
public final class Atmosphere {
    /** Pressure of the standard atmosphere at sea level, Pa. */
    public static final double STANDARD_PRESSURE = 101_325.0;
    /** Lowest altitude of the formula, m. */
    public static final double LOWEST_ALTITUDE = -500.0;
    /** Highest altitude of the formula, m: the tropopause of the standard atmosphere. */
    public static final double HIGHEST_ALTITUDE = 11_000.0;
    /** Lowest atmospheric pressure accepted, Pa; the standard atmosphere has 22.6 kPa at 11 000 m. */
    public static final double LOWEST_PRESSURE = 20_000.0;
    /** Highest atmospheric pressure accepted, Pa; the standard atmosphere has 107.5 kPa at -500 m. */
    public static final double HIGHEST_PRESSURE = 120_000.0;

    /** Temperature lapse rate over sea-level temperature, 0.0065 K/m over 288.15 K, as printed; 1/m. */
    private static final double LAPSE = 2.25577e-5;
    /** g0 M / (R L) of the standard atmosphere. */
    private static final double EXPONENT = 5.25588;
    /** Earth's radius of the standard atmosphere, m. */
    private static final double EARTH_RADIUS = 6_356_766.0;

    private static final Atmosphere STANDARD = new Atmosphere(STANDARD_PRESSURE, Origin.STANDARD, Double.NaN);

    /** How the pressure is known. */
    public enum Origin {
        /** Nothing was said: the standard atmosphere at sea level. */
        STANDARD,
        /** Worked out from an altitude. */
        ALTITUDE,
        /** Read from a barometer. */
        BAROMETER
    }

    private final double pressure;
    private final Origin origin;
    private final double altitude;

    private Atmosphere(double pressure, Origin origin, double altitude) {
        this.pressure = pressure;
        this.origin = origin;
        this.altitude = altitude;
    }

    /** The standard atmosphere at sea level, 101.325 kPa. */
    public static Atmosphere standard() {
        return STANDARD;
    }

    /**
     * The atmosphere at a measured absolute pressure: the station pressure, not the one that weather reports reduce to
     * sea level.
     *
     * @param pressure Pa, 20 000 to 120 000
     * @throws UnitFault {@link UnitFaultCode#ATMOSPHERIC_PRESSURE_OUT_OF_RANGE}
     */
    public static Atmosphere ofPressure(double pressure) {
        if (!(pressure >= LOWEST_PRESSURE && pressure <= HIGHEST_PRESSURE)) {
            throw UnitFault.of(
                    UnitFaultCode.ATMOSPHERIC_PRESSURE_OUT_OF_RANGE,
                    "No barometer shows an atmospheric pressure of " + Numbers.brief(pressure / 1000) + " kPa.",
                    Numbers.brief(pressure / 1000) + " kPa_a",
                    "20 to 120 kPa_a",
                    "Give the station pressure, for example \"29.92 inHg_a\" or \"101.3 kPa_a\", or the altitude.");
        }
        return new Atmosphere(pressure, Origin.BAROMETER, Double.NaN);
    }

    /**
     * The atmosphere at a barometer's reading, which must be absolute.
     *
     * @throws UnitFault {@link UnitFaultCode#ATMOSPHERIC_PRESSURE_OUT_OF_RANGE}
     */
    public static Atmosphere ofReading(Reading reading) {
        if (reading.unit().reference() != PressureReference.ABSOLUTE) {
            throw UnitFault.of(
                    UnitFaultCode.ATMOSPHERIC_PRESSURE_OUT_OF_RANGE,
                    "The atmospheric pressure must be absolute: gauge readings are counted from it.",
                    reading.toString(),
                    "20 to 120 kPa_a",
                    "Use an absolute unit such as inHg_a, psia, kPa_a or mbar_a.");
        }
        return ofPressure(reading.toSi(STANDARD));
    }

    /**
     * The standard atmosphere at an altitude, {@code p = 101325 (1 - 2.25577e-5 h)^5.25588}.
     *
     * @param altitude geopotential altitude, m, -500 to 11 000; a building's height above sea level serves, it differs
     *     by less than 0.06 % of the pressure up to 5000 m
     * @throws UnitFault {@link UnitFaultCode#ALTITUDE_OUT_OF_RANGE}
     */
    public static Atmosphere atAltitude(double altitude) {
        if (!(altitude >= LOWEST_ALTITUDE && altitude <= HIGHEST_ALTITUDE)) {
            throw UnitFault.of(
                    UnitFaultCode.ALTITUDE_OUT_OF_RANGE,
                    "An altitude of " + Numbers.brief(altitude)
                            + " m is outside the range of the standard atmosphere used here.",
                    Numbers.brief(altitude) + " m",
                    "-500 to 11000 m (-1640 to 36089 ft)",
                    "Check the unit of the altitude, or give the atmospheric pressure.");
        }
        double pressure = STANDARD_PRESSURE * Math.pow(1.0 - LAPSE * altitude, EXPONENT);
        return new Atmosphere(pressure, Origin.ALTITUDE, altitude);
    }

    /** The geopotential altitude, m, of a geometric altitude, m: {@code r z / (r + z)} with r = 6 356 766 m. */
    public static double geopotential(double geometricAltitude) {
        return EARTH_RADIUS * geometricAltitude / (EARTH_RADIUS + geometricAltitude);
    }

    /** Absolute pressure, Pa. */
    public double pressure() {
        return pressure;
    }

    /** How the pressure is known. */
    public Origin origin() {
        return origin;
    }

    /** The altitude from which it was worked out, m; empty else. */
    public OptionalDouble altitude() {
        return origin == Origin.ALTITUDE ? OptionalDouble.of(altitude) : OptionalDouble.empty();
    }

    /** In words: "standard atmosphere 101.325 kPa", "altitude 1609 m: 83.436 kPa", "barometer 98.2 kPa". */
    public String describe() {
        String kilopascals = Numbers.brief(Math.round(pressure) / 1000.0) + " kPa";
        return switch (origin) {
            case STANDARD -> "standard atmosphere " + kilopascals;
            case ALTITUDE -> String.format(Locale.ROOT, "altitude %.0f m: %s", altitude, kilopascals);
            case BAROMETER -> "barometer " + kilopascals;
        };
    }

    /** The same words as {@link #describe()}. */
    @Override
    public String toString() {
        return describe();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Atmosphere that
                && Double.compare(pressure, that.pressure) == 0
                && origin == that.origin
                && Double.compare(altitude, that.altitude) == 0;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(pressure) * 31 + origin.ordinal();
    }
}
