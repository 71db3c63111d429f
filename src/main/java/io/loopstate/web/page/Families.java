package io.loopstate.web.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.web.template.Templates;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/** What the service answers, by family, with links into the contract and to an example. */
public final class Families {
    /**
     * A family of operations.
     *
     * @param title of the family
     * @param operations its members
     */
    public record Family(String title, List<Operation> operations) {}

    /**
     * An operation.
     *
     * @param path its route
     * @param what it answers
     * @param contract address of its description
     * @param example address of an answer; empty where it takes a body only
     */
    public record Operation(String path, String what, String contract, String example) {}

    private Families() {}

    /** All families, as the resource lists them. */
    static List<Family> bundled() {
        try {
            List<Family> families = new ArrayList<>();
            for (JsonNode family : new ObjectMapper().readTree(Templates.text("/pages/families.json"))) {
                List<Operation> operations = new ArrayList<>();
                family.get("operations").forEach(operation -> operations.add(operation(family, operation)));
                families.add(new Family(family.get("title").asText(), List.copyOf(operations)));
            }
            return List.copyOf(families);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Operation operation(JsonNode family, JsonNode operation) {
        String tag = operation.path("tag").asText(family.get("tag").asText()).replace(" ", "%20");
        String folder = operation.path("example").asText();
        return new Operation(
                operation.get("path").asText(),
                operation.get("what").asText(),
                "/q/swagger-ui/#/" + tag + '/' + operation.get("id").asText(),
                folder.isEmpty()
                        ? ""
                        : Templates.text("/examples/" + folder + "/good.url").strip());
    }
}
