package io.loopstate.web.rest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.testing.Http;
import io.loopstate.testing.RowClient;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import java.io.IOException;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Many calculations in one request: as an array and as a stream of lines. */
@QuarkusTest
@Timeout(120)
class BatchTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String LINES = "application/x-ndjson";
    private static final String SATURATION = "{\"refrigerant\":\"R-134a\",\"temperature\":\"%d degC\"}";

    @TestHTTPResource
    URI server;

    @Test
    void rowsAreAnsweredInOrderAsTheSingleRequestsAre() {
        List<String> rows = new ArrayList<>();
        for (int i = 0; i < 300; i++) {
            rows.add(row("r" + i, "properties/saturation", SATURATION.formatted(i % 60 - 20)));
        }
        String single = Http.post("/v1/properties/saturation?units=IP", SATURATION.formatted(20))
                .extract()
                .asString();
        String lines = Http.post("/v1/batch?units=IP", LINES, String.join("\n", rows))
                .statusCode(200)
                .contentType(LINES)
                .extract()
                .asString();
        List<String> answers = lines.lines().toList();
        assertThat(answers).hasSize(301);
        for (int i = 0; i < 300; i++) {
            assertThat(answers.get(i))
                    .startsWith("{\"index\":" + i + ",\"id\":\"r" + i + "\",\"status\":200,\"reply\":");
        }
        assertThat(answers.get(40)).endsWith(",\"reply\":" + single + "}");
        assertThat(answers.get(300))
                .isEqualTo("{\"summary\":{\"count\":300,\"succeeded\":300,\"refused\":0,"
                        + "\"statuses\":[{\"status\":200,\"count\":300}]}}");
        String array = Http.post("/v1/batch?units=IP", "[" + String.join(",", rows) + "]")
                .statusCode(200)
                .extract()
                .asString();
        assertThat(array)
                .isEqualTo("{\"items\":[\n" + String.join("\n,", answers.subList(0, 300)) + "\n],"
                        + answers.get(300).substring(1) + "\n");
    }

    @Test
    void badRowSpoilsNoOther() {
        String good = row("good", "properties/saturation", SATURATION.formatted(20));
        List<String> rows = List.of(
                good,
                "oops",
                "{\"id\":\"cut off\",",
                row("impossible", "properties/saturation", SATURATION.formatted(200)),
                row("unknown", "properties/saturaton", "{}"),
                row("fault", "properties/saturation", "{\"refrigerant\":\"R-134a\",\"temperature\":40}"),
                "{\"id\":1,\"operation\":2,\"request\":3,\"more\":4}",
                "{}",
                "[]",
                "null",
                row("x".repeat(201), "properties/saturation", "{}"),
                row("nested", "properties/saturation", "[".repeat(100) + "]".repeat(100)),
                "{\"id\":\"long\",\"operation\":\"" + "y".repeat(70_000) + "\"}",
                good);
        List<JsonNode> answers = lines(Http.post("/v1/batch", LINES, String.join("\r\n", rows)));
        assertThat(answers.stream().limit(14).map(answer -> answer.get("status").intValue()))
                .containsExactly(200, 400, 400, 422, 400, 400, 400, 400, 400, 400, 400, 400, 413, 200);
        assertThat(answers.get(0).get("reply")).isEqualTo(answers.get(13).get("reply"));
        assertThat(faults(answers.get(1))).containsExactly("invalid-json@#");
        assertThat(answers.get(3).at("/problem/errors/0/pointer").textValue()).isEqualTo("#/request/temperature");
        assertThat(faults(answers.get(4))).containsExactly("unknown-operation@#/operation");
        assertThat(answers.get(4).at("/problem/errors/0/hint").textValue()).contains("properties/saturation");
        assertThat(faults(answers.get(5))).containsExactly("unit-missing@#/request/temperature");
        assertThat(faults(answers.get(6)))
                .containsExactly(
                        "unknown-name@#/more", "wrong-type@#/id", "wrong-type@#/request", "wrong-type@#/operation");
        assertThat(faults(answers.get(7))).containsExactly("missing@#/request", "missing@#/operation");
        assertThat(faults(answers.get(10))).containsExactly("wrong-type@#/id");
        assertThat(faults(answers.get(12))).containsExactly("row-too-long@#");
        JsonNode summary = answers.get(14).get("summary");
        assertThat(summary.get("count").intValue()).isEqualTo(14);
        assertThat(summary.get("succeeded").intValue()).isEqualTo(2);
        assertThat(summary.get("refused").intValue()).isEqualTo(12);
    }

    @Test
    void optionsOfTheQueryHoldWhereARowDoesNotSayOtherwise() {
        List<JsonNode> answers = lines(
                Http.post(
                        "/v1/batch?operation=properties/saturation&units=IP&altitude=5280+ft&explain=true",
                        LINES,
                        "{\"request\":" + SATURATION.formatted(20) + "}\n"
                                + "{\"request\":{\"refrigerant\":\"R-134a\",\"temperature\":\"20 degC\",\"units\":\"SI\","
                                + "\"atmosphericPressure\":\"100 kPa_a\",\"explain\":false}}\n"
                                + "{\"operation\":\"properties/moist-air\",\"request\":{\"dryBulb\":\"24 degC\",\"relativeHumidity\":0.5}}"));
        assertThat(answers.stream().limit(3).map(answer -> answer.get("status").intValue()))
                .containsExactly(200, 200, 200);
        assertThat(answers.get(0).at("/reply/dew/temperature/unit").textValue()).isEqualTo("degF");
        assertThat(answers.get(0).at("/reply").has("working")).isTrue();
        assertThat(answers.get(1).at("/reply/dew/temperature/unit").textValue()).isEqualTo("degC");
        assertThat(answers.get(1).at("/reply").has("working")).isFalse();
        assertThat(answers.get(2).at("/reply/basis").toString()).contains("12.1");
    }

    @Test
    void rowsBeyondTheLimitOfAnArrayAreRefused() {
        String rows = "[" + "{},".repeat(1000) + "{}]";
        Http.post("/v1/batch", rows)
                .statusCode(413)
                .body("code", equalTo("body-too-large"))
                .body("errors[0].code", equalTo("too-many-rows"));
        Http.post("/v1/batch", "[]").statusCode(200).body("summary.count", equalTo(0));
    }

    @Test
    void emptyStreamHasASummary() {
        assertThat(lines(Http.post("/v1/batch", LINES, "\n"))).hasSize(1);
        assertThat(lines(Http.post("/v1/batch/", "application/jsonl; charset=utf-8", "{}")))
                .hasSize(2);
    }

    /** The body of a stream has no limit, and each line is answered before the next is sent. */
    @Test
    void rowIsAnsweredBeforeTheNextIsSent() throws IOException {
        try (RowClient client = new RowClient(server, "/v1/batch?operation=properties/saturation", LINES)) {
            for (int i = 0; i < 50; i++) {
                client.send("{\"id\":\"" + i + "\",\"request\":" + SATURATION.formatted(i) + "}\n");
                assertThat(client.line()).startsWith("{\"index\":" + i + ',');
            }
            client.end();
            assertThat(client.line()).startsWith("{\"summary\":{\"count\":50,\"succeeded\":50,");
        }
    }

    @Test
    void clientThatGoesAwayHarmsNobody() throws IOException {
        for (int i = 0; i < 20; i++) {
            try (RowClient client = new RowClient(server, "/v1/batch?operation=properties/saturation", LINES)) {
                client.send(("{\"request\":" + SATURATION.formatted(i) + "}\n").repeat(500));
                client.line();
            }
        }
        // Each of them has given back its place among the streams.
        assertThat(lines(Http.post("/v1/batch", LINES, "{}"))).hasSize(2);
    }

    private static String row(String id, String operation, String request) {
        return String.format(
                Locale.ROOT, "{\"id\":\"%s\",\"operation\":\"%s\",\"request\":%s}", id, operation, request);
    }

    private static List<String> faults(JsonNode answer) {
        List<String> faults = new ArrayList<>();
        answer.at("/problem/errors")
                .forEach(error -> faults.add(error.get("code").textValue()
                        + '@'
                        + error.path("pointer").asText()));
        return faults;
    }

    private static List<JsonNode> lines(ValidatableResponse reply) {
        return reply.statusCode(200)
                .extract()
                .asString()
                .lines()
                .map(BatchTest::tree)
                .toList();
    }

    private static JsonNode tree(String line) {
        try {
            return MAPPER.readTree(line);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }
}
