package io.loopstate.wiring.guard;

import static io.loopstate.testing.Http.get;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;

import io.loopstate.testing.RawHttp;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Limits that are reached, so set low. */
@QuarkusTest
@TestProfile(LimitsTest.Low.class)
class LimitsTest {
    private static final String CALCULATION = "/v1/properties/saturation?temperature=280+K&refrigerant=";

    @TestHTTPResource
    URI server;

    /** Everything as low as it can be tested. */
    public static final class Low implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            return Map.of(
                    "loopstate.limits.body-size", "1K",
                    "loopstate.limits.batch-body-size", "2K",
                    "loopstate.limits.body-timeout", "500ms",
                    "loopstate.limits.concurrent-requests", "1",
                    "loopstate.limits.concurrent-batches", "0",
                    "loopstate.limits.idle-timeout", "12s",
                    "loopstate.limits.url-size", "1K",
                    "loopstate.limits.header-size", "2K");
        }
    }

    @Test
    void placesAreLimitedAndGivenBack() {
        RawHttp.send(server, "GET", CALCULATION + "R-32/125+(29/71)");
        List<RawHttp.Reply> replies = IntStream.range(0, 12)
                .parallel()
                .mapToObj(
                        i -> RawHttp.send(server, "GET", CALCULATION + "R-32/125+(" + (30 + i) + "/" + (70 - i) + ")"))
                .toList();
        assertThat(replies).allSatisfy(reply -> assertThat(reply.status()).isIn(200, 503));
        assertThat(replies).anySatisfy(reply -> assertThat(reply.status()).isEqualTo(200));
        List<RawHttp.Reply> refused =
                replies.stream().filter(reply -> reply.status() == 503).toList();
        assertThat(refused).isNotEmpty().allSatisfy(reply -> {
            assertThat(reply.header("Content-Type")).isEqualTo("application/problem+json");
            assertThat(reply.header("Retry-After")).isEqualTo("1");
            assertThat(reply.body()).contains("\"code\":\"overloaded\"");
        });
        get(CALCULATION + "R-134a").statusCode(200);
        get(CALCULATION + "R-134a").statusCode(200);
    }

    @Test
    void manyRowsHavePlacesOfTheirOwn() {
        get("/v1/batch").statusCode(503).body("code", equalTo("overloaded"));
        get("/readyz").statusCode(200);
        get("/v1/version").statusCode(200);
    }

    @Test
    void slowBodyIsToldAndClosed() throws IOException {
        String head = "POST /v1/properties/state HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\n"
                + "Content-Length: 100\r\n\r\n{";
        String reply = converse(head, "", 1);
        assertThat(reply).startsWith("HTTP/1.1 408 ").contains("\"code\":\"body-too-slow\"", "at most 0 s");
    }

    @Test
    void slowBodyDoesNotTakeAPlace() throws IOException {
        try (Socket slow = new Socket(server.getHost(), server.getPort())) {
            slow.getOutputStream()
                    .write(("POST /v1/properties/state HTTP/1.1\r\nHost: a\r\nContent-Length: 9\r\n\r\n{")
                            .getBytes(StandardCharsets.US_ASCII));
            slow.getOutputStream().flush();
            get(CALCULATION + "R-134a").statusCode(200);
        }
    }

    @Test
    void headersThatTrickleInAreClosed() throws IOException {
        long start = System.nanoTime();
        converse("GET /v1/version HTTP/1.1\r\nHost: a\r\nX-Slow: ", "a", 600);
        assertThat(System.nanoTime() - start).isBetween(10_000_000_000L, 40_000_000_000L);
    }

    @Test
    void idleConnectionIsClosed() throws IOException {
        long start = System.nanoTime();
        String reply = converse("GET /v1/version HTTP/1.1\r\nHost: a\r\n\r\n", "", 1);
        assertThat(reply).startsWith("HTTP/1.1 200 ");
        assertThat(System.nanoTime() - start).isBetween(10_000_000_000L, 40_000_000_000L);
    }

    @Test
    void lengthsAreLimited() {
        assertThat(RawHttp.send(server, "GET", "/v1/version?a=" + "a".repeat(1100))
                        .status())
                .isEqualTo(414);
        assertThat(RawHttp.send(server, "GET", "/v1/version", "X-Long: " + "a".repeat(2100))
                        .status())
                .isEqualTo(431);
        RawHttp.Reply body = RawHttp.sendInChunks(server, "/v1/properties/state", "a".repeat(600), 2);
        assertThat(body.status()).isEqualTo(413);
        assertThat(body.body()).contains("at most 1024 bytes");
        assertThat(RawHttp.sendInChunks(server, "/v1/batch", "a".repeat(600), 2).status())
                .isEqualTo(503);
    }

    /** Sends a start, then more of it every 100 ms, until the server closes; gives back all that it said. */
    private String converse(String start, String more, int times) throws IOException {
        try (Socket socket = new Socket(server.getHost(), server.getPort())) {
            socket.setSoTimeout(100);
            socket.getOutputStream().write(start.getBytes(StandardCharsets.US_ASCII));
            StringBuilder reply = new StringBuilder();
            byte[] buffer = new byte[4096];
            for (int i = 0; i < 600; i++) {
                try {
                    int read = socket.getInputStream().read(buffer);
                    if (read < 0) {
                        return reply.toString();
                    }
                    reply.append(new String(buffer, 0, read, StandardCharsets.UTF_8));
                } catch (java.net.SocketTimeoutException e) {
                    if (i < times) {
                        socket.getOutputStream().write(more.getBytes(StandardCharsets.US_ASCII));
                    }
                } catch (IOException e) {
                    return reply.toString();
                }
            }
            throw new AssertionError("the connection was not closed: " + reply);
        }
    }
}
