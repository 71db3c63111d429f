package io.loopstate.engine.compression;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Where a rating map holds: dew temperatures between limits, inside a polygon, and pressures between limits. Infinite where there
 * is no limit; all that are given hold.
 *
 * @param minSuction K
 * @param maxSuction K
 * @param minDischarge K
 * @param maxDischarge K
 * @param corners of the polygon, in order around it; none or three and more
 * @param pressures limits of the pressures
 */
public record Envelope(
        double minSuction,
        double maxSuction,
        double minDischarge,
        double maxDischarge,
        List<Corner> corners,
        Pressures pressures) {
    /** Rounding of a unit or of a pressure, K or relative. */
    private static final double SLACK = 1e-6;

    public Envelope {
        corners = List.copyOf(corners);
        Objects.requireNonNull(pressures);
        requireOrder("minSuctionTemperature", minSuction, maxSuction);
        requireOrder("minDischargeTemperature", minDischarge, maxDischarge);
        if (!corners.isEmpty()) {
            Polygon.require(corners);
        }
    }

    /** Limits of the dew temperatures alone, K. */
    public Envelope(double minSuction, double maxSuction, double minDischarge, double maxDischarge) {
        this(minSuction, maxSuction, minDischarge, maxDischarge, List.of(), Pressures.unlimited());
    }

    /** A corner of the polygon: dew temperatures at suction and discharge, K. */
    public record Corner(double suction, double discharge) {}

    /**
     * Limits of pressures, Pa absolute, and of their ratio.
     *
     * @param minSuction Pa
     * @param maxSuction Pa
     * @param minDischarge Pa
     * @param maxDischarge Pa
     * @param minRatio discharge over suction
     * @param maxRatio discharge over suction
     */
    public record Pressures(
            double minSuction,
            double maxSuction,
            double minDischarge,
            double maxDischarge,
            double minRatio,
            double maxRatio) {
        public Pressures {
            requireOrder("minSuctionPressure", minSuction, maxSuction);
            requireOrder("minDischargePressure", minDischarge, maxDischarge);
            requireOrder("minPressureRatio", minRatio, maxRatio);
        }

        private Optional<Breach> breach(double suction, double discharge) {
            return beyond(
                            Breach.Measure.PRESSURE,
                            "SuctionPressure",
                            "The pressure at the suction",
                            suction,
                            minSuction,
                            maxSuction)
                    .or(() -> beyond(
                            Breach.Measure.PRESSURE,
                            "DischargePressure",
                            "The pressure at the discharge",
                            discharge,
                            minDischarge,
                            maxDischarge))
                    .or(() -> beyond(
                            Breach.Measure.RATIO,
                            "PressureRatio",
                            "The pressure ratio",
                            discharge / suction,
                            minRatio,
                            maxRatio));
        }

        /** Without limits. */
        public static Pressures unlimited() {
            double none = Double.POSITIVE_INFINITY;
            return new Pressures(-none, none, -none, none, -none, none);
        }
    }

    /** Without limits. */
    public static Envelope unlimited() {
        double none = Double.POSITIVE_INFINITY;
        return new Envelope(-none, none, -none, none);
    }

    /** Whether a dew temperature at the suction (K) lies inside the limits of temperature. */
    public boolean holdsSuction(double kelvin) {
        return holds(kelvin, minSuction, maxSuction, SLACK);
    }

    /** Whether a dew temperature at the discharge (K) lies inside the limits of temperature. */
    public boolean holdsDischarge(double kelvin) {
        return holds(kelvin, minDischarge, maxDischarge, SLACK);
    }

    /**
     * The first limit that a point does not keep; empty inside.
     *
     * @param suctionDew K
     * @param dischargeDew K
     * @param suction Pa
     * @param discharge Pa
     */
    public Optional<Breach> breach(double suctionDew, double dischargeDew, double suction, double discharge) {
        return beyond(
                        Breach.Measure.TEMPERATURE,
                        "SuctionTemperature",
                        "The dew temperature at the suction",
                        suctionDew,
                        minSuction,
                        maxSuction)
                .or(() -> beyond(
                        Breach.Measure.TEMPERATURE,
                        "DischargeTemperature",
                        "The dew temperature at the discharge",
                        dischargeDew,
                        minDischarge,
                        maxDischarge))
                .or(() -> corners.isEmpty() ? Optional.empty() : Polygon.breach(corners, suctionDew, dischargeDew))
                .or(() -> pressures.breach(suction, discharge));
    }

    /** A breach of a pair of limits named {@code min...} and {@code max...}; slack is in kelvin, else a share. */
    private static Optional<Breach> beyond(
            Breach.Measure measure, String member, String subject, double got, double least, double most) {
        double slack = measure == Breach.Measure.TEMPERATURE ? SLACK : SLACK * got;
        if (holds(got, least, most, slack)) {
            return Optional.empty();
        }
        return Optional.of(new Breach(
                measure,
                member.startsWith("Suction"),
                (got < least ? "min" : "max") + member,
                subject + " lies outside the envelope of the rating map",
                got,
                least,
                most));
    }

    static boolean holds(double value, double least, double most, double slack) {
        return value >= least - slack && value <= most + slack;
    }

    private static void requireOrder(String input, double least, double most) {
        if (!(least <= most)) {
            throw EngineException.of(
                    ErrorCode.CONTRADICTORY_INPUTS,
                    "The lower limit of an envelope lies below the upper one.",
                    "map.envelope." + input,
                    least,
                    Double.NaN,
                    most);
        }
    }

    /**
     * A limit that is not kept.
     *
     * @param measure what the numbers are: K, Pa or a ratio
     * @param suction whether it is about the suction rather than the discharge
     * @param member of the envelope, as a request names it
     * @param message plain English, without the final period
     * @param got value
     * @param lower limit, infinite where there is none
     * @param upper limit, infinite where there is none
     */
    public record Breach(
            Measure measure, boolean suction, String member, String message, double got, double lower, double upper) {
        /** What the numbers are. */
        public enum Measure {
            /** K. */
            TEMPERATURE,
            /** Pa. */
            PRESSURE,
            /** Without a unit. */
            RATIO
        }

        /** Name of the port. */
        public String port() {
            return suction ? "suction" : "discharge";
        }

        /** The limit that is not kept. */
        public double limit() {
            return got < lower ? lower : upper;
        }
    }
}
