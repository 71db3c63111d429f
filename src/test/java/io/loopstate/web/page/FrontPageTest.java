package io.loopstate.web.page;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.testing.Http;
import io.loopstate.testing.Page;
import io.loopstate.testing.RawHttp;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The front page as a browser without scripts gets it. */
@QuarkusTest
class FrontPageTest {
    private static final String TRAINER =
            "/?ask=readings&refrigerant=R-134a&suctionPressure=18&suctionPressureUnit=psig&suctionLineTemperature=35"
                    + "&suctionLineTemperatureUnit=degF&dischargePressure=135&dischargePressureUnit=psig"
                    + "&dischargeLineTemperature=160&dischargeLineTemperatureUnit=degF&evaporatorOutletTemperature="
                    + "&evaporatorOutletTemperatureUnit=degF&liquidLineTemperature=93"
                    + "&liquidLineTemperatureUnit=degF&displacement=2.4&displacementUnit=cfm&volumetricEfficiency=75+%25"
                    + "&units=IP,pressure%3Dpsig&digits=5&dec=&pick=subcooling&arguments=comma&ownBlend=";
    private static final String SATURATION =
            "/?ask=saturation&refrigerant=R-290&temperature=-20&temperatureUnit=degF&units=IP";
    private static final String DESIGN =
            "/?ask=design&refrigerant=R-454B&evaporatingTemperature=45+degF&condensingTemperature=115+degF"
                    + "&superheat=10+delta_degF&subcooling=10+delta_degF&isentropicEfficiency=0.7"
                    + "&refrigeratingCapacity=5+ton&units=IP&digits=4";

    @TestHTTPResource
    URI server;

    static Stream<String> answered() {
        return Stream.of(TRAINER, SATURATION, DESIGN);
    }

    static Stream<String> pages() {
        return Stream.of("/", "/?ask=saturation", "/?ask=design&units=SI", TRAINER, SATURATION, DESIGN);
    }

    @ParameterizedTest
    @MethodSource("pages")
    void pageIsKeptByCachesAndStrictWithBrowsers(String address) {
        RawHttp.Reply reply = RawHttp.send(server, "GET", address);
        assertThat(reply.status()).isEqualTo(200);
        assertThat(reply.header("Content-Type")).isEqualTo("text/html;charset=utf-8");
        assertThat(reply.header("Cache-Control")).isEqualTo("public, max-age=3600");
        assertThat(reply.header("X-Content-Type-Options")).isEqualTo("nosniff");
        assertThat(reply.header("Content-Security-Policy"))
                .contains("default-src 'none'", "script-src 'self'", "form-action 'self'", "frame-ancestors 'none'")
                .doesNotContain("unsafe", "data:", "*");
        String tag = reply.header("ETag");
        assertThat(tag).matches("\"[\\w-]{22}\"");
        RawHttp.Reply again = RawHttp.send(server, "GET", address, "If-None-Match: " + tag);
        assertThat(again.status()).isEqualTo(304);
        assertThat(again.body()).isEmpty();
        RawHttp.Reply head = RawHttp.send(server, "HEAD", address);
        assertThat(head.status()).isEqualTo(200);
        assertThat(head.body()).isEmpty();
        assertThat(head.header("ETag")).isEqualTo(tag);
    }

    @Test
    void addressesOfTheReadmeAreAnswered() throws IOException {
        List<String> addresses = Files.readString(Path.of("README.md"))
                .lines()
                .filter(line -> line.startsWith("http://localhost:8080/?"))
                .map(line -> line.replace("http://localhost:8080", ""))
                .toList();
        assertThat(addresses)
                .hasSize(2)
                .allSatisfy(address -> assertThat(Page.get(address).figures()).isNotEmpty());
    }

    @Test
    void methodsAreThoseOfADocument() {
        assertThat(RawHttp.send(server, "OPTIONS", "/").header("Allow")).isEqualTo("GET, HEAD, OPTIONS");
        assertThat(given().post("/").statusCode()).isEqualTo(405);
        given().accept("image/png").get("/").then().statusCode(406);
        given().get("/nothing-here").then().statusCode(404).contentType("application/problem+json");
        given().get("/front/nothing.css").then().statusCode(404).contentType("application/problem+json");
    }

