package io.loopstate.web.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Element;

class SvgTest {
    private static final String HOSTILE = "<script>alert('x')</script> & \"]]>\" {drawing.id} \u0007 \u20ac";

    private static Chart chart(String words) {
        Series line =
                new Series(Style.FIRST, List.of(new Vertex(0, 1), new Vertex(5, 100), new Vertex(20, 40)), words, 0.5);
        Panel panel = new Panel(
                words,
                Axis.linear(words, 0, 10, 5),
                Axis.logarithmic(words, 1, 1000),
                List.of(line),
                List.of(new Panel.Mark(Style.PROCESS, new Vertex(2.5, 10), words)));
        return new Chart(
                words,
                words,
                words,
                1,
                300,
                List.of(panel),
                List.of(new Chart.Key(Style.FIRST, words)),
                List.of(new Note(words, List.of(words))),
                words);
    }

    @Test
    void wordsAreEscapedAndReadTheSame() {
        String svg = Svg.of(chart(HOSTILE));
        Picture picture = Picture.of(svg);
        String clean = HOSTILE.replace('\u0007', '\ufffd');
        assertThat(picture.elements("script")).isEmpty();
        assertThat(picture.elements("title").get(0).getTextContent()).isEqualTo(clean);
        assertThat(picture.elements("desc").get(0).getTextContent()).isEqualTo(clean);
        assertThat(picture.texts()).contains(clean);
    }

    /** Nothing that runs, nothing from outside, a title and a description for those who do not see it. */
    @Test
    void pictureStandsAlone() {
        String svg = Svg.of(chart("plain words"));
        Picture picture = Picture.of(svg);
        assertThat(svg).doesNotContain("href", "url(", "<style", "onload", "@import");
        Element root = picture.root();
        assertThat(root.getAttribute("role")).isEqualTo("img");
        assertThat(root.getAttribute("viewBox"))
                .isEqualTo("0 0 " + root.getAttribute("width") + ' ' + root.getAttribute("height"));
        for (String id : root.getAttribute("aria-labelledby").split(" ")) {
            assertThat(picture.all())
                    .extracting(element -> element.getAttribute("id"))
                    .contains(id);
        }
        Element ground = picture.elements("rect").get(0);
        assertThat(ground.getAttribute("fill")).isEqualTo("#ffffff");
        assertThat(ground.getAttribute("width")).isEqualTo(root.getAttribute("width"));
    }

    @Test
    void sameChartGivesTheSameBytes() {
        assertThat(Svg.of(chart("once"))).isEqualTo(Svg.of(chart("once")));
    }

    /** Arithmetic: a quarter of a linear axis, a third of three decades. */
    @Test
    void markStandsAtItsShareOfTheAxes() {
        Picture picture = Picture.of(Svg.of(chart("mark")));
        Element frame = picture.frames().get(0);
        Element mark = picture.elements("circle").get(0);
        assertThat(Picture.number(mark, "cx"))
                .isCloseTo(Picture.number(frame, "x") + 0.25 * Picture.number(frame, "width"), within(0.011));
        assertThat(Picture.number(mark, "cy"))
                .isCloseTo(Picture.number(frame, "y") + 2 / 3.0 * Picture.number(frame, "height"), within(0.011));
    }

    @Test
    void lineIsCutAtTheEdge() {
        Picture picture = Picture.of(Svg.of(chart("cut")));
        Element frame = picture.frames().get(0);
        double right = Picture.number(frame, "x") + Picture.number(frame, "width");
        List<Double> across = new ArrayList<>();
        for (Element path : picture.elements("path")) {
            if (path.getAttribute("stroke").equals(Style.FIRST.color())
                    && !path.getElementsByTagName("title")
                            .item(0)
                            .getTextContent()
                            .isEmpty()) {
                for (String place : path.getAttribute("d").substring(1).split("L")) {
                    across.add(Double.parseDouble(place.split(" ")[0]));
                }
                break;
            }
        }
        assertThat(across).hasSize(3);
        assertThat(across.get(2)).isCloseTo(right, within(0.02));
    }

    /** In black and white only dash, weight and symbol are left. */
    @Test
    void stylesDifferWithoutColor() {
        assertThat(List.of(Style.values()))
                .extracting(style -> style.dash() + '/' + style.width() + '/' + style.symbol())
                .doesNotHaveDuplicates();
    }

    /** Web Content Accessibility Guidelines 2.2, success criterion 1.4.3: a contrast of at least 4.5 for text. */
    @ParameterizedTest
    @EnumSource(Style.class)
    void colorsCanBeReadOnWhite(Style style) {
        assertThat(1.05 / (luminance(style.color()) + 0.05)).isGreaterThanOrEqualTo(4.5);
    }

    /** The same guidelines, definition of relative luminance. */
    private static double luminance(String color) {
        double[] weights = {0.2126, 0.7152, 0.0722};
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            double c = Integer.parseInt(color.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
            sum += weights[i] * (c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
        }
        return sum;
    }

    /** Worked out by hand. */
    @ParameterizedTest
    @CsvSource({
        "0, 10, 5, 0 2 4 6 8 10",
        "-31.7, 24.9, 6, -30 -20 -10 0 10 20",
        "1.712, 1.968, 5, 1.75 1.80 1.85 1.90 1.95",
        "0.0021, 0.0049, 6, 0.0025 0.0030 0.0035 0.0040 0.0045",
        "1200, 91000, 5, 20000 40000 60000 80000"
    })
    void linearMarksAreRound(double from, double to, int wanted, String labels) {
        assertThat(Ticks.linear(from, to, wanted)).extracting(Tick::label).containsExactly(labels.split(" "));
    }

    @Test
    void logarithmicMarksAreOneTwoAndFive() {
        assertThat(Ticks.logarithmic(0.6, 30).stream().map(Tick::label).filter(label -> !label.isEmpty()))
                .containsExactly("1", "2", "5", "10", "20");
        assertThat(Ticks.logarithmic(0.6, 30)).extracting(Tick::value).contains(0.6, 0.9, 30.0);
    }

    @Test
    void placesAreRoundedToHundredths() {
        assertThat(Map.of(1.005, "1", -0.004, "0", 12.5, "12.5", 12.345, "12.35", -3.25, "-3.25", 7.0, "7"))
                .allSatisfy((value, text) -> assertThat(Double.parseDouble(Pixels.text(value)))
                        .isCloseTo(Double.parseDouble(text), within(0.0101)));
        assertThat(Pixels.text(12.5)).isEqualTo("12.5");
        assertThat(Pixels.text(-3.25)).isEqualTo("-3.25");
        assertThat(Pixels.text(3.04)).isEqualTo("3.04");
        assertThat(Pixels.text(-0.001)).isEqualTo("0");
    }
}
