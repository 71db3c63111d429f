package io.loopstate.web.rest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.equalTo;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.testing.Csv;
import io.loopstate.testing.Http;
import io.quarkus.test.junit.QuarkusTest;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** One calculation over a range of one or two inputs. */
@QuarkusTest
@Timeout(240)
class SweepTest {
    private static final String SWEEP = "/v1/batch/sweep";
    private static final String DESIGN = "{\"operation\":\"cycle-points/design\",\"request\":{"
            + "\"evaporating\":{\"temperature\":\"-10 degC\"},\"superheat\":\"8 K\",\"subcooling\":\"5 K\","
            + "\"isentropicEfficiency\":0.7},\"vary\":[{\"input\":\"refrigerant\",\"values\":[\"R-134a\",\"R-290\"]},"
            + "{\"input\":\"condensing.temperature\",\"from\":\"30 degC\",\"to\":\"50 degC\",\"step\":\"5 K\"}],"
            + "\"pick\":[\"coefficientOfPerformance\",\"volumetricCapacity\"]}";

    @Test
    void everyPointIsWhatTheSingleRequestIs() {
        JsonNode reply = Http.json(Http.post(SWEEP + "?units=IP", DESIGN).statusCode(200));
        assertThat(reply.get("rows")).hasSize(10);
        assertThat(reply.at("/summary/succeeded").intValue()).isEqualTo(10);
        for (int i = 0; i < 10; i++) {
            JsonNode row = reply.get("rows").get(i);
            String refrigerant = i < 5 ? "R-134a" : "R-290";
            int condensing = 30 + i % 5 * 5;
            assertThat(row.get("refrigerant").textValue()).isEqualTo(refrigerant);
            assertThat(row.at("/condensingTemperature/value").intValue()).isEqualTo(condensing);
            JsonNode single = Http.json(Http.get("/v1/cycle-points/design?units=IP&refrigerant=" + refrigerant
                    + "&evaporatingTemperature=-10+degC&condensingTemperature=" + condensing
                    + "+degC&superheat=8+K&subcooling=5+K&isentropicEfficiency=0.7"));
            assertThat(row.get("performanceCoefficientOfPerformance"))
                    .isEqualTo(single.at("/performance/coefficientOfPerformance"));
            assertThat(row.get("performanceVolumetricCapacity"))
                    .isEqualTo(single.at("/performance/volumetricCapacity"));
            assertThat(row.get("warnings").size())
                    .isEqualTo(single.get("warnings").size());
            assertThat(row.get("status").intValue()).isEqualTo(200);
            assertThat(row.has("error")).isFalse();
        }
    }

    /**
     * Saturation pressures of R-134a, kPa, four printed digits: the rows R-134a-EP of the collected saturation tables, whose
     * source stands there.
     */
    @Test
    void publishedPressuresAreMet() {
        Map<Integer, String> printed = Map.of(-40, "51.21", 0, "292.8", 10, "414.6", 30, "770.2", 40, "1017");
        JsonNode reply = Http.json(Http.post(
                        SWEEP,
                        "{\"operation\":\"properties/saturation\",\"request\":{\"refrigerant\":\"R-134a\"},\"vary\":["
                                + "{\"input\":\"temperature\",\"values\":[\"-40 degC\",\"0 degC\",\"10 degC\",\"30 degC\",\"40 degC\"]}],"
                                + "\"pick\":[\"dew.pressure\"]}")
                .statusCode(200));
        assertThat(reply.get("rows")).hasSize(5);
        for (JsonNode row : reply.get("rows")) {
            BigDecimal value =
                    new BigDecimal(printed.get(row.at("/temperature/value").intValue()));
            assertThat(row.at("/dewPressure/value").decimalValue())
                    .isCloseTo(value, within(value.ulp().movePointLeft(1).multiply(BigDecimal.valueOf(5))));
        }
    }

    @Test
    void refusedPointSpoilsNoOther() {
        String body = DESIGN.replace("\"to\":\"50 degC\",\"step\":\"5 K\"", "\"to\":\"110 degC\",\"count\":3");
        JsonNode reply = Http.json(Http.post(SWEEP, body).statusCode(200));
        JsonNode refused = reply.at("/rows/2");
        assertThat(refused.get("status").intValue()).isEqualTo(422);
        assertThat(refused.get("error").textValue()).startsWith("#ERR ABOVE_CRITICAL: #/condensing/temperature: ");
        assertThat(refused.has("performanceCoefficientOfPerformance")).isFalse();
        assertThat(reply.at("/summary/statuses").toString())
                .isEqualTo("[{\"status\":200,\"count\":4},{\"status\":422,\"count\":2}]");
        List<List<String>> table = Csv.read(
                Http.post(SWEEP + "?format=csv", body).statusCode(200).extract().asString(), ',');
        assertThat(table.get(0))
                .containsExactly(
                        "refrigerant",
                        "condensingTemperature_degC",
                        "performanceCoefficientOfPerformance",
                        "performanceVolumetricCapacity_kJ_per_m3",
                        "warnings",
                        "status",
                        "error");
        assertThat(table).hasSize(7);
        assertThat(table.get(3).subList(2, 6)).containsExactly("", "", "", "422");
        // The first row of a table may be one that lacks columns of the others.
        List<List<String>> backward = Csv.read(
                Http.post(
                                SWEEP + "?format=csv",
                                body.replace(
                                        "\"from\":\"30 degC\",\"to\":\"110 degC\"",
                                        "\"from\":\"110 degC\",\"to\":\"30 degC\""))
                        .extract()
                        .asString(),
                ',');
        assertThat(backward.get(0)).containsExactlyElementsOf(table.get(0));
    }