    /** What the policy forbids would silently not work. */
    @ParameterizedTest
    @MethodSource("pages")
    void nothingOnThePageIsInlineOrFromElsewhere(String address) {
        Page page = Page.get(address);
        assertThat(page.document().select("script").eachAttr("src")).hasSize(1);
        assertThat(page.document().select("script").html()).isBlank();
        assertThat(page.document().select("style, iframe, object, embed, base, [style]"))
                .isEmpty();
        assertThat(page.document().getAllElements())
                .allSatisfy(element -> assertThat(element.attributes().asList())
                        .noneMatch(attribute -> attribute.getKey().startsWith("on")));
        assertThat(page.addresses())
                .allSatisfy(link -> assertThat(link).startsWith("/").doesNotStartWith("//"));
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everyLinkLeadsSomewhere(String address) {
        Page page = Page.get(address);
        assertThat(page.addresses())
                .hasSizeGreaterThan(40)
                .allSatisfy(link -> assertThat(
                                RawHttp.send(server, "GET", link.split("#")[0]).status())
                        .isEqualTo(200));
        assertThat(page.ids()).containsAll(page.references());
        assertThat(page.ids()).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("answered")
    void numbersAreThoseOfTheService(String address) {
        Page page = Page.get(address);
        JsonNode reply = Http.json(Http.get(page.target()).statusCode(200));
        Question question = Questions.named(page.value("ask"));
        Map<String, String> figures = page.figures();
        assertThat(figures).hasSizeGreaterThan(4);
        question.figures().forEach(figure -> {
            JsonNode value = reply.at(figure.pointer());
            if (value.isMissingNode()) {
                assertThat(figures).doesNotContainKey(figure.label());
            } else {
                JsonNode number = value.has("value") ? value.get("value") : value;
                assertThat(Double.parseDouble(figures.get(figure.label()).replace('−', '-')))
                        .isEqualTo(number.doubleValue());
            }
        });
        String text = page.document().text();
        assertThat(text).contains("A calculation is no safety approval.", "Liquid wrecks compressors.");
        reply.get("warnings")
                .forEach(warning ->
                        assertThat(text).contains(warning.get("message").asText()));
        reply.get("cautions").forEach(caution -> assertThat(text).contains(caution.asText()));
    }

    /** A bench trainer, whose numbers are checked elsewhere; here, that they reach the page. */
    @Test
    void fieldsAndUnitsBecomeOneRequest() {
        Page page = Page.get(TRAINER);
        assertThat(page.code("address"))
                .isEqualTo("http://" + server.getAuthority()
                        + "/v1/cycle-points/readings?refrigerant=R-134a&suctionPressure=18+psig&suctionLineTemperature=35+degF"
                        + "&dischargePressure=135+psig&dischargeLineTemperature=160+degF&liquidLineTemperature=93+degF&displacement=2.4+cfm"
                        + "&volumetricEfficiency=75+%25&digits=5&units=IP,pressure=psig");
        assertThat(page.figures()).containsKeys("Superheat", "Subcooling", "Heat rejected", "COP");
        List<List<String>> states = page.table("States around the loop");
        assertThat(states.get(0)).contains("Temperature, °F", "Pressure, psi(g)", "Superheat, Δ°F");
        assertThat(states.get(1)).startsWith("Compressor inlet", "Vapor", "35", "18");
        assertThat(page.table("Flow and heat, by each way that the readings open")
                        .get(1))
                .startsWith("Displacement");
        assertThat(page.document().select("figure img").attr("src")).isEqualTo(page.target() + "&format=svg");
    }

    @ParameterizedTest
    @MethodSource("answered")
    void whatIsCopiedWorks(String address) {
        Page page = Page.get(address);
        assertThat(page.code("curl")).isEqualTo("curl -s \"" + page.code("address") + '"');
        String value = page.code("webservice");
        assertThat(value).startsWith("=NUMBERVALUE(WEBSERVICE(\"").endsWith("),\".\")");
        assertThat(value.split("\"")).allSatisfy(text -> assertThat(text).hasSizeLessThan(255));
        String cell = get(value.replaceFirst(".*?WEBSERVICE\\(\"", "")
                .replaceFirst("\"\\),\"\\.\"\\)$", "")
                .replace("\"&\"", ""));
        assertThat(cell).matches("-?\\d+(\\.\\d+)?");
        String sheet = page.code("importdata");
        assertThat(sheet).startsWith("=INDEX(IMPORTDATA(\"").endsWith("\",\",\",\"en_US\"),2,1)");
        assertThat(get(sheet.split("\"")[1]).split("\r\n")[1]).isEqualTo(cell);
        assertThat(Page.get(address.replace("&arguments=comma", "") + "&arguments=semicolon")
                        .code("importdata"))
                .endsWith("\";\",\";\"en_US\");2;1)");
    }

    private String get(String address) {
        return Http.get(address.substring(("http://" + server.getAuthority()).length()))
                .statusCode(200)
                .extract()
                .asString();
    }

    @ParameterizedTest
    @CsvSource({
        "suctionPressure=18&suctionPressureUnit=psig, 18, psig, suctionPressure=18+psig",
        "suctionPressure=18+psig, 18, psig, suctionPressure=18+psig",
        "suctionPressure=118+mbar_g&suctionPressureUnit=psig, 118 mbar_g, psig, suctionPressure=118+mbar_g",
        "suctionPressure=+1.25+&suctionPressureUnit=bar_g, 1.25, bar_g, suctionPressure=1.25+bar_g",
        "suctionPressure=1.8E1&suctionPressureUnit=psig, 1.8E1, psig, suctionPressure=1.8E1+psig"
    })
    void fieldKeepsWhatWasTyped(String sent, String number, String unit, String asked) {
        Page page = Page.get("/?refrigerant=R-134a&suctionLineTemperature=40+degF&dischargePressure=135+psig&" + sent);
        assertThat(page.value("suctionPressure")).isEqualTo(number);
        assertThat(page.chosen("suctionPressureUnit")).isEqualTo(unit);
        assertThat(page.code("address")).contains('&' + asked + '&');
    }

    @Test
    void decimalCommaIsReadWhereItIsDeclared() {
        String query = "/?ask=saturation&refrigerant=R-134a&pressure=1,5&pressureUnit=bar_g&units=SI";
        assertThat(RawHttp.send(server, "GET", query).status()).isEqualTo(400);
        Page page = Page.get(query + "&dec=,&arguments=semicolon");
        assertThat(page.code("address")).contains("pressure=1,5+bar_g", "dec=,");
        // What the formulas are told of marks is what the replies have.
        assertThat(page.code("webservice")).endsWith(");\",\";\".\")");
        String value =
                page.code("webservice").replaceFirst(".*?WEBSERVICE\\(\"", "").replaceFirst("\"\\).*", "");
        assertThat(get(value.replace("\"&\"", ""))).matches("-?\\d+,\\d+");
        assertThat(page.code("importdata")).endsWith("\";\";\";\"de_DE\");2;1)");
        assertThat(get(page.code("importdata").split("\"")[1]).split("\r\n")[1]).matches("-?\\d+,\\d+");
    }

    @Test
    void twoRefrigerantsAreRefused() {
        String query = "/?ask=saturation&refrigerant=R-134a&ownBlend=R-32/125+(50/50)&pressure=1.5+bar_g&units=SI";
        RawHttp.Reply reply = RawHttp.send(server, "GET", query);
        assertThat(reply.status()).isEqualTo(400);
        assertThat(Page.of(reply.body()).error("refrigerant")).contains("more than once");
    }

    @Test
    void everyFaultStandsAtItsFieldAndInAList() {
        String address = "/?ask=readings&refrigerant=R-999&suctionPressure=abc&suctionPressureUnit=psig"
                + "&suctionLineTemperature=35&suctionLineTemperatureUnit=degF&dischargePressure=&nonsense=1";
        RawHttp.Reply reply = RawHttp.send(server, "GET", address);
        assertThat(reply.status()).isEqualTo(400);
        assertThat(reply.header("ETag") + reply.header("Cache-Control")).isEmpty();
        Page page = Page.of(reply.body());
        assertThat(page.error("refrigerant")).contains("R-999");
        assertThat(page.error("suctionPressure")).isNotBlank();
        assertThat(page.error("dischargePressure")).isNotBlank();
        assertThat(page.error("suctionLineTemperature")).isBlank();
        assertThat(page.document().select(".refusal").text()).contains("Nonsense: ");
        assertThat(page.document().select(".refusal a").eachAttr("href"))
                .contains("#refrigerant", "#suctionPressure", "#dischargePressure");
        assertThat(page.document().select("[aria-invalid]").eachAttr("id"))
                .containsExactly("refrigerant", "suctionPressure", "dischargePressure");
        assertThat(page.value("suctionPressure")).isEqualTo("abc");
    }

    @Test
    void whatIsImpossibleIsRefusedWithItsStatus() {
        RawHttp.Reply reply =
                RawHttp.send(server, "GET", "/?ask=saturation&refrigerant=R-134a&temperature=200&temperatureUnit=degC");
        assertThat(reply.status()).isEqualTo(422);
        assertThat(Page.of(reply.body()).error("temperature")).isNotBlank();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "refrigerant",
                "ownBlend",
                "suctionPressure",
                "suctionPressureUnit",
                "units",
                "digits",
                "pick",
                "ask",
                "dec",
                "other"
            })
    void nothingSentBecomesMarkup(String name) {
        String evil = "%22%3E%3Cscript%3Ealert(1)%3C/script%3E%3Cimg+src=x+onerror=alert(1)%3E'%7B%7Bpage%7D%7D";
        String rest = name.equals("refrigerant") ? "" : "&refrigerant=R-134a";
        String body = RawHttp.send(server, "GET", "/?" + name + '=' + evil + rest + "&suctionLineTemperature=40+degF")
                .body();
        assertThat(body).contains("<main>").doesNotContain("<script>", "<img src=x");
        assertThat(Page.of(body).document().select("script")).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"a\"><script>", "evil.example/path", "h o s t", "%0d%0aX:1"})
    void onlyANameBecomesPartOfAnAddress(String host) {
        RawHttp.Reply reply = RawHttp.send(server, "GET", SATURATION, "Host: " + host);
        assertThat(reply.body()).doesNotContain(host);
    }
}
