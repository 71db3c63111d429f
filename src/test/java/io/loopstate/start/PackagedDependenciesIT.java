package io.loopstate.start;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;

/** The package holds no library that is not documented, and none that the list of parts does not have. */
class PackagedDependenciesIT {
    private static final Path LIBRARIES = Path.of("target", "quarkus-app", "lib");
    private static final Pattern ROW =
            Pattern.compile("(?m)^\\| (`[a-z0-9.]+[.-]`(?: `[a-z0-9.]+[.-]`)*) \\| (\\S.*) \\|$");
    private static final String OPTIONAL = "in the profile";
    private static final Pattern NAME = Pattern.compile("`([^`]+)`");

    @Test
    void everyLibraryIsExplained() throws IOException {
        List<MatchResult> rows = ROW.matcher(Files.readString(Path.of("DEVELOPERS.md")))
                .results()
                .toList();
        List<String> beginnings =
                rows.stream().flatMap(PackagedDependenciesIT::beginnings).toList();
        List<String> libraries = libraries();
        assertThat(libraries)
                .hasSizeGreaterThan(50)
                .allSatisfy(library -> assertThat(beginnings).anyMatch(library::startsWith));
        assertThat(rows.stream()
                        .filter(row -> !row.group(2).contains(OPTIONAL))
                        .flatMap(PackagedDependenciesIT::beginnings))
                .allSatisfy(beginning -> assertThat(libraries).anyMatch(library -> library.startsWith(beginning)));
    }

    private static Stream<String> beginnings(MatchResult row) {
        return NAME.matcher(row.group(1)).results().map(name -> name.group(1));
    }

    @Test
    void everyLibraryIsInTheListOfParts() throws IOException {
        JsonNode parts = new ObjectMapper()
                .readTree(Path.of("target", "loopstate.cdx.json").toFile())
                .get("components");
        List<String> listed = StreamSupport.stream(parts.spliterator(), false)
                .map(part ->
                        part.get("group").textValue() + '.' + part.get("name").textValue() + '-'
                                + part.get("version").textValue() + ".jar")
                .toList();
        assertThat(libraries()).isSubsetOf(listed);
        assertThat(listed.stream().filter(name -> name.startsWith("org.junit")).collect(Collectors.toList()))
                .isEmpty();
    }

    private static List<String> libraries() throws IOException {
        try (Stream<Path> files = Files.walk(LIBRARIES)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".jar"))
                    .toList();
        }
    }
}
