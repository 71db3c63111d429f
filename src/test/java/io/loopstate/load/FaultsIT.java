package io.loopstate.load;

import static org.assertj.core.api.Assertions.assertThat;

import io.loopstate.testing.HttpReply;
import io.loopstate.testing.Programs;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The packaged service as processes that are ended, slowed and left alone. What is asserted are facts and no speeds; figures are
 * printed.
 */
@Tag("faults")
class FaultsIT {
    private static final String SHUTDOWN = "QUARKUS_SHUTDOWN_TIMEOUT";
    private static final int CONNECTIONS = 8;
    private static final int ROWS = 3000;
    private static final byte[] STATE = Mix.post("/v1/properties/state", "good");

    private static void print(String format, Object... values) {
        System.out.println("FAULT " + String.format(Locale.ROOT, format, values));
    }

    /** Rows that keep the service busy for a while. */
    private static byte[] rows() {
        StringBuilder rows = new StringBuilder();
        for (int k = 0; k < ROWS; k++) {
            rows.append("{\"id\":\"")
                    .append(k)
                    .append(
                            "\",\"operation\":\"cycle-points/design\",\"request\":{\"refrigerant\":\"R-448A\",\"evaporating\":"
                                    + "{\"temperature\":\"-20 degF\"},\"condensing\":{\"temperature\":\"105 degF\"},\"superheat\":"
                                    + "\"10 delta_degF\",\"subcooling\":\"8 delta_degF\",\"isentropicEfficiency\":0.7}}\n");
        }
        byte[] json = Client.post("/v1/batch", rows.toString().getBytes(StandardCharsets.US_ASCII));
        return new String(json, StandardCharsets.US_ASCII)
                .replace("application/json", "application/x-ndjson")
                .getBytes(StandardCharsets.US_ASCII);
    }

    @Test
    void terminatedUnderLoadItAnswersWhatItAccepted() throws Exception {
        try (Replica replica = new Replica.Launch().environment(SHUTDOWN, "20S").start()) {
            new Client(replica.server(), STATE).run(2, 2);
            List<CompletableFuture<HttpReply>> batches = new ArrayList<>();
            byte[] rows = rows();
            for (int k = 0; k < 2; k++) {
                batches.add(CompletableFuture.supplyAsync(() -> {
                    try {
                        return replica.send(rows);
                    } catch (IOException e) {
                        throw new IllegalStateException(e);
                    }
                }));
            }
            List<Watched> singles = new ArrayList<>();
            for (int k = 0; k < CONNECTIONS; k++) {
                singles.add(new Watched(replica.server(), STATE));
                singles.get(k).start();
            }
            Thread.sleep(500);
            long done = batches.stream().filter(CompletableFuture::isDone).count();
            long terminated = System.nanoTime();
            replica.terminate();
            for (CompletableFuture<HttpReply> batch : batches) {
                HttpReply reply = batch.get();
                assertThat(reply.status()).isEqualTo(200);
                assertThat(reply.text().lines().filter(line -> line.contains("\"status\":200,\"reply\"")))
                        .hasSize(ROWS);
                assertThat(reply.text()).contains("\"succeeded\":" + ROWS);
            }
            int exit = replica.await(25);
            long took = System.nanoTime() - terminated;
            long unanswered = 0;
            long answered = 0;
            for (Watched single : singles) {
                single.join(25_000);
                assertThat(single.end()).doesNotContain("inside an answer");
                assertThat(single.statuses()).isNotEmpty().allMatch(status -> status == 200 || status == 503);
                // What was sent before the signal has its answer.
                assertThat(single.unanswered() && single.lastSent() < terminated)
                        .as(single.end())
                        .isFalse();
                unanswered += single.unanswered() ? 1 : 0;
                answered += single.statuses().size();
            }
            assertThat(exit).isEqualTo(128 + 15);
            assertThat(done).as("batches that were over before the signal").isZero();
            print(
                    "SIGTERM: 2 streams of %d rows under way completed, %d single requests on %d connections answered whole, %d sent"
                            + " after the signal found their connection closed, 0 accepted ones lost, ended after %.1f s",
                    ROWS, answered, CONNECTIONS, unanswered, took / 1e9);
        }
    }

