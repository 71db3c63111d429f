package io.loopstate.load;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Requests of every kind, from the examples, and how a machine is named beside figures. */
final class Mix {
    private static final Path EXAMPLES = Path.of("examples", "requests");

    private Mix() {}

    /** A calculation of the examples, whole with its head. */
    record Example(String name, byte[] request) {}

    /** All calculations of the examples that are one request and one reply, by POST; the refused ones only where asked for. */
    static List<Example> posts(boolean refused) {
        try {
            List<Example> all = new ArrayList<>();
            for (JsonNode entry :
                    new ObjectMapper().readTree(EXAMPLES.resolve("index.json").toFile())) {
                Path folder = EXAMPLES.resolve(entry.get("folder").asText());
                String path = entry.get("path").asText();
                if (path.startsWith("/v1/batch") || path.startsWith("/v1/verif")) {
                    continue;
                }
                try (Stream<Path> files = Files.list(folder)) {
                    for (Path file : files.sorted().toList()) {
                        String name = file.getFileName().toString();
                        if (name.endsWith(".request.json") && (refused || answered(folder, name))) {
                            all.add(new Example(path + " " + name, Client.post(path, Files.readAllBytes(file))));
                        }
                    }
                }
            }
            return all;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean answered(Path folder, String name) throws IOException {
        String reply = Files.readString(folder.resolve(name.replace(".request.", ".response.")));
        return !reply.contains("urn:loopstate:problem:");
    }

    /** The request of one example. */
    static byte[] post(String path, String example) {
        return posts(true).stream()
                .filter(candidate -> candidate.name().equals(path + " " + example + ".request.json"))
                .findFirst()
                .orElseThrow()
                .request();
    }

    static List<byte[]> requests() {
        return posts(false).stream().map(Example::request).toList();
    }

    /** A GET that every replica answers alike. */
    static byte[] get() {
        return Client.get("/v1/cycle-points/design?refrigerant=R-134a&evaporatingTemperature=20%20degF"
                + "&condensingTemperature=105%20degF&superheat=10%20delta_degF&subcooling=8%20delta_degF"
                + "&isentropicEfficiency=0.7&refrigeratingCapacity=3%20ton");
    }

    static String machine() {
        try (Stream<String> lines = Files.lines(Path.of("/proc/cpuinfo"))) {
            String model = lines.filter(line -> line.startsWith("model name"))
                    .map(line -> line.substring(line.indexOf(':') + 1).strip())
                    .findFirst()
                    .orElse("unknown processor");
            return String.format(
                    Locale.ROOT,
                    "%s, %d processors, JDK %s",
                    model,
                    Runtime.getRuntime().availableProcessors(),
                    Runtime.version());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