    @Test
    void tableIsWrittenAsAskedFor() {
        List<List<String>> table = Csv.read(
                Http.post(
                                SWEEP
                                        + "?format=csv&dec=,&digits=4&pick=condensingTemperature,performanceCoefficientOfPerformance",
                                DESIGN)
                        .statusCode(200)
                        .extract()
                        .asString(),
                ';');
        assertThat(table.get(1)).element(1).asString().matches("[0-9],[0-9]{1,3}");
        Http.post(SWEEP + "?format=tsv", DESIGN).contentType("text/tab-separated-values; charset=utf-8");
        assertThat(Http.post(SWEEP + "?format=html", DESIGN)
                        .statusCode(200)
                        .extract()
                        .asString())
                .contains("<th>performanceCoefficientOfPerformance</th>");
    }

    @Test
    void pictureShowsALineForEachRefrigerant() {
        String picture = Http.post(SWEEP + "?format=svg", DESIGN)
                .statusCode(200)
                .contentType("image/svg+xml")
                .extract()
                .asString();
        assertThat(picture)
                .contains(
                        "Coefficient of performance, volumetric capacity over condensing temperature",
                        "volumetric capacity, kJ/m³",
                        "condensing temperature, °C",
                        "refrigerant R-134a",
                        "refrigerant R-290",
                        "10 points, 0 of them refused.");
        String gaps = Http.post(
                        SWEEP + "?format=svg",
                        DESIGN.replace("\"to\":\"50 degC\",\"step\":\"5 K\"", "\"to\":\"110 degC\",\"count\":3"))
                .statusCode(200)
                .extract()
                .asString();
        assertThat(gaps).contains("2 of 6 points were refused and leave gaps");
        pictureRefused(DESIGN.replaceFirst(",\"pick\".*]}", "}"), "missing", "#/pick");
        pictureRefused(
                DESIGN.replaceFirst(",\"pick\".*]}", ",\"pick\":[\"compressorInlet.phase\"]}"),
                "wrong-value",
                "#/pick");
        pictureRefused(DESIGN.replace("\"step\":\"5 K\"", "\"values\":[\"40 degC\"]"), "too-many-inputs", "#/vary/1");
        pictureRefused(
                DESIGN.replaceFirst(
                        "\\{\"input\":\"condensing[^}]*}", "{\"input\":\"altitude\",\"values\":[\"0 m\",\"1 ft\"]}"),
                "not-applicable",
                "#/vary");
        pictureRefused(
                DESIGN.replace(
                                "[\"R-134a\",\"R-290\"]",
                                "[\"R-134a\",\"R-290\",\"R-32\",\"R-600a\",\"R-22\",\"R-717\"]")
                        .replace("\"step\":\"5 K\"", "\"step\":\"2 K\""),
                "too-many-rows",
                "#/vary");
    }

    @Test
    void manyPointsAreBounded() {
        String body = "{\"operation\":\"properties/saturation\",\"request\":{\"refrigerant\":\"R-134a\"},\"vary\":["
                + "{\"input\":\"temperature\",\"from\":\"-40 degC\",\"to\":\"60 degC\",\"count\":%d}],\"pick\":[\"latentHeat\"]}";
        JsonNode reply = Http.json(Http.post(SWEEP, body.formatted(1000)).statusCode(200));
        assertThat(reply.get("rows")).hasSize(1000);
        double before = Double.MAX_VALUE;
        for (JsonNode row : reply.get("rows")) {
            double heat = row.at("/latentHeat/value").doubleValue();
            assertThat(heat).isLessThan(before);
            before = heat;
        }
        Http.post(SWEEP, body.formatted(1001)).statusCode(400).body("errors[0].pointer", equalTo("#/vary/0/count"));
        String square = body.formatted(40)
                .replace(
                        "}],\"pick\"",
                        "},{\"input\":\"altitude\",\"from\":\"0 m\",\"to\":\"1 m\",\"count\":26}],\"pick\"");
        Http.post(SWEEP, square)
                .statusCode(400)
                .body("errors[0].code", equalTo("too-many-rows"))
                .body("errors[0].got", equalTo("1040 points"));
    }

    /** A name that means several values, or none in any reply, is told as a fault of the whole. */
    @Test
    void pickThatIsASlipIsRefused() {
        for (String pick :
                List.of("coefficientOfPerformence", "temperature", "/nothing", "energy.coefficientOfPerformance")) {
            Http.post(SWEEP, DESIGN.replace("volumetricCapacity", pick))
                    .statusCode(400)
                    .body("errors[0].pointer", equalTo("#/pick"));
        }
        // Warnings come along in any case; to pick them is no slip.
        JsonNode reply = Http.json(Http.post(SWEEP, DESIGN.replace("volumetricCapacity", "warnings"))
                .statusCode(200));
        assertThat(reply.at("/rows/0/warnings").isArray()).isTrue();
    }

    private static void pictureRefused(String body, String code, String pointer) {
        Http.post(SWEEP + "?format=svg", body)
                .statusCode(400)
                .body("errors[0].code", equalTo(code))
                .body("errors[0].pointer", equalTo(pointer));
    }
}
