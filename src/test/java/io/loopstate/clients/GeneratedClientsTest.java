package io.loopstate.clients;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.testing.Http;
import io.loopstate.testing.Programs;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The contract passes its lint, and clients generated from it ask the service: a program in each language prints what it gets,
 * which has to be what the service answers without a client.
 */
@QuarkusTest
@Tag("clients")
class GeneratedClientsTest {
    private static final Path SOURCES = Path.of("src", "clients");
    private static final Path WORK = Path.of("target", "clients");
    private static final List<String> LANGUAGES = List.of("java", "python", "typescript", "csharp");
    private static final String JAVA =
            Path.of(System.getProperty("java.home"), "bin", "java").toString();
    private static final String CLASS_PATH = System.getProperty("java.class.path");

    @TestHTTPResource
    URI server;

    @BeforeAll
    static void generate() throws Exception {
        List<String> command = new ArrayList<>(
                List.of(JAVA, "-jar", WORK.resolve("generator.jar").toString()));
        command.addAll(List.of("batch", "--clean", "--fail-fast", "--threads", "1", "--root-dir", ".", "--"));
        LANGUAGES.forEach(language ->
                command.add(SOURCES.resolve(language).resolve("generator.yaml").toString()));
        assertThat(Programs.run(command.toArray(String[]::new))).contains("finished 4 generators successfully");
    }

    @Test
    void contractPassesItsLint() throws Exception {
        String report = Programs.run(
                npm("redocly"),
                "lint",
                "--config",
                "openapi/redocly.yaml",
                "--format",
                "stylish",
                "openapi/openapi.yaml");
        assertThat(report).doesNotContain("warning");
    }

    @Test
    void java() throws Exception {
        Path classes = WORK.resolve("java").resolve("classes");
        List<String> arguments = new ArrayList<>(
                List.of("-nowarn", "-cp", CLASS_PATH, "-d", classes.toString(), SOURCES + "/java/Call.java"));
        try (Stream<Path> files = Files.walk(WORK.resolve("java").resolve("src/main"))) {
            files.map(Path::toString).filter(file -> file.endsWith(".java")).forEach(arguments::add);
        }
        assertThat(arguments).hasSizeGreaterThan(200);
        assertThat(ToolProvider.getSystemJavaCompiler().run(null, null, null, arguments.toArray(String[]::new)))
                .isZero();
        getsTheAnswers(JAVA, "-cp", classes + File.pathSeparator + CLASS_PATH, "Call");
    }

    @Test
    void python() throws Exception {
        Programs.require("python3");
        Programs.requireSuccess("python3", "-c", "import dateutil, pydantic, urllib3");
        copy(SOURCES.resolve("python"), WORK.resolve("python"));
        getsTheAnswers("python3", WORK + "/python/call.py");
    }

    @Test
    void typeScript() throws Exception {
        Path client = WORK.resolve("typescript");
        copy(SOURCES.resolve("typescript"), client);
        Programs.run(npm("tsc"), "--project", client.toString());
        getsTheAnswers("node", client + "/compiled/call.js");
    }

    @Test
    void cSharp() throws Exception {
        Programs.require("dotnet");
        String project = WORK + "/csharp/call";
        copy(SOURCES.resolve("csharp"), Path.of(project));
        Programs.run("dotnet", "build", "--verbosity", "quiet", project);
        getsTheAnswers("dotnet", "run", "--no-build", "--project", project, "--");
    }

    private void getsTheAnswers(String... program) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(program));
        command.add("http://" + server.getAuthority());
        String output = Programs.run(command.toArray(String[]::new));
        System.out.println("CLIENT " + program[0] + '\n' + output);
        List<List<Object>> lines = output.lines()
                .map(line -> line.split(" "))
                .map(words -> List.<Object>of(words[0], Double.parseDouble(words[1]), words[2]))
                .toList();
        JsonNode refusal = design("R-134", "SI", 400);
        assertThat(lines)
                .containsExactly(
                        line("SI", design("R-134a", "SI", 200).at("/performance/refrigeratingEffect")),
                        line("IP", design("R-134a", "IP", 200).at("/performance/refrigeratingEffect")),
                        line("chart", chart().at("/dew/pressure")),
                        List.of(
                                "refused",
                                400.0,
                                refusal.at("/errors/0/pointer").textValue()));
    }

    private static List<Object> line(String name, JsonNode quantity) {
        return List.of(
                name, quantity.get("value").doubleValue(), quantity.get("unit").textValue());
    }

    private static JsonNode design(String refrigerant, String units, int status) {
        return Http.json(Http.post("/v1/cycle-points/design", """
                        {"refrigerant": "%s", "evaporating": {"temperature": "20 degF"},
                        "condensing": {"temperature": "105 degF"}, "superheat": "10 delta_degF", "subcooling": "0 K",
                        "isentropicEfficiency": 0.7, "units": "%s"}""".formatted(refrigerant, units))
                .statusCode(status));
    }

    private static JsonNode chart() {
        return Http.json(
                Http.get("/v1/properties/saturation?refrigerant=R-290&temperature=-20+degF&units=IP,pressure%3Dpsig")
                        .statusCode(200));
    }

    /** A program of the packages that are pinned beside the sources. */
    private static String npm(String program) throws IOException, InterruptedException {
        Programs.require("node", "npm");
        Path folder = Files.createDirectories(WORK.resolve("npm"));
        for (String file : List.of("package.json", "package-lock.json")) {
            Files.copy(SOURCES.resolve(file), folder.resolve(file), StandardCopyOption.REPLACE_EXISTING);
        }
        Programs.run("npm", "ci", "--ignore-scripts", "--prefix", folder.toString());
        return folder.resolve("node_modules/.bin").resolve(program).toString();
    }

    private static void copy(Path from, Path to) throws IOException {
        Files.createDirectories(to);
        try (Stream<Path> files = Files.list(from)) {
            for (Path file : files.toList()) {
                Files.copy(file, to.resolve(file.getFileName()), StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }
}
