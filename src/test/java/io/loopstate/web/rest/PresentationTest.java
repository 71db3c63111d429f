package io.loopstate.web.rest;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.startsWith;

import io.loopstate.testing.Http;
import io.loopstate.testing.RawHttp;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.xml.XmlPath;
import java.net.URI;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Forms of replies as spreadsheets, scripts and caches ask for them. */
@QuarkusTest
class PresentationTest {
    private static final String STATE = "/v1/properties/state?refrigerant=R-134a&temperature=20+degC&vaporQuality=1";
    private static final String TABLE =
            "/v1/properties/table?refrigerant=R-134a&temperatureFrom=0+degC&temperatureTo=20+degC&temperatureStep=10+K";
    private static final String BAD = "/v1/properties/state?refrigerant=R-134a&temperature=20+degC&pressure=5+bar";

    @TestHTTPResource
    URI server;

    @ParameterizedTest
    @CsvSource({
        "json, application/json",
        "csv, text/csv;charset=utf-8",
        "tsv, text/tab-separated-values;charset=utf-8",
        "html, text/html;charset=utf-8",
        "xml, application/xml;charset=utf-8"
    })
    void formatBeatsAccept(String format, String contentType) {
        given().accept("application/json;q=0.5, text/html")
                .urlEncodingEnabled(false)
                .get(STATE + "&format=" + format)
                .then()
                .statusCode(200)
                .header(
                        "Content-Type",
                        equalTo(
                                contentType.equals("application/json")
                                        ? "application/json;charset=UTF-8"
                                        : contentType))
                .header("Vary", equalTo("Accept"));
    }

