package io.loopstate.testing;

import java.util.List;

/** What the service under test has counted, as its metrics say. */
public final class Metrics {
    private Metrics() {}

    /** All lines that are no comments. */
    public static List<String> lines() {
        return lines(Http.get("/metrics").extract().asString());
    }

    private static List<String> lines(String metrics) {
        return metrics.lines().filter(line -> !line.startsWith("#")).toList();
    }

    /** The sum of a metric over all series that have these labels, each written {@code name="value"}; 0 where there is none. */
    public static double sum(String name, String... labels) {
        return sum(lines(), name, labels);
    }

    /** The same of metrics that another service has told. */
    public static double sumOf(String metrics, String name, String... labels) {
        return sum(lines(metrics), name, labels);
    }

    private static double sum(List<String> lines, String name, String... labels) {
        return lines.stream()
                .filter(line -> line.startsWith(name + '{') || line.startsWith(name + ' '))
                .filter(line -> List.of(labels).stream().allMatch(line::contains))
                .mapToDouble(line -> Double.parseDouble(line.substring(line.lastIndexOf(' ') + 1)))
                .sum();
    }
}
