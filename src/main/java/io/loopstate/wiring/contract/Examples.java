package io.loopstate.wiring.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.PathItem;
import org.eclipse.microprofile.openapi.models.PathItem.HttpMethod;
import org.eclipse.microprofile.openapi.models.media.MediaType;

/**
 * The requests under {@code examples/requests}: bodies become examples of the POST, addresses stand in the description of the
 * GET.
 */
final class Examples {
    private static final String FOLDER = "/examples/";
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final JsonNode index;

    private Examples(JsonNode index) {
        this.index = index;
    }

    /** The examples on the class path. */
    static Examples bundled() {
        return new Examples(json("index.json"));
    }

    void complete(String path, PathItem item) {
        for (JsonNode folder : index) {
            if (folder.get("path").textValue().equals(path)) {
                folder.get("examples")
                        .fields()
                        .forEachRemaining(example -> add(
                                item,
                                folder.get("folder").textValue() + '/' + example.getKey(),
                                example.getKey(),
                                example.getValue().textValue()));
            }
        }
    }

    private static void add(PathItem item, String file, String name, String summary) {
        Operation post = item.getOperations().get(HttpMethod.POST);
        if (post != null) {
            MediaType media = post.getRequestBody().getContent().getMediaType("application/json");
            media.addExample(
                    name,
                    OASFactory.createExample()
                            .summary(summary)
                            .value(MAPPER.convertValue(json(file + ".request.json"), Object.class)));
        }
        Operation get = item.getOperations().get(HttpMethod.GET);
        if (get == null) {
            return;
        }
        String before = get.getDescription() == null ? "" : get.getDescription() + "\n\n";
        get.setDescription(before + summary + ": `" + text(file + ".url").strip() + "`");
    }

    private static JsonNode json(String file) {
        try {
            return MAPPER.readTree(text(file));
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }

    private static String text(String file) {
        try (InputStream in = Examples.class.getResourceAsStream(FOLDER + file)) {
            if (in == null) {
                throw new IllegalStateException("no example " + file);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
