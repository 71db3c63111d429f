package io.loopstate.engine.compression;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The points of a fit and what is wrong with them. Points are counted from 1.
 *
 * @param suction temperatures
 * @param discharge temperatures
 * @param values one for each pair
 */
record FitPoints(List<Double> suction, List<Double> discharge, List<Double> values) {
    /** Different temperatures that a cubic needs. */
    private static final int CUBIC = 4;
    /** Repeated points that are named one by one. */
    private static final int NAMED = 6;

    static FitPoints of(RatingFit.Spec spec) {
        return new FitPoints(spec.suction(), spec.discharge(), spec.values());
    }

    /** Refuses a number that is none. */
    void requireFinite() {
        for (int k = 0; k < values.size(); k++) {
            String list = unusable(k);
            if (!list.isEmpty()) {
                throw EngineException.of(
                        ErrorCode.IMPOSSIBLE_VALUE,
                        "Point " + (k + 1) + " cannot be used: its number in " + list + " is not finite.",
                        list,
                        Double.NaN,
                        Double.NaN,
                        Double.NaN);
            }
        }
    }

    private String unusable(int point) {
        if (!Double.isFinite(suction.get(point))) {
            return "suctionTemperatures";
        }
        if (!Double.isFinite(discharge.get(point))) {
            return "dischargeTemperatures";
        }
        return Double.isFinite(values.get(point)) ? "" : "values";
    }

    /** Refuses fewer than ten points, and fewer than ten that differ in their temperatures. */
    void requireEnough() {
        int different = groups().size();
        if (different < CoefficientOrder.COUNT) {
            boolean few = values.size() < CoefficientOrder.COUNT;
            throw refusal(
                    few ? "values" : "suctionTemperatures",
                    "Ten coefficients need ten points of different temperatures at least; here are " + values.size()
                            + (different < values.size() ? ", of which " + different + " differ: " + repeated() : ""));
        }
    }

    /** Points that do not fix ten coefficients: which of the temperatures take too few values, else that they lie badly. */
    EngineException undetermined(int rank, double condition) {
        List<String> reasons = new ArrayList<>();
        int few = new TreeSet<>(suction).size();
        int fewDischarge = new TreeSet<>(discharge).size();
        if (few < CUBIC) {
            reasons.add(few + " different suction temperature" + (few == 1 ? "" : "s"));
        }
        if (fewDischarge < CUBIC) {
            reasons.add(fewDischarge + " different discharge temperature" + (fewDischarge == 1 ? "" : "s"));
        }
        String spread = reasons.isEmpty()
                ? "they lie on a curve on which a cubic of both temperatures can vanish"
                : "they have " + String.join(" and ", reasons) + ", and a cubic needs " + CUBIC;
        return refusal(
                few < CUBIC || fewDischarge >= CUBIC ? "suctionTemperatures" : "dischargeTemperatures",
                "These " + values.size() + " points fix " + rank + " of ten coefficients: " + spread
                        + ". The condition number of the scaled problem is "
                        + (Double.isFinite(condition) && condition < 1e15
                                ? String.format(Locale.ROOT, "%.1e", condition)
                                : "beyond all digits")
                        + "; below 1e8 is needed."
                        + (groups().size() < values.size() ? " " + capitalized(repeated()) : ""));
    }

    private EngineException refusal(String list, String message) {
        String sentence = message.endsWith(".") ? message : message + ".";
        return EngineException.of(
                ErrorCode.CONTRADICTORY_INPUTS, sentence, list, values.size(), CoefficientOrder.COUNT, Double.NaN);
    }

    /** Points of the same two temperatures. */
    private Map<List<Double>, List<Integer>> groups() {
        Map<List<Double>, List<Integer>> groups = new LinkedHashMap<>();
        for (int k = 0; k < values.size(); k++) {
            groups.computeIfAbsent(List.of(suction.get(k), discharge.get(k)), pair -> new ArrayList<>())
                    .add(k + 1);
        }
        return groups;
    }

    private String repeated() {
        List<String> sets = groups().values().stream()
                .filter(points -> points.size() > 1)
                .map(points -> points.stream().map(String::valueOf).collect(Collectors.joining(", ")))
                .toList();
        String named = sets.stream().limit(NAMED).collect(Collectors.joining("; "));
        return "points with the same two temperatures: " + named + (sets.size() > NAMED ? "; and others." : ".");
    }

    private static String capitalized(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
