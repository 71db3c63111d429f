package io.loopstate.load;

import static org.assertj.core.api.Assertions.assertThat;

import io.loopstate.testing.HttpReply;
import io.loopstate.testing.Metrics;
import java.io.BufferedInputStream;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** One process of the packaged service on a port of its own; ended with the test, by its own process id. */
final class Replica implements AutoCloseable {
    private static final Path PACKAGE = Path.of("target", "quarkus-app", "quarkus-run.jar");
    private static final long SECONDS_TO_START = 120;
    /** Of the processor time in {@code /proc}, a second; the same on every Linux that Java runs on. */
    private static final double TICKS = 100;

    private final Process process;
    private final URI server;

    private Replica(Process process, URI server) {
        this.process = process;
        this.server = server;
    }

    /** How it is started. */
    static final class Launch {
        private final List<String> before = new ArrayList<>();
        private final List<String> options =
                new ArrayList<>(List.of("-XX:+UseSerialGC", "-Xmx192m", "-XX:ReservedCodeCacheSize=64m"));
        private final Map<String, String> environment = new HashMap<>();
        private File directory = new File("target");
        private File output = new File("target", "replica.log");

        /** Words before the command, as {@code taskset -c 0}. */
        Launch before(String... words) {
            before.addAll(List.of(words));
            return this;
        }

        Launch option(String... words) {
            options.addAll(List.of(words));
            return this;
        }

        Launch environment(String name, String value) {
            environment.put(name, value);
            return this;
        }

        Launch directory(String path) {
            directory = new File(path);
            return this;
        }

        Launch output(String path) {
            output = new File(path);
            return this;
        }

        /** Returns when it is ready. */
        Replica start() {
            try {
                return ready(begin());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        private Replica begin() throws IOException {
            assertThat(PACKAGE).as("the package, made before").exists();
            int port = free();
            List<String> command = new ArrayList<>(before);
            command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
            command.addAll(options);
            command.addAll(List.of(
                    "-Dquarkus.http.host=127.0.0.1",
                    "-Dquarkus.http.port=" + port,
                    // A busy machine is not what is tested.
                    "-Dloopstate.limits.deadline=60s",
                    "-Dloopstate.limits.waiting=60s",
                    "-jar",
                    PACKAGE.toAbsolutePath().toString()));
            ProcessBuilder builder = new ProcessBuilder(command)
                    .directory(directory)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.appendTo(output));
            builder.environment().putAll(environment);
            return new Replica(builder.start(), URI.create("http://127.0.0.1:" + port));
        }

        private static int free() throws IOException {
            try (ServerSocket socket = new ServerSocket(0)) {
                return socket.getLocalPort();
            }
        }

        private static Replica ready(Replica replica) {
            long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(SECONDS_TO_START);
            while (System.nanoTime() < end && replica.process.isAlive()) {
                try {
                    if (replica.send(Client.get("/readyz")).status() == 200) {
                        return replica;
                    }
                    Thread.sleep(50);
                } catch (IOException e) {
                    // not yet
                } catch (InterruptedException e) {
                    break;
                }
            }
            replica.close();
            throw new IllegalStateException("the service did not start; see target/replica.log");
        }
    }

    static Replica start() {
        return new Launch().start();
    }

    URI server() {
        return server;
    }

    /** One request over a connection of its own. */
    HttpReply send(byte[] request) throws IOException {
        return send(server, request);
    }

    static HttpReply send(URI server, byte[] request) throws IOException {
        try (Socket socket = new Socket(server.getHost(), server.getPort())) {
            socket.setSoTimeout(20_000);
            socket.getOutputStream().write(request);
            return HttpReply.read(new BufferedInputStream(socket.getInputStream()));
        }
    }

    long pid() {
        return process.pid();
    }

    boolean alive() {
        return process.isAlive();
    }

    /** SIGTERM. */
    void terminate() {
        process.destroy();
    }

    /** SIGKILL. */
    void kill() {
        process.destroyForcibly();
    }

    /** Exit status. */
    int await(long seconds) throws InterruptedException {
        assertThat(process.waitFor(seconds, TimeUnit.SECONDS))
                .as("ended in time")
                .isTrue();
        return process.exitValue();
    }

    /** Open file handles, connections among them. */
    int handles() {
        try (Stream<Path> open = Files.list(proc("fd"))) {
            return (int) open.count();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Regular files that are open for writing. */
    List<String> written() {
        try (Stream<Path> open = Files.list(proc("fd"))) {
            return open.map(this::writtenFile).flatMap(Optional::stream).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Optional<String> writtenFile(Path handle) {
        try {
            String target = Files.readSymbolicLink(handle).toString();
            String flags = field(proc("fdinfo/" + handle.getFileName()), "flags:");
            boolean writing = (Integer.parseInt(flags, 8) & 3) != 0;
            return Optional.of(target).filter(file -> writing && file.startsWith("/") && !file.startsWith("/dev/"));
        } catch (IOException | UncheckedIOException e) {
            // closed meanwhile
            return Optional.empty();
        }
    }

    /** Resident memory, MB. */
    double resident() {
        return Double.parseDouble(field(proc("status"), "VmRSS:").split(" ")[0]) / 1024;
    }

    /** Seconds of processors that it has used. */
    double processorSeconds() {
        try {
            String stat = Files.readString(proc("stat"));
            String[] fields = stat.substring(stat.lastIndexOf(')') + 2).split(" ");
            return (Long.parseLong(fields[11]) + Long.parseLong(fields[12])) / TICKS;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The sum of a metric over all series that have these labels, each written {@code name="value"}. */
    double metric(String name, String... labels) throws IOException {
        return Metrics.sumOf(send(Client.get("/metrics")).text(), name, labels);
    }

    private Path proc(String name) {
        return Path.of("/proc", String.valueOf(pid()), name);
    }

    private static String field(Path file, String name) {
        try {
            return Files.readAllLines(file).stream()
                    .filter(line -> line.startsWith(name))
                    .map(line -> line.substring(name.length()).strip())
                    .findFirst()
                    .orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        process.destroyForcibly();
        try {
            process.waitFor(10, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
