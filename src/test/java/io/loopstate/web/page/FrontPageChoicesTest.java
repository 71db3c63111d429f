package io.loopstate.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import io.loopstate.testing.Http;
import io.loopstate.testing.Page;
import io.loopstate.units.Atmosphere;
import io.loopstate.units.UnitToken;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever can be chosen on the front page is answered. */
@QuarkusTest
class FrontPageChoicesTest {
    private static final Map<String, String> START = Map.of(
            "readings",
            "/?ask=readings&refrigerant=R-134a&suctionPressure=18+psig&suctionLineTemperature=35+degF&dischargePressure=135+psig",
            "saturation",
            "/?ask=saturation&refrigerant=R-134a&temperature=35+degF",
            "design",
            "/?ask=design&refrigerant=R-134a&evaporatingTemperature=20+degF&condensingTemperature=105+degF"
                    + "&superheat=10+delta_degF&subcooling=10+delta_degF&isentropicEfficiency=70+%25");

    /** A number that is possible in the first unit of a field that the start leaves empty. */
    private static final Map<String, String> POSSIBLE = Map.ofEntries(
            Map.entry("evaporatorOutletTemperature", "30 degF"),
            Map.entry("dischargeLineTemperature", "160 degF"),
            Map.entry("liquidLineTemperature", "93 degF"),
            Map.entry("liquidLinePressure", "133 psig"),
            Map.entry("outdoorAirTemperature", "78 degF"),
            Map.entry("condenserAirEnteringTemperature", "78 degF"),
            Map.entry("condenserAirLeavingTemperature", "91 degF"),
            Map.entry("condenserAirVolumeFlow", "300 cfm"),
            Map.entry("electricityPower", "330 W"),
            Map.entry("displacement", "2.4 cfm"),
            Map.entry("altitude", "700 ft"),
            Map.entry("refrigeratingCapacity", "3000 Btu_per_h"));

    static Stream<String> questions() {
        return Questions.ALL.stream().map(Question::key);
    }

    static Stream<Arguments> fieldsWithUnits() {
        List<Arguments> fields = new ArrayList<>();
        for (Question question : Questions.ALL) {
            question.fields().stream()
                    .filter(field -> field.units().tokens().size() > 1)
                    .filter(field -> !field.name().equals("pressure"))
                    .forEach(field -> fields.add(Arguments.of(question.key(), field)));
        }
        return fields.stream();
    }

    /** Each at its own normal boiling point, as the catalogue tells it. */
    @Test
    void everyRefrigerantIsAnswered() {
        Map<String, JsonNode> catalogue = new HashMap<>();
        Http.json(Http.get("/v1/refrigerants"))
                .get("refrigerants")
                .forEach(item -> catalogue.put(item.get("designation").asText(), item));
        List<String> offered = Page.get("/").choices("refrigerant").stream()
                .filter(name -> !name.isEmpty())
                .toList();
        assertThat(offered).containsExactlyInAnyOrderElementsOf(catalogue.keySet());
        assertThat(offered).allSatisfy(name -> {
            double kelvin = Math.max(
                    si(catalogue.get(name).path("normalBoilingPoint")),
                    si(catalogue.get(name).at("/range/minSaturationTemperature")) + 1);
            Page page = Page.get("/?ask=saturation&refrigerant=" + escaped(name) + "&temperature=" + kelvin
                    + "&temperatureUnit=K&units=SI&digits=5");
            assertThat(page.chosen("refrigerant")).isEqualTo(name);
            assertThat(page.figures()).containsKey("Latent heat");
        });
    }

    private static double si(JsonNode temperature) {
        return temperature.isMissingNode() ? 0 : temperature.get("value").asDouble() + 273.15;
    }

    /** The same quantity in every unit gives the same first figure. */
    @ParameterizedTest
    @MethodSource("fieldsWithUnits")
    void everyUnitOfAFieldIsRead(String ask, Field field) {
        String start = START.get(ask);
        String given = Stream.of(start.split("[?&]"))
                .filter(pair -> pair.startsWith(field.name() + '='))
                .map(pair -> pair.substring(field.name().length() + 1).replace('+', ' '))
                .findFirst()
                .orElseGet(() -> POSSIBLE.get(field.name()));
        String rest = start.replaceAll("&" + field.name() + "=[^&]*", "")
                + (field.name().equals("condenserAirVolumeFlow")
                        ? "&condenserAirEnteringTemperature=78+degF&condenserAirLeavingTemperature=91+degF"
                        : "");
        assertThat(Page.get("/?ask=" + ask).choices(field.unitName()))
                .isEqualTo(field.units().tokens())
                .allSatisfy(unit -> {
                    String number = converted(given, unit);
                    Page page = Page.get(rest + '&' + field.name() + '=' + number + '&' + field.unitName() + '=' + unit
                            + "&units=IP&digits=6");
                    assertThat(page.chosen(field.unitName())).isEqualTo(unit);
                    assertThat(page.target()).contains('&' + field.name() + '=' + number + '+' + unit);
                    assertThat(page.figures()).isNotEmpty();
                });
    }

    /** By the tables of the service's own catalogue of units; a vacuum is another reading, since none of the given is one. */
    private static String converted(String given, String unit) {
        String[] parts = given.split(" ");
        if (unit.endsWith("_vac")) {
            return "2";
        }
        if (parts[1].equals(unit)) {
            return parts[0];
        }
        double si = UnitToken.of(parts[1]).toSi(Double.parseDouble(parts[0]), Atmosphere.standard());
        double value = UnitToken.of(unit).fromSi(si, Atmosphere.standard());
        return Double.toString(value);
    }

    @ParameterizedTest
    @MethodSource("questions")
    void everyWayOfAnsweringIsAnswered(String ask) {
        Page form = Page.get("/?ask=" + ask);
        for (String name : List.of("units", "digits", "dec", "pick", "arguments")) {
            assertThat(form.choices(name)).hasSizeGreaterThan(1).allSatisfy(choice -> {
                Page page = Page.get(START.get(ask) + '&' + name + '=' + escaped(choice));
                assertThat(page.chosen(name)).isEqualTo(choice);
                assertThat(page.figures()).isNotEmpty();
            });
        }
    }

    /** A link from the page to a name that the contract does not have leads to its top, which no status tells. */
    @Test
    void everyOperationOfTheContractIsListedUnderItsName() throws IOException {
        JsonNode contract = new ObjectMapper(new YAMLFactory())
                .readTree(Path.of("openapi", "openapi.yaml").toFile());
        Map<String, Set<String>> anchors = new HashMap<>();
        contract.get("paths")
                .properties()
                .forEach(path -> path.getValue()
                        .forEach(operation -> anchors.computeIfAbsent(path.getKey(), key -> new HashSet<>())
                                .add("/q/swagger-ui/#/"
                                        + operation.at("/tags/0").asText().replace(" ", "%20") + '/'
                                        + operation.get("operationId").asText())));
        List<Families.Operation> listed = Families.bundled().stream()
                .flatMap(family -> family.operations().stream())
                .toList();
        assertThat(listed.stream().map(Families.Operation::path)).containsExactlyInAnyOrderElementsOf(anchors.keySet());
        assertThat(listed)
                .allSatisfy(
                        operation -> assertThat(anchors.get(operation.path())).contains(operation.contract()));
    }

    private static String escaped(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
