package io.loopstate.web.chart;

import java.util.List;

/**
 * A paragraph beside the chart.
 *
 * @param head set in bold, such as the number of a point
 * @param lines under it
 */
public record Note(String head, List<String> lines) {
    public Note {
        lines = List.copyOf(lines);
    }
}