    @ParameterizedTest
    @CsvSource({
        "text/csv, text/csv;charset=utf-8",
        "'text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8', text/html;charset=utf-8",
        "text/xml, application/xml;charset=utf-8",
        "'text/*', text/csv;charset=utf-8",
        "'text/plain, text/html;q=0.5', text/html;charset=utf-8",
        "'image/png, */*;q=0.1', application/json;charset=UTF-8"
    })
    void acceptChooses(String accept, String contentType) {
        given().accept(accept)
                .urlEncodingEnabled(false)
                .get(STATE)
                .then()
                .statusCode(200)
                .header("Content-Type", equalTo(contentType));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "/v1/version", "/v1/refrigerants?units=SI", "/"})
    void acceptThatCannotBeReadIsTheClientsFault(String path) {
        RawHttp.Reply reply = RawHttp.send(server, "GET", path.isEmpty() ? STATE : path, "Accept: text/plain/html;q");
        assertThat(reply.status()).isEqualTo(400);
        assertThat(reply.body()).contains("\"Accept\"", "unreadable-header", "text/plain/html;q");
    }

    @Test
    void plainTextIsAcceptedWhereAValueIsPicked() {
        given().accept("text/plain")
                .urlEncodingEnabled(false)
                .get(STATE + "&pick=temperature")
                .then()
                .statusCode(200)
                .header("Content-Type", equalTo("text/plain;charset=utf-8"))
                .body(equalTo("20"));
        given().accept("text/plain")
                .urlEncodingEnabled(false)
                .get(STATE)
                .then()
                .statusCode(400)
                .body("errors.parameter", equalTo(List.of("pick")))
                .body("errors.code", equalTo(List.of("missing")));
    }

    /** Some numbers alone are calculated without what nobody sees then; they are the same all the same. */
    @ParameterizedTest
    @CsvSource({
        "state, /state/density, density",
        "state, /state/viscosity, viscosity",
        "state, /state/thermalConductivity, thermalConductivity",
        "saturation, /dew/pressure, dewPressure",
        "saturation, /latentHeat, latentHeat",
        "saturation, /bubble/viscosity, bubbleViscosity",
        "saturation, /dew/thermalConductivity, dewThermalConductivity",
        "saturation, /dew/surfaceTension, dewSurfaceTension",
    })
    void aNumberAloneIsThatOfTheWholeReply(String operation, String path, String name) {
        String target = "/v1/properties/" + operation + "?refrigerant=R-134a&temperature=5%20degC"
                + (operation.equals("state") ? "&pressure=20%20psig" : "");
        double whole = Http.json(Http.get(target)).at(path + "/value").asDouble();
        String alone = Http.get(target + "&format=txt&pick=" + name)
                .statusCode(200)
                .extract()
                .asString();
        assertThat(Double.parseDouble(alone)).isEqualTo(whole);
    }

    @Test
    void singleValueIsNothingButANumber() {
        String text = Http.get(STATE + "&format=txt&pick=pressure&units=IP,pressure=psig")
                .statusCode(200)
                .header("Content-Type", equalTo("text/plain;charset=utf-8"))
                .extract()
                .asString();
        String json =
                Http.get(STATE + "&units=IP,pressure=psig").extract().jsonPath().getString("state.pressure.value");
        assertThat(text).matches("\\d+\\.\\d+");
        assertThat(Double.parseDouble(text)).isEqualTo(Double.parseDouble(json), within(1e-4));
    }

    @Test
    void everyFormOfOneReplyHasTheSameDigits() {
        String json = Http.json(Http.get(STATE)).at("/state/density/value").asText();
        assertThat(Http.get(STATE + "&format=txt&pick=density").extract().asString())
                .isEqualTo(json);
        assertThat(Http.get(STATE + "&format=csv&pick=density").extract().asString())
                .isEqualTo("stateDensity_kg_per_m3\r\n" + json + "\r\n");
        XmlPath xml = new XmlPath(Http.get(STATE + "&format=xml").extract().asString());
        assertThat(xml.getString("reply.stateDensity")).isEqualTo(json);
    }

    @Test
    void tableIsRowsInEveryForm() {
        String csv = Http.get(TABLE + "&format=csv").extract().asString();
        assertThat(csv.split("\r\n")).hasSize(4);
        assertThat(csv).startsWith("bubblePhase,");
        String html = Http.get(TABLE + "&format=html&pick=dewTemperature,dewPressure")
                .extract()
                .asString();
        assertThat(html)
                .contains("<table id=\"reply\">", "<thead>", "<th>dewTemperature_degC</th>", "<tbody>")
                .doesNotContain("<script", "<span", "<caption");
        assertThat(new XmlPath(Http.get(TABLE + "&format=xml").extract().asString()).getInt("reply.row.size()"))
                .isEqualTo(3);
    }

    @ParameterizedTest
    @CsvSource({
        "txt, '#ERR '",
        "csv, 'error\r\n\"#ERR '",
        "xml, '<?xml version=\"1.0\" encoding=\"UTF-8\"?><reply><error>#ERR '",
        "html, '<!DOCTYPE html>'",
        "json, '{\"type\":\"urn:loopstate:problem:invalid-request\"'"
    })
    void refusalInTheFormOfTheReply(String format, String start) {
        String target = BAD + "&errors=inline&format=" + format + (format.equals("txt") ? "&pick=density" : "");
        Http.get(target)
                .statusCode(200)
                .header("Cache-Control", equalTo("no-store"))
                .body(startsWith(start))
                .body(containsString("pressure"));
    }

    @Test
    void refusalIsARealOneUnlessAskedFor() {
        Http.get(BAD + "&format=csv").statusCode(400).contentType("application/problem+json");
        Http.get(STATE + "&format=txt&pick=presure").statusCode(400).contentType("application/problem+json");
        Http.get(STATE + "&format=txt&pick=presure&errors=inline")
                .statusCode(200)
                .body(equalTo(
                        "#ERR UNKNOWN_VALUE: pick: This reply has no value of this name." + " Did you mean pressure?"));
    }

    @Test
    void faultsOfPresentationAndOfInputsAreToldAtOnce() {
        Http.get(BAD + "&format=foo&digits=99")
                .statusCode(400)
                .body("errors.parameter", equalTo(List.of("format", "digits", "pressure")));
    }

    @Test
    void postHasTheFormsToo() {
        Http.post(
                        "/v1/properties/state?format=txt&pick=phase",
                        "{\"refrigerant\":\"R-134a\",\"temperature\":\"20 degC\",\"vaporQuality\":0.5}")
                .statusCode(200)
                .body(equalTo("twoPhase"));
    }

    @Test
    void cacheKeepsTheReplyUntilTheEngineChanges() {
        String tag = Http.get(STATE)
                .header("Cache-Control", equalTo("public, max-age=3600"))
                .extract()
                .header("ETag");
        assertThat(tag).matches("\"[A-Za-z0-9_-]{22}\"");
        assertThat(Http.get(STATE + "&_=123").extract().header("ETag")).isEqualTo(tag);
        assertThat(Http.get("/v1/properties/state?vaporQuality=1&temperature=20+degC&refrigerant=R-134a")
                        .extract()
                        .header("ETag"))
                .isEqualTo(tag);
        assertThat(Http.get(STATE + "&format=csv").extract().header("ETag")).isNotEqualTo(tag);
        given().header("If-None-Match", "W/\"other\", " + tag)
                .urlEncodingEnabled(false)
                .get(STATE)
                .then()
                .statusCode(304)
                .header("ETag", equalTo(tag))
                .body(equalTo(""));
        given().header("If-None-Match", "\"other\"")
                .urlEncodingEnabled(false)
                .get(STATE)
                .then()
                .statusCode(200);
    }

    @ParameterizedTest
    @ValueSource(strings = {STATE, STATE + "&format=csv", STATE + "&format=txt&pick=density"})
    void headIsGetWithoutBody(String target) {
        RawHttp.Reply get = RawHttp.send(server, "GET", target);
        RawHttp.Reply head = RawHttp.send(server, "HEAD", target);
        assertThat(head.status()).isEqualTo(200);
        assertThat(head.body()).isEmpty();
        assertThat(head.header("Content-Type")).isEqualTo(get.header("Content-Type"));
        assertThat(head.header("ETag")).isEqualTo(get.header("ETag"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/v1/refrigerants?kind=blend&component=R-32",
                "/v1/units?kind=pressure",
                "/v1/version",
                "/v1/refrigerants/R-134a"
            })
    void catalogueHasTheFormsToo(String target) {
        String separator = target.contains("?") ? "&" : "?";
        Http.get(target + separator + "format=csv")
                .statusCode(200)
                .header("Content-Type", equalTo("text/csv;charset=utf-8"));
        Http.get(target + separator + "format=html").statusCode(200);
        Http.get(target + separator + "format=xml").statusCode(200);
    }

    @Test
    void formThatIsNotOfferedNamesTheOffered() {
        Http.get("/v1/version?format=svg")
                .statusCode(406)
                .body(
                        "errors[0].allowed",
                        equalTo("application/json, text/csv, text/tab-separated-values, text/plain, "
                                + "text/html, application/xml"));
    }
}
