package io.loopstate.testing;

import static io.restassured.RestAssured.given;

import io.restassured.response.ValidatableResponse;

/** Requests as a client writes them. */
public final class Http {
    private Http() {}

    /** A GET of exactly this path and query. */
    public static ValidatableResponse get(String target) {
        return given().urlEncodingEnabled(false).get(target).then();
    }

    /** A POST of a JSON body to exactly this path and query. */
    public static ValidatableResponse post(String target, String body) {
        return given().urlEncodingEnabled(false)
                .contentType("application/json")
                .body(body)
                .post(target)
                .then();
    }
}
