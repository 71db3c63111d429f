package io.loopstate.testing;

import jakarta.ws.rs.container.ContainerResponseContext;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/** Tells in a header on which kind of thread a reply was made; in tests only. */
public final class ThreadHeader {
    /** Name of the header; its value is the name of the thread. */
    public static final String NAME = "Test-Thread";

    /** Adds the header. */
    @ServerResponseFilter
    public void add(ContainerResponseContext response) {
        response.getHeaders().putSingle(NAME, Thread.currentThread().getName());
    }
}
