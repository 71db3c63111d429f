package io.loopstate.web.rest;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;

import io.loopstate.testing.RawHttp;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import java.net.URI;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the server does with any request, whatever the resource. */
@QuarkusTest
class ServerRulesTest {
    @TestHTTPResource
    URI server;

    @Test
    void versionIsTheSameBytesTwice() {
        String first =
                given().get("/v1/version").then().statusCode(200).extract().asString();
        assertThat(given().get("/v1/version").asString()).isEqualTo(first);
        given().get("/v1/version")
                .then()
                .body("engineVersion", not(containsString("$")))
                .body("quarkusVersion", not(containsString("$")))
                .body("javaRelease", equalTo(Runtime.version().feature()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/v1/version",
                "/version",
                "/livez",
                "/readyz",
                "/startedz",
                "/metrics",
                "/q/health/live",
                "/q/health/ready",
                "/q/health/started",
                "/q/openapi",
                "/testing/query"
            })
    void routeIsServedWithAndWithoutTrailingSlashAndForHeadAndOptions(String path) {
        String query = path.startsWith("/testing") ? "?text=a" : "";
        Response get = given().redirects().follow(false).get(path + query);
        get.then().statusCode(200);
        given().redirects().follow(false).get(path + "/" + query).then().statusCode(200);
        if (!path.contains("metrics")) {
            RawHttp.Reply head = RawHttp.send(server, "HEAD", path + query);
            assertThat(head.status()).isEqualTo(200);
            assertThat(head.body()).isEmpty();
            assertThat(head.header("Content-Type")).isEqualToIgnoringCase(get.contentType());
        }
        given().options(path).then().statusCode(204).header("Allow", equalTo("GET, HEAD, OPTIONS"));
    }

    @Test
    void metricsAnswerHead() {
        assertThat(RawHttp.send(server, "HEAD", "/metrics").status()).isEqualTo(200);
    }

    @Test
    void swaggerUiIsServed() {
        given().get("/q/swagger-ui/").then().statusCode(200).contentType("text/html");
    }

    @Test
    void unknownPathIsAProblemForEveryMethod() {
        problem(given().get("/v1/nothing").then(), 404, "not-found").body("errors[0].got", equalTo("/v1/nothing"));
        problem(given().get("/q/nothing").then(), 404, "not-found");
        problem(given().body("{}").post("/v1/nothing").then(), 404, "not-found");
        problem(given().options("/v1/nothing").then(), 404, "not-found");
        assertThat(RawHttp.send(server, "HEAD", "/v1/nothing").status()).isEqualTo(404);
    }

    @Test
    void wrongMethodNamesTheRightOnes() {
        problem(given().delete("/v1/version").then(), 405, "method-not-allowed")
                .header("Allow", equalTo("GET, HEAD, OPTIONS"))
                .body("errors[0].allowed", equalTo("GET, HEAD, OPTIONS"));
        problem(given().get("/testing/echo").then(), 405, "method-not-allowed")
                .header("Allow", equalTo("OPTIONS, POST"));
        problem(given().post("/livez").then(), 405, "method-not-allowed")
                .header("Allow", equalTo("GET, HEAD, OPTIONS"));
    }

    @Test
    void unacceptableFormatNamesTheOffered() {
        problem(given().accept("image/png").get("/v1/version").then(), 406, "not-acceptable")
                .body("errors[0].got", equalTo("image/png"))
                .body("errors[0].allowed", containsString("application/json, text/csv"));
    }

    @Test
    void unreadableFormatNamesTheRead() {
        problem(
                        given().contentType("application/xml")
                                .body("<a/>")
                                .post("/testing/echo")
                                .then(),
                        415,
                        "unsupported-media-type")
                .body("errors[0].got", containsString("application/xml"))
                .body("errors[0].allowed", equalTo("application/json"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"text/plain", "text/plain;charset=UTF-8", "application/json"})
    void jsonIsReadAsPlainTextToo(String contentType) {
        given().header("Content-Type", contentType)
                .body("{\"name\":\"a\"}")
                .post("/testing/echo")
                .then()
                .statusCode(200)
                .body("name", equalTo("a"));
    }

    @ParameterizedTest
    @CsvSource({
        "/testing/query?text=20%B0F, text, not UTF-8",
        "/testing/query?text=70%, text, two hexadecimal digits",
        "/testing/query?text=7%2, text, two hexadecimal digits",
        "/testing/query?text=%zz, text, two hexadecimal digits",
        "/testing/query?text=20\u00b0F, text, not UTF-8",
        "/v1/ver%sion, , two hexadecimal digits",
        "/v1/version%B0, , not UTF-8"
    })
    void brokenEscapeIsAProblem(String target, String parameter, String detail) {
        RawHttp.Reply reply = RawHttp.send(server, "GET", target);
        assertThat(reply.status()).isEqualTo(400);
        assertThat(reply.header("Content-Type")).isEqualTo("application/problem+json");
        assertThat(reply.body()).contains("\"code\":\"invalid-escape\"", detail, "\"hint\":");
        assertThat(reply.body().contains("\"parameter\"")).isEqualTo(parameter != null);
    }

    /** The third as a command line sends it: the bytes of UTF-8, not escaped. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "/testing/query?text=20%c2%b0F",
                "/testing/query?text=20%C2%B0F",
                "/testing/query?text=20\u00c2\u00b0F",
                "/testing/query/?text=20%c2%b0F"
            })
    void degreeSignIsRead(String target) {
        RawHttp.Reply reply = RawHttp.send(server, "GET", target);
        assertThat(reply.status()).isEqualTo(200);
        assertThat(reply.body()).isEqualTo("{\"text\":\"20°F\"}");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/testing/query?text=a|b", "/testing/query?text=a%7Cb"})
    void characterThatBelongsEscapedIsRead(String target) {
        assertThat(RawHttp.send(server, "GET", target).body()).isEqualTo("{\"text\":\"a|b\"}");
    }

    @Test
    void bodyOverTheLimitIsAProblem() {
        String tooLong = "{\"name\":\"" + "a".repeat(1 << 20) + "\"}";
        problem(
                        given().contentType("application/json")
                                .body(tooLong)
                                .post("/testing/echo")
                                .then(),
                        413,
                        "body-too-large")
                .body("errors[0].allowed", equalTo("at most 1048576 bytes"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/testing/echo", "/testing/echo-on-worker"})
    void bodyOverTheLimitInChunksIsAProblem(String path) {
        RawHttp.Reply reply = RawHttp.sendInChunks(server, path, " ".repeat(1 << 16), 20);
        assertThat(reply.status()).isEqualTo(413);
        assertThat(reply.header("Content-Type")).isEqualTo("application/problem+json");
        assertThat(reply.body()).contains("\"code\":\"body-too-large\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/testing/echo", "/testing/echo-on-worker"})
    void bodyInChunksIsRead(String path) {
        RawHttp.Reply reply = RawHttp.sendInChunks(server, path, "{\"name\":\"" + "a".repeat(50_000) + "\"}", 1);
        assertThat(reply.status()).isEqualTo(200);
    }

    @Test
    void brokenJsonTellsLineAndColumn() {
        problem(echo("{\"name\":\n  oops}"), 400, "invalid-request")
                .body("errors[0].code", equalTo("invalid-json"))
                .body("errors[0].detail", containsString("at line 2, column"))
                .body("errors[0].detail", not(containsString("fasterxml")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"name\":\"a\"} x",
                "{\"name\":\"a\"} {}",
                "{\"name\":\"a\",\"name\":\"b\"}",
                "{\"name\":\"a\",\"efficiency\":NaN}",
                "{\"name\":\"a\",}",
                "[",
                "{\"name\":\"a\" // comment\n}"
            })
    void strictJsonOnly(String body) {
        problem(echo(body), 400, "invalid-request").body("errors[0].detail", not(containsString("fasterxml")));
    }

    @Test
    void missingBodyIsAProblem() {
        problem(given().contentType("application/json").post("/testing/echo").then(), 400, "invalid-request")
                .body("errors[0].code", equalTo("missing-body"));
        problem(echo("null"), 400, "invalid-request").body("errors[0].code", equalTo("missing-body"));
    }

    @Test
    void everyReadingFaultIsReportedAtOnce() {
        problem(
                        echo("{\"nmae\":\"a\",\"efficiency\":{\"value\":1},\"side\":\"MIDDLE\","
                                + "\"inner\":{\"name\":\"b\",\"other\":[1,2]},\"values\":[1,\"x\",3]}"),
                        400,
                        "invalid-request")
                .body("errors", hasSize(5))
                .body(
                        "errors.pointer",
                        equalTo(List.of("#/efficiency", "#/side", "#/inner/other", "#/values/1", "#/nmae")))
                .body("errors[0].got", equalTo("an object"))
                .body("errors[0].allowed", equalTo("a number"))
                .body("errors[1].allowed", equalTo("HIGH, LOW"))
                .body("errors[3].got", equalTo("\"x\""))
                .body("errors[4].code", equalTo("unknown-name"))
                .body("errors[4].allowed", equalTo("efficiency, inner, name, side, values"))
                .body("errors[4].hint", equalTo("Did you mean name?"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {
                "{\"name\":\"a\",\"efficiency\":\"0.7\"}; #/efficiency; \"0.7\"",
                "{\"name\":\"a\",\"efficiency\":true}; #/efficiency; true",
                "{\"name\":\"a\",\"efficiency\":1e999}; #/efficiency; 1e999",
                "{\"name\":134}; #/name; 134",
                "{\"name\":[\"a\"]}; #/name; an array",
                "{\"name\":\"a\",\"side\":1}; #/side; 1",
                "{\"name\":\"a\",\"inner\":\"b\"}; #/inner; \"b\"",
                "{\"name\":\"a\",\"values\":{}}; #/values; an object",
                "[]; #; an array",
                "\"a\"; #; \"a\""
            })
    void nothingIsReadFromTheWrongType(String body, String pointer, String got) {
        problem(echo(body), 400, "invalid-request")
                .body("errors[0].pointer", equalTo(pointer))
                .body("errors[0].got", equalTo(got));
    }

    @Test
    void unreadableParameterIsNotAMissingPage() {
        problem(given().get("/testing/number?value=many").then(), 400, "invalid-request");
    }

    @Test
    void defectTellsNothingOfTheInside() {
        problem(given().get("/testing/defect").then(), 500, "internal-error")
                .body("errors", nullValue())
                .body(not(containsString("secret")))
                .body(not(containsString("Exception")));
    }

    @Test
    void numberThatIsNotFiniteNeverLeaves() {
        problem(given().get("/testing/not-finite").then(), 500, "internal-error")
                .body(not(containsString("NaN")));
    }

    @Test
    void numbersAreTheShortestThatReadBack() {
        String body = given().get("/testing/shortest").asString();
        assertThat(body).contains("\"value\":0.002", "\"long\":2.2250738585072014E-308", "\"other\":1.0E23");
    }

    private static ValidatableResponse echo(String body) {
        return given().contentType("application/json")
                .body(body)
                .post("/testing/echo")
                .then();
    }

    private static ValidatableResponse problem(ValidatableResponse reply, int status, String code) {
        return reply.statusCode(status)
                .contentType("application/problem+json")
                .header("Cache-Control", nullValue())
                .body("status", is(status))
                .body("code", equalTo(code))
                .body("type", equalTo("urn:loopstate:problem:" + code))
                .body("title", not(equalTo("")))
                .body("detail", not(equalTo("")));
    }
}
