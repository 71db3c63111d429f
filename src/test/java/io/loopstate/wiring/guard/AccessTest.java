package io.loopstate.wiring.guard;

import static io.restassured.RestAssured.given;
import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;

import io.loopstate.testing.RawHttp;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.ValidatableResponse;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A service that answers with a key only. */
@QuarkusTest
@TestProfile(AccessTest.WithKeys.class)
class AccessTest {
    private static final String STATE = "/v1/properties/state?refrigerant=R-134a&temperature=300+K&pressure=1+bar_a";
    /** SHA-256 of each by the tool sha256sum. */
    private static final String KEY = "harbor-trades-college-1";

    private static final String KEY_HASH = "fc86cd16af28e6f82b6dc014e4ff8555f41610d489831d476b7009abec58b4e8";
    private static final String SLOW_KEY = "northquay refrigeration/2";
    private static final String SLOW_KEY_HASH = "caa41723e4c923fc7fd279ddf0e49d7889645c66db8e74dde57e079f13c2106e";
    private static final Path LOG = Path.of("target", "access-test.log");

    @TestHTTPResource
    URI server;

    /** One key that is never used up and one that is at once; with every request logged. */
    public static final class WithKeys implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            return Map.ofEntries(
                    entry("loopstate.access.keys.college.sha256", KEY_HASH),
                    entry("loopstate.access.keys.northquay.sha256", SLOW_KEY_HASH),
                    entry("loopstate.access.keys.northquay.requests-per-minute", "2"),
                    entry("loopstate.access.requests-per-minute", "100000"),
                    entry("quarkus.http.access-log.enabled", "true"),
                    entry("quarkus.http.access-log.pattern", "%r %q"),
                    entry("quarkus.log.level", "INFO"),
                    entry("quarkus.log.category.\"io.loopstate\".level", "DEBUG"),
                    entry("quarkus.log.category.\"io.quarkus.vertx\".level", "DEBUG"),
                    entry("quarkus.log.category.\"org.jboss.resteasy\".level", "DEBUG"),
                    entry("quarkus.log.file.enabled", "true"),
                    entry("quarkus.log.file.path", LOG.toString()));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/?ask=saturation", "/?ask=design&units=SI", "/front/front.css", "/front/front.js"})
    void pageIsOpenAsAFormAndAsksForAKey(String address) {
        String body = url(address).statusCode(200).extract().asString();
        assertThat(address.startsWith("/front") || body.contains("name=\"key\""))
                .isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"ask=saturation&refrigerant", "%72efrigerant", "ask=saturation&units=SI&ownBlend"})
    void pageAnswersWithAKeyOnly(String names) {
        String address = "/?" + names + "=R-290&temperature=-20+degC";
        url(address).statusCode(401);
        // The first page of a process makes the lists on it, and on a busy machine may take longer than its deadline.
        int tries = 0;
        while (with(KEY)
                        .get("/?ask=saturation&refrigerant=R-290&temperature=-20+degC")
                        .statusCode()
                == 503) {
            assertThat(++tries).isLessThan(4);
        }
        assertThat(with(KEY)
                        .get("/?ask=saturation&refrigerant=R-290&temperature=-20+degC")
                        .then()
                        .statusCode(200)
                        .header("Cache-Control", equalTo("private, max-age=3600"))
                        .extract()
                        .asString())
                .contains("<svg ", "Latent heat")
                .doesNotContain("<img src=\"/v1/", KEY);
    }

    /** The platform takes a semicolon for a separator, which nobody here does: nothing is calculated behind one. */
    @Test
    void semicolonOpensNoWayAroundTheKey() {
        String body = url("/?ask=saturation;refrigerant=R-290;temperature=-20+degC")
                .statusCode(200)
                .extract()
                .asString();
        assertThat(body).contains("name=\"key\"").doesNotContain("Latent heat", "<svg ");
    }

    @Test
    void keyIsTakenFromHeaderOrQuery() {
        String expected = with(KEY).get(STATE).then().statusCode(200).extract().asString();
        assertThat(url(STATE + "&key=" + KEY).statusCode(200).extract().asString())
                .isEqualTo(expected);
        url("/v1/version?key=" + KEY).statusCode(200);
        url(STATE.replace("?", "?key=" + KEY + "&")).statusCode(200);
        given().header("X-API-Key", KEY)
                .contentType("application/json")
                .body("{\"refrigerant\":\"R-134a\",\"temperature\":\"300 K\",\"pressure\":\"1 bar_a\"}")
                .post("/v1/properties/state")
                .then()
                .statusCode(200);
        given().contentType("application/json")
                .body("{\"refrigerant\":\"R-134a\",\"temperature\":\"300 K\",\"pressure\":\"1 bar_a\"}")
                .post("/v1/properties/state?units=IP&key=" + KEY)
                .then()
                .statusCode(200);
    }

    @Test
    void withoutKeyIsAProblem() {
        refusal(url(STATE), "missing-key");
        refusal(url("/v1/nothing"), "missing-key");
        refusal(given().body("{").post("/v1/properties/state").then(), "missing-key");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "harbor-trades-college-",
                "harbor-trades-college-11",
                "HARBOR-TRADES-COLLEGE-1",
                " harbor-trades-college-1x",
                KEY_HASH
            })
    void unknownKeyIsAProblemThatDoesNotRepeatIt(String key) {
        refusal(with(key).get(STATE).then(), "unknown-key").body(not(containsString("college")));
        refusal(given().queryParam("key", key).get("/v1/version").then(), "unknown-key")
                .body(not(containsString("college")));
    }

    @Test
    void brokenEscapeInAKeyIsAnUnknownKey() {
        RawHttp.Reply reply = RawHttp.send(server, "GET", "/v1/version?key=SECRET%zz");
        assertThat(reply.status()).isEqualTo(401);
        assertThat(reply.body()).contains("\"code\":\"unknown-key\"").doesNotContain("SECRET");
    }

    @Test
    void badDataIsNeverUnauthorized() {
        with(KEY).get("/v1/properties/state?refrigerant=R-x").then().statusCode(400);
        with(KEY).get("/v1/nothing").then().statusCode(404);
        with(KEY).delete("/v1/version").then().statusCode(405);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/livez", "/readyz", "/startedz", "/metrics", "/q/openapi", "/q/swagger-ui/"})
    void operationalRoutesNeedNoKey(String path) {
        url(path).statusCode(200);
    }

    @Test
    void preflightNeedsNoKey() {
        given().header("Origin", "https://example.org")
                .header("Access-Control-Request-Method", "POST")
                .header("Access-Control-Request-Headers", "content-type,x-api-key")
                .options("/v1/properties/state")
                .then()
                .statusCode(204)
                .header("Access-Control-Allow-Origin", equalTo("*"))
                .header("Access-Control-Allow-Credentials", nullValue())
                .header("Access-Control-Allow-Headers", containsString("X-API-Key"));
        given().options("/v1/properties/state").then().statusCode(204);
    }

    @Test
    void rateOfAKeyIsToldAndKept() {
        for (int left = 1; left >= 0; left--) {
            with(SLOW_KEY)
                    .get("/v1/version")
                    .then()
                    .statusCode(200)
                    .header("RateLimit-Policy", equalTo("\"key\";q=2;w=60"))
                    .header("RateLimit", matchesPattern("\"key\";r=" + left + ";t=[0-9]+"));
        }
        given().urlEncodingEnabled(false)
                .get("/v1/version?key=northquay+refrigeration%2F2")
                .then()
                .statusCode(429)
                .contentType("application/problem+json")
                .header("RateLimit", matchesPattern("\"key\";r=0;t=[0-9]+"))
                .header("Retry-After", matchesPattern("[1-9]|[12][0-9]|30"))
                .body("code", equalTo("too-many-requests"))
                .body(not(containsString("refrigeration")));
        with(KEY).get("/v1/version").then().statusCode(200);
    }

    @Test
    void keysAreInNoLog() throws IOException {
        url("/v1/version?key=" + KEY + "&_=1").statusCode(200);
        url("/v1/version?text=a&key=SECRET-IN-QUERY").statusCode(401);
        with("SECRET-IN-HEADER").get("/v1/version").then().statusCode(401);
        with(KEY).get("/testing/defect").then().statusCode(500);
        url("/testing/defect?key=" + KEY).statusCode(500);
        String log = Files.readString(LOG);
        assertThat(log).contains("GET /v1/version?_=1", "defect method=GET path=/testing/defect");
        assertThat(log).doesNotContain(KEY, "SECRET", SLOW_KEY, "refrigeration%2F2");
    }

    private static io.restassured.specification.RequestSpecification with(String key) {
        return given().urlEncodingEnabled(false).header("X-API-Key", key);
    }

    private static ValidatableResponse url(String target) {
        return given().urlEncodingEnabled(false).get(target).then();
    }

    private static ValidatableResponse refusal(ValidatableResponse reply, String code) {
        return reply.statusCode(401)
                .contentType("application/problem+json")
                .header("WWW-Authenticate", containsString("ApiKey"))
                .body("code", equalTo("unauthorized"))
                .body("errors[0].code", equalTo(code))
                .body("errors[0].parameter", equalTo("X-API-Key"));
    }
}
