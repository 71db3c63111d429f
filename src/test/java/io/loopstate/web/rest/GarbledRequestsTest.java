package io.loopstate.web.rest;

import static org.assertj.core.api.Assertions.assertThat;

import io.loopstate.testing.Garble;
import io.loopstate.testing.Http;
import io.loopstate.testing.RawHttp;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** The requests of the examples with characters changed, lost and doubled: each is answered or refused, none breaks anything. */
@QuarkusTest
@Timeout(120)
class GarbledRequestsTest {
    private static final Path EXAMPLES = Path.of("examples", "requests");
    private static final int TRIES = 400;
    private static final String PIECES = "{}[]\",:.-+eE0123456789%&=?_ /\\abcdefgRTpsi°é\u0000\t";

    @TestHTTPResource
    URI server;

    @Test
    void garbledBodiesAreAnsweredOrRefused() throws IOException {
        List<Path> files = files(name -> name.endsWith(".request.json"));
        Random random = new Random(20_260_101);
        for (int i = 0; i < TRIES; i++) {
            Path file = files.get(random.nextInt(files.size()));
            String body = Garble.of(Files.readString(file), PIECES, random);
            String target = Files.readString(Path.of(file.toString().replace(".request.json", ".url")))
                    .strip()
                    .split("\\?")[0];
            Response reply = Http.post(target, body).extract().response();
            expect(reply.statusCode(), reply.contentType(), reply.asString(), body);
        }
    }

    @Test
    void memberWithoutANameIsUnknown() {
        String body = "{\"refrigerant\":\"R-134a\",\"temperature\":{\"\":1,\"value\":20,\"unit\":\"degC\"}}";
        Response reply = Http.post("/v1/properties/saturation", body).extract().response();
        assertThat(reply.statusCode()).isEqualTo(400);
        assertThat(reply.asString()).contains("unknown-name", "#/temperature/");
    }

    @Test
    void garbledQueriesAreAnsweredOrRefused() throws IOException {
        List<Path> files = files(name -> name.endsWith(".url")).stream()
                .filter(file -> !RoutesTest.WITHOUT_GET.contains(
                        file.getParent().getFileName().toString()))
                .toList();
        Random random = new Random(20_260_102);
        for (int i = 0; i < TRIES; i++) {
            String[] parts = Files.readString(files.get(random.nextInt(files.size())))
                    .strip()
                    .split("\\?", 2);
            String query = parts.length == 1 ? "" : Garble.of(parts[1], PIECES, random);
            // A space or a control character would end the request line, which is no longer a request.
            String target = parts[0] + '?' + query.replaceAll("[^\\x21-\\xFF]", "");
            RawHttp.Reply reply = RawHttp.send(server, "GET", target);
            expect(reply.status(), reply.header("Content-Type"), reply.body(), target);
        }
    }

    private static void expect(int status, String contentType, String body, String request) {
        assertThat(status).as(request).isIn(200, 400, 404, 422);
        assertThat(contentType).as(request).startsWith(status == 200 ? "application/json" : "application/problem+json");
        assertThat(body).as(request).doesNotContain(":NaN", "Exception", "fasterxml", "\tat ");
    }

    private static List<Path> files(Predicate<String> name) throws IOException {
        try (Stream<Path> files = Files.walk(EXAMPLES)) {
            return files.filter(file -> name.test(file.toString())).sorted().toList();
        }
    }
}
