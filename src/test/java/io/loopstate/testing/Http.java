package io.loopstate.testing;

import static io.restassured.RestAssured.given;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.restassured.response.ValidatableResponse;

/** Requests as a client writes them. */
public final class Http {
    private Http() {}

    /** A GET of exactly this path and query. */
    public static ValidatableResponse get(String target) {
        return given().urlEncodingEnabled(false).get(target).then();
    }

    /** The body of a reply with every digit; the test library's own reader takes numbers for floats. */
    public static JsonNode json(ValidatableResponse reply) {
        try {
            return new ObjectMapper().readTree(reply.extract().asString());
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(e);
        }
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
