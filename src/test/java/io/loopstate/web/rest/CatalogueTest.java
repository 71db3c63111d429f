package io.loopstate.web.rest;

import static io.loopstate.testing.Http.get;
import static io.loopstate.testing.Http.json;
import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.startsWith;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.units.QuantityKind;
import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Refrigerants and units over HTTP. */
@QuarkusTest
class CatalogueTest {
    private static final String REFRIGERANTS = "/v1/refrigerants";
    private static final String UNITS = "/v1/units";

    @Test
    void everyRefrigerantIsListed() {
        Catalog catalog = Catalog.bundled();
        int count = catalog.designations().size() + catalog.blends().size();
        get(REFRIGERANTS)
                .statusCode(200)
                .body("count", equalTo(count))
                .body("refrigerants", hasSize(count))
                .body("refrigerants.equationOfState.source", everyItem(notNullValue()))
                .body("refrigerants.designation", hasItems("R-134a", "R-290", "R-744", "R-717", "R-410A"));
    }

    /** Composition: ASHRAE 34 (50/50 by mass). */
    @Test
    void aBlendHoldsItsCompositionPairsAndPhaseBoundary() {
        JsonNode item = json(get(REFRIGERANTS + "/410a").statusCode(200));
        assertThat(item.at("/designation").textValue()).isEqualTo("R-410A");
        assertThat(item.at("/kind").textValue()).isEqualTo("blend");
        assertThat(item.at("/name").textValue()).isEqualTo("R-32/125 (50/50)");
        assertThat(item.at("/blend/composition/0/refrigerant").textValue()).isEqualTo("R-32");
        assertThat(item.at("/blend/composition/0/massFraction").doubleValue()).isEqualTo(0.5);
        assertThat(item.at("/blend/accuracyClass").textValue()).isEqualTo("fitted");
        assertThat(item.at("/blend/pairs/0/basis").textValue()).isEqualTo("fitted");
        assertThat(item.at("/blend/pairs/0/source/doi").textValue()).isEqualTo("10.1063/1.1649997");
        assertThat(item.at("/equationOfState/doi").textValue()).isEqualTo("10.1021/je300655b");
        double bubble = item.at("/normalBoilingPoint/value").doubleValue();
        assertThat(item.at("/normalDewPoint/value").doubleValue()).isBetween(bubble, bubble + 0.2);
        double critical = item.at("/criticalPoint/temperature/value").doubleValue();
        assertThat(item.at("/cricondentherm/temperature/value").doubleValue()).isGreaterThanOrEqualTo(critical);
        assertThat(item.at("/safetyGroup").textValue()).isEqualTo("A1");
        assertThat(item.at("/ozoneDepletionPotentials/0/value").doubleValue()).isZero();
    }

    @Test
    void blendsAreListedByAccuracyClass() {
        get(REFRIGERANTS + "?accuracyClass=predicted")
                .statusCode(200)
                .body("refrigerants.designation", hasItem("R-402A"))
                .body("refrigerants.designation", not(hasItem("R-410A")))
                .body("refrigerants.kind", everyItem(equalTo("blend")));
        get(REFRIGERANTS + "?kind=blend&accuracyClass=fitted&safetyGroup=A2L")
                .statusCode(200)
                .body("refrigerants.designation", hasItems("R-454B", "R-455A"))
                .body("refrigerants.blend.accuracyClass", everyItem(equalTo("fitted")));
    }

    /** As a catalogued blend, and in an order of the client's own; both are R-454B. */
    @ParameterizedTest
    @ValueSource(strings = {"R-454B", "454b", "R-32/1234yf (68.9/31.1)", "1234yf/32 (31.1/68.9)"})
    void aBlendIsComputedByDesignationAndByComposition(String refrigerant) {
        given().queryParam("refrigerant", refrigerant)
                .queryParam("temperature", "5 degC")
                .get("/v1/properties/saturation")
                .then()
                .statusCode(200)
                .body("basis.refrigerant", equalTo("R-454B"))
                .body("basis.blend.notation", equalTo("R-32/1234yf (68.9/31.1)"))
                .body("basis.blend.accuracyClass", equalTo("fitted"))
                .body("basis.blend.pairs", hasSize(1));
    }

    @Test
    void aCompositionOfTheClientsOwnIsComputed() {
        given().queryParam("refrigerant", "R-32/1234yf (70/30)")
                .queryParam("temperature", "5 degC")
                .queryParam("requireFitted", "true")
                .get("/v1/properties/saturation")
                .then()
                .statusCode(200)
                .body("basis.refrigerant", equalTo("R-32/1234yf (70/30)"));
    }

    @Test
    void aPredictedBlendSaysSoAndIsRefusedWhereFittedOnesAreWanted() {
        String target = "/v1/properties/saturation?refrigerant=R-402A&temperature=5+degC";
        get(target)
                .statusCode(200)
                .body("basis.blend.accuracyClass", equalTo("predicted"))
                .body("basis.blend.pairs.findAll { it.basis == 'missing' }.rule", hasItem("Lorentz-Berthelot"));
        get(target + "&requireFitted=true")
                .statusCode(422)
                .body("errors[0].parameter", equalTo("refrigerant"))
                .body("errors[0].code", equalTo("pair-not-fitted"))
                .body("errors[0].got", containsString("R-125/R-22"));
    }

