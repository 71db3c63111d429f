package io.loopstate.wiring.guard;

import io.quarkus.vertx.http.HttpServerOptionsCustomizer;
import io.vertx.core.http.HttpServerOptions;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.concurrent.TimeUnit;

/** Limits of a connection, for every port. */
@ApplicationScoped
public class Connections implements HttpServerOptionsCustomizer {
    private final Limits limits;

    /** Called by the container. */
    @Inject
    public Connections(Limits limits) {
        this.limits = limits;
    }

    @Override
    public void customizeHttpServer(HttpServerOptions options) {
        limit(options);
    }

    @Override
    public void customizeHttpsServer(HttpServerOptions options) {
        limit(options);
    }

    private void limit(HttpServerOptions options) {
        int idle = Math.toIntExact(limits.idleTimeout().toMillis());
        options.setIdleTimeoutUnit(TimeUnit.MILLISECONDS)
                .setIdleTimeout(idle)
                // what trickles in is not idle, but nothing is answered to it either
                .setWriteIdleTimeout(idle)
                .setMaxInitialLineLength(Math.toIntExact(limits.urlSize().asLongValue()))
                .setMaxHeaderSize(Math.toIntExact(limits.headerSize().asLongValue()));
    }
}
