package io.loopstate.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import org.junit.jupiter.api.Test;

@QuarkusTest
class HealthProbeTest {
    @TestHTTPResource("/readyz")
    URI ready;

    @TestHTTPResource("/v1/nothing")
    URI wrong;

    @Test
    void onlyAReadyServiceIsReady() throws IOException {
        assertThat(HealthProbe.ready(ready)).isTrue();
        assertThat(HealthProbe.ready(wrong)).isFalse();
        int free;
        try (ServerSocket socket = new ServerSocket(0)) {
            free = socket.getLocalPort();
        }
        assertThat(HealthProbe.ready(URI.create("http://127.0.0.1:" + free + "/readyz")))
                .isFalse();
    }
}
