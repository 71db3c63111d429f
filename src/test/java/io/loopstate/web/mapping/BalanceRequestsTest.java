package io.loopstate.web.mapping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.loopstate.testing.Requests;
import io.loopstate.testing.Service;
import java.util.LinkedHashMap;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Requests about a whole machine, from text to bytes. */
class BalanceRequestsTest {
    private static Map<String, String> metric(double celsius) {
        Map<String, String> values = new LinkedHashMap<>();
        values.put("refrigerant", "R-134a");
        values.put("machine.design", "scroll");
        values.put("machine.housing", "hermetic");
        values.put("machine.displacementPerRevolution", "60 cm3");
        values.put("machine.speed", "2900 rpm");
        values.put("machine.builtInVolumeRatio", "2.6");
        values.put("machine.isentropicEfficiency", "0.75");
        values.put("machine.motorEfficiency", "0.88");
        values.put("outdoorAir.dryBulb", celsius + " degC");
        values.put("outdoorAir.relativeHumidity", "0.4");
        values.put("indoorAir.dryBulb", "25 degC");
        values.put("indoorAir.wetBulb", "18 degC");
        values.put("condenser.conductance", "1.5 kW_per_K");
        values.put("condenser.airflow.volumeFlow", "4800 m3_per_h");
        values.put("evaporator.conductance", "1.2 kW_per_K");
        values.put("evaporator.airflow.volumeFlow", "2100 m3_per_h");
        values.put("superheat", "6 K");
        values.put("suctionLineTemperatureRise", "4 K");
        values.put("subcooling", "5 K");
        return values;
    }

    private static Map<String, String> inchPound(double celsius) {
        Map<String, String> values = metric(celsius);
        double foot = 0.3048;
        double btu = 1055.05585262;
        values.put("machine.displacementPerRevolution", 60 / 16.387064 + " in3");
        values.put("machine.speed", 2900 / 60.0 + " Hz");
        values.put("outdoorAir.dryBulb", (celsius * 1.8 + 32) + " degF");
        values.put("outdoorAir.relativeHumidity", "40 pct");
        values.put("indoorAir.dryBulb", "77 degF");
        values.put("indoorAir.wetBulb", "64.4 degF");
        values.put("condenser.conductance", 1500 * 3600 / btu / 1.8 + " Btu_per_h_degF");
        values.put("condenser.airflow.volumeFlow", 80 / (foot * foot * foot) + " cfm");
        values.put("evaporator.conductance", 1200 * 3600 / btu / 1.8 + " Btu_per_h_degF");
        values.put("evaporator.airflow.volumeFlow", 35 / (foot * foot * foot) + " cfm");
        values.put("superheat", "10.8 delta_degF");
        values.put("suctionLineTemperatureRise", "7.2 delta_degF");
        values.put("subcooling", "9 delta_degF");
        return values;
    }

    private static JsonNode answer(Map<String, String> values) {
        Service.Answer answer = Service.get(BalanceMapping.OPERATION, new Requests(values).query());
        assertThat(answer.status()).as(answer.body()).isEqualTo(200);
        return answer.json();
    }

    private static double number(JsonNode reply, String pointer) {
        JsonNode node = reply.at(pointer);
        return (node.has("value") ? node.get("value") : node).doubleValue();
    }

    /** The same machine written in other units settles at the same place, and each way the energy balance closes. */
    @Property(tries = 60)
    void unitsOfARequestDoNotMatter(@ForAll @DoubleRange(min = 18, max = 48) double celsius) {
        JsonNode one = answer(metric(celsius));
        JsonNode other = answer(inchPound(celsius));
        for (String pointer : new String[] {
            "/evaporating/pressure",
            "/condensing/pressure",
            "/massFlow",
            "/energyBalance/electricalPower",
            "/energyBalance/refrigeratingCapacity",
            "/evaporator/latentHeat",
            "/compressor/dischargeTemperature"
        }) {
            double expected = number(one, pointer);
            assertThat(number(other, pointer)).as(pointer).isCloseTo(expected, within(1e-9 * expected));
        }
        double rejected = number(one, "/energyBalance/heatRejected");
        assertThat(number(one, "/energyBalance/refrigeratingCapacity")
                        + number(one, "/energyBalance/suctionLineHeatGain")
                        + number(one, "/energyBalance/electricalPower")
                        - number(one, "/energyBalance/heatLoss"))
                .isCloseTo(rejected, within(1e-9 * rejected));
    }

    @ParameterizedTest
    @ValueSource(strings = {"R-134a", "R-290", "R-454B", "R-448A", "R-32/1234yf (40/60)"})
    void theWorkingIsShownWhenAskedFor(String refrigerant) {
        Map<String, String> values = metric(35);
        values.put("refrigerant", refrigerant);
        JsonNode plain = answer(values);
        values.put("explain", "true");
        JsonNode explained = answer(values);
        assertThat(plain.has("working")).isFalse();
        assertThat(explained.get("working")).isNotEmpty().allSatisfy(step -> {
            assertThat(step.get("formula").textValue()).isNotBlank();
            assertThat(step.get("source").textValue()).isNotBlank();
        });
        assertThat(explained.get("working").get(0).get("name").textValue()).startsWith("trial 1 of");
        ((ObjectNode) explained).remove("working");
        assertThat(explained).isEqualTo(plain);
    }

