package io.loopstate.start;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.testing.BodyTypes;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusIntegrationTest;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every example on the package as it is shipped; an ahead-of-time cache that is recorded meanwhile holds the classes of all. */
@QuarkusIntegrationTest
class PackagedExamplesIT {
    private static final Path ROOT = Path.of("examples", "requests");
    private static final ObjectMapper MAPPER = new ObjectMapper();

    @TestHTTPResource
    URI server;

    private final HttpClient client =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

    /** A request and the status that it gets. */
    private record Example(HttpRequest request, int status) {}

    @Test
    void everyExampleIsAnswered() throws IOException, InterruptedException {
        List<Example> examples = examples();
        assertThat(examples).hasSizeGreaterThan(100);
        for (Example example : examples) {
            int status = client.send(example.request(), HttpResponse.BodyHandlers.discarding())
                    .statusCode();
            assertThat(status).as(example.request().uri().toString()).isEqualTo(example.status());
        }
    }

    private List<Example> examples() throws IOException {
        List<Example> examples = new ArrayList<>();
        for (JsonNode operation : MAPPER.readTree(ROOT.resolve("index.json").toFile())) {
            // Many calculations in one request are no query; the address is that of the body then.
            boolean many = operation.path("many").booleanValue();
            try (Stream<Path> files =
                    Files.list(ROOT.resolve(operation.get("folder").textValue()))) {
                for (Path file : files.sorted().toList()) {
                    if (file.toString().endsWith(".url") && !many) {
                        examples.add(example(file, url(file), HttpRequest.Builder::GET));
                    }
                    for (BodyTypes type : BodyTypes.all()) {
                        if (file.toString().endsWith(type.request())) {
                            String target = many
                                    ? url(sibling(file, ".url"))
                                    : operation.get("path").textValue();
                            HttpRequest.BodyPublisher body = HttpRequest.BodyPublishers.ofFile(file);
                            examples.add(example(
                                    file,
                                    target,
                                    request -> request.header("Content-Type", type.mediaType())
                                            .POST(body)));
                        }
                    }
                }
            }
        }
        return examples;
    }

    private static String url(Path file) throws IOException {
        return Files.readString(file).strip();
    }

    /** The file of the same example with another ending. */
    private static Path sibling(Path file, String ending) {
        String name = file.getFileName().toString();
        return file.resolveSibling(name.substring(0, name.indexOf('.')) + ending);
    }

    private Example example(Path file, String target, UnaryOperator<HttpRequest.Builder> method) throws IOException {
        Path stored = sibling(file, ".response.json");
        // Rows of JSON and tables are stored as they are; they are answers in any case.
        JsonNode reply = Files.exists(stored) ? MAPPER.readTree(stored.toFile()) : MAPPER.createObjectNode();
        int status = reply.has("errors") ? reply.get("status").intValue() : 200;
        return new Example(
                method.apply(HttpRequest.newBuilder(server.resolve(target))).build(), status);
    }
}
