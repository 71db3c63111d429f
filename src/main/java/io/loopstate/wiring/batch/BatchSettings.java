package io.loopstate.wiring.batch;

import io.quarkus.runtime.configuration.MemorySize;
import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithDefault;
import java.util.OptionalInt;

/** Limits of requests with many rows. */
@ConfigMapping(prefix = "loopstate.batch")
public interface BatchSettings {

    /** Most rows of a JSON array. */
    @WithDefault("1000")
    int arrayRows();

    /** Most points of a sweep. */
    @WithDefault("1000")
    int sweepPoints();

    /** Most values of all points of a sweep together. */
    @WithDefault("20000")
    int sweepValues();

    /** Most columns of a table that is sent. */
    @WithDefault("500")
    int tableColumns();

    /** Most rows of a stream, the head of a table included; those beyond are not answered, which the summary says. */
    @WithDefault("1000000")
    int streamRows();

    /** Longest row of a stream; longer ones are refused, the others are not. */
    @WithDefault("64K")
    MemorySize rowSize();

    /** Streams at the same time; further ones are refused with 503. */
    @WithDefault("8")
    int streams();

    /** Rows of one request that are under way: begun, or answered and not sent. */
    @WithDefault("128")
    int window();

    /** Answers of one stream that wait for the reader; no further row is begun beyond. */
    @WithDefault("2M")
    MemorySize waitingAnswers();

    /** Threads that answer rows, for all streams together; as many as there are processors where not set. */
    OptionalInt threads();
}
