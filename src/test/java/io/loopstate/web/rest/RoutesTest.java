package io.loopstate.web.rest;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;

import io.loopstate.testing.Http;
import io.loopstate.testing.RawHttp;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What clients that cannot choose their requests rely on, for every operation. */
@QuarkusTest
class RoutesTest {
    @TestHTTPResource
    URI server;

    /** Folders of operations that only have a POST. */
    static final Set<String> WITHOUT_GET = Set.of("batch", "batch-sweep", "verify");

    static Stream<String> addresses() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("examples", "requests"))) {
            return files
                    .filter(file -> file.endsWith("good.url"))
                    .filter(file ->
                            !WITHOUT_GET.contains(file.getParent().getFileName().toString()))
                    .map(RoutesTest::read)
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file).strip();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Spreadsheets send OPTIONS and HEAD before each GET and give up if either fails. */
    @ParameterizedTest
    @MethodSource("addresses")
    void optionsAndHeadGoBeforeTheGet(String address) {
        Response get = Http.get(address).statusCode(200).extract().response();
        RawHttp.Reply head = RawHttp.send(server, "HEAD", address);
        assertThat(head.status()).isEqualTo(200);
        assertThat(head.body()).isEmpty();
        assertThat(head.header("Content-Type")).isEqualToIgnoringCase(get.contentType());
        given().urlEncodingEnabled(false)
                .options(address)
                .then()
                .statusCode(204)
                .header("Allow", containsString("GET, HEAD, OPTIONS"));
    }

    @ParameterizedTest
    @MethodSource("addresses")
    void headOfARefusalIsARefusal(String address) {
        String refused = address + (address.contains("?") ? "&" : "?") + "nonsense=1";
        assertThat(RawHttp.send(server, "HEAD", refused).status()).isEqualTo(400);
    }

    @ParameterizedTest
    @MethodSource("addresses")
    void trailingSlashIsServed(String address) {
        String[] parts = address.split("\\?", 2);
        String slashed = parts[0] + '/' + (parts.length == 1 ? "" : '?' + parts[1]);
        String plain = Http.get(address).extract().asString();
        assertThat(Http.get(slashed).statusCode(200).extract().asString()).isEqualTo(plain);
    }

    @ParameterizedTest
    @MethodSource("addresses")
    void cacheBusterChangesNothing(String address) {
        String busted = address + (address.contains("?") ? "&" : "?") + "_=1700000000000";
        assertThat(Http.get(busted).statusCode(200).extract().asString())
                .isEqualTo(Http.get(address).extract().asString());
    }

    /** Scripts inside spreadsheets can send plain text only. */
    @ParameterizedTest
    @ValueSource(strings = {"text/plain", "text/plain;charset=UTF-8", "application/json;charset=UTF-8"})
    void bodyIsReadAsPlainTextToo(String contentType) {
        given().header("Content-Type", contentType)
                .body("{\"refrigerant\":\"R-134a\",\"temperature\":\"40 °F\"}".getBytes(StandardCharsets.UTF_8))
                .post("/v1/properties/saturation")
                .then()
                .statusCode(200)
                .body("basis.refrigerant", equalTo("R-134a"));
    }

    @Test
    void decimalCommaIsReadWhereItIsDeclared() {
        String point = Http.get("/v1/properties/saturation?refrigerant=R-134a&temperature=41.5+degF")
                .extract()
                .asString();
        String comma = Http.get("/v1/properties/saturation?refrigerant=R-134a&temperature=41,5+degF&dec=,")
                .statusCode(200)
                .extract()
                .asString();
        assertThat(comma).isEqualTo(point);
    }

    @ParameterizedTest
    @ValueSource(strings = {"41.5%20degF", "41.5+degF", "41.5%C2%B0F", "41.5%c2%b0F", "41.5+%5BdegF%5D", "41.5+deg+F"})
    void temperatureIsReadAsPeopleWriteIt(String temperature) {
        Http.get("/v1/properties/saturation?refrigerant=R-134a&temperature=" + temperature)
                .statusCode(200);
    }
}
