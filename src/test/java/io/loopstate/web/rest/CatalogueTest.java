package io.loopstate.web.rest;

import static io.loopstate.testing.Http.get;
import static io.loopstate.testing.Http.json;
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
        int count = Catalog.bundled().designations().size();
        get(REFRIGERANTS)
                .statusCode(200)
                .body("count", equalTo(count))
                .body("refrigerants", hasSize(count))
                .body("refrigerants.equationOfState.source", everyItem(notNullValue()))
                .body("refrigerants.designation", hasItems("R-134a", "R-290", "R-744", "R-717"));
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
        get(REFRIGERANTS + "?kind=blend").statusCode(200);
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
