package io.loopstate.web.mapping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import io.loopstate.testing.Service;
import io.loopstate.web.chart.Picture;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** A cycle is drawn where the numbers of its reply lie. */
class CyclePicturesTest {
    private static final Map<String, String> TRAINER = Map.of(
            "refrigerant", "R-134a",
            "evaporatingTemperature", "-10 degC",
            "condensingTemperature", "40 degC",
            "superheat", "8 K",
            "subcooling", "5 K",
            "isentropicEfficiency", "0.7");
    private static final Map<String, String> RACK = Map.of(
            "refrigerant", "R-744",
            "evaporatingTemperature", "-10 degC",
            "condensingPressure", "90 bar_a",
            "superheat", "8 K",
            "gasCoolerOutletTemperature", "35 degC",
            "isentropicEfficiency", "0.68");
    private static final Map<String, String> ROOFTOP = Map.of(
            "refrigerant", "R-454B",
            "evaporatingTemperature", "45 degF",
            "condensingTemperature", "115 degF",
            "superheat", "10 delta_degF",
            "subcooling", "10 delta_degF",
            "isentropicEfficiency", "0.7",
            "evaporatorPressureDrop", "3 psi_diff",
            "suctionLineTemperatureRise", "20 delta_degF");
    private static final Map<String, String> COOLER = Map.of(
            "refrigerant", "R-448A",
            "suctionPressure", "42 psig",
            "suctionLineTemperature", "35 degF",
            "dischargePressure", "260 psig",
            "dischargeLineTemperature", "190 degF",
            "liquidLinePressure", "255 psig",
            "liquidLineTemperature", "95 degF");

    /** A request with the units and the chart asked for. */
    record Case(io.loopstate.web.mapping.Picture<?, ?, ?> picture, Map<String, String> query, boolean entropy) {
        Picture drawn() {
            Map<String, String> asked = new HashMap<>(query);
            asked.put("chart", entropy ? "temperatureEntropy" : "pressureEnthalpy");
            Service.Answer answer = Service.draw(picture, asked);
            assertThat(answer.status()).as(answer.body()).isEqualTo(200);
            assertThat(Service.draw(picture, asked).body()).isEqualTo(answer.body());
            return Picture.of(answer.body());
        }

        @Override
        public String toString() {
            return query.get("refrigerant") + ' ' + query.get("units") + ' ' + entropy;
        }
    }

    static Stream<Case> cases() {
        List<Case> cases = new ArrayList<>();
        for (boolean entropy : new boolean[] {false, true}) {
            for (String units :
                    new String[] {"SI", "IP", "SI,pressure=bar_a,specificEnergy=J_per_kg", "IP,temperature=K"}) {
                for (Map<String, String> design : List.of(TRAINER, RACK, ROOFTOP)) {
                    cases.add(new Case(CyclePictures.DESIGN, with(design, units), entropy));
                }
                cases.add(new Case(CyclePictures.READINGS, with(COOLER, units), entropy));
            }
        }
        return cases.stream();
    }

    private static Map<String, String> with(Map<String, String> query, String units) {
        Map<String, String> all = new HashMap<>(query);
        all.put("units", units);
        return all;
    }

    /** The axes as a reader takes them: from two labels, then straight or logarithmic between. */
    @ParameterizedTest
    @MethodSource("cases")
    void pointsStandWhereTheirNumbersLie(Case drawn) {
        Picture picture = drawn.drawn();
        Element frame = picture.frames().get(0);
        double base = Picture.number(frame, "y") + Picture.number(frame, "height");
        DoubleUnaryOperator x = scale(picture, false, "middle", "x", 0, base + 19);
        DoubleUnaryOperator y = scale(picture, !drawn.entropy(), "end", "y", -4, Double.NaN);
        JsonNode reply = Service.get(drawn.picture().operation(), drawn.query()).json();
        List<double[]> circles = picture.elements("circle").stream()
                .map(circle -> new double[] {Picture.number(circle, "cx"), Picture.number(circle, "cy")})
                .toList();
        assertThat(reply.get("points")).hasSizeGreaterThan(4);
        for (JsonNode point : reply.get("points")) {
            double px = x.applyAsDouble(value(point, drawn.entropy() ? "specificEntropy" : "specificEnthalpy"));
            double py = y.applyAsDouble(value(point, drawn.entropy() ? "temperature" : "pressure"));
            assertThat(circles)
                    .as(point.toString())
                    // places closer than 2 thousandths of the picture are drawn as one
                    .anySatisfy(circle -> assertThat(Math.hypot(circle[0] - px, circle[1] - py))
                            .isLessThan(1.4));
        }
        JsonNode first = reply.at("/points/0");
        double px = x.applyAsDouble(value(first, drawn.entropy() ? "specificEntropy" : "specificEnthalpy"));
        double py = y.applyAsDouble(value(first, drawn.entropy() ? "temperature" : "pressure"));
        assertThat(circles.get(0)[0]).isCloseTo(px, within(0.05));
        assertThat(circles.get(0)[1]).isCloseTo(py, within(0.05));
    }

