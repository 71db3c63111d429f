package io.loopstate.web.rest;

import static io.loopstate.testing.Http.get;
import static io.loopstate.testing.Http.json;
import static io.loopstate.testing.Http.post;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Cycles from design conditions and from readings, over HTTP. */
@QuarkusTest
class CyclePointsTest {
    private static final String DESIGN = "/v1/cycle-points/design";
    private static final String READINGS = "/v1/cycle-points/readings";
    private static final String TRAINER = "?refrigerant=R-134a&evaporatingTemperature=20+degF"
            + "&condensingTemperature=105+degF&superheat=10+delta_degF&subcooling=10+delta_degF"
            + "&isentropicEfficiency=70+pct";

    @Test
    void designNamesItsPointsAndItsPerformance() {
        JsonNode reply = json(get(DESIGN + TRAINER + "&refrigeratingCapacity=1+ton")
                        .statusCode(200)
                        .body(
                                "points.name",
                                equalTo(List.of(
                                        "compressorInlet",
                                        "compressorOutlet",
                                        "condenserInlet",
                                        "condenserOutlet",
                                        "valveInlet",
                                        "evaporatorInlet",
                                        "evaporatorOutlet",
                                        "isentropicCompressorOutlet")))
                        .body("evaporating.dewTemperature.unit", equalTo("degC"))
                        .body("working", nullValue()))
                .path("performance");
        for (String name : List.of(
                "/compressorWork/value",
                "/refrigeratingEffect/value",
                "/heatRejectionPerMass/value",
                "/dischargeTemperature/value",
                "/volumetricCapacity/value",
                "/massFlow/value",
                "/refrigeratingCapacity/value",
                "/compressorPower/value",
                "/heatRejected/value",
                "/suctionVolumeFlow/value",
                "/pressureRatio",
                "/coefficientOfPerformance",
                "/energyEfficiencyRatio")) {
            assertThat(reply.at(name).asDouble()).as(name).isPositive();
        }
        // First law: heat rejected is heat taken up and work, without losses.
        assertThat(reply.at("/heatRejected/value").asDouble())
                .isCloseTo(
                        reply.at("/refrigeratingCapacity/value").asDouble()
                                + reply.at("/compressorPower/value").asDouble(),
                        within(1e-9));
        // Definition of the ton: 12000 Btu/h, NIST Special Publication 811, appendix B.
        assertThat(reply.at("/refrigeratingCapacity/value").asDouble()).isCloseTo(3.516853, within(1e-6));
        // 1 W is 3.412142 Btu/h, the same source.
        assertThat(reply.at("/energyEfficiencyRatio").asDouble())
                .isCloseTo(3.412142 * reply.at("/coefficientOfPerformance").asDouble(), within(1e-5));
    }

    @Test
    void queryAndBodyGiveTheSameBytes() {
        String body = "{\"refrigerant\":\"134a\",\"evaporating\":{\"temperature\":\"20 degF\"},"
                + "\"condensing\":{\"temperature\":{\"value\":105,\"unit\":\"degF\"}},"
                + "\"superheat\":{\"value\":10,\"unit\":\"delta_degF\"},\"subcooling\":\"10 delta_degF\","
                + "\"isentropicEfficiency\":0.7,\"explain\":true}";
        String fromQuery = get(DESIGN + TRAINER + "&explain=true").extract().asString();
        assertThat(fromQuery).contains("\"working\":[{");
        assertThat(post(DESIGN, body).extract().asString()).isEqualTo(fromQuery);
    }

    @Test
    void limitsOfTheRequestReplaceThoseOfCommonPractice() {
        get(DESIGN + TRAINER).statusCode(200).body("warnings.code", not(hasItem("HIGH_DISCHARGE_TEMPERATURE")));
        get(DESIGN + TRAINER + "&limitsMaxDischargeTemperature=100+degF&units=IP")
                .statusCode(200)
                .body("warnings.find { it.code == 'HIGH_DISCHARGE_TEMPERATURE' }.severity", equalTo("danger"))
                .body(
                        "warnings.find { it.code == 'HIGH_DISCHARGE_TEMPERATURE' }.basis",
                        equalTo("limit given in the request"))
                .body("warnings.find { it.code == 'HIGH_DISCHARGE_TEMPERATURE' }.limit.unit", equalTo("degF"));
    }

