package io.loopstate.wiring.telemetry;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.opentelemetry.api.trace.SpanKind;
import io.opentelemetry.sdk.trace.data.SpanData;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Spans of requests. The header is the example of W3C Trace Context, section 3.2. */
@QuarkusTest
@TestProfile(TracesTest.On.class)
class TracesTest {
    private static final String TRACE = "4bf92f3577b34da6a3ce929d0e0e4736";
    private static final String PARENT = "00f067aa0ba902b7";
    private static final Duration PATIENCE = Duration.ofSeconds(5);

    @Inject
    Spans spans;

    /** With traces. */
    public static final class On implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            return Map.of("quarkus.otel.sdk.disabled", "false", "quarkus.otel.simple", "true");
        }
    }

    @Test
    void spanBelongsToTheTraceOfTheClientAndTellsNothingOfTheRequest() {
        given().urlEncodingEnabled(false)
                .header("traceparent", "00-" + TRACE + "-" + PARENT + "-01")
                .header("X-Request-Id", "traced")
                .get("/v1/properties/saturation?refrigerant=R-999&temperature=280+K&key=secret-key")
                .then()
                .statusCode(400);
        List<SpanData> found = await();
        assertThat(found).hasSize(1);
        SpanData span = found.get(0);
        assertThat(span.getTraceId()).isEqualTo(TRACE);
        assertThat(span.getParentSpanId()).isEqualTo(PARENT);
        assertThat(span.getKind()).isEqualTo(SpanKind.SERVER);
        assertThat(span.getName()).isEqualTo("properties/saturation");
        assertThat(span.getAttributes().asMap().toString())
                .contains("http.response.status_code=400", "loopstate.problem=invalid-request", "traced")
                .doesNotContain("secret", "R-999", "280", "127.0.0.1");
    }

    private List<SpanData> await() {
        long end = System.nanoTime() + PATIENCE.toNanos();
        List<SpanData> found = List.of();
        while (found.isEmpty() && System.nanoTime() < end) {
            found = spans.kept().stream()
                    .filter(span -> span.getTraceId().equals(TRACE))
                    .toList();
        }
        return found;
    }
}
