package io.loopstate.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.net.URI;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Random requests against the running service: none ends in a defect, takes too long, holds a number that is none or tells of the
 * inside; and the heap does not grow.
 */
@QuarkusTest
class FuzzedRequestsTest {
    private static final int FEWEST = 10_000;
    private static final int CONNECTIONS = 4;
    private static final long SECOND = 1_000_000_000;
    private static final long MEGABYTE = 1 << 20;
    private static final long GROWTH = 48 * MEGABYTE;

    @TestHTTPResource
    URI server;

    /** In every build, with patience for a busy machine. */
    @Test
    void some() throws InterruptedException {
        run(FEWEST, 1, 10 * SECOND);
    }

    /** With a seed of its own, and no reply later than a second. */
    @Test
    @Tag("fuzz")
    void many() throws InterruptedException {
        run(Integer.getInteger("fuzz.requests", FEWEST), Long.getLong("fuzz.seed", 1L), SECOND);
    }

    /** The first half makes what is kept: lines of refrigerants, a bounded number of compositions. */
    private void run(int requests, long seed, long longest) throws InterruptedException {
        RequestRun run = new RequestRun(server, longest);
        long begin = System.nanoTime();
        run.run(seed, requests / 2, CONNECTIONS);
        long before = used();
        run.run(seed + CONNECTIONS, requests - requests / 2, CONNECTIONS);
        long after = used();
        System.out.printf(
                "%s, %d s, heap %d MB, then %d MB%n",
                run, (System.nanoTime() - begin) / SECOND, before / MEGABYTE, after / MEGABYTE);
        assertThat(run.findings()).isEmpty();
        // Each half is divided between the connections, and what is left over is not sent.
        assertThat(run.requests()).isGreaterThanOrEqualTo(requests - 2L * CONNECTIONS);
        assertThat(run.answered(200)).isBetween(requests / 50L, requests * 49L / 50);
        assertThat(after - before).isLessThan(GROWTH);
    }

    private static long used() throws InterruptedException {
        for (int i = 0; i < 3; i++) {
            System.gc();
            Thread.sleep(200);
        }
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory();
    }
}
