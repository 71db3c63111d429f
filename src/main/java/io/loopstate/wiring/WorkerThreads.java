package io.loopstate.wiring;

import io.smallrye.config.SmallRyeConfigBuilder;
import io.smallrye.config.SmallRyeConfigBuilderCustomizer;

/**
 * Says how many worker threads there are where nobody else does: calculations keep a processor busy, so that more threads than a few
 * for each processor make all of them slower, and take the turns of the event loops, which then refuse too late.
 */
public final class WorkerThreads implements SmallRyeConfigBuilderCustomizer {
    /** So that one long calculation does not keep the others of its processor waiting. */
    private static final int FOR_EACH_PROCESSOR = 4;

    @Override
    public void configBuilder(SmallRyeConfigBuilder builder) {
        int threads = FOR_EACH_PROCESSOR * Runtime.getRuntime().availableProcessors();
        builder.withDefaultValue("quarkus.thread-pool.max-threads", Integer.toString(threads));
    }
}
