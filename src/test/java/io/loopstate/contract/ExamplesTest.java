package io.loopstate.contract;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.loopstate.testing.BodyTypes;
import io.loopstate.testing.Csv;
import io.loopstate.testing.Http;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The requests under {@code examples/requests} get the replies stored beside them. {@code -Dexamples.bless=true} stores the
 * replies anew.
 */
@QuarkusTest
class ExamplesTest {
    private static final Path ROOT = Path.of("examples", "requests");
    private static final boolean BLESS = Boolean.getBoolean("examples.bless");
    private static final ObjectMapper MAPPER = new ObjectMapper();
    /** Relative; what the service promises across processors and Java releases, since logarithms may differ in the last bit. */
    private static final double PROMISE = 1e-9;

    /**
     * One example: a request, for some operations as a body and as a query, and its reply.
     *
     * @param many whether it holds many calculations, which no query does; its address is that of the body then
     */
    record Example(String operation, String name, String path, boolean many) {
        Path file(String ending) {
            return ROOT.resolve(operation).resolve(name + ending);
        }

        String url() throws IOException {
            return Files.readString(file(".url")).strip();
        }

        /** Of the body, empty where there is none. */
        Optional<BodyTypes> type() {
            return BodyTypes.all().stream()
                    .filter(type -> Files.exists(file(type.request())))
                    .findFirst();
        }

        boolean hasBody() {
            return type().isPresent();
        }

        /** Whether request and reply are one JSON value each. */
        boolean inJson() {
            return type().orElse(BodyTypes.JSON) == BodyTypes.JSON;
        }

        String body() throws IOException {
            return Files.readString(file(type().orElseThrow().request()));
        }

        /** Where the reply is stored; refusals of everything are JSON. */
        Path reply(boolean json) {
            return file((json ? BodyTypes.JSON : type().orElseThrow()).response());
        }

        JsonNode stored() throws IOException {
            return MAPPER.readTree(file(".response.json").toFile());
        }

        @Override
        public String toString() {
            return operation + '/' + name;
        }
    }

    static Stream<Example> examples() throws IOException {
        List<Example> examples = new ArrayList<>();
        for (JsonNode folder : MAPPER.readTree(ROOT.resolve("index.json").toFile())) {
            folder.get("examples")
                    .fieldNames()
                    .forEachRemaining(name -> examples.add(new Example(
                            folder.get("folder").textValue(),
                            name,
                            folder.get("path").textValue(),
                            folder.path("many").booleanValue())));
        }
        return examples.stream();
    }

    static Stream<Example> bodies() throws IOException {
        return examples().filter(Example::hasBody);
    }

    static Stream<Example> queries() throws IOException {
        return examples().filter(example -> !example.many());
    }

    @ParameterizedTest
    @MethodSource("bodies")
    void bodyGetsTheStoredReply(Example example) throws IOException {
        String target = example.many() ? example.url() : example.path();
        String type = example.type().orElseThrow().mediaType();
        ValidatableResponse reply = Http.post(target, type, example.body());
        if (reply.extract().contentType().contains("json")
                && !reply.extract().contentType().contains("ndjson")) {
            check(example, reply);
        } else {
            checkRows(example, reply);
        }
    }

    @ParameterizedTest
    @MethodSource("queries")
    void queryGetsTheStoredReply(Example example) throws IOException {
        ValidatableResponse reply = Http.get(example.url());
        if (!example.hasBody()) {
            check(example, reply);
            return;
        }
        Assumptions.assumeFalse(BLESS);
        JsonNode stored = example.stored();
        if (stored.has("errors")) {
            reply.statusCode(stored.get("status").intValue());
            assertThat(Http.json(reply).findValuesAsText("code")).isEqualTo(stored.findValuesAsText("code"));
        } else {
            ValidatableResponse post = Http.post(example.path(), example.body());
            assertThat(reply.extract().asString()).isEqualTo(post.extract().asString());
        }
    }

    /** Clients that cannot send longer addresses exist. */
    @ParameterizedTest
    @MethodSource("examples")
    void queryIsShort(Example example) throws IOException {
        assertThat(example.url()).hasSizeLessThan(1000);
    }

    /** Some generated clients write every list that they know. */
    @Test
    void emptyListIsNone() throws IOException {
        Example example = examples()
                .filter(each -> each.toString().equals("compression-displacement/good"))
                .findFirst()
                .orElseThrow();
        ObjectNode body = (ObjectNode) MAPPER.readTree(example.body());
        ObjectNode machine = (ObjectNode) body.get("machine");
        assertThat(machine.has("flowCoefficients")).isFalse();
        List.of("flowCoefficients", "headCoefficients", "efficiencies").forEach(machine::putArray);
        check(example, Http.post(example.path(), body.toString()));
    }

