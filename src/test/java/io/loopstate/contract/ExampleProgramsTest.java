package io.loopstate.contract;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import io.loopstate.testing.Programs;
import io.loopstate.testing.StoredText;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The programs under {@code examples} run as they stand against the service and print what is stored beside them. Where a machine
 * lacks what runs one (a POSIX shell with curl, Python, Node), that one is left out by name.
 */
@QuarkusTest
class ExampleProgramsTest {
    private static final Path ROOT = Path.of("examples");
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final int PATIENCE = 90;

    @TestHTTPResource("/")
    URI server;

    @ParameterizedTest
    @CsvSource({
        "sh, curl, clients/superheat.sh, clients/superheat.out",
        "python3, python3, clients/readings.py, clients/readings.out",
        "node, node, clients/batch.mjs, clients/batch.out",
        "python3, python3, handout/make_handout.py, handout/bench-trainer.html",
    })
    void printsWhatIsStored(String runner, String needed, String program, String stored)
            throws IOException, InterruptedException {
        Programs.require(runner, needed);
        Outcome outcome = run(List.of(runner, ROOT.resolve(program).toString()));
        assertThat(outcome.errors()).isEmpty();
        assertThat(outcome.status()).isZero();
        StoredText.check(ROOT.resolve(stored), outcome.output());
    }

    @Test
    void casesOfAPipelinePass(@TempDir Path reports) throws IOException, InterruptedException {
        Outcome outcome = check(reports, ROOT.resolve("ci/cases/northquay-cold-store.json"));
        assertThat(outcome.status()).as(outcome.output()).isZero();
        assertThat(outcome.output()).isEqualTo(Files.readString(ROOT.resolve("ci/check.out")));
        assertThat(Files.readString(reports.resolve("northquay-cold-store.xml")))
                .contains("<testsuites", "tests=\"3\"", "failures=\"0\"");
    }

    @Test
    void aWrongFigureFailsThePipeline(@TempDir Path reports) throws IOException, InterruptedException {
        Path cases = reports.resolve("cases.json");
        String sound = Files.readString(ROOT.resolve("ci/cases/northquay-cold-store.json"));
        String wrong = sound.replace("\"value\": 21.4", "\"value\": 24.1");
        assertThat(wrong).isNotEqualTo(sound);
        Files.writeString(cases, wrong);
        Outcome outcome = check(reports, cases);
        assertThat(outcome.status()).as(outcome.output()).isEqualTo(1);
        assertThat(outcome.output()).contains("cases: failed", "expected 24.1 psia");
    }

    @Test
    void aFileThatIsNoneFailsThePipelineOtherwise(@TempDir Path reports) throws IOException, InterruptedException {
        Path cases = reports.resolve("broken.json");
        Files.writeString(cases, "{\"cases\": ");
        Outcome outcome = check(reports, cases);
        assertThat(outcome.status()).as(outcome.output()).isEqualTo(2);
        assertThat(outcome.output()).contains("broken: not checked, HTTP 400");
    }

    @Test
    void webhookAnswersWorkOrders() throws IOException, InterruptedException {
        Programs.require("python3");
        ProcessBuilder builder = builder(
                List.of("python3", ROOT.resolve("clients/dispatch_webhook.py").toString()));
        builder.environment().put("PORT", "0");
        Process webhook = builder.start();
        try {
            String line = new BufferedReader(new InputStreamReader(webhook.getInputStream(), StandardCharsets.UTF_8))
                    .readLine();
            URI address = URI.create("http://127.0.0.1:" + line.replaceAll("[^0-9]", ""));
            JsonNode answer = post(address, Files.readString(ROOT.resolve("clients/work-order.json")), 200);
            assertThat(answer.get("order").textValue()).isEqualTo("NQ-1207");
            assertThat(answer.get("superheat").doubleValue()).isEqualTo(3.3);
            assertThat(answer.get("unit").textValue()).isEqualTo("delta_degF");
            assertThat(answer.get("warnings").get(0).textValue()).contains("little margin against liquid");
            JsonNode refused = post(
                    address,
                    "{\"id\":\"x\",\"readings\":{\"refrigerant\":\"R-290\",\"suctionPressure\":\"22 psi\"}}",
                    422);
            assertThat(refused.get("faults").get(0).get("reading").textValue()).isEqualTo("#/suctionPressure");
            post(address, "[]", 400);
        } finally {
            webhook.destroy();
            webhook.waitFor();
        }
    }

