package io.loopstate.web.rest;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;

import io.loopstate.testing.Http;
import io.quarkus.test.junit.QuarkusTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Forms, caching and refusals of the report on published values. */
@QuarkusTest
class VerificationRouteTest {
    private static final String ONE = "/v1/verification?source=BORG";

    @ParameterizedTest
    @CsvSource({
        "'', application/json",
        "&format=json, application/json",
        "&format=html, text/html",
        "&format=junit, application/xml"
    })
    void formByName(String query, String type) {
        Http.get(ONE + query).statusCode(200).contentType(startsWith(type));
        Http.get(ONE.replace("?", "/?") + query).statusCode(200).contentType(startsWith(type));
    }

    @ParameterizedTest
    @CsvSource({
        "text/html, '', text/html",
        "application/xml, '', application/xml",
        "'text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8', '', text/html",
        "text/html, &format=json, application/json"
    })
    void formByHeader(String accept, String query, String type) {
        given().accept(accept).get(ONE + query).then().statusCode(200).contentType(startsWith(type));
    }

    @Test
    void valuesAreToldWhereOneSourceIsAskedFor() {
        Http.get(ONE).statusCode(200).body("sources", hasSize(1)).body("sources[0].values", hasSize(10));
        Http.get(ONE + "&details=false").statusCode(200).body("sources[0].values", nullValue());
    }

    @Test
    void everySourceInShort() {
        Http.get("/v1/verification")
                .statusCode(200)
                .body("passed", equalTo(true))
                .body("totals.unexpected", equalTo(0))
                .body("totals.values", equalTo(2083))
                .body("sources[0].values", nullValue())
                .body("leftOut", hasSize(15));
    }

    /** A cache may keep it, but has to ask this very build whether it still holds. */
    @Test
    void cachesAskEachTime() {
        String tag = Http.get(ONE)
                .statusCode(200)
                .header("Cache-Control", "no-cache")
                .extract()
                .header("ETag");
        assertThat(tag).isNotBlank();
        given().header("If-None-Match", tag)
                .get(ONE)
                .then()
                .statusCode(304)
                .header("Cache-Control", "no-cache")
                .header("ETag", tag);
        assertThat(Http.get(ONE + "&format=html").extract().header("ETag")).isNotEqualTo(tag);
    }

    /** Anyone can repeat what the report did. */
    @Test
    void requestOfAValueIsAnswered() {
        String request = Http.get(ONE).extract().path("sources[0].values[0].request");
        Http.get(request).statusCode(200);
    }
}
