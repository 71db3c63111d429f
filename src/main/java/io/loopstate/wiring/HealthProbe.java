package io.loopstate.wiring;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;

/** Asks the service on this machine whether it is ready: an image without a shell has no other way to tell. */
final class HealthProbe {
    private static final Duration PATIENCE = Duration.ofSeconds(2);

    private HealthProbe() {}

    /** 0 if the service is ready, 1 if not, as exit codes of health commands are. */
    static int run() {
        String port = System.getenv().getOrDefault("QUARKUS_HTTP_PORT", "8080");
        return ready(URI.create("http://127.0.0.1:" + port + "/readyz")) ? 0 : 1;
    }

    static boolean ready(URI address) {
        HttpClient client = HttpClient.newBuilder().connectTimeout(PATIENCE).build();
        HttpRequest request = HttpRequest.newBuilder(address).timeout(PATIENCE).build();
        try {
            return client.send(request, HttpResponse.BodyHandlers.discarding()).statusCode() == 200;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
