package io.loopstate.web.mapping;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.loopstate.testing.Http;
import io.loopstate.units.Atmosphere;
import io.loopstate.units.QuantityKind;
import io.loopstate.units.UnitToken;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every example of a compression over HTTP, with each of its quantities in another unit: the reply is the same. And the energy
 * balance of each reply, from the numbers that a client gets.
 */
@QuarkusTest
class CompressionUnitsTest {
    private static final Path ROOT = Path.of("examples", "requests");
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Map<String, Operation<?, ?, ?, ?>> OPERATIONS = Map.of(
            "compression-process", ProcessMapping.OPERATION,
            "compression-cylinder", CylinderMapping.OPERATION,
            "compression-displacement", DisplacementMapping.OPERATION,
            "compression-nameplate", NameplateMapping.OPERATION,
            "compression-rating-map", RatingMapMapping.OPERATION,
            "compression-rating-map-fit", FitMapping.OPERATION,
            "compression-rating-map-compare", CompareMapping.OPERATION,
            "compression-rating-map-compare-grid", CompareGridMapping.OPERATION,
            "compression-staging", StagingMapping.OPERATION);
    private static final double SAME = 1e-9;
    /** Found by search over a flat minimum, to 1e-7 of the logarithm; what depends on it in first order likewise. */
    private static final double SEARCHED = 1e-6;
    /** What a difference of two numbers of the kind is rounded against, SI. */
    private static final Map<QuantityKind, Double> SCALES = Map.of(
            QuantityKind.TEMPERATURE_DIFFERENCE, 300.0,
            QuantityKind.SPECIFIC_ENERGY, 1e5,
            QuantityKind.POWER, 1e3,
            QuantityKind.PRESSURE, 1e5);

    record Case(String folder, String path, String name) {
        ObjectNode request() throws IOException {
            return (ObjectNode) MAPPER.readTree(
                    ROOT.resolve(folder).resolve(name + ".request.json").toFile());
        }

        @Override
        public String toString() {
            return folder + '/' + name;
        }
    }

