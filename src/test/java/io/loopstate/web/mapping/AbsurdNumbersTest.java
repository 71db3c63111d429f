package io.loopstate.web.mapping;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.loopstate.testing.Service;
import io.loopstate.testing.Service.Answer;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers that are finite and that nothing has: answered with finite numbers or refused at their field, never a defect. */
class AbsurdNumbersTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final double[] FACTORS = {1e-300, 1e-100, 1e-30, 1e-12, 1e-6, 1e6, 1e12, 1e30, 1e100, 1e160, 1e300};

    private static JsonNode request(String operation, String example) {
        try {
            return MAPPER.readTree(Path.of("examples/requests", operation.replace('/', '-'), example + ".request.json")
                    .toFile());
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Answer answer(String operation, JsonNode request) {
        return Service.post(Operations.named(operation).orElseThrow(), request);
    }

    @ParameterizedTest
    @CsvSource({
        "compression/displacement, /machine/bore",
        "heat-rejection/balance, /machine/speed",
        "compression/displacement, /machine/stroke",
        "compression/displacement, /machine/speed",
        "compression/rating-map/compare, /machine/displacement",
        "compression/rating-map/compare-grid, /machine/displacement",
        "compression/cylinder, /initial/volume",
        "heat-rejection/balance, /machine/displacementPerRevolution",
        "heat-rejection/balance, /condenser/conductance",
        "heat-rejection/balance, /evaporator/conductance",
        "heat-rejection/coil, /conductance"
    })
    void sizesThatNothingHasAreRefusedAtTheirField(String operation, String pointer) {
        for (double size : new double[] {1e156, 1e300, 1e-156}) {
            JsonNode request = request(operation, "good");
            ObjectNode member = (ObjectNode) request.at(pointer);
            member.put("value", size);
            Answer answer = answer(operation, request);
            assertThat(answer.status()).as(answer.body()).isEqualTo(422);
            JsonNode fault = answer.json().at("/errors/0");
            assertThat(fault.get("pointer").asText()).as(answer.body()).isEqualTo("#" + pointer);
            assertThat(fault.get("code").asText()).isEqualTo("impossible-value");
        }
    }

    @Test
    void efficiencyThatNothingHasIsRefusedAtItsField() {
        JsonNode request = request("heat-rejection/balance", "good");
        ((ObjectNode) request.at("/machine")).put("motorEfficiency", 1e-306);
        Answer answer = answer("heat-rejection/balance", request);
        assertThat(answer.status()).as(answer.body()).isEqualTo(422);
        assertThat(answer.json().at("/errors/0/pointer").asText()).isEqualTo("#/machine/motorEfficiency");
    }

    /** The range of dew points ends at 130 K; with less water air counts as dry. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-15, 1e-12, 1e-11, 1e-10, 1e-6})
    void nextToDryAirIsAnswered(double humidity) {
        ObjectNode request = (ObjectNode) request("heat-rejection/coil", "good");
        ((ObjectNode) request.get("entering")).put("relativeHumidity", humidity);
        assertThat(answer("heat-rejection/coil", request).status()).isEqualTo(200);
    }

    /** So steep that no bracket closes in on a balance: the flow of the cylinders ends first. */
    @Test
    void anEvaporatorOfNextToNothingHasNoBalance() {
        JsonNode request = request("heat-rejection/balance", "good");
        scale(request, List.of("evaporator", "conductance", "value"), 1e-12);
        Answer answer = answer("heat-rejection/balance", request);
        assertThat(answer.status()).as(answer.body()).isEqualTo(422);
        assertThat(answer.json().at("/errors/0/code").asText()).isEqualTo("no-balance");
    }

    static Stream<String> operations() {
        return Operations.names().stream()
                .filter(name -> name.startsWith("compression/") || name.startsWith("heat-rejection/"));
    }

    /** Every number of an example, one at a time. */
    @Tag("slow")
    @ParameterizedTest
    @MethodSource("operations")
    void everyNumberIsAnsweredOrRefused(String operation) {
        JsonNode request = request(operation, "good");
        List<List<String>> numbers = new ArrayList<>();
        numbers(request, List.of(), numbers);
        assertThat(numbers).isNotEmpty();
        for (List<String> path : numbers) {
            for (double factor : FACTORS) {
                JsonNode scaled = request.deepCopy();
                scale(scaled, path, factor);
                Answer answer = answer(operation, scaled);
                assertThat(answer.status())
                        .as(path + " times " + factor + answer.body())
                        .isLessThan(500);
                assertThat(answer.body()).as(path + " times " + factor).doesNotContain("NaN", "Infinity");
            }
        }
    }

    private static void numbers(JsonNode node, List<String> at, List<List<String>> found) {
        if (node.isNumber()) {
            found.add(at);
        }
        node.fieldNames().forEachRemaining(name -> numbers(node.get(name), longer(at, name), found));
        for (int k = 0; node.isArray() && k < node.size(); k++) {
            numbers(node.get(k), longer(at, String.valueOf(k)), found);
        }
    }

    private static List<String> longer(List<String> path, String name) {
        return Stream.concat(path.stream(), Stream.of(name)).toList();
    }

    private static void scale(JsonNode root, List<String> path, double factor) {
        JsonNode parent = root.at("/" + String.join("/", path.subList(0, path.size() - 1)));
        String last = path.get(path.size() - 1);
        if (path.size() == 1) {
            parent = root;
        }
        if (parent instanceof ArrayNode array) {
            int index = Integer.parseInt(last);
            array.set(index, DoubleNode.valueOf(array.get(index).asDouble() * factor));
        } else {
            ((ObjectNode) parent).set(last, DoubleNode.valueOf(parent.get(last).asDouble() * factor));
        }
    }
}
