package io.loopstate.start;

import static org.assertj.core.api.Assertions.assertThat;

import io.loopstate.testing.RawHttp;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusIntegrationTest;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The package as it is shipped, in its own process. Also what an ahead-of-time cache is recorded from. */
@QuarkusIntegrationTest
class PackagedServiceIT {
    @TestHTTPResource
    URI server;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/",
                "/front/front.css",
                "/v1/version",
                "/livez",
                "/readyz",
                "/startedz",
                "/metrics",
                "/q/openapi",
                "/q/swagger-ui/"
            })
    void operationalRouteAnswers(String path) {
        assertThat(RawHttp.send(server, "GET", path).status()).isEqualTo(200);
    }

    /** The platform answers such a URL without a body unless the entry point has its say. */
    @Test
    void brokenEscapeIsExplained() {
        RawHttp.Reply reply = RawHttp.send(server, "GET", "/v1/version?text=70%");
        assertThat(reply.status()).isEqualTo(400);
        assertThat(reply.body()).contains("\"code\":\"invalid-escape\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/q/openapi", "/q/openapi.yaml", "/q/openapi?format=yaml"})
    void contractIsTheOneUnderVersionControl(String path) throws IOException {
        String contract = Files.readString(Path.of("openapi", "openapi.yaml"));
        assertThat(RawHttp.send(server, "GET", path).body()).isEqualTo(contract);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/q/openapi.json", "/q/openapi?format=json"})
    void contractIsServedAsJsonToo(String path) {
        RawHttp.Reply reply = RawHttp.send(server, "GET", path);
        assertThat(reply.header("Content-Type")).startsWith("application/json");
        assertThat(reply.body()).startsWith("{").contains("\"openapi\" : \"3.1.0\"");
    }

    @Test
    void bodiesAreRead() {
        RawHttp.Reply reply = RawHttp.sendInChunks(server, "/v1/nothing", "{}", 1);
        assertThat(reply.status()).isEqualTo(404);
    }

    @Test
    void testRoutesAreNotShipped() {
        assertThat(RawHttp.send(server, "GET", "/testing/query?text=a").status())
                .isEqualTo(404);
    }
}