    /** The files that build servers read are sound and name the script where it lies. */
    @Test
    void pipelinesNameTheScript() throws IOException {
        YAMLMapper yaml = new YAMLMapper();
        JsonNode actions = yaml.readTree(ROOT.resolve("ci/github-actions.yml").toFile());
        JsonNode steps = actions.at("/jobs/check/steps");
        assertThat(steps.findValuesAsText("run"))
                .allMatch(ExampleProgramsTest::namesTheScript)
                .hasSize(1);
        assertThat(actions.at("/jobs/check/services/loopstate/ports/0").asText())
                .isEqualTo("8080:8080");
        JsonNode job = yaml.readTree(ROOT.resolve("ci/gitlab-ci.yml").toFile()).get("calculations");
        assertThat(job.at("/script/0").textValue()).matches(ExampleProgramsTest::namesTheScript);
        assertThat(job.at("/services/0/alias").textValue()).isEqualTo("loopstate");
    }

    @Test
    void everyFileIsKnown() throws IOException {
        List<String> known = new ArrayList<>(List.of(
                "ci/check.sh",
                "ci/check.out",
                "ci/cases/northquay-cold-store.json",
                "ci/github-actions.yml",
                "ci/gitlab-ci.yml",
                "clients/superheat.sh",
                "clients/superheat.out",
                "clients/readings.py",
                "clients/readings.out",
                "clients/batch.mjs",
                "clients/batch.out",
                "clients/dispatch_webhook.py",
                "clients/work-order.json",
                "handout/make_handout.py",
                "handout/bench-trainer.html"));
        List<String> found = new ArrayList<>();
        for (String folder : List.of("ci", "clients", "handout")) {
            try (var files = Files.walk(ROOT.resolve(folder))) {
                files.filter(Files::isRegularFile)
                        .map(file -> ROOT.relativize(file).toString().replace(File.separatorChar, '/'))
                        .forEach(found::add);
            }
        }
        assertThat(found).containsExactlyInAnyOrderElementsOf(known);
    }

    private static boolean namesTheScript(String command) {
        return command.contains("sh examples/ci/check.sh ") && command.endsWith(" reports examples/ci/cases/*.json");
    }

    private Outcome check(Path reports, Path cases) throws IOException, InterruptedException {
        Programs.require("sh", "curl");
        return run(List.of(
                "sh", ROOT.resolve("ci/check.sh").toString(), server.toString(), reports.toString(), cases.toString()));
    }

    private JsonNode post(URI address, String body, int status) throws IOException, InterruptedException {
        HttpResponse<String> reply = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(address)
                                .POST(HttpRequest.BodyPublishers.ofString(body))
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
        assertThat(reply.statusCode()).as(reply.body()).isEqualTo(status);
        return MAPPER.readTree(reply.body());
    }

    /** What a program printed and ended with. */
    private record Outcome(int status, String output, String errors) {}

    private ProcessBuilder builder(List<String> command) {
        ProcessBuilder builder = new ProcessBuilder(command);
        String address = server.toString();
        builder.environment().put("LOOPSTATE_URL", address.substring(0, address.length() - 1));
        builder.environment().put("PYTHONDONTWRITEBYTECODE", "1");
        return builder;
    }

    private Outcome run(List<String> command) throws IOException, InterruptedException {
        Path output = Files.createTempFile("program", ".out");
        Path errors = Files.createTempFile("program", ".err");
        try {
            Process process = builder(command)
                    .redirectOutput(output.toFile())
                    .redirectError(errors.toFile())
                    .start();
            if (!process.waitFor(PATIENCE, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new AssertionError(command + " does not end");
            }
            return new Outcome(process.exitValue(), Files.readString(output), Files.readString(errors));
        } finally {
            Files.delete(output);
            Files.delete(errors);
        }
    }
}
