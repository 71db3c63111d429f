package io.loopstate.engine.compression;

import io.loopstate.engine.compression.Envelope.Breach;
import io.loopstate.engine.compression.Envelope.Corner;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** An envelope drawn as a polygon over the dew temperatures at suction and discharge. */
final class Polygon {
    private static final int LEAST = 3;
    /** K, and K2 of an area. */
    private static final double SLACK = 1e-6;

    private Polygon() {}

    /** Refuses fewer than three corners, corners on one line and sides that cross. */
    static void require(List<Corner> corners) {
        if (corners.size() < LEAST) {
            throw EngineException.of(
                    ErrorCode.CONTRADICTORY_INPUTS,
                    "An envelope has three corners at least.",
                    "map.envelope.cornerSuctionTemperatures",
                    corners.size(),
                    LEAST,
                    Double.NaN);
        }
        double area = 0;
        for (int k = 0; k < corners.size(); k++) {
            area += cross(new Corner(0, 0), corners.get(k), corners.get((k + 1) % corners.size())) / 2;
        }
        if (!(Math.abs(area) > SLACK)) {
            throw refused("The corners of the envelope lie on one line.");
        }
        for (int i = 0; i < corners.size(); i++) {
            for (int j = i + 1; j < corners.size(); j++) {
                if (crossing(corners, i, j)) {
                    throw refused("The sides of the envelope cross: sides " + (i + 1) + " and " + (j + 1)
                            + ", counted from the first corner. Give the corners in order around it.");
                }
            }
        }
    }

    private static EngineException refused(String message) {
        return EngineException.of(ErrorCode.CONTRADICTORY_INPUTS, message)
                .about("map.envelope.cornerSuctionTemperatures");
    }

    private static boolean crossing(List<Corner> corners, int i, int j) {
        Corner a = corners.get(i);
        Corner b = corners.get((i + 1) % corners.size());
        Corner c = corners.get(j);
        Corner d = corners.get((j + 1) % corners.size());
        return cross(a, b, c) * cross(a, b, d) < 0 && cross(c, d, a) * cross(c, d, b) < 0;
    }

    /** Twice the area of a triangle, with the sign of its sense. */
    private static double cross(Corner a, Corner b, Corner c) {
        return (b.suction() - a.suction()) * (c.discharge() - a.discharge())
                - (b.discharge() - a.discharge()) * (c.suction() - a.suction());
    }

    /**
     * What a point outside misses. At its suction temperature the polygon allows one or more ranges of the discharge
     * temperature; the nearest is told.
     */
    static Optional<Breach> breach(List<Corner> corners, double suction, double discharge) {
        if (onSide(corners, new Corner(suction, discharge))) {
            return Optional.empty();
        }
        double least = corners.stream().mapToDouble(Corner::suction).min().orElseThrow();
        double most = corners.stream().mapToDouble(Corner::suction).max().orElseThrow();
        if (!Envelope.holds(suction, least, most, SLACK)) {
            return Optional.of(new Breach(
                    Breach.Measure.TEMPERATURE,
                    true,
                    "cornerSuctionTemperatures",
                    "The dew temperature at the suction lies outside the polygon of the envelope",
                    suction,
                    least,
                    most));
        }
        double inside = Math.min(Math.max(suction, least), most);
        List<double[]> ranges = ranges(corners, inside);
        double[] nearest = ranges.get(0);
        for (double[] range : ranges) {
            if (miss(range, discharge) < miss(nearest, discharge)) {
                nearest = range;
            }
        }
        if (miss(nearest, discharge) <= SLACK) {
            return Optional.empty();
        }
        return Optional.of(new Breach(
                Breach.Measure.TEMPERATURE,
                false,
                "cornerDischargeTemperatures",
                "The dew temperature at the discharge lies outside the polygon of the envelope at this suction",
                discharge,
                nearest[0],
                nearest[1]));
    }

    /** Whether a point lies on a side or corner, which belong to the polygon, also where it is a tip. */
    private static boolean onSide(List<Corner> corners, Corner point) {
        for (int k = 0; k < corners.size(); k++) {
            Corner a = corners.get(k);
            Corner b = corners.get((k + 1) % corners.size());
            double length = Math.hypot(b.suction() - a.suction(), b.discharge() - a.discharge());
            double along = length == 0
                    ? 0
                    : ((point.suction() - a.suction()) * (b.suction() - a.suction())
                                    + (point.discharge() - a.discharge()) * (b.discharge() - a.discharge()))
                            / (length * length);
            double t = Math.max(0, Math.min(1, along));
            double apart = Math.hypot(
                    point.suction() - a.suction() - t * (b.suction() - a.suction()),
                    point.discharge() - a.discharge() - t * (b.discharge() - a.discharge()));
            if (apart <= SLACK) {
                return true;
            }
        }
        return false;
    }

    private static double miss(double[] range, double discharge) {
        return Math.max(Math.max(range[0] - discharge, discharge - range[1]), 0);
    }

    /**
     * Discharge temperatures inside at a suction temperature: where it crosses the sides, two and two. Each side counts its
     * colder end; at the warm end of the polygon, where no side is left, its warmer end.
     */
    private static List<double[]> ranges(List<Corner> corners, double suction) {
        List<Double> crossings = crossings(corners, suction, false);
        if (crossings.isEmpty()) {
            crossings = crossings(corners, suction, true);
        }
        List<double[]> ranges = new ArrayList<>();
        for (int k = 0; k + 1 < crossings.size(); k += 2) {
            ranges.add(new double[] {crossings.get(k), crossings.get(k + 1)});
        }
        // A side along this suction temperature belongs to the polygon.
        for (int k = 0; k < corners.size(); k++) {
            Corner a = corners.get(k);
            Corner b = corners.get((k + 1) % corners.size());
            if (a.suction() == suction && b.suction() == suction) {
                ranges.add(
                        new double[] {Math.min(a.discharge(), b.discharge()), Math.max(a.discharge(), b.discharge())});
            }
        }
        return ranges;
    }

    private static List<Double> crossings(List<Corner> corners, double suction, boolean warmEnds) {
        List<Double> crossings = new ArrayList<>();
        for (int k = 0; k < corners.size(); k++) {
            Corner a = corners.get(k);
            Corner b = corners.get((k + 1) % corners.size());
            double cold = Math.min(a.suction(), b.suction());
            double warm = Math.max(a.suction(), b.suction());
            boolean meets = warmEnds ? cold < suction && suction <= warm : cold <= suction && suction < warm;
            if (meets) {
                double share = (suction - a.suction()) / (b.suction() - a.suction());
                crossings.add(a.discharge() + share * (b.discharge() - a.discharge()));
            }
        }
        crossings.sort(null);
        return crossings;
    }
}
