package io.loopstate.web.rest;

import static io.loopstate.testing.Http.get;
import static io.loopstate.testing.Http.json;
import static io.loopstate.testing.Http.post;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables over HTTP. */
@QuarkusTest
class TableTest {
    private static final String TABLE = "/v1/properties/table";

    @Test
    void rowOfASaturationTableIsTheSaturationThere() {
        JsonNode table = json(get(TABLE + "?refrigerant=R-290&temperatureFrom=-40+degF&temperatureTo=40+degF"
                        + "&temperatureStep=20+delta_degF&units=IP")
                .statusCode(200)
                .body("rows", hasSize(5))
                .body("rows[0].state", nullValue()));
        JsonNode row = table.at("/rows/3");
        JsonNode single = json(get("/v1/properties/saturation?refrigerant=R-290&temperature=20+degF&units=IP"));
        for (String pointer : List.of("/bubble/density/value", "/dew/specificEnthalpy/value", "/latentHeat/value")) {
            double expected = single.at(pointer).doubleValue();
            // The temperature is a sum of steps here, so its last digits differ.
            assertThat(row.at(pointer).doubleValue()).isCloseTo(expected, within(1e-9 * Math.abs(expected)));
        }
    }

    @Test
    void tableOfSuperheatedVaporStartsAtTheDewPoint() {
        JsonNode table = json(get(TABLE + "?refrigerant=R-290&atPressure=30+psig&superheatFrom=0+K&superheatTo=10+K"
                        + "&superheatStep=5+K")
                .statusCode(200)
                .body("rows.state.superheat.value", equalTo(List.of(0.0f, 5.0f, 10.0f)))
                .body("rows[0].bubble", nullValue()));
        assertThat(table.at("/rows/0/state/specificEnthalpy/value").doubleValue())
                .isEqualTo(table.at("/dew/specificEnthalpy/value").doubleValue());
    }

    @Test
    void queryAndBodyGiveTheSameBytes() {
        String query = get(TABLE
                        + "?refrigerant=R-744&pressureFrom=20+bar_a&pressureTo=40+bar_a&pressureStep=5+bar_diff")
                .statusCode(200)
                .extract()
                .asString();
        String body =
                "{\"refrigerant\":\"R-744\",\"pressure\":{\"from\":\"20 bar_a\",\"to\":{\"value\":40,\"unit\":\"bar_a\"},"
                        + "\"step\":\"5 bar_diff\"}}";
        assertThat(post(TABLE, body).extract().asString()).isEqualTo(query);
    }

    @ParameterizedTest
    @CsvSource({
        "temperatureFrom=0+degC&temperatureTo=200+degC&temperatureStep=10+K, 422, temperatureTo, above-critical",
        "temperatureFrom=0+degC&temperatureTo=50+degC&temperatureStep=0.01+K, 422, temperatureStep, impossible-value",
        "temperatureFrom=0+degC&temperatureTo=-50+degC&temperatureStep=5+K, 422, temperatureTo, contradictory-inputs",
        "temperatureFrom=0+degC&temperatureTo=50+degC&temperatureStep=0+K, 422, temperatureStep, impossible-value",
        "temperatureFrom=0+degC&temperatureTo=50+degC&temperatureStep=5+degC, 400, temperatureStep, unit-of-another-kind",
        "temperatureFrom=0+degC&temperatureTo=50+degC, 400, temperatureStep, missing",
        "superheatFrom=0+K&superheatTo=50+K&superheatStep=5+K, 400, atPressure, missing",
        "atPressure=90+bar_a&superheatFrom=0+K&superheatTo=50+K&superheatStep=5+K, 422, atPressure, above-critical",
        "refrigerants=1, 400, refrigerants, unknown-parameter"
    })
    void faultNamesThePartOfTheRange(String query, int status, String parameter, String code) {
        get(TABLE + "?refrigerant=R-290&" + query)
                .statusCode(status)
                .body("errors[0].parameter", equalTo(parameter))
                .body("errors[0].code", equalTo(code));
    }

    @Test
    void twoRangesExcludeEachOther() {
        get(TABLE + "?refrigerant=R-290&temperatureFrom=0+degC&temperatureTo=50+degC&temperatureStep=5+K"
                        + "&pressureFrom=1+bar_a&pressureTo=2+bar_a&pressureStep=1+bar_diff")
                .statusCode(400)
                .body("errors.parameter", equalTo(List.of("pressureFrom")))
                .body("errors.code", equalTo(List.of("too-many-inputs")));
    }
}
