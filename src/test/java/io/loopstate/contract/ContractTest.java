package io.loopstate.contract;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion.VersionFlag;
import io.loopstate.contract.ExamplesTest.Example;
import io.loopstate.testing.BodyTypes;
import io.loopstate.web.form.LayoutReader;
import io.loopstate.web.mapping.Contract;
import io.loopstate.web.mapping.Pictures;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The contract keeps what client generators need, and requests and replies keep the contract. */
class ContractTest {
    private static final Path FILE = Path.of("openapi", "openapi.yaml");
    private static final String BASE = "https://loopstate.example/contract";
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final JsonNode CONTRACT = read();
    private static final JsonSchemaFactory SCHEMAS = JsonSchemaFactory.getInstance(
            VersionFlag.V202012,
            builder -> builder.schemaLoaders(loaders -> loaders.schemas(Map.of(BASE, CONTRACT.toString()))));

    private static JsonNode read() {
        try {
            return new ObjectMapper(new YAMLFactory()).readTree(FILE.toFile());
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** One operation of the contract. */
    record Call(String path, String method, JsonNode operation) {
        @Override
        public String toString() {
            return method + ' ' + path;
        }
    }

    static Stream<Call> operations() {
        List<Call> calls = new ArrayList<>();
        CONTRACT.get("paths")
                .fields()
                .forEachRemaining(path -> path.getValue()
                        .fields()
                        .forEachRemaining(
                                method -> calls.add(new Call(path.getKey(), method.getKey(), method.getValue()))));
        return calls.stream();
    }

    static Stream<Call> calculations() {
        return operations()
                .filter(call -> call.method().equals("post"))
                .filter(call -> CONTRACT.get("paths").get(call.path()).has("get"));
    }

    static Stream<Example> examples() throws IOException {
        return ExamplesTest.examples().filter(Example::inJson);
    }

    @ParameterizedTest
    @MethodSource("operations")
    void operationIsDescribed(Call call) {
        JsonNode operation = call.operation();
        assertThat(operation.path("operationId").asText()).matches("[a-z][A-Za-z]+");
        assertThat(operation.path("summary").asText()).isNotBlank();
        assertThat(operation.path("description").asText()).isNotBlank();
        assertThat(operation.path("tags")).isNotEmpty();
        assertThat(operation.path("responses").has("200")).isTrue();
    }

    @Test
    void operationIdsAreUnique() {
        assertThat(operations().map(call -> call.operation().get("operationId").textValue()))
                .doesNotHaveDuplicates();
    }

    /** What generators are known to choke on, and what collapses to the same name in their languages. */
    @Test
    void nothingInTheContractBreaksGenerators() {
        assertThat(CONTRACT.findValues("oneOf")).isEmpty();
        assertThat(CONTRACT.findValues("anyOf")).isEmpty();
        assertThat(CONTRACT.findValues("discriminator")).isEmpty();
        assertThat(CONTRACT.findValues("prefixItems")).isEmpty();
        assertThat(CONTRACT.get("components").findValues("type")).noneMatch(JsonNode::isArray);
        for (JsonNode holder : CONTRACT.get("components").findParents("$ref")) {
            assertThat(holder.has("type")).as(holder.toString()).isFalse();
        }
        for (JsonNode schema : CONTRACT.findValues("schema")) {
            assertThat(schema.has("type") || schema.has("$ref"))
                    .as(schema.toString())
                    .isTrue();
        }
        for (JsonNode values : CONTRACT.findValues("enum")) {
            values.forEach(value -> assertThat(value.textValue()).matches("[A-Za-z][A-Za-z0-9_]*"));
        }
    }

    /** Clients made from the contract send defaults as if they had been given, which some calculations refuse. */
    @Test
    void defaultsAreToldInWords() {
        assertThat(CONTRACT.findParents("default")).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("operations")
    void examplesInTheContractKeepIt(Call call) {
        JsonNode content = call.operation().at("/requestBody/content/application~1json");
        JsonNode schema = content.path("schema");
        boolean many = schema.has("items");
        for (JsonNode example : content.path("examples")) {
            JsonNode value = example.get("value");
            for (JsonNode one : many ? value : List.of(value)) {
                assertThat(schema(reference(many ? schema.get("items") : schema))
                                .validate(one))
                        .isEmpty();
            }
        }
    }

    @Test
    void everyKindOfQuantityInUseHasItsSchema() {
        for (Contract.Kind kind : Contract.kinds()) {
            if (!CONTRACT.at("/components/schemas").has(kind.schema())) {
                assertThat(CONTRACT.toString()).doesNotContain("schemas/" + kind.schema() + '"');
                continue;
            }
            JsonNode units = CONTRACT.at("/components/schemas/" + kind.schema() + "/properties/unit/enum");
            List<String> names = new ArrayList<>();
            units.forEach(unit -> names.add(unit.textValue()));
            assertThat(names).as(kind.schema()).isEqualTo(kind.units());
        }
    }

    @Test
    void everyReferenceLeadsSomewhere() {
        Set<String> references = new TreeSet<>(CONTRACT.findValuesAsText("$ref"));
        assertThat(references)
                .allSatisfy(reference -> assertThat(
                                CONTRACT.at(reference.substring(1)).isMissingNode())
                        .as(reference)
                        .isFalse());
    }

    @Test
    void everySchemaIsUsed() {
        Set<String> references = new TreeSet<>(CONTRACT.findValuesAsText("$ref"));
        CONTRACT.at("/components/schemas")
                .fieldNames()
                .forEachRemaining(name -> assertThat(references).contains("#/components/schemas/" + name));
    }

    /** The same names in the query as in the body, flattened. */
    @ParameterizedTest
    @MethodSource("calculations")
    void parametersOfTheQueryAreThoseThatAreRead(Call post) {
        String schema = reference(post.operation().at("/requestBody/content/application~1json/schema"));
        JsonNode get = CONTRACT.get("paths").get(post.path()).get("get");
        List<String> parameters = new ArrayList<>();
        get.get("parameters").forEach(parameter -> {
            JsonNode whole = parameter.has("$ref")
                    ? CONTRACT.at(parameter.get("$ref").textValue().substring(1))
                    : parameter;
            parameters.add(whole.get("name").textValue());
            assertThat(whole.get("in").textValue()).isEqualTo("query");
            assertThat(whole.has("schema")).isTrue();
        });
        List<String> read = new ArrayList<>(Contract.parameters(schema));
        read.addAll(LayoutReader.NAMES);
        if (Pictures.several(schema)) {
            read.add(Pictures.CHOICE);
        }
        assertThat(parameters).isEqualTo(read);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void replyKeepsTheContract(Example example) throws IOException {
        JsonNode reply = example.stored();
        String schema = reply.has("errors")
                ? "Problem"
                : reference(CONTRACT.get("paths")
                        .get(example.path())
                        .at((example.many() ? "/post" : "/get") + "/responses/200/content/application~1json/schema"));
        assertThat(schema(schema).validate(reply)).isEmpty();
    }

    /** Text for a quantity is accepted beyond the schema, so requests that use it are left out. */
    @ParameterizedTest
    @MethodSource("examples")
    void requestKeepsTheContract(Example example) throws IOException {
        if (example.hasBody() && !example.name().equals("error")) {
            JsonNode body = MAPPER.readTree(Files.readString(example.file(".request.json")));
            JsonNode post = CONTRACT.get("paths").get(example.path()).get("post");
            JsonNode whole = post.at("/requestBody/content/application~1json/schema");
            String name = reference(whole.has("items") ? whole.get("items") : whole);
            for (JsonNode one : whole.has("items") ? body : List.of(body)) {
                assertThat(schema(name).validate(one)).isEmpty();
            }
        }
    }

    @Test
    void rowsOfAStreamKeepTheContract() throws IOException {
        List<Example> streams = ExamplesTest.examples()
                .filter(example -> example.type().equals(Optional.of(BodyTypes.NDJSON)))
                .toList();
        assertThat(streams).isNotEmpty();
        for (Example stream : streams) {
            for (String line : Files.readString(stream.reply(false)).split("\n")) {
                JsonNode row = MAPPER.readTree(line);
                JsonNode checked = row.has("summary") ? row.get("summary") : row;
                assertThat(schema(row.has("summary") ? "BatchSummary" : "BatchAnswer")
                                .validate(checked))
                        .isEmpty();
            }
        }
    }

    private static JsonSchema schema(String name) {
        return SCHEMAS.getSchema(SchemaLocation.of(BASE + "#/components/schemas/" + name));
    }

    private static String reference(JsonNode schema) {
        String reference = schema.get("$ref").textValue();
        return reference.substring(reference.lastIndexOf('/') + 1);
    }
}
