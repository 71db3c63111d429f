package io.loopstate.web.form;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.testing.Service;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.mapping.Operations;
import io.loopstate.web.problem.ProblemException;
import io.loopstate.wiring.JsonSettings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A number that is taken from the reply itself is the one that its tree gives. */
class PickedNumberTest {
    private static final Path ROOT = Path.of("examples/requests");
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Exchange EXCHANGE = Service.exchange(() -> System.nanoTime() + 1_000_000_000_000L);

    static {
        new JsonSettings().customize(MAPPER);
    }

    /** Every name by which a value of the examples' replies can be picked. */
    @Test
    void everyNameOfEveryExampleMeansTheSameEitherWay() throws IOException {
        int taken = 0;
        for (JsonNode folder : MAPPER.readTree(ROOT.resolve("index.json").toFile())) {
            String name = folder.get("path").textValue().replaceFirst("^/v1/", "");
            for (Path file : requests(folder.get("folder").textValue())) {
                for (Object reply :
                        reply(name, MAPPER.readTree(file.toFile())).stream().toList()) {
                    taken += compared(file, reply);
                }
            }
        }
        assertThat(taken).isGreaterThan(1000);
    }

    private static List<Path> requests(String folder) throws IOException {
        try (Stream<Path> files = Files.list(ROOT.resolve(folder))) {
            return files.filter(file -> file.toString().endsWith(".request.json"))
                    .sorted()
                    .toList();
        }
    }

    private static Optional<Object> reply(String operation, JsonNode body) {
        try {
            return Operations.named(operation).map(known -> EXCHANGE.answer(known, body, Map.of()));
        } catch (ProblemException refused) {
            return Optional.empty();
        }
    }

    private static int compared(Path file, Object reply) {
        JsonNode tree = MAPPER.valueToTree(reply);
        Set<String> names = new TreeSet<>();
        for (Leaf leaf : Leaves.of(tree)) {
            names.addAll(List.of(leaf.name(), leaf.last(), String.join(".", leaf.path())));
        }
        int taken = 0;
        for (String name : names) {
            Optional<JsonNode> number = PickedNumber.of(reply, name);
            if (number.isPresent()) {
                List<List<JsonNode>> rows =
                        Selection.sheet(tree, reply.getClass(), List.of(name)).rows();
                assertThat(rows).as("%s %s", file, name).isEqualTo(List.of(List.of(number.get())));
                taken++;
            }
        }
        return taken;
    }

    /** The two numbers that cells ask for most, the first by its full name, the second by its last. */
    @Test
    void fullNamesAndLastNamesAreTaken() throws IOException {
        Object reply = reply(
                        "cycle-points/design",
                        MAPPER.readTree(ROOT.resolve("cycle-points-design/good.request.json")
                                .toFile()))
                .orElseThrow();
        JsonNode tree = MAPPER.valueToTree(reply);
        assertThat(PickedNumber.of(reply, "performanceCoefficientOfPerformance"))
                .isEqualTo(PickedNumber.of(reply, "coefficientOfPerformance"))
                .contains(tree.at("/performance/coefficientOfPerformance"));
        assertThat(PickedNumber.of(reply, "temperature")).as("several").isEmpty();
        assertThat(PickedNumber.of(reply, "basis")).as("no number").isEmpty();
        assertThat(PickedNumber.of(reply, "/performance/pressureRatio"))
                .as("a pointer")
                .isEmpty();
    }
}
