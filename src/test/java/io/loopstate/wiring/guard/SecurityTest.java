package io.loopstate.wiring.guard;

import static io.loopstate.testing.Http.post;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.hamcrest.Matchers.equalTo;

import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.Composition;
import io.loopstate.engine.fluid.CompositionException;
import io.loopstate.testing.RawHttp;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What an attacker tries first. */
@QuarkusTest
class SecurityTest {
    private static final String STATE = "/v1/properties/state";

    @TestHTTPResource
    URI server;

    @Test
    void repliesTellBrowsersWhatTheyMayDoAndNothingOfTheServer() {
        RawHttp.Reply reply = RawHttp.send(server, "GET", "/v1/version", "Origin: https://example.org");
        assertThat(reply.header("X-Content-Type-Options")).isEqualTo("nosniff");
        assertThat(reply.header("Referrer-Policy")).isEqualTo("no-referrer");
        assertThat(reply.header("Content-Security-Policy")).contains("default-src 'none'");
        assertThat(reply.header("Access-Control-Allow-Origin")).isEqualTo("*");
        assertThat(reply.header("Access-Control-Expose-Headers")).contains("RateLimit", "ETag", "Retry-After");
        assertThat(reply.header("Access-Control-Allow-Credentials")).isEmpty();
        assertThat(reply.header("Server")).isEmpty();
        assertThat(reply.header("X-Powered-By")).isEmpty();
    }

