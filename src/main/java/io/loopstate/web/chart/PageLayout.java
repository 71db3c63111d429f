package io.loopstate.web.chart;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;

/** Puts a chart onto a page: title, panels, notes, key, footer. */
final class PageLayout {
    private static final double WIDTH = 1000;
    private static final double MARGIN = 24;
    private static final double NOTES_WIDTH = 232;
    private static final double NOTES_GAP = 26;
    private static final double TITLE = 21;
    private static final double SUBTITLE = 13.5;
    private static final double SMALL = 11.5;
    private static final double NOTE = 12.5;
    private static final double AXIS_ROOM = 40;
    private static final double FOOT = 56;
    private static final double SAMPLE = 38;
    private static final String INK = "#1c1c1c";
    private static final String GRAY = "#4d4d4d";

    private final Chart chart;
    private final Canvas canvas = new Canvas();
    private double down = MARGIN;

    private PageLayout(Chart chart) {
        this.chart = chart;
    }

    static Drawing of(Chart chart) {
        return new PageLayout(chart).drawing();
    }

    private Drawing drawing() {
        lines(chart.title(), TITLE, INK, true);
        lines(chart.subtitle(), SUBTITLE, GRAY, false);
        down += 14;
        double notesEnd = notes(down);
        panels();
        key();
        lines(chart.footer(), SMALL, GRAY, false);
        double height = Math.max(down, notesEnd) + MARGIN - 8;
        return new Drawing(
                id(),
                Pixels.text(WIDTH),
                Pixels.text(Math.ceil(height)),
                Text.clean(chart.title()),
                Text.clean(chart.description()),
                canvas.frames,
                canvas.grid,
                canvas.strokes,
                canvas.boxes,
                canvas.shapes,
                canvas.texts);
    }

    /** The same for the same words, so that pictures on one page do not take each other's titles. */
    private String id() {
        CRC32 sum = new CRC32();
        sum.update((chart.title() + '\n' + chart.subtitle() + '\n' + chart.description())
                .getBytes(StandardCharsets.UTF_8));
        return "chart-" + Long.toHexString(sum.getValue());
    }

    private void lines(String text, double size, String color, boolean bold) {
        for (String line : Pixels.wrapped(text, size * (bold ? 1.08 : 1), WIDTH - 2 * MARGIN)) {
            down += size;
            if (bold) {
                canvas.bold(MARGIN, down, size, color, line);
            } else {
                canvas.text(MARGIN, down, "start", size, color, line);
            }
            down += size * 0.4;
        }
    }

    /** Where the notes end. */
    private double notes(double from) {
        double y = from;
        double left = WIDTH - MARGIN - NOTES_WIDTH;
        for (Note note : chart.notes()) {
            for (String head : Pixels.wrapped(note.head(), NOTE * 1.06, NOTES_WIDTH)) {
                y += NOTE;
                canvas.bold(left, y, NOTE, INK, head);
                y += 4;
            }
            for (String text : note.lines()) {
                for (String line : Pixels.wrapped(text, NOTE, NOTES_WIDTH)) {
                    y += NOTE;
                    canvas.text(left, y, "start", NOTE, GRAY, line);
                    y += 4;
                }
            }
            y += 8;
        }
        return y;
    }

    private void panels() {
        double width = WIDTH - 2 * MARGIN - (chart.notes().isEmpty() ? 0 : NOTES_WIDTH + NOTES_GAP);
        int columns = chart.columns();
        boolean headed =
                chart.panels().stream().anyMatch(panel -> !panel.heading().isEmpty());
        double labels = chart.panels().stream()
                        .mapToDouble(PanelLayout::labelWidth)
                        .max()
                        .orElse(0)
                + AXIS_ROOM;
        double gap = 30;
        // Panels beside each other share the labels of the first.
        double each = (width - labels - (columns - 1) * gap) / columns;
        for (int i = 0; i < chart.panels().size(); i++) {
            int column = i % columns;
            if (column == 0) {
                down += headed ? 22 : 0;
            }
            Rectangle plane = new Rectangle(MARGIN + labels + column * (each + gap), down, each, chart.panelHeight());
            new PanelLayout(chart.panels().get(i), plane, canvas).draw(column == 0);
            if (column == columns - 1 || i == chart.panels().size() - 1) {
                down += chart.panelHeight() + FOOT;
            }
        }
    }

    private void key() {
        double x = MARGIN;
        double right = WIDTH - MARGIN - (chart.notes().isEmpty() ? 0 : NOTES_WIDTH + NOTES_GAP);
        boolean any = !chart.key().isEmpty();
        down += any ? 8 : 0;
        for (Chart.Key key : chart.key()) {
            double width = SAMPLE + 8 + Pixels.width(key.words(), NOTE) + 22;
            if (x > MARGIN && x + width > right) {
                x = MARGIN;
                down += 20;
            }
            double middle = down - NOTE * 0.36;
            List<Vertex> sample = new ArrayList<>(List.of(new Vertex(x, middle), new Vertex(x + SAMPLE, middle)));
            canvas.stroke(key.style(), sample, "");
            if (key.symbol()) {
                canvas.symbol(key.style(), new Vertex(x + SAMPLE / 2, middle), 4.2);
            }
            canvas.text(x + SAMPLE + 8, down, "start", NOTE, INK, key.words());
            x += width;
        }
        down += any ? 16 : 0;
    }
}
