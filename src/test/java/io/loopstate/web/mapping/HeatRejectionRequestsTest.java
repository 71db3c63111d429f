package io.loopstate.web.mapping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.loopstate.testing.Requests;
import io.loopstate.testing.Service;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Requests of the heat-rejection family and of moist air, from text to bytes. */
class HeatRejectionRequestsTest {
    private static Map<String, String> map(String... pairs) {
        Map<String, String> values = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            values.put(pairs[i], pairs[i + 1]);
        }
        return values;
    }

    private static JsonNode answer(Operation<?, ?, ?, ?> operation, Map<String, String> values) {
        Service.Answer answer = Service.get(operation, new Requests(values).query());
        assertThat(answer.status()).as(answer.body()).isEqualTo(200);
        return answer.json();
    }

    private static Map<String, String> coil(double celsius, double kilowatt) {
        return map(
                "refrigerant", "R-134a",
                "entering.dryBulb", celsius + " degC",
                "entering.relativeHumidity", "0.4",
                "airflow.volumeFlow", "1500 m3_per_h",
                "inletSuperheat", "25 K",
                "subcooling", "4 K",
                "heat", kilowatt + " kW",
                "conductance", "0.4 kW_per_K");
    }

    private static Map<String, String> evaporatingCoil(double celsius, double kilowatt) {
        return map(
                "refrigerant", "R-134a",
                "entering.dryBulb", celsius + " degC",
                "entering.relativeHumidity", "0.5",
                "airflow.volumeFlow", "900 m3_per_h",
                "liquidTemperature", "38 degC",
                "superheat", "5 K",
                "heat", kilowatt + " kW",
                "conductance", "0.35 kW_per_K");
    }

    static Stream<Arguments> operations() {
        return Stream.of(
                Arguments.of(MoistAirMapping.OPERATION, map("dryBulb", "25 degC", "wetBulb", "18 degC")),
                Arguments.of(
                        DutyMapping.OPERATION,
                        map(
                                "refrigerant", "R-134a",
                                "condensing.temperature", "40 degC",
                                "condenserInletTemperature", "65 degC",
                                "subcooling", "5 K",
                                "massFlow", "0.02 kg_per_s")),
                Arguments.of(
                        AirSideMapping.OPERATION,
                        map(
                                "coil", "evaporator",
                                "entering.dryBulb", "26 degC",
                                "entering.wetBulb", "18.5 degC",
                                "leaving.dryBulb", "14 degC",
                                "leaving.wetBulb", "13 degC",
                                "heat", "17 kW")),
                Arguments.of(
                        WaterSideMapping.OPERATION,
                        map(
                                "coil", "condenser",
                                "enteringTemperature", "25 degC",
                                "leavingTemperature", "30 degC",
                                "heat", "18 kW")),
                Arguments.of(CoilMapping.OPERATION, coil(30, 3)),
                Arguments.of(EvaporatingCoilMapping.OPERATION, evaporatingCoil(26, 3)),
                Arguments.of(
                        GasCoolerMapping.OPERATION,
                        map(
                                "refrigerant", "R-744",
                                "entering.dryBulb", "30 degC",
                                "entering.relativeHumidity", "0.4",
                                "airflow.volumeFlow", "3000 m3_per_h",
                                "pressure", "90 bar_a",
                                "gasCoolerInletTemperature", "110 degC",
                                "massFlow", "0.04 kg_per_s",
                                "conductance", "1 kW_per_K")));
    }

    /** The working is there when asked for, and nothing else changes. */
    @ParameterizedTest
    @MethodSource("operations")
    void theWorkingIsShownWhenAskedFor(Operation<?, ?, ?, ?> operation, Map<String, String> values) {
        JsonNode plain = answer(operation, values);
        Map<String, String> asked = new LinkedHashMap<>(values);
        asked.put("explain", "true");
        JsonNode explained = answer(operation, asked);
        assertThat(plain.has("working")).isFalse();
        assertThat(explained.get("working")).isNotEmpty().allSatisfy(step -> {
            assertThat(step.get("formula").textValue()).isNotBlank();
            assertThat(step.get("source").textValue()).isNotBlank();
        });
        ((ObjectNode) explained).remove("working");
        assertThat(explained).isEqualTo(plain);
    }

    /** The same coil written in other units condenses at the same pressure, and each way the energy balance closes. */
    @Property(tries = 100)
    void unitsOfARequestDoNotMatter(
            @ForAll @DoubleRange(min = 5, max = 40) double celsius,
            @ForAll @DoubleRange(min = 2, max = 5) double kilowatt) {
        JsonNode metric = answer(CoilMapping.OPERATION, coil(celsius, kilowatt));
        JsonNode inchPound = answer(
                CoilMapping.OPERATION,
                map(
                        "refrigerant",
                        "134a",
                        "entering.dryBulb",
                        (celsius * 1.8 + 32) + " degF",
                        "entering.relativeHumidity",
                        "40 pct",
                        "airflow.volumeFlow",
                        1500 / 60.0 / 0.028316846592 + " cfm",
                        "inletSuperheat",
                        "45 delta_degF",
                        "subcooling",
                        "7.2 delta_degF",
                        "heat",
                        kilowatt * 3600e3 / 1055.05585262 + " Btu_per_h",
                        "conductance",
                        400 * 3600 / 1055.05585262 / 1.8 + " Btu_per_h_degF"));
        double pressure = metric.at("/condensing/pressure/value").doubleValue();
        assertThat(inchPound.at("/condensing/pressure/value").doubleValue())
                .isCloseTo(pressure, within(1e-9 * pressure));
        for (JsonNode reply : new JsonNode[] {metric, inchPound}) {
            double zones = 0;
            for (JsonNode zone : reply.get("zones")) {
                zones += zone.at("/heat/value").doubleValue();
            }
            assertThat(zones).isCloseTo(kilowatt, within(1e-9 * kilowatt));
            assertThat(reply.at("/heatRejected/value").doubleValue()).isCloseTo(kilowatt, within(1e-9 * kilowatt));
        }
    }

    /** A blend condenses from its dew to its bubble point, and the first law knows no blends. */
    @ParameterizedTest
    @ValueSource(strings = {"R-454B", "R-448A"})
    void blendsCondenseWithTheirGlide(String blend) {
        Map<String, String> values = coil(30, 3);
        values.put("refrigerant", blend);
        JsonNode reply = answer(CoilMapping.OPERATION, values);
        JsonNode condensing = reply.get("zones").get(1);
        double glide = condensing.at("/refrigerantInletTemperature/value").doubleValue()
                - condensing.at("/refrigerantOutletTemperature/value").doubleValue();
        assertThat(glide).isGreaterThan(0.5);
        assertThat(reply.at("/condensing/temperatureGlide/value").doubleValue()).isCloseTo(glide, within(1e-9));
        double zones = 0;
        for (JsonNode zone : reply.get("zones")) {
            zones += zone.at("/heat/value").doubleValue();
        }
        assertThat(zones).isCloseTo(3, within(3e-9));
        Map<String, String> measured = coil(30, 3);
        measured.remove("conductance");
        measured.put("refrigerant", blend);
        measured.put(
                "condensing.pressure", reply.at("/condensing/pressure/value").doubleValue() + " kPa_a");
        assertThat(answer(CoilMapping.OPERATION, measured)
                        .at("/conductance/value")
                        .doubleValue())
                .isCloseTo(0.4, within(1e-6));
    }

    @Test
    void limitsAreTheClients() {
        Map<String, String> values = coil(35, 3.5);
        values.put("limits.maxCondensingOverAmbient", "1 K");
        JsonNode warnings = answer(CoilMapping.OPERATION, values).get("warnings");
        assertThat(warnings).anySatisfy(warning -> {
            assertThat(warning.get("code").textValue()).isEqualTo("HIGH_CONDENSING_OVER_AMBIENT");
            assertThat(warning.get("basis").textValue()).isEqualTo("limit given in the request");
        });
        values.put("limits.maxCondensingOverAmbient", "40 K");
        assertThat(answer(CoilMapping.OPERATION, values).get("warnings").findValuesAsText("code"))
                .doesNotContain("HIGH_CONDENSING_OVER_AMBIENT");
    }

    /** A slower fan and dirt raise the condensing pressure. */
    @Test
    void fanAndDirtShow() {
        double clean = pressure(coil(30, 3));
        Map<String, String> half = coil(30, 3);
        half.put("fanSpeed", "0.5");
        Map<String, String> dirty = coil(30, 3);
        dirty.put("foulingResistance", "0.005 m2_K_per_W");
        dirty.put("area", "8 m2");
        assertThat(pressure(half)).isGreaterThan(clean);
        assertThat(pressure(dirty)).isGreaterThan(clean);
    }

    private static double pressure(Map<String, String> values) {
        return answer(CoilMapping.OPERATION, values)
                .at("/condensing/pressure/value")
                .doubleValue();
    }

    /** An evaporating coil in any units gives the same level; latent and sensible heat are the whole; the air's balance closes. */
    @Property(tries = 100)
    void anEvaporatingCoilInAnyUnits(
            @ForAll @DoubleRange(min = 5, max = 35) double celsius,
            @ForAll @DoubleRange(min = 1, max = 3.5) double kilowatt) {
        JsonNode metric = answer(EvaporatingCoilMapping.OPERATION, evaporatingCoil(celsius, kilowatt));
        Map<String, String> imperial = evaporatingCoil(celsius, kilowatt);
        imperial.put("entering.dryBulb", (celsius * 1.8 + 32) + " degF");
        imperial.put("heat", kilowatt * 1000 / 3516.8528420667 + " ton");
        imperial.put("liquidTemperature", 38 * 1.8 + 32 + " degF");
        imperial.put("superheat", "9 delta_degF");
        JsonNode other = answer(EvaporatingCoilMapping.OPERATION, imperial);
        double pressure = metric.at("/evaporating/pressure/value").doubleValue();
        assertThat(other.at("/evaporating/pressure/value").doubleValue()).isCloseTo(pressure, within(1e-8 * pressure));
        double heat = metric.at("/heat/value").doubleValue();
        assertThat(metric.at("/sensibleHeat/value").doubleValue()
                        + metric.at("/latentHeat/value").doubleValue())
                .isCloseTo(heat, within(1e-9 * heat));
        double effect = metric.at("/points/1/specificEnthalpy/value").doubleValue()
                - metric.at("/points/0/specificEnthalpy/value").doubleValue();
        assertThat(metric.at("/massFlow/value").doubleValue() * effect).isCloseTo(heat, within(1e-8 * heat));
    }

    /** The readings that a known coil would show lead back to its conductance, less air evaporates lower, dirt too. */
    @Test
    void evaporatingCoilsAreRatedAndSlowed() {
        JsonNode known = answer(EvaporatingCoilMapping.OPERATION, evaporatingCoil(26, 3));
        Map<String, String> measured = evaporatingCoil(26, 3);
        measured.remove("conductance");
        measured.put(
                "evaporating.pressure", known.at("/evaporating/pressure/value").asText() + " kPa_a");
        measured.put("cleanConductance", "0.5 kW_per_K");
        measured.put("area", "8 m2");
        JsonNode rated = answer(EvaporatingCoilMapping.OPERATION, measured);
        assertThat(rated.at("/conductance/value").doubleValue()).isCloseTo(0.35, within(1e-7));
        assertThat(rated.at("/cleanliness").doubleValue()).isCloseTo(0.7, within(1e-6));
        assertThat(rated.at("/foulingResistance/value").doubleValue())
                .isCloseTo(8 * (1 / 350.0 - 1 / 500.0), within(1e-8));
        measured.remove("heat");
        measured.put("leaving.dryBulb", known.at("/leaving/dryBulb/value").asText() + " degC");
        measured.put(
                "leaving.humidityRatio",
                known.at("/leaving/humidityRatio/value").asText() + " g_per_kg");
        assertThat(answer(EvaporatingCoilMapping.OPERATION, measured)
                        .at("/conductance/value")
                        .doubleValue())
                .isCloseTo(0.35, within(1e-6));
        double before = known.at("/evaporating/pressure/value").doubleValue();
        Map<String, String> slow = evaporatingCoil(26, 3);
        slow.put("fanSpeed", "0.5");
        assertThat(answer(EvaporatingCoilMapping.OPERATION, slow)
                        .at("/evaporating/pressure/value")
                        .doubleValue())
                .isLessThan(before);
        Map<String, String> dirty = evaporatingCoil(26, 3);
        dirty.put("foulingResistance", "0.002 m2_K_per_W");
        dirty.put("area", "8 m2");
        assertThat(answer(EvaporatingCoilMapping.OPERATION, dirty)
                        .at("/evaporating/pressure/value")
                        .doubleValue())
                .isLessThan(before);
    }
}