    @Test
    void drainedAndTerminatedBehindAProxyNothingFails() throws Exception {
        try (Replica first = new Replica.Launch().environment(SHUTDOWN, "20S").start();
                Replica second = Replica.start();
                Proxy proxy = new Proxy(List.of(first.server(), second.server()))) {
            Client client = new Client(proxy.server(), Mix.requests());
            CompletableFuture<Client.Run> run = runs(client, 8);
            Thread.sleep(4000);
            proxy.drain(first.server());
            // As the deployment's preStop does.
            Thread.sleep(1000);
            first.terminate();
            assertThat(first.await(25)).isEqualTo(128 + 15);
            Client.Run result = run.get();
            assertThat(result.failed()).isZero();
            assertThat(result.shed()).isZero();
            assertThat(result.answered()).isPositive();
            print("a replica drained and terminated behind a proxy: %d requests, none failed", result.answered());
        }
    }

    @Test
    void killedBehindAProxyOnlyWhatWasUnderWayThereFails() throws Exception {
        try (Replica first = Replica.start();
                Replica second = Replica.start();
                Proxy proxy = new Proxy(List.of(first.server(), second.server()))) {
            CompletableFuture<Client.Run> gets = runs(new Client(proxy.server(), Mix.get()), 6);
            CompletableFuture<Client.Run> posts = runs(new Client(proxy.server(), STATE), 6);
            Thread.sleep(3000);
            first.kill();
            first.await(10);
            Client.Run get = gets.get();
            Client.Run post = posts.get();
            assertThat(get.failed() + get.shed()).as("a GET is sent again").isZero();
            assertThat(post.failed() + post.shed())
                    .as("under way at that replica")
                    .isLessThanOrEqualTo(CONNECTIONS);
            print(
                    "kill -9: %d of %d GET and %d of %d POST failed, on %d connections each; %d were sent to another replica",
                    get.failed(), get.answered(), post.failed(), post.answered(), CONNECTIONS, proxy.retried());
            try (Replica third = Replica.start()) {
                proxy.drain(first.server());
                proxy.add(third.server());
                Client.Run after = new Client(proxy.server(), STATE).run(CONNECTIONS, 2);
                assertThat(after.failed() + after.shed()).isZero();
                assertThat(third.metric("loopstate_requests_seconds_count", "operation=\"properties/state\""))
                        .isPositive();
            }
        }
    }

