package io.loopstate.web.mapping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.testing.Service;
import io.loopstate.web.chart.Picture;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** Pictures of what is no cycle, from the bodies under version control. */
class CalculationPicturesTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Map<String, io.loopstate.web.mapping.Picture<?, ?, ?>> PICTURES = Map.of(
            "cycle-points-design", CyclePictures.DESIGN,
            "cycle-points-readings", CyclePictures.READINGS,
            "compression-process", CompressionPictures.PROCESS,
            "compression-staging", CompressionPictures.STAGING,
            "compression-cylinder", CompressionPictures.CYLINDER,
            "compression-rating-map", MachinePictures.RATING_MAP,
            "heat-rejection-balance", MachinePictures.BALANCE,
            "properties-saturation", PropertyPictures.SATURATION,
            "properties-table", PropertyPictures.TABLE);

    static Stream<Path> examples() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("examples", "requests"))) {
            return files
                    .filter(file -> file.toString().endsWith(".request.json"))
                    .filter(file ->
                            PICTURES.containsKey(file.getParent().getFileName().toString()))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    private static Service.Answer draw(Path file) throws IOException {
        return Service.draw(
                PICTURES.get(file.getParent().getFileName().toString()), MAPPER.readTree(file.toFile()), Map.of());
    }

    private static Service.Answer draw(String file) throws IOException {
        return draw(Path.of("examples", "requests", file + ".request.json"));
    }

    private static JsonNode reply(String file) throws IOException {
        return MAPPER.readTree(
                Path.of("examples", "requests", file + ".response.json").toFile());
    }

    /** Every example that has an answer has a picture, twice the same, whose text lies inside; the others are refused alike. */
    @ParameterizedTest
    @MethodSource("examples")
    void exampleIsDrawn(Path file) throws IOException {
        JsonNode stored = MAPPER.readTree(
                Path.of(file.toString().replace(".request.", ".response.")).toFile());
        Service.Answer answer = draw(file);
        if (stored.has("errors")) {
            assertThat(answer.json().get("errors")).isEqualTo(stored.get("errors"));
            return;
        }
        assertThat(answer.status()).isEqualTo(200);
        assertThat(draw(file).body()).isEqualTo(answer.body());
        Picture picture = Picture.of(answer.body());
        assertThat(answer.body()).doesNotContain("NaN", "Infinity");
        double width = Picture.number(picture.root(), "width");
        double height = Picture.number(picture.root(), "height");
        for (Element text : picture.elements("text")) {
            assertThat(Picture.number(text, "x")).isBetween(0.0, width);
            assertThat(Picture.number(text, "y")).isBetween(0.0, height);
        }
        assertThat(picture.elements("desc").get(0).getTextContent()).hasSizeGreaterThan(60);
        assertThat(answer.body()).hasSizeLessThan(60_000);
    }

    /** The axes of the cylinder start at zero, so that shares of them are volumes and pressures. */
    @Test
    void cylinderGoesThroughThePointsOfTheReply() throws IOException {
        Picture picture = Picture.of(draw("compression-cylinder/good").body());
        Element frame = picture.frames().get(0);
        double left = Picture.number(frame, "x");
        double base = Picture.number(frame, "y") + Picture.number(frame, "height");
        List<double[]> circles = circles(picture);
        JsonNode points = reply("compression-cylinder/good").get("points");
        double[] start = circles.get(0);
        double perVolume = (start[0] - left) / points.at("/0/volume/value").doubleValue();
        double perPressure =
                (base - start[1]) / points.at("/0/absolutePressure/value").doubleValue();
        for (JsonNode point : points) {
            double x = left + perVolume * point.at("/volume/value").doubleValue();
            double y = base - perPressure * point.at("/absolutePressure/value").doubleValue();
            assertThat(circles).anySatisfy(circle -> {
                assertThat(circle[0]).isCloseTo(x, within(0.03));
                assertThat(circle[1]).isCloseTo(y, within(0.03));
            });
        }
    }

    private static List<double[]> circles(Picture picture) {
        return picture.elements("circle").stream()
                .map(circle -> new double[] {Picture.number(circle, "cx"), Picture.number(circle, "cy")})
                .toList();
    }

    /** Arithmetic: where dots lie relative to each other is how their numbers lie, in each of the three panels. */
    @Test
    void whatIfsLieBesideTheBaseCaseAsTheirNumbers() throws IOException {
        Picture picture = Picture.of(draw("heat-rejection-balance/whatIf").body());
        JsonNode reply = reply("heat-rejection-balance/whatIf");
        assertThat(picture.frames()).hasSize(3);
        // one dot in each panel for each case that has a balance
        String[] members = {
            "energyBalance/refrigeratingCapacity", "energyBalance/electricalPower", "condensing/midpointTemperature"
        };
        for (int panel = 0; panel < 3; panel++) {
            Element frame = picture.frames().get(panel);
            String member = members[panel];
            double left = Picture.number(frame, "x");
            double right = left + Picture.number(frame, "width");
            double bottom = Picture.number(frame, "y") + Picture.number(frame, "height");
            List<Double> dots = circles(picture).stream()
                    .filter(circle -> circle[0] > left && circle[0] < right && circle[1] < bottom)
                    .map(circle -> circle[0])
                    .toList();
            List<Double> numbers = new ArrayList<>();
            numbers.add(number(reply, member));
            reply.get("whatIfs").forEach(row -> {
                numbers.add(number(row, member));
            });
            numbers.removeIf(value -> value.isNaN());
            assertThat(dots).hasSameSizeAs(numbers);
            double scale = (dots.get(1) - dots.get(0)) / (numbers.get(1) - numbers.get(0));
            for (int i = 2; i < dots.size(); i++) {
                assertThat(dots.get(i) - dots.get(0)).isCloseTo(scale * (numbers.get(i) - numbers.get(0)), within(0.1));
            }
        }
    }

    private static double number(JsonNode row, String member) {
        JsonNode value = row.at('/' + member + "/value");
        return value.isMissingNode() ? Double.NaN : value.doubleValue();
    }

    /** At 42 psig a blend with glide has its bubble point left of its dew point, both at one height. */
    @Test
    void bubbleAndDewPointOfABlendAreApart() {
        Service.Answer answer = Service.draw(
                PropertyPictures.SATURATION, Map.of("refrigerant", "R-448A", "pressure", "42 psig", "units", "IP"));
        Picture picture = Picture.of(answer.body());
        assertThat(picture.texts()).contains("bubble point", "dew point", "bubble point: subcooling counts from it");
        Element bubble = picture.elements("circle").get(0);
        Element dew = picture.elements("path").stream()
                .filter(path -> path.getAttribute("fill").equals("#a1400b"))
                .findFirst()
                .orElseThrow();
        String[] corner = dew.getAttribute("d").substring(1).split("[L ]");
        assertThat(Picture.number(bubble, "cx")).isLessThan(Double.parseDouble(corner[0]));
        assertThat(Picture.number(bubble, "cy")).isCloseTo(Double.parseDouble(corner[1]) + 0.9 * 4.2, within(0.03));
        assertThat(Service.draw(PropertyPictures.SATURATION, Map.of("refrigerant", "R-134a", "temperature", "5 degC"))
                        .body())
                .doesNotContain("dew point: superheat");
    }

    @Test
    void chartIsNoParameterWhereThereIsOne() {
        Service.Answer answer = Service.draw(
                PropertyPictures.SATURATION,
                Map.of("refrigerant", "R-134a", "temperature", "5 degC", "chart", "pressureEnthalpy"));
        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.body()).contains("unknown-parameter");
    }
}
