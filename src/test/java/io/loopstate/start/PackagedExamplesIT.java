package io.loopstate.start;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
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

/**
 * Every example, again and again, on the package as it is shipped. An ahead-of-time cache that is recorded meanwhile holds the
 * classes of every calculation, and how often their methods run.
 */
@QuarkusIntegrationTest
class PackagedExamplesIT {
    private static final Path ROOT = Path.of("examples", "requests");
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final int ROUNDS = Integer.getInteger("examples.rounds", 1);

    @TestHTTPResource
    URI server;

    private final HttpClient client =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

    /** A request and the status that it gets. */
    private record Example(HttpRequest request, int status) {}

    @Test
    void everyExampleIsAnsweredAsOften() throws IOException, InterruptedException {
        List<Example> examples = examples();
        assertThat(examples).hasSizeGreaterThan(100);
        for (int round = 0; round < ROUNDS; round++) {
            for (Example example : examples) {
                int status = client.send(example.request(), HttpResponse.BodyHandlers.discarding())
                        .statusCode();
                assertThat(status).as(example.request().uri().toString()).isEqualTo(example.status());
            }
        }
    }

    private List<Example> examples() throws IOException {
        List<Example> examples = new ArrayList<>();
        for (JsonNode operation : MAPPER.readTree(ROOT.resolve("index.json").toFile())) {
            try (Stream<Path> files =
                    Files.list(ROOT.resolve(operation.get("folder").textValue()))) {
                for (Path file : files.sorted().toList()) {
                    if (file.toString().endsWith(".url")) {
                        examples.add(example(file, Files.readString(file).strip(), HttpRequest.Builder::GET));
                    } else if (file.toString().endsWith(".request.json")) {
                        HttpRequest.BodyPublisher body = HttpRequest.BodyPublishers.ofFile(file);
                        examples.add(example(
                                file,
                                operation.get("path").textValue(),
                                r -> r.header("Content-Type", "application/json")
                                        .POST(body)));
                    }
                }
            }
        }
        return examples;
    }

    private Example example(Path file, String target, UnaryOperator<HttpRequest.Builder> method) throws IOException {
        String name = file.getFileName().toString();
        JsonNode reply = MAPPER.readTree(file.resolveSibling(name.substring(0, name.indexOf('.')) + ".response.json")
                .toFile());
        int status = reply.has("errors") ? reply.get("status").intValue() : 200;
        return new Example(
                method.apply(HttpRequest.newBuilder(server.resolve(target))).build(), status);
    }
}
