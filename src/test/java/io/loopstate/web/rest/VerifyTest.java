package io.loopstate.web.rest;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.startsWith;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.testing.Http;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Status and form of reports. */
@QuarkusTest
class VerifyTest {
    private static final String FILE = "{\"name\": \"suite\", \"cases\": [{\"id\": \"one\", \"operation\": "
            + "\"properties/saturation\", \"request\": {\"refrigerant\": \"R-134a\", \"temperature\": \"40 degC\"}, "
            + "\"expect\": [{\"pointer\": \"/dew/pressure\", \"value\": %s, \"unit\": \"kPa_a\", \"absoluteTolerance\": 1}]}]}";
    private static final String GOOD = FILE.formatted("1016.6");
    private static final String WRONG = FILE.formatted("1000");

    @ParameterizedTest
    @CsvSource({
        "'', application/json",
        "?format=json, application/json",
        "?format=junit, application/xml",
        "?format=tap, text/plain",
        "?_=1, application/json"
    })
    void formByName(String query, String type) {
        Http.post("/v1/verify" + query, GOOD).statusCode(200).contentType(startsWith(type));
        Http.post("/v1/verify" + query, WRONG).statusCode(200).contentType(startsWith(type));
        Http.post("/v1/verify/" + query, GOOD).statusCode(200).contentType(startsWith(type));
    }

    @ParameterizedTest
    @CsvSource({
        "application/xml, '', application/xml",
        "text/plain, '', text/plain",
        "text/html, ?format=tap, text/plain",
        "application/xml, ?format=json, application/json"
    })
    void formByHeader(String accept, String query, String type) {
        given().contentType("application/json")
                .accept(accept)
                .body(GOOD)
                .post("/v1/verify" + query)
                .then()
                .statusCode(200)
                .contentType(startsWith(type));
    }

    @Test
    void mismatchIsAnAnswer() {
        JsonNode report = Http.json(Http.post("/v1/verify", WRONG).statusCode(200));
        assertThat(report.get("passed").booleanValue()).isFalse();
        assertThat(report.at("/cases/0/expectations/0/difference/unit").textValue())
                .isEqualTo("kPa_diff");
        assertThat(report.at("/totals/casesPassed").intValue()).isZero();
    }

    @Test
    void mismatchIsRefusedWhereThatIsAskedFor() {
        ValidatableResponse refusal = Http.post("/v1/verify?onMismatch=422", WRONG);
        refusal.statusCode(422).contentType("application/problem+json");
        assertThat(Http.json(refusal).get("code").textValue()).isEqualTo("expectations-not-met");
        assertThat(Http.json(refusal).at("/errors/0/pointer").textValue()).isEqualTo("#/cases/0/expect/0");
        Http.post("/v1/verify?onMismatch=422", GOOD).statusCode(200);
        String xml = Http.post("/v1/verify?onMismatch=422&format=junit", WRONG)
                .statusCode(422)
                .contentType(startsWith("application/xml"))
                .extract()
                .asString();
        assertThat(xml).contains("<failure");
    }

    /** The largest file takes no more than its limits say, and every case stands in the report. */
    @Test
    void asManyCasesAsAreAllowed() {
        String cases = IntStream.range(0, 1000)
                .mapToObj(i -> "{\"id\": \"" + i
                        + "\", \"operation\": \"properties/saturation\", \"request\": {\"refrigerant\": "
                        + "\"R-134a\", \"temperature\": \"" + i / 10.0 + " degC\"}, \"expectedStatus\": 200}")
                .collect(Collectors.joining(","));
        JsonNode report = Http.json(
                Http.post("/v1/verify", "{\"cases\": [" + cases + "]}").statusCode(200));
        assertThat(report.get("cases")).hasSize(1000);
        assertThat(report.get("passed").booleanValue()).isTrue();
    }
}
