package io.loopstate.wiring.telemetry;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.testing.Http;
import io.loopstate.testing.LogLines;
import io.loopstate.testing.Metrics;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleSupplier;
import java.util.logging.Handler;
import java.util.stream.Stream;
import org.jboss.logmanager.ExtHandler;
import org.jboss.logmanager.ExtLogRecord;
import org.jboss.logmanager.Level;
import org.jboss.logmanager.LogContext;
import org.jboss.logmanager.handlers.ConsoleHandler;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Ids of requests, metrics and the access log. */
@QuarkusTest
@TestProfile(TelemetryTest.Told.class)
class TelemetryTest {
    private static final String SATURATION = "/v1/properties/saturation?temperature=280+K&refrigerant=";
    private static final String REQUESTS = "loopstate_requests_seconds_count";
    private static final String RANDOM = "[0-9a-f]{32}";
    private static final Duration PATIENCE = Duration.ofSeconds(5);

    /** With the access log, and with logs as JSON. */
    public static final class Told implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            return Map.of("loopstate.telemetry.access-log", "true", "quarkus.log.console.json.enabled", "true");
        }
    }

    @Test
    void saneIdComesBackInHeaderAndProblem() {
        with("Order-17:b.2_x")
                .get(SATURATION + "R-134a")
                .then()
                .statusCode(200)
                .header("X-Request-Id", "Order-17:b.2_x");
        with("Order-17:b.2_x")
                .get(SATURATION + "R-999")
                .then()
                .statusCode(400)
                .header("X-Request-Id", "Order-17:b.2_x")
                .body("requestId", equalTo("Order-17:b.2_x"));
        with("early").post("/livez").then().statusCode(405).body("requestId", equalTo("early"));
        with("nowhere").get("/v1/nothing").then().statusCode(404).body("requestId", equalTo("nowhere"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"with space", "<script>", "a\"b", "%0d%0a", "{}", "ümlaut"})
    void idThatIsNotSaneIsReplaced(String sent) {
        with(sent).get(SATURATION + "R-134a").then().header("X-Request-Id", matchesPattern(RANDOM));
    }

    @Test
    void longIdIsReplaced() {
        with("a".repeat(64)).get("/v1/version").then().header("X-Request-Id", "a".repeat(64));
        with("a".repeat(65)).get("/v1/version").then().header("X-Request-Id", matchesPattern(RANDOM));
    }

    /** Equal requests have equal replies, refusals too. */
    @Test
    void randomIdStaysOutOfRefusals() {
        String first = Http.get(SATURATION + "R-999")
                .body("requestId", nullValue())
                .header("X-Request-Id", matchesPattern(RANDOM))
                .extract()
                .header("X-Request-Id");
        Http.get(SATURATION + "R-999").header("X-Request-Id", not(equalTo(first)));
    }

    @Test
    void secondNamesHaveAnIdToo() {
        with("probe").get("/livez").then().statusCode(200).header("X-Request-Id", "probe");
    }

    /** Whoever reports a failure has the id that finds its reason in the log. */
    @Test
    void failureIsFoundInTheLog() {
        try (LogLines log = new LogLines("io.loopstate")) {
            String id = given().get("/testing/defect")
                    .then()
                    .statusCode(500)
                    .extract()
                    .path("requestId");
            assertThat(id).matches(RANDOM);
            assertThat(log.lines())
                    .anySatisfy(line ->
                            assertThat(line).isEqualTo("defect method=GET path=/testing/defect requestId=" + id));
        }
    }

    @Test
    void requestsAreCountedByOperationAndStatus() {
        grows(
                () -> Metrics.sum(REQUESTS, "operation=\"properties/saturation\"", "status=\"2xx\""),
                () -> Http.get(SATURATION + "R-134a").statusCode(200));
        grows(
                () -> Metrics.sum(REQUESTS, "operation=\"properties/saturation\"", "status=\"4xx\""),
                () -> Http.get(SATURATION + "R-999").statusCode(400));
        grows(
                () -> Metrics.sum(REQUESTS, "operation=\"refrigerants/{designation}\""),
                () -> Http.get("/v1/refrigerants/R-32").statusCode(200));
        grows(() -> Metrics.sum(REQUESTS, "operation=\"health\""), () -> Http.get("/livez"));
        grows(() -> Metrics.sum(REQUESTS, "operation=\"documents\""), () -> Http.get("/q/openapi"));
    }

    /** Clients cannot make series, whatever they ask for. */
    @Test
    void labelsAreNotTheClients() {
        Http.get("/v1/secret-path");
        Http.get("/v1/refrigerants/secret-path");
        Http.get("/v1/properties/secret-path");
        Http.get("/secret-path?secret-path=1");
        given().header("X-Request-Id", "secret-path").request("FIND", "/v1/version");
        grows(
                () -> Metrics.sum(REQUESTS, "operation=\"other\"", "status=\"4xx\""),
                () -> Http.get("/v1/secret-path/2").statusCode(404));
        assertThat(Metrics.lines()).noneMatch(line -> line.contains("secret-path") || line.contains("FIND"));
    }

    @Test
    void refusalsAreCountedByProblem() {
        assertThat(Metrics.lines())
                .anyMatch(line -> line.startsWith("loopstate_refusals_total{problem=\"overloaded\""));
        grows(
                () -> Metrics.sum("loopstate_refusals_total", "problem=\"invalid-request\""),
                () -> Http.get(SATURATION + "R-999").statusCode(400));
        grows(
                () -> Metrics.sum("loopstate_refusals_total", "problem=\"body-too-large\""),
                () -> Http.post("/v1/cycle-points/design", " ".repeat(2_000_000))
                        .statusCode(413));
    }

    @Test
    void engineTellsOfItsErrorsIterationsAndLines() {
        grows(
                () -> Metrics.sum("loopstate_engine_errors_total", "code=\"above-critical\""),
                () -> Http.get("/v1/properties/saturation?temperature=500+K&refrigerant=R-134a")
                        .statusCode(422));
        String composition = SATURATION + "R-32/134a+(41.5/58.5)";
        grows(
                () -> Metrics.sum("loopstate_lines_requests_total", "result=\"made\""),
                () -> Http.get(composition).statusCode(200));
        grows(
                () -> Metrics.sum("loopstate_lines_requests_total", "result=\"kept\""),
                () -> Http.get(composition).statusCode(200));
        assertThat(Metrics.sum("loopstate_lines", "of=\"composition\""))
                .isBetween(1.0, Metrics.sum("loopstate_lines_limit"));
        assertThat(Metrics.sum("loopstate_engine_iterations_total", "iteration=\"boundary\"", "outcome=\"converged\""))
                .isPositive()
                .isLessThan(Metrics.sum("loopstate_engine_steps_total", "iteration=\"boundary\""));
    }

    @Test
    void accessLogTellsWhatBecameOfARequestAndNothingOfIt() {
        try (LogLines log = new LogLines("io.loopstate.access")) {
            grows(
                    () -> count(log, "requestId=seen"),
                    () -> given().header("X-Request-Id", "seen")
                            .header("X-API-Key", "secret-key")
                            .get("/v1/properties/saturation?refrigerant=R-999&temperature=280+K&key=secret-key")
                            .then()
                            .statusCode(400));
            grows(() -> count(log, "requestId=next"), () -> with("next").get(SATURATION + "R-999"));
            List<String> lines = log.lines();
            assertThat(lines)
                    .anySatisfy(line -> assertThat(line)
                            .matches("request requestId=next method=GET operation=properties/saturation status=400 "
                                    + "problem=invalid-request milliseconds=[0-9]+\\.[0-9]{3} bytes=[1-9][0-9]*"));
            assertThat(lines)
                    .noneMatch(line -> line.contains("secret")
                            || line.contains("R-999")
                            || line.contains("280")
                            || line.contains("127.0.0.1"));
        }
    }

    @Test
    void logsAreJsonWhereAskedFor() throws IOException {
        ExtLogRecord entry =
                new ExtLogRecord(Level.WARN, "not \"so\" good", getClass().getName());
        entry.setLoggerName("io.loopstate.test");
        String line = Arrays.stream(LogContext.getLogContext().getLogger("").getHandlers())
                .flatMap(handler -> nested(handler))
                .filter(ConsoleHandler.class::isInstance)
                .map(handler -> handler.getFormatter().format(entry))
                .findFirst()
                .orElseThrow();
        assertThat(line).endsWith("\n").hasLineCount(1);
        JsonNode json = new ObjectMapper().readTree(line);
        assertThat(json.path("message").textValue()).isEqualTo("not \"so\" good");
        assertThat(json.path("level").textValue()).isEqualTo("WARN");
        assertThat(json.path("loggerName").textValue()).isEqualTo("io.loopstate.test");
        assertThat(json.path("timestamp").textValue()).isNotEmpty();
    }

    private static long count(LogLines log, String text) {
        return log.lines().stream().filter(line -> line.contains(text)).count();
    }

    private static Stream<Handler> nested(Handler handler) {
        return handler instanceof ExtHandler holder
                ? Stream.concat(Stream.of(handler), Arrays.stream(holder.getHandlers()))
                : Stream.of(handler);
    }

    private static RequestSpecification with(String id) {
        return given().urlEncodingEnabled(false).header("X-Request-Id", id);
    }

    /** What is counted at the end of a request may be there a moment after its reply. */
    private static void grows(DoubleSupplier value, Runnable request) {
        double before = value.getAsDouble();
        request.run();
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (value.getAsDouble() <= before && System.nanoTime() < end) {
            Thread.onSpinWait();
        }
        assertThat(value.getAsDouble()).isGreaterThan(before);
    }
}
