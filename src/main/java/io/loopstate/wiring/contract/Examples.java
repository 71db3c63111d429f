package io.loopstate.wiring.contract;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.PathItem;
import org.eclipse.microprofile.openapi.models.PathItem.HttpMethod;

/**
 * The requests under {@code examples/requests}: bodies become examples of the POST, addresses stand in the description of the
 * GET, or where a body holds many calculations with the example. A body that is refused since it does not keep the contract,
 * {@code unreadable} in the index, is no example of it.
 */
final class Examples {
    private static final String FOLDER = "/examples/";
    private static final String JSON = "application/json";
    private static final ObjectMapper MAPPER = new ObjectMapper();

    /** Endings of the files of bodies by media type. */
    private static final Map<String, String> BODIES =
            Map.of(JSON, ".request.json", "application/x-ndjson", ".request.ndjson", "text/csv", ".request.csv");

    private final JsonNode index;

    private Examples(JsonNode index) {
        this.index = index;
    }

    /** The examples on the class path. */
    static Examples bundled() {
        return new Examples(json(text("index.json").orElseThrow()));
    }

    void complete(String path, PathItem item) {
        for (JsonNode folder : index) {
            if (folder.get("path").textValue().equals(path)) {
                boolean many = folder.path("many").booleanValue();
                List<String> unreadable = folder.path("unreadable")
                        .valueStream()
                        .map(JsonNode::textValue)
                        .toList();
                folder.get("examples").fields().forEachRemaining(example -> {
                    String file = folder.get("folder").textValue() + '/' + example.getKey();
                    String summary = example.getValue().textValue();
                    if (!unreadable.contains(example.getKey())) {
                        body(item, file, example.getKey(), summary, many);
                    }
                    address(item, file, summary);
                });
            }
        }
    }

    private static void body(PathItem item, String file, String name, String summary, boolean many) {
        Operation post = item.getOperations().get(HttpMethod.POST);
        if (post == null) {
            return;
        }
        BODIES.forEach((type, ending) -> text(file + ending)
                .ifPresent(body -> post.getRequestBody()
                        .getContent()
                        .getMediaType(type)
                        .addExample(
                                name,
                                OASFactory.createExample()
                                        .summary(summary)
                                        .description(many && url(file).contains("?") ? '`' + url(file) + '`' : null)
                                        .value(
                                                type.equals(JSON)
                                                        ? MAPPER.convertValue(json(body), Object.class)
                                                        : body))));
    }

    private static void address(PathItem item, String file, String summary) {
        Operation get = item.getOperations().get(HttpMethod.GET);
        if (get != null) {
            String before = get.getDescription() == null ? "" : get.getDescription() + "\n\n";
            get.setDescription(before + summary + ": `" + url(file) + "`");
        }
    }

    private static String url(String file) {
        return text(file + ".url")
                .orElseThrow(() -> new IllegalStateException("no address of example " + file))
                .strip();
    }

    private static JsonNode json(String text) {
        try {
            return MAPPER.readTree(text);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The text of a file, empty where there is none. */
    private static Optional<String> text(String file) {
        try (InputStream in = Examples.class.getResourceAsStream(FOLDER + file)) {
            return in == null ? Optional.empty() : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
