package io.loopstate.web.rest;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.loopstate.web.chart.Picture;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures stand beside the JSON of the same address, for who asks for them. */
@QuarkusTest
class PicturesTest {
    private static final String DESIGN = "/v1/cycle-points/design?refrigerant=R-134a&evaporatingTemperature=20+degF"
            + "&condensingTemperature=105+degF&superheat=10+delta_degF&subcooling=10+delta_degF&isentropicEfficiency=0.7";

    private static Response get(String target, String accept) {
        return given().urlEncodingEnabled(false).accept(accept).get(target);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                DESIGN,
                DESIGN + "&chart=temperatureEntropy&units=IP",
                "/v1/properties/saturation?refrigerant=R-448A&pressure=42+psig",
                "/v1/properties/table?refrigerant=R-134a&temperatureFrom=0+degF&temperatureTo=120+degF&temperatureStep=10+delta_degF",
                "/v1/compression/cylinder?refrigerant=Air&initialPressure=0+psig&initialTemperature=70+degF&initialVolume=20+in3&endVolume=5+in3&path=adiabatic"
            })
    void acceptedPictureIsDrawn(String target) {
        Response response = get(target, "image/svg+xml");
        assertThat(response.statusCode()).as(response.asString()).isEqualTo(200);
        assertThat(response.contentType()).startsWith("image/svg+xml");
        assertThat(Picture.of(response.asString()).texts()).isNotEmpty();
    }

    @Test
    void whoeverDoesNotAskGetsJson() {
        assertThat(get(DESIGN, "*/*").contentType()).startsWith("application/json");
        assertThat(get(DESIGN, "application/json").contentType()).startsWith("application/json");
    }

    @Test
    void bodyIsDrawnToo() {
        Response response = given().contentType("application/json")
                .accept("image/svg+xml")
                .body("{\"refrigerant\": \"R-32\", \"pressure\": \"10 bar_a\"}")
                .post("/v1/properties/saturation");
        assertThat(response.statusCode()).isEqualTo(200);
        assertThat(Picture.of(response.asString()).texts()).contains("Pressures are absolute.");
    }

    @Test
    void faultsOfAPictureAreProblems() {
        Response response = get(DESIGN + "&chart=pie", "image/svg+xml");
        assertThat(response.statusCode()).isEqualTo(400);
        assertThat(response.contentType()).startsWith("application/problem+json");
        assertThat(response.jsonPath().getString("errors[0].parameter")).isEqualTo("chart");
    }

    @Test
    void whatHasNoPictureSaysSo() {
        assertThat(get("/v1/properties/state?refrigerant=R-32&temperature=20+degC&pressure=5+bar_a", "image/svg+xml")
                        .statusCode())
                .isEqualTo(406);
    }
}