    @Test
    void transcriticalCycleNeedsTheGasCoolerOutlet() {
        String rack = DESIGN + "?refrigerant=R-744&evaporatingTemperature=-10+degC&condensingPressure=90+bar_a"
                + "&superheat=8+K&isentropicEfficiency=0.7";
        get(rack + "&subcooling=3+K")
                .statusCode(422)
                .body("errors[0].parameter", equalTo("gasCoolerOutletTemperature"));
        get(rack + "&gasCoolerOutletTemperature=35+degC")
                .statusCode(200)
                .body("points.name", hasItems("gasCoolerInlet", "gasCoolerOutlet"))
                .body("condensing", nullValue())
                .body("warnings.code", hasItem("TRANSCRITICAL"));
    }

    @Test
    void everyMissingInputOfADesignIsTold() {
        post(DESIGN, "{\"evaporating\":{\"temperature\":\"20 degF\",\"pressure\":\"1 psig\"}}")
                .statusCode(400)
                .body(
                        "errors.pointer",
                        equalTo(List.of(
                                "#/isentropicEfficiency",
                                "#/refrigerant",
                                "#/evaporating/pressure",
                                "#/condensing",
                                "#/superheat",
                                "#/subcooling")));
    }

    @Test
    void readingsWarnOfLiquidAtTheCompressor() {
        get(READINGS + "?refrigerant=R-134a&suctionPressure=30+psig&suctionLineTemperature=30+degF"
                        + "&dischargePressure=135+psig&units=IP")
                .statusCode(200)
                .body("superheat.unit", equalTo("delta_degF"))
                .body("warnings[0].code", equalTo("LIQUID_AT_COMPRESSOR"))
                .body("warnings[0].severity", equalTo("danger"));
    }

    /** 140 kPa absolute is 6 psig, where R-134a condenses below freezing; 140 psig is usual. */
    @Test
    void likelySlipOfUnitIsNamed() {
        get(READINGS + "?refrigerant=R-134a&suctionPressure=18+psia&suctionLineTemperature=30+degF"
                        + "&dischargePressure=140+kPa_a")
                .statusCode(200)
                .body("warnings[0].code", equalTo("IMPLAUSIBLE_UNIT"))
                .body("warnings[0].message", containsString("140 psig"));
    }

    @Test
    void everyFaultOfReadingsIsTold() {
        post(
                        READINGS,
                        "{\"refrigerant\":\"R-134a\",\"suctionPressure\":\"18 psig\",\"suctionLineTemperature\":\"35 degF\","
                                + "\"dischargePressure\":\"-20 psig\",\"electricity\":{\"power\":\"3 kW\",\"current\":\"6 A\"},"
                                + "\"evaporatorAir\":{\"volumeFlow\":\"900 cfm\"},\"condenserAir\":4}")
                .statusCode(400)
                .body(
                        "errors.pointer",
                        equalTo(List.of(
                                "#/dischargePressure",
                                "#/condenserAir",
                                "#/evaporatorAir/enteringTemperature",
                                "#/electricity/current")));
    }

    @Test
    void readingsThatContradictEachOtherNameTheReading() {
        get(READINGS + "?refrigerant=R-134a&suctionPressure=18+psig&suctionLineTemperature=35+degF"
                        + "&dischargePressure=1+psig")
                .statusCode(422)
                .body("code", equalTo("impossible-input"))
                .body("errors[0].parameter", equalTo("dischargePressure"))
                .body("errors[0].got", equalTo("1 psig"))
                .body("errors[0].allowed", equalTo("at least 18 psig"));
    }
}
