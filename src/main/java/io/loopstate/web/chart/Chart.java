package io.loopstate.web.chart;

import java.util.List;

/**
 * A chart, in the numbers and words that it shows.
 *
 * @param title what it is
 * @param subtitle what it was made from
 * @param description for readers who do not see it: what it shows, with the numbers that matter
 * @param columns how many panels stand beside each other
 * @param panelHeight of the plane of each panel, pixels
 * @param panels at least one
 * @param key what the kinds of line mean, in order
 * @param notes beside the panels
 * @param footer what has to be known to read it
 */
public record Chart(
        String title,
        String subtitle,
        String description,
        int columns,
        double panelHeight,
        List<Panel> panels,
        List<Key> key,
        List<Note> notes,
        String footer) {
    public Chart {
        panels = List.copyOf(panels);
        key = List.copyOf(key);
        notes = List.copyOf(notes);
    }

    /**
     * What a kind of line means.
     *
     * @param symbol whether its symbol stands in the chart too
     */
    public record Key(Style style, boolean symbol, String words) {
        /** Of a line; with its symbol for a process, whose ends are marked. */
        public Key(Style style, String words) {
            this(style, style == Style.PROCESS || style == Style.IDEAL, words);
        }
    }
}
