package io.loopstate.testing;

import static io.restassured.RestAssured.given;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.restassured.RestAssured;
import io.restassured.config.EncoderConfig;
import io.restassured.response.ValidatableResponse;
import java.nio.charset.StandardCharsets;

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
        return post(target, "application/json", body);
    }

    /** A POST of a body of any type; the header says exactly this. */
    public static ValidatableResponse post(String target, String type, String body) {
        return post(target, type, body.getBytes(StandardCharsets.UTF_8));
    }

    /** The same of bytes. */
    public static ValidatableResponse post(String target, String type, byte[] body) {
        return given().urlEncodingEnabled(false)
                .config(RestAssured.config()
                        .encoderConfig(EncoderConfig.encoderConfig()
                                .appendDefaultContentCharsetToContentTypeIfUndefined(false)))
                .header("Content-Type", type)
                .body(body)
                .post(target)
                .then();
    }
}
