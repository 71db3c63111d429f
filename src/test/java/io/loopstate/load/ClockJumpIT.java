package io.loopstate.load;

import static org.assertj.core.api.Assertions.assertThat;

import io.loopstate.testing.HttpReply;
import io.loopstate.testing.Programs;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A clock that is set while the service runs. Needs Debian's {@code faketime}. */
@Tag("faults")
class ClockJumpIT {
    private static final Path CLOCK = Path.of("target", "clock").toAbsolutePath();

    private static Optional<Path> library() throws IOException {
        try (Stream<Path> folders = Files.list(Path.of("/usr/lib"))) {
            return folders.map(folder -> folder.resolve("faketime/libfaketimeMT.so.1"))
                    .filter(Files::exists)
                    .findFirst();
        }
    }

    @Test
    void requestsDoNotNoticeThatTheClockIsSet() throws Exception {
        Optional<Path> library = library();
        Programs.require(library.isPresent(), "faketime is not installed");
        Files.writeString(CLOCK, "+0");
        try (Replica replica = new Replica.Launch()
                .environment("LD_PRELOAD", library.orElseThrow().toString())
                .environment("FAKETIME_TIMESTAMP_FILE", CLOCK.toString())
                .environment("FAKETIME_CACHE_DURATION", "1")
                .environment("FAKETIME_DONT_FAKE_MONOTONIC", "1")
                .environment("DONT_FAKE_MONOTONIC", "1")
                .start()) {
            List<Mix.Example> examples = Mix.posts(true);
            List<HttpReply> before = replies(replica, examples);
            Client client = new Client(replica.server(), Mix.requests());
            CompletableFuture<Client.Run> run = CompletableFuture.supplyAsync(() -> {
                try {
                    return client.run(4, 15);
                } catch (InterruptedException e) {
                    throw new IllegalStateException(e);
                }
            });
            String year = clock(replica).substring(0, 4);
            for (String offset : List.of("+800d", "-800d", "+1h", "-1h", "+0")) {
                Files.writeString(CLOCK, offset);
                // longer than the library keeps what it has read
                Thread.sleep(2500);
                assertThat(clock(replica).startsWith(year))
                        .as("the clock was set")
                        .isEqualTo(!offset.endsWith("d"));
            }
            Client.Run result = run.get();
            assertThat(result.failed() + result.shed()).isZero();
            List<HttpReply> after = replies(replica, examples);
            for (int k = 0; k < examples.size(); k++) {
                assertThat(after.get(k).text())
                        .as(examples.get(k).name())
                        .isEqualTo(before.get(k).text());
            }
            System.out.printf(
                    "FAULT the clock set by 800 days and an hour, both ways, under load: %d requests answered, none refused or"
                            + " late; %d replies the same bytes before and after%n",
                    result.answered(), examples.size());
        }
    }

    private static List<HttpReply> replies(Replica replica, List<Mix.Example> examples) throws IOException {
        List<HttpReply> replies = new ArrayList<>();
        for (Mix.Example example : examples) {
            replies.add(replica.send(example.request()));
        }
        return replies;
    }

    /** The date that the process believes in, which heads the list of its threads. */
    private static String clock(Replica replica) throws IOException, InterruptedException {
        String jcmd = Path.of(System.getProperty("java.home"), "bin", "jcmd").toString();
        return Programs.run(jcmd, String.valueOf(replica.pid()), "Thread.print")
                .lines()
                .filter(line -> line.matches("\\d{4}-\\d\\d-\\d\\d .*"))
                .findFirst()
                .orElseThrow();
    }
}