    /**
     * Sources: R. Tillner-Roth, H. D. Baehr, J. Phys. Chem. Ref. Data 23 (1994) 657, abstract and table 8 (molar mass and
     * critical temperature, from memory); CAS registry.
     */
    @Test
    void itemHoldsIdentityRangeAndSources() {
        JsonNode item = json(get(REFRIGERANTS + "/r134a").statusCode(200));
        assertThat(item.at("/designation").textValue()).isEqualTo("R-134a");
        assertThat(item.at("/kind").textValue()).isEqualTo("pure");
        assertThat(item.at("/formula").textValue()).isEqualTo("CH2FCF3");
        assertThat(item.at("/casNumber").textValue()).isEqualTo("811-97-2");
        assertThat(item.at("/safetyGroup").textValue()).isEqualTo("A1");
        assertThat(item.at("/molarMass/unit").textValue()).isEqualTo("g_per_mol");
        assertThat(item.at("/molarMass/value").doubleValue()).isCloseTo(102.032, within(5e-4));
        assertThat(item.at("/criticalPoint/temperature/value").doubleValue()).isCloseTo(101.06, within(5e-3));
        assertThat(item.at("/range/maxPressure/value").doubleValue()).isEqualTo(70_000);
        assertThat(item.at("/normalBoilingPoint/unit").textValue()).isEqualTo("degC");
        assertThat(item.at("/equationOfState/doi").textValue()).isEqualTo("10.1063/1.555958");
        assertThat(item.at("/transportProperties/viscosity/citation").textValue())
                .isNotBlank();
    }

    @ParameterizedTest
    @CsvSource({"R-290", "290", "propane", "r1234ze(e)", "R-1234ze(E)", "R%201234%20yf"})
    void designationIsReadAsPeopleWriteIt(String designation) {
        get(REFRIGERANTS + '/' + designation).statusCode(200).body("designation", startsWith("R-"));
    }

    @Test
    void unknownRefrigerantIsNotFoundAndSuggestsOthers() {
        get(REFRIGERANTS + "/R-134z")
                .statusCode(404)
                .body("code", equalTo("not-found"))
                .body("errors[0].parameter", equalTo("designation"))
                .body("errors[0].code", equalTo("unknown-refrigerant"))
                .body("errors[0].hint", containsString("R-134a"));
    }

    @Test
    void listIsFiltered() {
        get(REFRIGERANTS + "?kind=pseudoPure").statusCode(200).body("refrigerants.designation", hasItem("Air"));
        get(REFRIGERANTS + "?kind=blend").statusCode(200).body("refrigerants.designation", hasItem("R-448A"));
        get(REFRIGERANTS + "?safetyGroup=A3")
                .statusCode(200)
                .body("refrigerants.designation", hasItem("R-290"))
                .body("refrigerants.safetyGroup", everyItem(equalTo("A3")));
        get(REFRIGERANTS + "?maxGlobalWarmingPotential=10")
                .statusCode(200)
                .body("refrigerants.designation", hasItems("R-744", "R-1234yf"))
                .body("refrigerants.designation", not(hasItem("R-134a")));
    }

    @ParameterizedTest
    @CsvSource({
        "?kind=blends, kind, wrong-value",
        "?accuracyClass=good, accuracyClass, wrong-value",
        "?safetyGroup=A4, safetyGroup, wrong-value",
        "?maxGlobalWarmingPotential=low, maxGlobalWarmingPotential, number-missing",
        "?units=metric, units, unknown-unit-system",
        "?class=A1, class, unknown-parameter"
    })
    void faultOfTheQueryIsTold(String query, String parameter, String code) {
        get(REFRIGERANTS + query)
                .statusCode(400)
                .body("errors[0].parameter", equalTo(parameter))
                .body("errors[0].code", equalTo(code));
    }

    @Test
    void everyKindOfQuantityIsListedWithItsUnits() {
        get(UNITS)
                .statusCode(200)
                .body("kinds", hasSize(QuantityKind.values().length))
                .body("kinds.find { it.kind == 'pressure' }.units.unit", hasItems("psig", "psia", "bar_g", "inHg_vac"))
                .body("kinds.find { it.kind == 'pressure' }.replyIp", equalTo("psia"))
                .body("kinds.units", everyItem(hasSize(greaterThan(0))));
    }

    @Test
    void oneKindIsListedAndAnUnknownOneRefused() {
        get(UNITS + "?kind=massFlow").statusCode(200).body("kinds.kind", equalTo(List.of("massFlow")));
        get(UNITS + "?kind=massFlo")
                .statusCode(400)
                .body("errors[0].parameter", equalTo("kind"))
                .body("errors[0].hint", containsString("massFlow"));
    }

    @ParameterizedTest
    @ValueSource(strings = {REFRIGERANTS, REFRIGERANTS + "/R-32", UNITS})
    void sameRequestGivesTheSameBytes(String target) {
        assertThat(get(target).extract().asString())
                .isEqualTo(get(target).extract().asString());
    }
}