    @Test
    void keyIsIgnoredWhereTheServiceIsOpen() {
        String without = RawHttp.send(server, "GET", "/v1/version").body();
        assertThat(RawHttp.send(server, "GET", "/v1/version?key=any").body()).isEqualTo(without);
        assertThat(RawHttp.send(server, "GET", "/v1/version", "X-API-Key: any").body())
                .isEqualTo(without);
        RawHttp.Reply wrong = RawHttp.send(server, "GET", STATE + "?key=SECRET&nothing=1");
        assertThat(wrong.status()).isEqualTo(400);
        assertThat(wrong.body()).doesNotContain("SECRET");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/../../etc/passwd",
                "/v1/../../../etc/passwd",
                "/%2e%2e/%2e%2e/etc/passwd",
                "/q/swagger-ui/../../application.properties",
                "/q/swagger-ui/%2e%2e%2fapplication.properties",
                "/v1/refrigerants/..%2f..%2findex.json",
                "/v1/refrigerants/..%5C..%5Cindex.json",
                "/application.properties",
                "/META-INF/MANIFEST.MF"
            })
    void pathsLeadNowhereElse(String path) {
        RawHttp.Reply reply = RawHttp.send(server, "GET", path);
        assertThat(reply.status()).isIn(400, 404);
        assertThat(reply.body()).doesNotContain("root:", "quarkus.", "Manifest-Version");
    }

    @Test
    void xmlIsNotRead() {
        String body = "<?xml version=\"1.0\"?><!DOCTYPE a [<!ENTITY e SYSTEM \"file:///etc/passwd\">]><a>&e;</a>";
        for (String type : new String[] {"application/xml", "text/xml", "application/soap+xml"}) {
            RawHttp.Reply reply = raw("POST " + STATE + " HTTP/1.1\r\nHost: a\r\nConnection: close\r\nContent-Type: "
                    + type + "\r\nContent-Length: " + body.length() + "\r\n\r\n" + body);
            assertThat(reply.status()).isEqualTo(415);
        }
        post(STATE, body).statusCode(400).body("errors[0].code", equalTo("invalid-json"));
    }

    @Test
    void compressedBodiesAreNotUnpacked() throws IOException, InterruptedException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream zip = new GZIPOutputStream(packed)) {
            byte[] spaces = " ".repeat(1 << 20).getBytes(StandardCharsets.US_ASCII);
            for (int i = 0; i < 64; i++) {
                zip.write(spaces);
            }
        }
        HttpRequest request = HttpRequest.newBuilder(server.resolve(STATE))
                .header("Content-Type", "application/json")
                .header("Content-Encoding", "gzip")
                .POST(HttpRequest.BodyPublishers.ofByteArray(packed.toByteArray()))
                .build();
        HttpResponse<String> reply = HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString());
        assertThat(reply.statusCode()).isIn(400, 415);
        assertThat(reply.headers().firstValue("Content-Type")).contains("application/problem+json");
    }

    @Test
    void jsonIsNeitherDeepNorAmbiguous() {
        post(STATE, "[".repeat(100_000)).statusCode(400);
        post(STATE, "{\"a\":".repeat(100)).statusCode(400);
        post(STATE, "{\"refrigerant\":\"R-134a\",\"refrigerant\":\"R-22\"}").statusCode(400);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e999", "-1e999", "1e-999999999", "1e2147483648", "LONG", "0x10", "NaN", "Infinity"})
    void hugeNumbersAreRefused(String number) {
        String text = number.equals("LONG") ? "9".repeat(400) : number;
        post(
                        STATE,
                        "{\"refrigerant\":\"R-134a\",\"pressure\":\"1 bar_a\",\"temperature\":{\"value\":" + text
                                + ",\"unit\":\"K\"}}")
                .statusCode(org.hamcrest.Matchers.anyOf(equalTo(400), equalTo(422)));
        assertThat(temperature(text + " K").status()).isIn(400, 422);
    }

    /** Full-width digits, look-alikes of the degree sign, marks of direction, NUL, half a surrogate pair. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "\uff13\uff10\uff10 K",
                "300 \u212a\u0301",
                "20 \u00baC\u0300",
                "\u202e20 degC",
                "20\u0000 degC",
                "20 degC\u0000",
                "20 \u0434egC",
                "20 de\u0261C"
            })
    void lookAlikesAreRefused(String text) {
        RawHttp.Reply reply = temperature(text);
        assertThat(reply.status()).isEqualTo(400);
        assertThat(reply.header("Content-Type")).isEqualTo("application/problem+json");
    }

    /** A mark of direction that came along with a copy is no part of a unit's name, see {@code Spelling}. */
    @Test
    void markOfDirectionIsPassedOver() {
        assertThat(temperature("20 \u200fdegC").body())
                .isEqualTo(temperature("20 degC").body());
    }

    @Test
    void halfASurrogatePairIsRefused() {
        post(STATE, "{\"refrigerant\":\"R-134a\",\"pressure\":\"1 bar_a\",\"temperature\":\"20 \\ud800degC\"}")
                .statusCode(400);
        assertThat(RawHttp.send(server, "GET", STATE + "?temperature=20+%ED%A0%80degC")
                        .status())
                .isEqualTo(400);
    }

    /** Texts that make expressions with nested repetition try for ages; 8 KB each. */
    @ParameterizedTest
    @ValueSource(strings = {"1", "1.", "1,000", "1 000 ", "((((", "a-", "_/_/", "1_", " ", "R-32/", "(1/"})
    void noTextTakesLong(String part) {
        String text = part.repeat(8192 / part.length()) + "!";
        long start = System.nanoTime();
        for (String member : new String[] {"temperature", "refrigerant", "units", "dec"}) {
            post(STATE, "{\"" + member + "\":\"" + text + "\"}").statusCode(400);
        }
        assertThatCode(() -> Catalog.bundled().find(text)).doesNotThrowAnyException();
        assertThatCode(() -> Composition.parse(text)).isInstanceOf(CompositionException.class);
        assertThat(System.nanoTime() - start).isLessThan(8_000_000_000L);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Content-Length: 5\r\nTransfer-Encoding: chunked",
                "Content-Length: 5\r\nContent-Length: 6",
                "Content-Length: 5, 6",
                "Content-Length: +5",
                "Content-Length: -1",
                "Transfer-Encoding: chunked\r\nTransfer-Encoding: identity",
                "Content-Length : 5"
            })
    void twoMeaningsOfALengthAreNotServedTwice(String headers) {
        String second = "GET /v1/version HTTP/1.1\r\nHost: a\r\n\r\n";
        RawHttp.Reply reply = raw("POST " + STATE + " HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\n"
                + headers + "\r\n\r\n0\r\n\r\n" + second);
        assertThat(reply.status()).isEqualTo(400);
        assertThat(reply.body()).doesNotContain("engineVersion");
    }

    @Test
    void formatIsToldToCachesByVary() {
        RawHttp.Reply refused = RawHttp.send(server, "GET", "/v1/version", "Accept: image/png");
        assertThat(refused.status()).isEqualTo(406);
        assertThat(refused.header("Cache-Control")).isEmpty();
    }

    @Test
    void valuesDoNotBecomeHeaders() {
        for (String value : new String[] {"a%0d%0aX-Evil:+1", "a%0aX-Evil:+1", "%0d%0a%0d%0a<script>"}) {
            RawHttp.Reply reply = RawHttp.send(server, "GET", STATE + "?refrigerant=" + value + "&" + value + "=1");
            assertThat(reply.status()).isEqualTo(400);
            assertThat(reply.header("X-Evil")).isEmpty();
            assertThat(RawHttp.send(server, "GET", "/v1/" + value).header("X-Evil"))
                    .isEmpty();
        }
    }

    private RawHttp.Reply temperature(String text) {
        return RawHttp.send(
                server,
                "GET",
                STATE + "?refrigerant=R-134a&pressure=1+bar_a&temperature="
                        + URLEncoder.encode(text, StandardCharsets.UTF_8));
    }

    /** Sends bytes and reads until the server closes or is quiet for a second. */
    private RawHttp.Reply raw(String request) {
        StringBuilder reply = new StringBuilder();
        try (Socket socket = new Socket(server.getHost(), server.getPort())) {
            socket.setSoTimeout(1500);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            byte[] buffer = new byte[8192];
            for (int read = socket.getInputStream().read(buffer);
                    read >= 0;
                    read = socket.getInputStream().read(buffer)) {
                reply.append(new String(buffer, 0, read, StandardCharsets.UTF_8));
            }
        } catch (IOException e) {
            // quiet, or closed while something was still being sent
        }
        String all = reply.toString();
        int gap = all.indexOf("\r\n\r\n");
        return new RawHttp.Reply(Integer.parseInt(all.split(" ")[1]), all.substring(0, gap), all.substring(gap + 4));
    }
}
