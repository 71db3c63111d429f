package io.loopstate.web.mapping;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.loopstate.testing.Requests;
import io.loopstate.testing.Service;
import io.loopstate.units.Atmosphere;
import io.loopstate.units.UnitToken;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * One circuit for every kind of compressor in every housing, from request to reply: evaporator + power - losses = rejected, to
 * 1e-9. First law and definitions; no published numbers.
 */
class CompressorKindsTest {
    private static final double CLOSED = 1e-9;

    private static Map<String, String> kind(String design) {
        Map<String, String> machine = new LinkedHashMap<>();
        machine.put("machine.design", design);
        machine.put("machine.isentropicEfficiency", "0.76");
        switch (design) {
            case "reciprocating" -> {
                machine.put("machine.bore", "50.0 mm");
                machine.put("machine.stroke", "40.0 mm");
                machine.put("machine.cylinders", "2");
                machine.put("machine.speed", "1450.0 rpm");
                machine.put("machine.clearance", "0.04");
                machine.put("machine.suctionValvePressureDrop", "5.0 kPa");
                machine.put("machine.dischargeValvePressureDrop", "10.0 kPa");
            }
            case "rotary" -> {
                machine.put("machine.displacementPerRevolution", "25.0 cm3");
                machine.put("machine.speed", "2900.0 rpm");
                machine.put("machine.volumetricEfficiency", "0.93");
            }
            case "scroll" -> {
                machine.put("machine.displacementPerRevolution", "60.0 cm3");
                machine.put("machine.speed", "2900.0 rpm");
                machine.put("machine.volumetricEfficiency", "0.95");
                machine.put("machine.builtInVolumeRatio", "2.6");
            }
            case "screw" -> {
                machine.put("machine.displacement", "5.0 m3_per_min");
                machine.put("machine.volumetricEfficiency", "0.9");
                machine.put("machine.builtInVolumeRatio", "3.2");
            }
            default -> {
                machine.put("machine.impellerDiameter", "0.3 m");
                machine.put("machine.speed", "12000.0 rpm");
                machine.put("machine.inletVolumeFlow", "0.5 m3_per_s");
                machine.put("machine.stages", "2");
                machine.put("machine.headCoefficient", "0.8");
            }
        }
        return machine;
    }

    /** Housing, where its motor's heat goes, whether it has a belt. */
    private static List<List<String>> housings() {
        return List.of(
                List.of("hermetic", "suctionGas"),
                List.of("hermetic", "dischargeGas"),
                List.of("semiHermetic", "suctionGas"),
                List.of("semiHermetic", "surroundings"),
                List.of("open", "surroundings"));
    }

    static Stream<Arguments> kinds() {
        List<Arguments> all = new ArrayList<>();
        for (String design : List.of("reciprocating", "rotary", "scroll", "screw", "centrifugal")) {
            for (List<String> housing : housings()) {
                for (String refrigerant : List.of("R-134a", "R-454B")) {
                    for (String units : List.of("SI", "IP")) {
                        all.add(Arguments.of(design, housing.get(0), housing.get(1), refrigerant, units));
                    }
                }
            }
        }
        return all.stream();
    }

    private static Map<String, String> point(String refrigerant, String units) {
        Map<String, String> request = new LinkedHashMap<>();
        request.put("refrigerant", refrigerant);
        request.put("suction.saturationTemperature", "2.0 degC");
        request.put("suction.superheat", "9.0 K");
        request.put("discharge.saturationTemperature", "40.0 degC");
        request.put("liquid.subcooling", "5.0 K");
        request.put("evaporatorOutletTemperature", "8.0 degC");
        request.put("units", units);
        return request;
    }

