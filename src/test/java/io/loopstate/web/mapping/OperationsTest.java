package io.loopstate.web.mapping;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every calculation of the contract can be asked for by name, and nothing else. */
class OperationsTest {
    /** A table's parameters stand in one query with the inputs that hold for all of its rows. */
    @Test
    void noInputIsCalledAsAParameterOfTables() {
        List<String> own = List.of(
                "operation",
                "columns",
                "pass",
                "summary",
                "format",
                "pick",
                "errors",
                "digits",
                "sep",
                "bom",
                "key",
                "_");
        Operations.all()
                .forEach(operation -> assertThat(InputColumn.names(operation)).doesNotContainAnyElementsOf(own));
    }

    @Test
    void namesAreThePathsOfTheContract() throws IOException {
        JsonNode paths = new ObjectMapper(new YAMLFactory())
                .readTree(Path.of("openapi/openapi.yaml").toFile())
                .get("paths");
        List<String> calculations = new ArrayList<>();
        paths.fields().forEachRemaining(entry -> {
            if (entry.getValue().has("post") && entry.getValue().has("get")) {
                calculations.add(entry.getKey().substring("/v1/".length()));
            }
        });
        assertThat(calculations).isNotEmpty();
        assertThat(Operations.names()).containsExactlyInAnyOrderElementsOf(calculations);
    }
}
