package io.loopstate.web.rest;

import static io.loopstate.testing.Http.get;
import static io.loopstate.testing.Http.post;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** States and saturation over HTTP. */
@QuarkusTest
class PropertiesTest {
    private static final String STATE = "/v1/properties/state";
    private static final String SATURATION = "/v1/properties/saturation";

    /** Source: pressure-temperature chart of the trade, from memory, good to 1 % of the absolute pressure. */
    @ParameterizedTest
    @CsvSource({"R-22, 20, 43.1", "R-22, 80, 143.6", "R-134a, 40, 35.0", "R-134a, 80, 86.7", "R-134a, 120, 171.2"})
    void saturationPressureIsThatOfTheChart(String refrigerant, double temperature, double gauge) {
        double pressure = get(SATURATION + "?units=IP,pressure=psig&refrigerant=" + refrigerant + "&temperature="
                        + temperature + "+degF")
                .statusCode(200)
                .body("dew.pressure.unit", equalTo("psig"))
                .extract()
                .jsonPath()
                .getDouble("dew.pressure.value");
        assertThat(pressure + 14.696).isCloseTo(gauge + 14.696, within(0.01 * (gauge + 14.696)));
    }

    @Test
    void queryAndBodyGiveTheSameBytes() {
        String query = get(STATE + "?refrigerant=r134a&temperature=41.5+degF&pressure=30+psig&units=IP")
                .extract()
                .asString();
        String body = post(
                        STATE,
                        "{\"refrigerant\":\"R-134a\",\"temperature\":{\"value\":41.5,\"unit\":\"degF\"},"
                                + "\"pressure\":\"30 psig\",\"units\":\"IP\"}")
                .extract()
                .asString();
        String optionInQuery = post(
                        STATE + "?units=IP&_=20260101",
                        "{\"refrigerant\":\"R-134a\",\"temperature\":\"41.5 °F\",\"pressure\":\"30 psi(g)\"}")
                .extract()
                .asString();
        assertThat(query).startsWith("{\"state\":{\"phase\":\"vapor\",\"temperature\":{");
        assertThat(body).isEqualTo(query);
        assertThat(optionInQuery).isEqualTo(query);
    }

    @Test
    void everyReplyNamesWhatItRestsOn() {
        get(SATURATION + "?refrigerant=R-134a&pressure=35+psig&altitude=5280+ft")
                .statusCode(200)
                .body("basis.engineVersion", notNullValue())
                .body("basis.refrigerant", equalTo("R-134a"))
                .body("basis.equationOfState.source", containsString("Tillner-Roth"))
                .body("basis.equationOfState.doi", equalTo("10.1063/1.555958"))
                .body("basis.referenceState", equalTo("IIR"))
                .body("basis.atmosphere.origin", equalTo("altitude"))
                .body("basis.atmosphere.pressure.unit", equalTo("kPa_a"))
                .body("basis.unitSystem", equalTo("SI"))
                .body("warnings", equalTo(List.of()))
                .body("cautions", hasItem(containsString("A1")));
    }

    /** Inside the dome what has no meaning is left out; nothing is null. */
    @Test
    void whatDoesNotApplyIsAbsent() {
        get(STATE + "?refrigerant=R-290&temperature=20+degF&vaporQuality=30+pct")
                .statusCode(200)
                .body("state.phase", equalTo("twoPhase"))
                .body("state.vaporQuality", equalTo(0.3f))
                .body("state.isobaricHeatCapacity", nullValue())
                .body("state.superheat", nullValue())
                .body(not(containsString("null")));
    }

    /** Water at 4 degC is nearly incompressible and densest: two pressures have nearly any volume near it. */
    @Test
    void candidatesAreListedInTheUnitsOfTheReply() {
        ambiguous("")
                .statusCode(422)
                .body("code", equalTo("ambiguous-input"))
                .body("errors[0].candidates.phase", hasItems("liquid"))
                .body("errors[0].candidates[0].temperature.unit", equalTo("degF"));
    }

    private static ValidatableResponse ambiguous(String more) {
        return get(STATE + "?refrigerant=R-718&density=999.9+kg_per_m3&pressure=1+bar_a&units=IP" + more);
    }

    @ParameterizedTest
    @ValueSource(strings = {"IIR", "ASHRAE", "normalBoilingPoint"})
    void referenceStateIsTheOneAskedFor(String name) {
        get(SATURATION + "?refrigerant=R-134a&temperature=0+degC&referenceState=" + name)
                .statusCode(200)
                .body("basis.referenceState", equalTo(name));
    }

    @Test
    void gaugeReadingsAreExplained() {
        get(STATE + "?refrigerant=R-134a&temperature=60+degF&pressure=35+psig&explain=true&units=IP")
                .statusCode(200)
                .body("working[0].formula", equalTo("p = p_gauge + p_atmosphere"))
                .body("working[0].inputs[0].quantity.value", equalTo(35.0f))
                .body("working[0].inputs[0].quantity.unit", equalTo("psig"));
    }

    @Test
    void everyFaultIsToldAtOnce() {
        post(
                        STATE + "?altitude=99+km&color=red",
                        "{\"refrigerant\":\"R-134\",\"temperature\":{\"value\":1,\"unt\":\"degF\"},\"pressure\":118,"
                                + "\"foo\":1,\"phase\":\"vapour\",\"superheat\":\"5 degF\"}")
                .statusCode(400)
                .body(
                        "errors.code",
                        equalTo(List.of(
                                "unknown-name",
                                "unknown-parameter",
                                "altitude-out-of-range",
                                "unknown-name",
                                "unit-missing",
                                "unit-of-another-kind",
                                "wrong-value",
                                "unknown-refrigerant",
                                "too-many-inputs")))
                .body("errors.find { it.code == 'unknown-refrigerant' }.hint", containsString("R-134a"))
                .body("errors.find { it.code == 'unit-of-another-kind' }.hint", containsString("delta_degF"))
                .body("errors.find { it.code == 'altitude-out-of-range' }.parameter", equalTo("altitude"))
                .body("errors.find { it.code == 'wrong-value' }.pointer", equalTo("#/phase"));
    }

    /** The lower limit that a refusal states is itself answered; the upper one is the critical point, where nothing is. */
    @ParameterizedTest
    @CsvSource({
        "R-290, temperature, degC", "R-290, temperature, degF", "R-744, temperature, K",
        "R-134a, pressure, bar_g", "R-717, pressure, psia", "R-1234yf, pressure, kPa_a"
    })
    void statedLimitsAreAnswered(String refrigerant, String variable, String unit) {
        String request = SATURATION + "?refrigerant=" + refrigerant + '&' + variable + '=';
        String allowed =
                get(request + "20000+" + unit).statusCode(422).extract().path("errors[0].allowed");
        Matcher range = Pattern.compile("(\\S+) to below (\\S+) " + unit).matcher(allowed);
        assertThat(range.matches()).as(allowed).isTrue();
        get(request + range.group(1) + '+' + unit).statusCode(200);
        double critical = Double.parseDouble(range.group(2));
        double below = variable.equals("pressure") ? 0.999 * critical : critical - 0.05;
        get(request + below + '+' + unit).statusCode(200);
    }
}