    @ParameterizedTest(name = "{1} {0}, motor heat to {2}, {3}, {4}")
    @MethodSource("kinds")
    void circuitCloses(String design, String housing, String cooling, String refrigerant, String units) {
        Map<String, String> request = point(refrigerant, units);
        request.putAll(kind(design));
        request.put("machine.housing", housing);
        request.put("machine.motorCooling", cooling);
        request.put("machine.motorEfficiency", "0.88");
        request.put("machine.mechanicalEfficiency", "0.94");
        request.put("machine.heatLossFraction", "0.05");
        if (housing.equals("open")) {
            request.put("machine.driveEfficiency", "0.96");
        }
        JsonNode reply = answer(DisplacementMapping.OPERATION, request);
        closes(reply);
        double electrical = si(reply, "/machine/electricalPower");
        double shaft = si(reply, "/machine/shaftPower");
        double motor = si(reply, "/machine/motorLoss");
        double drive = si(reply, "/machine/driveLoss");
        same(electrical, shaft + drive + motor);
        same(si(reply, "/machine/indicatedPower"), 0.94 * shaft);
        boolean outside = cooling.equals("surroundings");
        same(si(reply, "/machine/heatLoss"), si(reply, "/machine/shellLoss") + drive + (outside ? motor : 0));
        double warming = si(reply, "/machine/motorWarming");
        if (cooling.equals("suctionGas")) {
            assertThat(warming).isGreaterThan(1);
        } else {
            assertThat(warming).isZero();
        }
        // What is rejected does not depend on how the first law is written.
        double flow = si(reply, "/machine/massFlow");
        same(
                electrical - si(reply, "/machine/heatLoss"),
                flow * (si(reply, "/points/1/specificEnthalpy") - si(reply, "/points/0/specificEnthalpy")));
    }

    /** A rating map: the power is that at the terminals, the loss a share of it. */
    @Test
    void circuitOfARatingMapCloses() {
        for (String refrigerant : List.of("R-134a", "R-454B")) {
            for (String units : List.of("SI", "IP")) {
                Map<String, String> request = point(refrigerant, units);
                JsonNode reply = Service.post(RatingMapMapping.OPERATION, withMap(new Requests(request)))
                        .json();
                closes(reply);
                same(si(reply, "/map/heatLoss"), 0.06 * si(reply, "/map/power"));
            }
        }
    }

    private static JsonNode withMap(Requests request) {
        var body = request.body();
        var map = body.putObject("map");
        map.put("temperatureUnit", "degC").put("heatLossFraction", 0.06);
        map.putObject("ratedSuperheat").put("value", 10).put("unit", "K");
        polynomial(map.putObject("capacity"), "kW", 20, 0.7, -0.2);
        polynomial(map.putObject("power"), "kW", 2, 0.02, 0.07);
        return body;
    }

    private static void polynomial(ObjectNode node, String unit, double... coefficients) {
        var list = node.put("unit", unit).putArray("coefficients");
        for (int k = 0; k < 10; k++) {
            list.add(k < coefficients.length ? coefficients[k] : 0);
        }
    }

    private static JsonNode answer(Operation<?, ?, ?, ?> operation, Map<String, String> request) {
        Service.Answer answer = Service.get(operation, new Requests(request).query());
        assertThat(answer.status()).as(answer.body()).isEqualTo(200);
        return answer.json();
    }

    private static void closes(JsonNode reply) {
        double evaporator = si(reply, "/energyBalance/refrigeratingCapacity");
        double line = si(reply, "/energyBalance/suctionLineHeatGain");
        double power = si(reply, "/energyBalance/electricalPower");
        double loss = si(reply, "/energyBalance/heatLoss");
        same(evaporator + line + power - loss, si(reply, "/energyBalance/heatRejected"));
        assertThat(line).isPositive();
        assertThat(loss).isPositive();
    }

    private static void same(double left, double right) {
        assertThat(Math.abs(left - right))
                .as(left + " and " + right)
                .isLessThanOrEqualTo(CLOSED * Math.max(Math.abs(left), Math.abs(right)));
    }

    private static double si(JsonNode reply, String pointer) {
        JsonNode quantity = reply.at(pointer);
        assertThat(quantity.has("unit")).as(pointer).isTrue();
        return UnitToken.of(quantity.get("unit").textValue())
                .toSi(quantity.get("value").doubleValue(), Atmosphere.standard());
    }
}