    private static CompletableFuture<Client.Run> runs(Client client, double seconds) {
        return CompletableFuture.supplyAsync(() -> {
            try {
                return client.run(CONNECTIONS, seconds);
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        });
    }

    /** Clients that send a byte at a time, and others that do not read what they asked for. */
    @Test
    void slowClientsKeepNobodyElseWaiting() throws Exception {
        try (Replica replica = Replica.start()) {
            Client client = new Client(replica.server(), STATE);
            client.run(CONNECTIONS, 4);
            int before = replica.handles();
            Client.Run alone = client.run(CONNECTIONS, 3);
            List<Socket> slow = new ArrayList<>();
            byte[] table = Mix.post("/v1/properties/table", "good");
            for (int k = 0; k < 200; k++) {
                Socket socket = new Socket();
                socket.setReceiveBufferSize(4096);
                socket.connect(new InetSocketAddress(
                        replica.server().getHost(), replica.server().getPort()));
                slow.add(socket);
            }
            CompletableFuture<Client.Run> run = runs(client, 5);
            for (int turn = 0; turn < 20; turn++) {
                for (int k = 0; k < slow.size(); k++) {
                    boolean trickle = k % 2 == 0;
                    if (trickle || turn < 8) {
                        slow.get(k).getOutputStream().write(trickle ? new byte[] {STATE[turn]} : table);
                    }
                }
                Thread.sleep(200);
            }
            Client.Run beside = run.get();
            assertThat(beside.failed() + beside.shed()).isZero();
            assertThat(beside.answered()).isPositive();
            for (Socket socket : slow) {
                socket.close();
            }
            assertThat(settled(replica, before + 2 * CONNECTIONS)).isTrue();
            print(
                    "200 slow clients: others p99 %.1f ms beside them, %.1f ms without; all answered; handles back from %d to %d",
                    beside.milliseconds(0.99), alone.milliseconds(0.99), before + 200, replica.handles());
        }
    }

    /** Peers that have gone without a word: nothing more comes from them and they close nothing. */
    @Test
    void halfOpenConnectionsAreClosed() throws Exception {
        try (Replica replica = new Replica.Launch()
                .option("-Dloopstate.limits.idle-timeout=3s", "-Dloopstate.limits.body-timeout=2s")
                .start()) {
            int before = replica.handles();
            List<Socket> silent = new ArrayList<>();
            for (int k = 0; k < 150; k++) {
                Socket socket =
                        new Socket(replica.server().getHost(), replica.server().getPort());
                // nothing, half of the head, all but the last byte
                int sent = k % 3 == 0 ? 0 : k % 3 == 1 ? 30 : STATE.length - 1;
                socket.getOutputStream().write(STATE, 0, sent);
                silent.add(socket);
            }
            Thread.sleep(500);
            int open = replica.handles();
            assertThat(open).isGreaterThan(before + 100);
            assertThat(settled(replica, before + 5)).isTrue();
            assertThat(replica.send(STATE).status()).isEqualTo(200);
            print(
                    "150 half-open connections: handles %d, then %d, after the time-outs %d",
                    before, open, replica.handles());
            for (Socket socket : silent) {
                socket.close();
            }
        }
    }

    private static boolean settled(Replica replica, int handles) throws InterruptedException {
        for (int k = 0; k < 100 && replica.handles() > handles; k++) {
            Thread.sleep(200);
        }
        return replica.handles() <= handles;
    }

    /** As the deployment has it: nothing can be written but in a small place for temporary files. */
    @Test
    void aReadOnlyDiskWithRoomForTemporaryFilesIsEnough() throws Exception {
        readOnly(" && mount -t tmpfs -o size=1m tmpfs /tmp");
        print("a read-only disk but for /tmp: started, all examples answered, no file open for writing but its output");
    }

    /** Without that place the platform cannot unpack the contract's page, and leaves it out where it is told to. */
    @Test
    void aReadOnlyDiskIsEnoughWithoutTheContractsPage() throws Exception {
        readOnly("", "-Dquarkus.vertx.classpath-resolving=false");
        print("a read-only disk, /tmp as well, without the contract's page: started, all examples answered");
    }

    private static void readOnly(String more, String... options) throws Exception {
        String mount = "mount --make-rprivate / && mount --bind / / && mount -o remount,bind,ro /" + more
                + " && ! touch target/x 2>/dev/null";
        Programs.requireSuccess("unshare", "-m", "sh", "-c", mount);
        try (Replica replica = new Replica.Launch()
                .before("unshare", "-m", "sh", "-c", mount + " && exec \"$@\"", "sh")
                .option(options)
                .start()) {
            everythingAnswers(replica);
            assertThat(replica.send(Client.get("/front/front.css")).status()).isEqualTo(200);
            assertThat(replica.written()).allMatch(file -> file.endsWith("replica.log"));
        }
    }

    @Test
    void aFullDiskIsEnough() throws Exception {
        String mount = "mount --make-rprivate / && mount -t tmpfs -o size=16k tmpfs /tmp && cd /tmp"
                + " && ! dd if=/dev/zero of=full bs=1k count=64 2>/dev/null";
        Programs.requireSuccess("unshare", "-m", "sh", "-c", mount);
        try (Replica replica = new Replica.Launch()
                .before("unshare", "-m", "sh", "-c", mount + " && exec \"$@\"", "sh")
                .option("-Dquarkus.http.access-log.enabled=true", "-Dquarkus.log.level=INFO")
                .output("/dev/full")
                .start()) {
            everythingAnswers(replica);
            print("a full disk, for temporary files and for the log: started, all examples answered");
        }
    }

    /** Every example has the status that it has elsewhere. */
    private static void everythingAnswers(Replica replica) throws IOException {
        List<Mix.Example> examples = Mix.posts(false);
        assertThat(examples).isNotEmpty();
        for (Mix.Example example : examples) {
            assertThat(replica.send(example.request()).status())
                    .as(example.name())
                    .isEqualTo(200);
        }
    }
}
