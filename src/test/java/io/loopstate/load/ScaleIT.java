package io.loopstate.load;

import static org.assertj.core.api.Assertions.assertThat;

import io.loopstate.testing.HttpReply;
import io.loopstate.testing.Programs;
import java.lang.management.ManagementFactory;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Replicas of the packaged service behind a proxy: the same bytes whichever answers, and what a further one brings. Each replica is
 * bound to one processor, in turn; client and proxy take what is left, which is counted and printed. No speed is asserted.
 */
@Tag("scale")
class ScaleIT {
    private static final int CONNECTIONS = 16;
    private static final double WARM_UP = Double.parseDouble(System.getProperty("scale.warmup", "10"));
    private static final double SECONDS = Double.parseDouble(System.getProperty("scale.seconds", "10"));
    private static final int PROCESSORS = Runtime.getRuntime().availableProcessors();
    private static final int MOST = Integer.getInteger("scale.replicas", 2 * PROCESSORS);

    private static void print(String format, Object... values) {
        System.out.println("SCALE " + String.format(Locale.ROOT, format, values));
    }

    private static List<Replica> replicas(int count) {
        List<Replica> replicas = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            replicas.add(new Replica.Launch()
                    .before("taskset", "-c", String.valueOf(k % PROCESSORS))
                    .start());
        }
        return replicas;
    }

    private static List<URI> servers(List<Replica> replicas) {
        return replicas.stream().map(Replica::server).toList();
    }

    @Test
    void whicheverReplicaAnswersTheBytesAreTheSame() throws Exception {
        Programs.require("taskset");
        List<Replica> replicas = replicas(2);
        try (Proxy proxy = new Proxy(servers(replicas))) {
            // Other work before, and in another order: nothing of it may be left.
            for (byte[] request : Mix.requests()) {
                replicas.get(1).send(request);
            }
            List<Mix.Example> examples = Mix.posts(true);
            assertThat(examples).hasSizeGreaterThan(50);
            for (Mix.Example example : examples) {
                HttpReply first = replicas.get(0).send(example.request());
                for (int k = 0; k < 4; k++) {
                    HttpReply other =
                            Replica.send(k == 0 ? replicas.get(1).server() : proxy.server(), example.request());
                    assertThat(other.status()).as(example.name()).isEqualTo(first.status());
                    assertThat(other.body()).as(example.name()).isEqualTo(first.body());
                }
            }
            for (Replica replica : replicas) {
                assertThat(replica.metric("loopstate_requests_seconds_count")).isGreaterThan(examples.size());
            }
            print("%d requests, answered and refused ones, get the same bytes from each replica", examples.size());
        } finally {
            replicas.forEach(Replica::close);
        }
    }

    @Test
    void furtherReplicas() throws Exception {
        Programs.require("taskset");
        print("%s; each replica on one processor, in turn; client and proxy beside them", Mix.machine());
        List<byte[]> requests = List.of(
                Mix.post("/v1/heat-rejection/balance", "good"),
                Mix.post("/v1/heat-rejection/balance", "blend"),
                Mix.post("/v1/heat-rejection/balance", "whatIf"));
        double one = 0;
        for (int count = 1; count <= MOST; count *= 2) {
            List<Replica> replicas = replicas(count);
            try (Proxy proxy = new Proxy(servers(replicas))) {
                Client client = new Client(proxy.server(), requests);
                client.run(CONNECTIONS, WARM_UP * count / Math.min(count, PROCESSORS));
                double before = used(replicas);
                double ownBefore = own();
                Client.Run run = client.run(CONNECTIONS, SECONDS);
                double cost = (used(replicas) - before) / run.answered();
                double ownCost = (own() - ownBefore) / run.answered();
                assertThat(run.failed() + run.shed()).isZero();
                assertThat(run.answered()).isPositive();
                one = count == 1 ? run.rate() : one;
                print(
                        "%d replica(s) on %d processor(s): %.0f requests/s (balances), %.2f of one; processor time a request: replicas %.2f ms,"
                                + " client and proxy %.2f ms; p50 %.1f ms, p99 %.1f ms",
                        count,
                        Math.min(count, PROCESSORS),
                        run.rate(),
                        run.rate() / one,
                        1000 * cost,
                        1000 * ownCost,
                        run.milliseconds(0.5),
                        run.milliseconds(0.99));
            } finally {
                replicas.forEach(Replica::close);
            }
        }
    }

    private static double used(List<Replica> replicas) {
        return replicas.stream().mapToDouble(Replica::processorSeconds).sum();
    }

    /** Seconds of processors of this process. */
    private static double own() {
        return ManagementFactory.getPlatformMXBean(com.sun.management.OperatingSystemMXBean.class)
                        .getProcessCpuTime()
                * 1e-9;
    }
}