    private static double value(JsonNode point, String name) {
        return point.get(name).get("value").doubleValue();
    }

    private static DoubleUnaryOperator scale(
            Picture picture, boolean logarithmic, String anchor, String attribute, double shift, double row) {
        List<double[]> marks = new ArrayList<>();
        for (Element text : picture.elements("text")) {
            boolean tick = text.getAttribute("text-anchor").equals(anchor)
                    && text.getAttribute("font-size").equals("12")
                    && text.getTextContent().matches("-?[0-9.]+")
                    && (Double.isNaN(row) || Math.abs(Picture.number(text, "y") - row) < 0.02);
            if (tick) {
                double label = Double.parseDouble(text.getTextContent());
                marks.add(
                        new double[] {logarithmic ? Math.log(label) : label, Picture.number(text, attribute) + shift});
            }
        }
        assertThat(marks).hasSizeGreaterThan(2);
        double[] a = marks.get(0);
        double[] b = marks.get(marks.size() - 1);
        return value -> a[1] + (b[1] - a[1]) * ((logarithmic ? Math.log(value) : value) - a[0]) / (b[0] - a[0]);
    }

    /** The words beside the picture are the reply's numbers, rounded. */
    @Test
    void wordsAreTheRepliesNumbers() {
        Case drawn = new Case(CyclePictures.DESIGN, with(TRAINER, "IP,pressure=psig"), false);
        JsonNode inlet =
                Service.get(DesignMapping.OPERATION, with(TRAINER, "IP")).json().at("/points/0");
        Picture picture = drawn.drawn();
        String words = String.join(" ", picture.texts());
        assertThat(words)
                .contains(Measure.figures(value(inlet, "pressure")) + "\u00a0psi(a)")
                .contains("1\u2002compressor inlet, evaporator outlet");
        assertThat(picture.elements("desc").get(0).getTextContent()).contains("isentropic compressor outlet");
    }

    @Test
    void unknownChartIsRefusedWithTheOtherFaults() {
        Map<String, String> query = new HashMap<>(TRAINER);
        query.put("chart", "pie");
        query.put("superheat", "8");
        Service.Answer answer = Service.draw(CyclePictures.DESIGN, query);
        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.json().findValuesAsText("parameter")).containsExactlyInAnyOrder("chart", "superheat");
        assertThat(answer.body()).contains("pressureEnthalpy, temperatureEntropy");
    }

    @Test
    void chartOfABodyStandsInTheQuery() {
        JsonNode body = JsonNodeFactory.instance
                .objectNode()
                .put("refrigerant", "R-448A")
                .put("suctionPressure", "42 psig")
                .put("suctionLineTemperature", "35 degF")
                .put("dischargePressure", "260 psig");
        Service.Answer answer = Service.draw(
                CyclePictures.READINGS, body, Map.of("chart", List.of("temperatureEntropy"), "units", List.of("IP")));
        assertThat(answer.status()).isEqualTo(200);
        assertThat(Picture.of(answer.body()).texts()).contains("Temperature, °F");
    }

    /** Readings without a liquid line determine one point; the others are not made up. */
    @Test
    void onlyWhatIsKnownIsDrawn() {
        Map<String, String> query = Map.of(
                "refrigerant", "R-134a",
                "suctionPressure", "18 psig",
                "suctionLineTemperature", "35 degF",
                "dischargePressure", "135 psig");
        Service.Answer answer = Service.draw(CyclePictures.READINGS, query);
        assertThat(answer.status()).isEqualTo(200);
        Picture picture = Picture.of(answer.body());
        assertThat(picture.texts()).contains("1\u2002compressor inlet").noneMatch(text -> text.startsWith("2\u2002"));
    }
}