    /** The coil by itself, given flow and inlet of the balance, condenses where the balance does. */
    @Test
    void theCoilByItselfSaysTheSame() {
        JsonNode balance = answer(metric(33));
        Map<String, String> coil = new LinkedHashMap<>();
        coil.put("refrigerant", "R-134a");
        coil.put("entering.dryBulb", "33 degC");
        coil.put("entering.relativeHumidity", "0.4");
        coil.put("airflow.volumeFlow", "4800 m3_per_h");
        coil.put("conductance", "1.5 kW_per_K");
        coil.put("subcooling", "5 K");
        coil.put("condenserInletTemperature", number(balance, "/compressor/dischargeTemperature") + " degC");
        coil.put("massFlow", number(balance, "/massFlow") + " kg_per_s");
        Service.Answer answer = Service.get(CoilMapping.OPERATION, new Requests(coil).query());
        assertThat(answer.status()).as(answer.body()).isEqualTo(200);
        double pressure = number(balance, "/condensing/pressure");
        double heat = number(balance, "/energyBalance/heatRejected");
        assertThat(number(answer.json(), "/condensing/pressure")).isCloseTo(pressure, within(1e-9 * pressure));
        assertThat(number(answer.json(), "/heatRejected")).isCloseTo(heat, within(1e-9 * heat));
        assertThat(answer.json().get("zones").size())
                .isEqualTo(balance.at("/condenser/zones").size());
    }

    /** Gauge pressures at another altitude count from the air there. */
    @Test
    void gaugesOfARowCountFromItsOwnAir() {
        Map<String, String> values = metric(33);
        values.put("whatIf.altitude", "2000 m");
        values.put("units", "SI,pressure=kPa_g");
        JsonNode gauge = answer(values).at("/whatIfs/0");
        values.put("units", "SI,pressure=kPa_a");
        JsonNode absolute = answer(values).at("/whatIfs/0");
        // ICAO standard atmosphere at 2000 m: 79.495 kPa
        assertThat(number(absolute, "/condensing/pressure") - number(gauge, "/condensing/pressure"))
                .isCloseTo(79.495, within(0.005));
    }

    @Test
    void rowsAreThoseAskedFor() {
        Map<String, String> values = metric(33);
        assertThat(answer(values).has("whatIfs")).isFalse();
        values.put("whatIf.usual", "true");
        values.put("whatIf.refrigerant", "R-290");
        JsonNode rows = answer(values).get("whatIfs");
        assertThat(rows.findValuesAsText("whatIf"))
                .containsExactly(
                        "dirtyCondenser",
                        "hotDay",
                        "lowIndoorAirflow",
                        "condenserFanSlow",
                        "condenserFanOff",
                        "otherRefrigerant");
        for (JsonNode row : rows) {
            assertThat(row.has("withoutBalance")).isEqualTo(row.has("reason"));
            assertThat(row.has("withoutBalance")).isNotEqualTo(row.has("differences"));
        }
        assertThat(rows.at("/5/change/refrigerant").textValue()).isEqualTo("R-290");
        assertThat(rows.at("/5/cautions/0").textValue()).contains("A3");
    }

    /** Fans count in the system's figures and in nothing else; half speed takes an eighth, thin air less in proportion. */
    @Test
    void fansCount() {
        JsonNode without = answer(metric(35));
        assertThat(without.has("system")).isFalse();
        Map<String, String> values = metric(35);
        values.put("condenser.fanPower", "0.3 kW");
        values.put("evaporator.fanPower", "0.25 kW");
        values.put("whatIf.condenserFanSpeed", "0.5");
        values.put("whatIf.altitude", "1500 m");
        JsonNode with = answer(values);
        assertThat(with.get("energyBalance")).isEqualTo(without.get("energyBalance"));
        double capacity = number(with, "/energyBalance/refrigeratingCapacity");
        double compressor = number(with, "/energyBalance/electricalPower");
        assertThat(number(with, "/system/electricalPower")).isCloseTo(compressor + 0.55, within(1e-12));
        assertThat(number(with, "/system/coefficientOfPerformance"))
                .isCloseTo(capacity / (compressor + 0.55), within(1e-12));
        assertThat(number(with, "/system/netCapacity")).isCloseTo(capacity - 0.25, within(1e-12));
        assertThat(number(with, "/system/netCoefficientOfPerformance"))
                .isCloseTo((capacity - 0.25) / (compressor + 0.55), within(1e-12));
        JsonNode altitude = with.at("/whatIfs/0/system");
        JsonNode half = with.at("/whatIfs/1/system");
        assertThat(number(half, "/condenserFanPower")).isCloseTo(0.3 / 8, within(1e-12));
        assertThat(number(half, "/evaporatorFanPower")).isCloseTo(0.25, within(1e-12));
        // ISO 2533, table 5: 84556 Pa at 1500 m.
        assertThat(number(altitude, "/condenserFanPower")).isCloseTo(0.3 * 84556 / 101325, within(2e-3));
        assertThat(with.at("/condenser").equals(without.at("/condenser"))).isTrue();
    }
}
