package io.loopstate.load;

import static org.assertj.core.api.Assertions.assertThat;

import io.loopstate.testing.Programs;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One request again and again by wrk, Debian's load generator, which takes next to nothing from the service. */
final class Wrk {
    private static final String PROGRAM = "wrk";
    private static final Map<String, Double> MILLISECONDS = Map.of("us", 1e-3, "ms", 1.0, "s", 1e3);

    private final String target;
    private final Path script;

    private Wrk(URI target, String script) throws IOException {
        this.target = target.toString();
        this.script = Files.createTempFile("loopstate", ".lua");
        Files.writeString(this.script, script);
        this.script.toFile().deleteOnExit();
    }

    static Wrk get(URI target) throws IOException {
        Programs.require(PROGRAM);
        return new Wrk(target, "");
    }

    static Wrk post(URI target, String body) throws IOException {
        Programs.require(PROGRAM);
        return new Wrk(
                target,
                "wrk.method = 'POST'; wrk.body = [[" + body + "]]; wrk.headers['Content-Type'] = 'application/json'");
    }

    /**
     * What came of a run, all of it answered with 200.
     *
     * @param rate requests a second
     * @param p50 ms
     * @param p99 ms
     */
    record Run(double rate, double p50, double p99) {}

    Run run(int connections, double seconds) throws IOException, InterruptedException {
        String report = Programs.run(
                PROGRAM,
                "-t1",
                "-c" + connections,
                "-d" + Math.max(1, Math.round(seconds)) + "s",
                "--latency",
                "-s",
                script.toString(),
                target);
        assertThat(report).doesNotContain("Non-2xx", "Socket errors");
        return new Run(number("Requests/sec:\\s+([0-9.]+)()", report), percentile(report, 50), percentile(report, 99));
    }

    private static double percentile(String report, int percent) {
        return number(percent + "%\\s+([0-9.]+)(us|ms|s)\\s", report);
    }

    private static double number(String pattern, String report) {
        Matcher line = Pattern.compile(pattern).matcher(report);
        assertThat(line.find()).as(report).isTrue();
        return Double.parseDouble(line.group(1)) * MILLISECONDS.getOrDefault(line.group(2), 1.0);
    }
}