    @Test
    void everyFileBelongsToAnExample() throws IOException {
        List<Path> known = new ArrayList<>(List.of(ROOT.resolve("index.json")));
        examples().forEach(example -> {
            known.add(example.file(".url"));
            known.add(Files.exists(example.reply(true)) ? example.reply(true) : example.reply(false));
            example.type().ifPresent(type -> known.add(example.file(type.request())));
        });
        try (Stream<Path> files = Files.walk(ROOT)) {
            assertThat(files.filter(Files::isRegularFile)).containsExactlyInAnyOrderElementsOf(known);
        }
    }

    /** Each calculation shows an answer, an answer with a warning, and a refusal. */
    @Test
    void examplesAreWhatTheyAreCalled() throws IOException {
        for (Example example : bodies().toList()) {
            if (example.many()) {
                continue;
            }
            JsonNode reply = example.stored();
            switch (example.name()) {
                case "error", "unfittedRefused" ->
                    assertThat(reply.has("errors")).as(example.toString()).isTrue();
                case "warning" ->
                    assertThat(reply.get("warnings")).as(example.toString()).isNotEmpty();
                case "good" ->
                    assertThat(reply.findValuesAsText("severity"))
                            .as(example.toString())
                            .doesNotContain("caution", "danger");
                default -> assertThat(reply.has("basis")).as(example.toString()).isTrue();
            }
        }
        List<Example> single = bodies().filter(example -> !example.many()).toList();
        assertThat(single.stream().map(Example::operation).distinct().count() * 3)
                .isEqualTo(single.stream()
                        .filter(e -> List.of("good", "warning", "error").contains(e.name()))
                        .count());
    }

    private static void check(Example example, ValidatableResponse reply) throws IOException {
        JsonNode body = Http.json(reply);
        if (BLESS && !same(example, body)) {
            DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
            printer.indentArraysWith(DefaultIndenter.SYSTEM_LINEFEED_INSTANCE);
            Files.writeString(
                    example.file(".response.json"), MAPPER.writer(printer).writeValueAsString(body) + '\n');
        }
        JsonNode stored = example.stored();
        reply.statusCode(stored.has("status") ? stored.get("status").intValue() : 200);
        compare("", body, stored);
    }

    /** Rows of JSON, or of a table, one after the other. */
    private static void checkRows(Example example, ValidatableResponse reply) throws IOException {
        JsonNode rows = rows(example, reply.statusCode(200).extract().asString());
        Path file = example.reply(false);
        if (BLESS && !(Files.exists(file) && equal(rows, rows(example, Files.readString(file))))) {
            Files.writeString(file, reply.extract().asString());
        }
        compare("", rows, rows(example, Files.readString(file)));
    }

    private static JsonNode rows(Example example, String text) throws IOException {
        ArrayNode rows = MAPPER.createArrayNode();
        if (example.type().orElseThrow() == BodyTypes.NDJSON) {
            for (String line : text.split("\n")) {
                rows.add(MAPPER.readTree(line));
            }
            return rows;
        }
        boolean comma = example.url().contains("dec=,");
        for (List<String> row : Csv.read(text, comma ? ';' : ',')) {
            ArrayNode cells = rows.addArray();
            row.forEach(cell -> add(cells, comma ? cell.replace(',', '.') : cell));
        }
        return rows;
    }

    private static void add(ArrayNode cells, String cell) {
        if (cell.matches("-?[0-9.]+(E-?[0-9]+)?")) {
            cells.add(Double.parseDouble(cell));
        } else {
            cells.add(cell);
        }
    }

    /** A reply that differs in last digits only is not worth a change. */
    private static boolean same(Example example, JsonNode body) throws IOException {
        try {
            return equal(body, example.stored());
        } catch (NoSuchFileException | FileNotFoundException absent) {
            return false;
        }
    }

    private static boolean equal(JsonNode actual, JsonNode stored) {
        try {
            compare("", actual, stored);
            return true;
        } catch (AssertionError different) {
            return false;
        }
    }

    private static void compare(String place, JsonNode actual, JsonNode stored) {
        if (stored instanceof ObjectNode object) {
            assertThat(names(actual)).as(place).isEqualTo(names(stored));
            object.fieldNames()
                    .forEachRemaining(name -> compare(place + '/' + name, actual.get(name), stored.get(name)));
        } else if (stored instanceof ArrayNode array) {
            assertThat(actual.size()).as(place).isEqualTo(array.size());
            for (int i = 0; i < array.size(); i++) {
                compare(place + '/' + i, actual.get(i), array.get(i));
            }
        } else if (stored.isNumber()) {
            double expected = stored.doubleValue();
            assertThat(Math.abs(actual.doubleValue() - expected))
                    .as(place + ": " + actual + " instead of " + stored)
                    .isLessThanOrEqualTo(PROMISE * Math.abs(expected));
        } else if (!place.endsWith("/engineVersion")) {
            assertThat(actual).as(place).isEqualTo(stored);
        }
    }

    private static List<String> names(JsonNode object) {
        List<String> names = new ArrayList<>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }
}
