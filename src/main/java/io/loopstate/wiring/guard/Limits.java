package io.loopstate.wiring.guard;

import io.quarkus.runtime.configuration.MemorySize;
import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithDefault;
import java.time.Duration;

/**
 * How much of everything one client, one request and all of them together may take. Every value can be set when the service
 * starts, as a property ({@code loopstate.limits.deadline}) or a variable ({@code LOOPSTATE_LIMITS_DEADLINE}).
 *
 * <p>What a batch, a stream, a table and a sweep may hold is in {@link io.loopstate.wiring.batch.BatchSettings}. Beside
 * these: at most 32 levels of nesting and 100 digits in JSON, 500 rows in a table, 64 compositions of clients' own kept, all
 * of them constants since they are part of what the service promises.
 */
@ConfigMapping(prefix = "loopstate.limits")
public interface Limits {

    /** Longest body of a calculation; longer ones are refused with 413. */
    @WithDefault("1M")
    MemorySize bodySize();

    /** Longest body of a request with many rows, {@code /v1/batch} and {@code /v1/verify}. */
    @WithDefault("8M")
    MemorySize batchBodySize();

    /** How long the body of a request may take to arrive, from the end of its headers on; 408 after that. */
    @WithDefault("10s")
    Duration bodyTimeout();

    /** How long a calculation may take, from the arrival of the request on; cancelled with 503 after that. */
    @WithDefault("5s")
    Duration deadline();

    /** The same for a request with many rows. */
    @WithDefault("30s")
    Duration batchDeadline();

    /** Most requests under way at once, without probes and metrics; further ones get 503 and when to come back. */
    @WithDefault("256")
    int concurrentRequests();

    /** Most requests with many rows under way at once. */
    @WithDefault("4")
    int concurrentBatches();

    /**
     * How far an event loop may be behind before it refuses requests with 503 instead of answering them too late: how long
     * those that have arrived have been waiting, about.
     */
    @WithDefault("1s")
    Duration waiting();

    /** Most connections; further ones are closed at once. */
    @WithDefault("4096")
    int connections();

    /**
     * After which a connection is closed on which nothing was answered: idle, half open, or with headers that arrive byte by
     * byte. Longer than the 60 s for which common proxies keep connections.
     */
    @WithDefault("75s")
    Duration idleTimeout();

    /** Longest line of method and URL; 414 after that. */
    @WithDefault("8K")
    MemorySize urlSize();

    /** All headers of a request together; 431 after that. */
    @WithDefault("16K")
    MemorySize headerSize();
}
