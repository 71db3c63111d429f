package io.loopstate.load;

import static org.assertj.core.api.Assertions.assertThat;

import io.loopstate.testing.Programs;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The packaged service, with the heap of its deployment, under requests of every kind at 80 % of what it can do, for a long time: a
 * line for each interval with the heap after a collection, file handles, resident memory and latencies. What is asserted is that
 * every request is answered and that heap and handles do not grow; how the latencies drift is printed.
 */
@Tag("soak")
class SoakIT {
    private static final double MINUTES = Double.parseDouble(System.getProperty("soak.minutes", "30"));
    private static final double SHARE = Double.parseDouble(System.getProperty("soak.share", "0.8"));
    private static final int CONNECTIONS = 8;
    private static final int MOST_INTERVALS = 60;
    private static final double SHORTEST = 15;
    private static final double WARM_UP = 45;
    private static final double CAPACITY = 15;
    private static final double MEGABYTE = 1 << 20;
    /** MB that the heap after a collection may have grown from the first to the last quarter. */
    private static final double GROWTH = 8;
    /** Handles that may have come; connections of the client are new in each interval. */
    private static final double MORE_HANDLES = 4;

    /** One interval. */
    private record Interval(double heap, double handles, double resident, double rate, double p50, double p99) {}

    private static void print(String format, Object... values) {
        System.out.println("SOAK " + String.format(Locale.ROOT, format, values));
    }

    @Test
    void nothingGrows() throws Exception {
        try (Replica replica = Replica.start()) {
            Client client = new Client(replica.server(), Mix.requests());
            client.run(CONNECTIONS, WARM_UP);
            Client.Run most = client.run(CONNECTIONS, CAPACITY);
            double rate = SHARE * most.rate();
            print(
                    "%s; -XX:+UseSerialGC -Xmx192m; client on the same processors; capacity %.0f requests/s of %d kinds, %.0f %% of"
                            + " it for %.1f minutes",
                    Mix.machine(), most.rate(), Mix.requests().size(), 100 * SHARE, MINUTES);
            print("minute  heap after GC MB  handles  resident MB  answered/s  p50 ms  p99 ms");
            List<Interval> intervals = intervals(replica, client, rate);
            int quarter = Math.max(1, intervals.size() / 4);
            List<Interval> early = intervals.subList(0, quarter);
            List<Interval> late = intervals.subList(intervals.size() - quarter, intervals.size());
            print(
                    "first to last quarter: heap after GC %.1f to %.1f MB, handles %.0f to %.0f, resident %.0f to %.0f MB, p50 %.2f to"
                            + " %.2f ms, p99 %.1f to %.1f ms; no request failed",
                    mean(early, Interval::heap),
                    mean(late, Interval::heap),
                    mean(early, Interval::handles),
                    mean(late, Interval::handles),
                    mean(early, Interval::resident),
                    mean(late, Interval::resident),
                    mean(early, Interval::p50),
                    mean(late, Interval::p50),
                    mean(early, Interval::p99),
                    mean(late, Interval::p99));
            assertThat(mean(late, Interval::heap) - mean(early, Interval::heap)).isLessThan(GROWTH);
            assertThat(mean(late, Interval::handles) - mean(early, Interval::handles))
                    .isLessThanOrEqualTo(MORE_HANDLES);
        }
    }

    private static List<Interval> intervals(Replica replica, Client client, double rate)
            throws IOException, InterruptedException {
        double seconds = Math.max(SHORTEST, 60 * MINUTES / MOST_INTERVALS);
        List<Interval> intervals = new ArrayList<>();
        for (double minute = 0; minute < MINUTES; minute += seconds / 60) {
            Client.Run run = client.run(CONNECTIONS, seconds, rate);
            assertThat(run.failed() + run.shed()).as("not answered").isZero();
            Interval interval = new Interval(
                    heap(replica),
                    replica.handles(),
                    replica.resident(),
                    run.rate(),
                    run.milliseconds(0.5),
                    run.milliseconds(0.99));
            intervals.add(interval);
            print(
                    "%6.1f  %16.1f  %7.0f  %11.0f  %10.0f  %6.2f  %6.1f",
                    minute + seconds / 60,
                    interval.heap(),
                    interval.handles(),
                    interval.resident(),
                    interval.rate(),
                    interval.p50(),
                    interval.p99());
        }
        return intervals;
    }

    /** MB that are left after a collection. */
    private static double heap(Replica replica) throws IOException, InterruptedException {
        String jcmd = Path.of(System.getProperty("java.home"), "bin", "jcmd").toString();
        Programs.run(jcmd, String.valueOf(replica.pid()), "GC.run");
        return replica.metric("jvm_memory_used_bytes", "area=\"heap\"") / MEGABYTE;
    }

    private static double mean(List<Interval> intervals, ToDoubleFunction<Interval> figure) {
        return intervals.stream().mapToDouble(figure).average().orElseThrow();
    }
}
