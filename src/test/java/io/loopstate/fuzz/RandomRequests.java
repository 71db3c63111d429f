package io.loopstate.fuzz;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Requests made of the examples: values and names replaced by others, lost and doubled, texts garbled; and states of any
 * refrigerant from any two variables. Not for several threads.
 */
final class RandomRequests {
    private static final Path EXAMPLES = Path.of("examples", "requests");
    private static final ObjectMapper MAPPER = new ObjectMapper();
    /** What calculates everything that is on file would keep the others waiting. */
    private static final List<String> SLOW = List.of("verification", "refrigerants");

    private static final List<String> ACCEPT = List.of(
            "*/*",
            "application/json",
            "application/*",
            "application/xml",
            "application/problem+json",
            "image/svg+xml",
            "image/png",
            "text/*",
            "text/csv",
            "text/html",
            "text/plain",
            "text/tab-separated-values");

    private static final List<String> STATE = List.of(
            "temperature",
            "pressure",
            "density",
            "specificVolume",
            "specificEnthalpy",
            "specificEntropy",
            "specificInternalEnergy",
            "vaporQuality",
            "superheat",
            "subcooling");

    private final Random random;
    private final RandomTexts texts;
    private final List<String> queries;
    private final List<Body> bodies;
    private final List<String> names;

    /** An example with a body. */
    private record Body(String path, String text, JsonNode tree) {}

    /**
     * A request.
     *
     * @param body of a POST, empty for a GET
     * @param accept media types of the client, empty for none
     */
    record Request(String target, String body, String accept) {
        @Override
        public String toString() {
            return (body.isEmpty() ? "GET " : "POST ")
                    + target
                    + (accept.isEmpty() ? "" : "  Accept: " + accept)
                    + (body.isEmpty() ? "" : "  " + body);
        }
    }

    RandomRequests(long seed) {
        random = new Random(seed);
        texts = new RandomTexts(random);
        queries = files("good.url", "warning.url")
                .filter(url -> !url.contains("/batch") && !url.contains("/verify"))
                .toList();
        bodies = bodies();
        TreeSet<String> all = new TreeSet<>();
        queries.forEach(query -> all.addAll(parameters(query).keySet()));
        names = List.copyOf(all);
    }

    Request query() {
        String target = switch (random.nextInt(4)) {
            case 0 -> garbledQuery();
            case 1 -> state();
            default -> changedQuery();
        };
        // A space or a control character would end the request line, which is no longer a request.
        return new Request(target.replaceAll("[^\\x21-\\x7e]", ""), "", accept());
    }