    static Stream<Case> examples() throws IOException {
        List<Case> cases = new ArrayList<>();
        for (JsonNode folder : MAPPER.readTree(ROOT.resolve("index.json").toFile())) {
            String name = folder.get("folder").textValue();
            if (name.startsWith("compression-")) {
                assertThat(OPERATIONS).containsKey(name);
                folder.get("examples").fieldNames().forEachRemaining(example -> {
                    if (!example.equals("error")) {
                        cases.add(new Case(name, folder.get("path").textValue(), example));
                    }
                });
            }
        }
        return cases.stream();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void unitsOfTheInputDoNotMatter(Case example) throws IOException {
        ObjectNode request = example.request();
        JsonNode expected = answer(example, request);
        boolean searched = example.folder().equals("compression-staging") && !request.has("intermediatePressure");
        for (int turn = 1; turn <= 3; turn++) {
            ObjectNode other = request.deepCopy();
            int changed = rewrite(OPERATIONS.get(example.folder()), "", other, turn);
            // A fit has no quantity but the scale of its temperatures.
            assertThat(changed)
                    .as(example.toString())
                    .isGreaterThan(example.folder().endsWith("-fit") ? 0 : 1);
            compare(example + " turn " + turn, "", answer(example, other), expected, searched ? SEARCHED : SAME);
        }
    }

    private static JsonNode answer(Case example, ObjectNode request) {
        return Http.json(Http.post(example.path(), request.toString()).statusCode(200));
    }

    /** Gives every quantity below in another unit of its kind; how many. */
    private static int rewrite(Operation<?, ?, ?, ?> operation, String path, ObjectNode node, int turn) {
        int changed = 0;
        for (Iterator<Map.Entry<String, JsonNode>> fields = node.fields(); fields.hasNext(); ) {
            Map.Entry<String, JsonNode> field = fields.next();
            String place = path.isEmpty() ? field.getKey() : path + '.' + field.getKey();
            if (!(field.getValue() instanceof ObjectNode value)) {
                continue;
            }
            if (value.has("value")) {
                changed += quantity(operation, place, value, turn);
            } else if (value.has("coefficients")) {
                changed += polynomial(value, turn);
            } else {
                changed += rewrite(operation, place, value, turn);
            }
        }
        return changed + (path.isEmpty() ? scales(node) : 0);
    }

    private static int quantity(Operation<?, ?, ?, ?> operation, String place, ObjectNode quantity, int turn) {
        QuantityKind kind = Shape.of(operation.request()).leaves().get(place).kind();
        UnitToken unit = UnitToken.of(quantity.get("unit").textValue());
        double si = unit.toSi(quantity.get("value").doubleValue(), Atmosphere.standard());
        UnitToken other = another(kind, unit, turn);
        if (unit.offset() != 0 && !unit.measures(QuantityKind.TEMPERATURE)) {
            throw new IllegalStateException("unit with an offset: " + unit);
        }
        quantity.put("value", other.fromSi(si, Atmosphere.standard())).put("unit", other.name());
        return other.name().equals(unit.name()) ? 0 : 1;
    }

    /** Vacuum units count the other way and hold for part of the range only. */
    private static UnitToken another(QuantityKind kind, UnitToken unit, int turn) {
        List<UnitToken> units = kind.units().stream()
                .filter(token -> token.measures(kind) && !token.name().contains("vac"))
                .toList();
        return units.get((units.indexOf(unit) + turn) % units.size());
    }

    private static int polynomial(ObjectNode polynomial, int turn) {
        UnitToken unit = UnitToken.of(polynomial.get("unit").textValue());
        UnitToken other = another(unit.kind(), unit, turn);
        ArrayNode coefficients = (ArrayNode) polynomial.get("coefficients");
        for (int k = 0; k < coefficients.size(); k++) {
            coefficients.set(
                    k,
                    MAPPER.getNodeFactory()
                            .numberNode(coefficients.get(k).doubleValue() * unit.factor() / other.factor()));
        }
        polynomial.put("unit", other.name());
        return 1;
    }

    /** The points of a fit in the other scale of temperatures. */
    private static int scales(ObjectNode request) {
        if (!request.has("suctionTemperatures") || !request.has("temperatureUnit")) {
            return 0;
        }
        boolean celsius = request.get("temperatureUnit").textValue().equals("degC");
        for (String name : List.of("suctionTemperatures", "dischargeTemperatures")) {
            ArrayNode list = (ArrayNode) request.get(name);
            for (int k = 0; k < list.size(); k++) {
                double value = list.get(k).doubleValue();
                list.set(k, MAPPER.getNodeFactory().numberNode(celsius ? 1.8 * value + 32 : (value - 32) / 1.8));
            }
        }
        request.put("temperatureUnit", celsius ? "degF" : "degC");
        return 1;
    }

    private static final Set<String> OF_THE_SCALE = Set.of("coefficients", "temperatureUnit");

    private static void compare(String name, String place, JsonNode actual, JsonNode expected, double tolerance) {
        if (expected.has("unit") && expected.has("value")) {
            assertThat(actual.get("unit")).as(name + place).isEqualTo(expected.get("unit"));
            UnitToken unit = UnitToken.of(expected.get("unit").textValue());
            double scale = SCALES.getOrDefault(unit.kind(), 0.0) / unit.factor();
            // Degrees count from far below zero.
            near(
                    name + place,
                    actual.get("value"),
                    expected.get("value"),
                    scale + unit.offset() / unit.factor(),
                    tolerance);
        } else if (expected.isNumber()) {
            near(name + place, actual, expected, 1, tolerance);
        } else if (expected.isObject()) {
            for (Iterator<String> names = expected.fieldNames(); names.hasNext(); ) {
                String member = names.next();
                if (!OF_THE_SCALE.contains(member) && !member.equals("working")) {
                    assertThat(actual.has(member))
                            .as(name + place + '/' + member)
                            .isTrue();
                    compare(name, place + '/' + member, actual.get(member), expected.get(member), tolerance);
                }
            }
        } else if (expected.isArray()) {
            assertThat(actual.size()).as(name + place).isEqualTo(expected.size());
            for (int k = 0; k < expected.size(); k++) {
                compare(name, place + '/' + k, actual.get(k), expected.get(k), tolerance);
            }
        } else {
            assertThat(actual).as(name + place).isEqualTo(expected);
        }
    }

    private static void near(String place, JsonNode actual, JsonNode expected, double scale, double tolerance) {
        double value = expected.doubleValue();
        assertThat(Math.abs(actual.doubleValue() - value))
                .as(place + ": " + actual + " instead of " + expected)
                .isLessThanOrEqualTo(tolerance * Math.max(Math.abs(value), scale));
    }

    /** First law, from the reply alone; J/kg, W and J. */
    @ParameterizedTest
    @MethodSource("examples")
    void energyOfTheReplyBalances(Case example) throws IOException {
        JsonNode reply = answer(example, example.request());
        switch (example.folder()) {
            case "compression-process" -> process(reply);
            case "compression-cylinder" -> cylinder(reply);
            case "compression-displacement" -> {
                circuit(reply);
                machine(reply);
            }
            case "compression-rating-map" -> {
                circuit(reply);
                port(reply, si(reply, "/map/massFlow"), si(reply, "/map/power") - si(reply, "/map/heatLoss"));
            }
            case "compression-staging" -> stages(reply);
            case "compression-rating-map-compare" -> compared(reply);
            case "compression-rating-map-compare-grid" -> grid(reply);
            case "compression-nameplate" -> nameplate(reply);
            default -> assertThat(reply.at("/determination").doubleValue()).isBetween(0.9, 1.0);
        }
    }

    private static void process(JsonNode reply) {
        double rise = si(reply, "/points/1/specificEnthalpy") - si(reply, "/points/0/specificEnthalpy");
        balanced(si(reply, "/compression/work"), rise + si(reply, "/compression/heatLoss"));
        if (reply.has("flow")) {
            balanced(si(reply, "/flow/power"), si(reply, "/flow/massFlow") * si(reply, "/compression/work"));
            balanced(si(reply, "/flow/heatLoss"), si(reply, "/flow/massFlow") * si(reply, "/compression/heatLoss"));
        }
    }

    private static void cylinder(JsonNode reply) {
        double work = si(reply, "/cylinder/work");
        double change = si(reply, "/cylinder/mass")
                * (si(reply, "/end/specificInternalEnergy") - si(reply, "/start/specificInternalEnergy"));
        double size = Math.max(Math.abs(work), Math.abs(si(reply, "/cylinder/heat")));
        assertThat(work + si(reply, "/cylinder/heat") - change).isBetween(-1e-9 * size - 1e-9, 1e-9 * size + 1e-9);
        assertThat(si(reply, "/cylinder/workOfAtmosphere") + si(reply, "/cylinder/workOnRod") - work)
                .isBetween(-1e-9 * size - 1e-12, 1e-9 * size + 1e-12);
    }

    /** A row has no states to balance: its shares are those of its own numbers, and the summary is that of the rows. */
    private static void grid(JsonNode reply) {
        int compared = 0;
        for (JsonNode row : reply.get("rows")) {
            if (row.has("refused")) {
                continue;
            }
            compared++;
            balanced(
                    si(row, "/machine/massFlow"),
                    si(row, "/map/massFlow")
                            * (1 + row.at("/difference/massFlowDifference").doubleValue()));
            balanced(
                    si(row, "/machine/electricalPower"),
                    si(row, "/map/electricalPower")
                            * (1 + row.at("/difference/powerDifference").doubleValue()));
        }
        assertThat(reply.get("compared").intValue()).isEqualTo(compared).isPositive();
        assertThat(reply.get("refused").intValue()).isEqualTo(reply.get("rows").size() - compared);
    }

    private static void circuit(JsonNode reply) {
        if (reply.has("energyBalance")) {
            balanced(
                    si(reply, "/energyBalance/refrigeratingCapacity")
                            + si(reply, "/energyBalance/suctionLineHeatGain")
                            + si(reply, "/energyBalance/electricalPower")
                            - si(reply, "/energyBalance/heatLoss"),
                    si(reply, "/energyBalance/heatRejected"));
            assertThat(Math.abs(reply.at("/energyBalance/residual").doubleValue()))
                    .isLessThan(1e-9);
        }
    }

    private static void machine(JsonNode reply) {
        balanced(
                si(reply, "/machine/electricalPower"),
                si(reply, "/machine/indicatedPower")
                        + si(reply, "/machine/frictionLoss")
                        + si(reply, "/machine/driveLoss")
                        + si(reply, "/machine/motorLoss"));
        port(
                reply,
                si(reply, "/machine/massFlow"),
                si(reply, "/machine/electricalPower") - si(reply, "/machine/heatLoss"));
    }

    private static void port(JsonNode reply, double flow, double power) {
        balanced(flow * (si(reply, "/points/1/specificEnthalpy") - si(reply, "/points/0/specificEnthalpy")), power);
    }

    private static void stages(JsonNode reply) {
        double given = si(reply, "/staging/intercoolerHeat");
        for (String stage : List.of("lowStage", "highStage")) {
            given += si(reply, '/' + stage + "/heat");
        }
        double rise = si(reply, "/highStage/outlet/specificEnthalpy") - si(reply, "/lowStage/inlet/specificEnthalpy");
        balanced(si(reply, "/staging/work"), rise + given);
        balanced(si(reply, "/staging/work"), si(reply, "/lowStage/work") + si(reply, "/highStage/work"));
    }

    private static void compared(JsonNode reply) {
        balanced(
                si(reply, "/machine/massFlow"),
                si(reply, "/map/massFlow")
                        * (1 + reply.at("/difference/massFlowDifference").doubleValue()));
        balanced(
                si(reply, "/machine/electricalPower"),
                si(reply, "/map/electricalPower")
                        * (1 + reply.at("/difference/powerDifference").doubleValue()));
    }

    private static void nameplate(JsonNode reply) {
        balanced(
                si(reply, "/nameplate/isentropicPower"),
                si(reply, "/nameplate/massFlow")
                        * (si(reply, "/isentropicDischarge/specificEnthalpy")
                                - si(reply, "/suction/specificEnthalpy")));
    }

    private static void balanced(double left, double right) {
        assertThat(Math.abs(left - right))
                .as(left + " and " + right)
                .isLessThanOrEqualTo(1e-9 * Math.max(Math.abs(left), Math.abs(right)));
    }

    private static double si(JsonNode reply, String pointer) {
        JsonNode quantity = reply.at(pointer);
        assertThat(quantity.has("unit")).as(pointer).isTrue();
        return UnitToken.of(quantity.get("unit").textValue())
                .toSi(quantity.get("value").doubleValue(), Atmosphere.standard());
    }
}
