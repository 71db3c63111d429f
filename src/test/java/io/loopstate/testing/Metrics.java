package io.loopstate.testing;

import java.util.List;

/** What the service under test has counted, as its metrics say. */
public final class Metrics {
    private Metrics() {}

    /** All lines that are no comments. */
    public static List<String> lines() {
        return Http.get("/metrics")
                .extract()
                .asString()
                .lines()
                .filter(line -> !line.startsWith("#"))
                .toList();
    }

    /** The sum of a metric over all series that have these labels, each written {@code name="value"}; 0 where there is none. */
    public static double sum(String name, String... labels) {
        return lines().stream()
                .filter(line -> line.startsWith(name + '{') || line.startsWith(name + ' '))
                .filter(line -> List.of(labels).stream().allMatch(line::contains))
                .mapToDouble(line -> Double.parseDouble(line.substring(line.lastIndexOf(' ') + 1)))
                .sum();
    }
}