    Request body() {
        Body example = texts.any(bodies);
        if (texts.chance(0.3)) {
            String text = texts.garbled(example.text());
            return new Request(example.path(), text.isEmpty() ? "{" : text, accept());
        }
        JsonNode tree = example.tree().deepCopy();
        int changes = 1 + random.nextInt(3);
        for (int i = 0; i < changes; i++) {
            change(tree);
        }
        try {
            return new Request(example.path(), MAPPER.writeValueAsString(tree), accept());
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    private String accept() {
        if (texts.chance(0.7)) {
            return "";
        }
        String types = texts.any(ACCEPT) + (texts.chance(0.3) ? ";q=0.5, " + texts.any(ACCEPT) : "");
        return texts.chance(0.1) ? texts.garbled(types).replaceAll("[^\\x20-\\x7e]", "") : types;
    }

    private String garbledQuery() {
        String[] parts = texts.any(queries).split("\\?", 2);
        return parts[0] + '?' + (parts.length == 1 ? texts.noise() : texts.garbled(parts[1]));
    }

    /** A refrigerant from two variables, in and around what is possible. */
    private String state() {
        String first = texts.any(STATE);
        String second = texts.any(STATE);
        return "/v1/properties/state?refrigerant=" + encoded(texts.refrigerant()) + '&' + first + '='
                + encoded(value(first)) + '&' + second + '=' + encoded(value(second));
    }

    private String value(String variable) {
        double u = random.nextDouble();
        return switch (variable) {
            case "temperature" -> 60 + 500 * u + " K";
            case "pressure" -> Math.pow(10, 2 + 6 * u) + " Pa_a";
            case "density" -> Math.pow(10, -2 + 5.2 * u) + " kg_per_m3";
            case "specificVolume" -> Math.pow(10, -3.2 + 5.2 * u) + " m3_per_kg";
            case "specificEnthalpy", "specificInternalEnergy" -> -500 + 1500 * u + " kJ_per_kg";
            case "specificEntropy" -> -2 + 6 * u + " kJ_per_kg_K";
            case "vaporQuality" -> texts.chance(0.2) ? texts.any(List.of("0", "1", "-0.1", "1.1")) : Double.toString(u);
            default -> -5 + 60 * u + " K";
        };
    }

    private String changedQuery() {
        String target = texts.any(queries);
        Map<String, String> parameters = parameters(target);
        int changes = 1 + random.nextInt(3);
        for (int i = 0; i < changes; i++) {
            String name = parameters.isEmpty() || texts.chance(0.15)
                    ? texts.any(names)
                    : texts.any(List.copyOf(parameters.keySet()));
            switch (random.nextInt(8)) {
                case 0 -> parameters.remove(name);
                case 1 -> parameters.put(texts.garbled(name), encoded(texts.number()));
                default -> parameters.put(name, encoded(replacement(name)));
            }
        }
        StringBuilder query = new StringBuilder();
        parameters.forEach((name, value) -> query.append(query.isEmpty() ? '?' : '&')
                .append(encoded(name))
                .append('=')
                .append(value));
        return target.split("\\?")[0] + query;
    }

    private String replacement(String name) {
        if (name.equals("refrigerant")) {
            return texts.refrigerant();
        }
        return switch (random.nextInt(6)) {
            case 0 -> texts.noise();
            case 1 -> texts.number();
            default -> texts.quantity();
        };
    }

    /** Replaces, removes or adds one member somewhere. */
    private void change(JsonNode tree) {
        List<ObjectNode> objects = new ArrayList<>();
        collect(tree, objects);
        if (objects.isEmpty()) {
            return;
        }
        ObjectNode owner = texts.any(objects);
        List<String> members = new ArrayList<>();
        owner.fieldNames().forEachRemaining(members::add);
        if (members.isEmpty() || texts.chance(0.1)) {
            owner.put(texts.any(names), texts.quantity());
            return;
        }
        String member = texts.any(members);
        switch (random.nextInt(9)) {
            case 0 -> owner.remove(member);
            case 1 -> owner.put(member, random.nextLong());
            case 2 -> owner.put(member, finite(Double.longBitsToDouble(random.nextLong())));
            case 3 ->
                owner.putObject(member)
                        .put("value", finite(random.nextGaussian() * 1e3))
                        .put("unit", texts.unit());
            case 4 -> owner.putArray(member).add(1).add("a").addObject();
            case 5 -> owner.putNull(member);
            case 6 -> owner.put(member, random.nextBoolean());
            default -> owner.set(member, TextNode.valueOf(replacement(member)));
        }
    }

    private static double finite(double value) {
        return Double.isFinite(value) ? value : 0;
    }

    private static void collect(JsonNode node, List<ObjectNode> objects) {
        if (node instanceof ObjectNode object) {
            objects.add(object);
        }
        node.forEach(child -> collect(child, objects));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private static Map<String, String> parameters(String target) {
        Map<String, String> parameters = new LinkedHashMap<>();
        String[] parts = target.split("\\?", 2);
        if (parts.length == 2) {
            for (String parameter : parts[1].split("&")) {
                String[] pair = parameter.split("=", 2);
                parameters.put(pair[0], pair.length == 1 ? "" : pair[1]);
            }
        }
        return parameters;
    }

    private static List<Body> bodies() {
        try (Stream<Path> files = Files.walk(EXAMPLES)) {
            List<Body> bodies = new ArrayList<>();
            for (Path file : files.filter(name -> name.toString().endsWith(".request.json"))
                    .sorted()
                    .toList()) {
                String url = Files.readString(Path.of(file.toString().replace(".request.json", ".url")));
                String text = Files.readString(file);
                bodies.add(new Body(url.strip().split("\\?")[0], text, MAPPER.readTree(text)));
            }
            return bodies;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Stream<String> files(String... names) {
        try (Stream<Path> files = Files.walk(EXAMPLES)) {
            List<String> texts = new ArrayList<>();
            for (Path file : files.filter(
                            file -> List.of(names).contains(file.getFileName().toString()))
                    .filter(file ->
                            !SLOW.contains(file.getParent().getFileName().toString()))
                    .sorted()
                    .toList()) {
                texts.add(Files.readString(file).strip());
            }
            return texts.stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
