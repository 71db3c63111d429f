package io.loopstate.engine.fluid;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The fluids and blends shipped with the engine. The lists are read at once, a fluid's coefficients when it is first asked for.
 */
public final class Catalog {
    private static final String FOLDER = "/fluids/";
    private static final String MIXTURES = "/mixtures/";
    private static final String IGNORED = " \t\n\u000B\f\r()-_,";

    /** What the list holds of a fluid before its file is read. */
    private record Entry(String designation, String file, String name) {}

    /** The key of each designation in its own spelling, which most requests use. */
    private final Map<String, String> keys = new HashMap<>();

    private final Map<String, Entry> entries = new LinkedHashMap<>();
    private final Map<String, Entry> byKey = new HashMap<>();
    private final Map<String, Fluid> loaded = new ConcurrentHashMap<>();
    private final Blends blends;
    private final Map<String, String> blendByKey = new HashMap<>();

    private Catalog(JsonObject index) {
        for (JsonObject item : index.objects("fluids")) {
            Entry entry = new Entry(item.text("designation"), item.text("file"), item.text("name"));
            entries.put(entry.designation(), entry);
            keep(entry.designation());
            byKey.put(key(entry.designation()), entry);
            byKey.putIfAbsent(key(entry.name()), entry);
            item.optionalTexts("aliases").forEach(alias -> byKey.putIfAbsent(key(alias), entry));
        }
        blends = new Blends(this, Catalog::mixtures);
        blends.designations().forEach(d -> {
            keep(d);
            blendByKey.putIfAbsent(key(d), d);
        });
    }

    /** The catalog on the class path. */
    public static Catalog bundled() {
        try (InputStream stream = open(FOLDER + "index.json")) {
            return new Catalog(JsonObject.read(stream));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static InputStream open(String path) throws IOException {
        InputStream stream = Catalog.class.getResourceAsStream(path);
        if (stream == null) {
            throw new IOException("no resource " + path);
        }
        return stream;
    }

    private static JsonObject mixtures(String file) {
        try (InputStream stream = open(MIXTURES + file)) {
            return JsonObject.read(stream);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Designations in catalog order. */
    public Collection<String> designations() {
        return List.copyOf(entries.keySet());
    }

    /** Every fluid in catalog order; reads the files that were not read yet. */
    public List<Fluid> all() {
        return entries.values().stream().map(this::load).toList();
    }

    /**
     * A fluid by designation, name or alias: case, spaces, hyphens, parentheses and the leading R do not matter ({@code
     * R-134a}, {@code r134a}, {@code 134a}).
     */
    public Optional<Fluid> find(String designation) {
        return Optional.ofNullable(byKey.get(key(designation))).map(this::load);
    }

    /** The designation of a fluid or blend by designation, name or alias, spelled as for {@link #find}; reads no file. */
    public Optional<String> designation(String text) {
        String key = key(text);
        Entry entry = byKey.get(key);
        return Optional.ofNullable(entry == null ? blendByKey.get(key) : entry.designation());
    }

    /** Designations of the blends whose composition is on file. */
    public Collection<String> blendDesignations() {
        return List.copyOf(blends.designations());
    }

    /** The blends whose phase boundary is on file, in catalog order; reads what was not read yet. */
    public List<Blend> blends() {
        return blends.designations().stream()
                .map(blends::blend)
                .flatMap(Optional::stream)
                .toList();
    }

    /** The compositions of all catalogued blends in catalog order, whether or not their figures are on file. */
    public List<Mixture> mixtures() {
        return blends.designations().stream().map(blends::mixture).toList();
    }

    /** The composition of a catalogued blend by designation, spelled as for {@link #find}. */
    public Optional<Mixture> mixture(String designation) {
        return Optional.ofNullable(blendByKey.get(key(designation))).map(blends::mixture);
    }

    /**
     * A mixture of the caller's own composition; where a catalogued blend has it, in whatever order, that blend's.
     *
     * <p>Two to ten pure components, each once, each at least 1e-6 of the mass, in all 1 to 1e-6.
     *
     * @throws CompositionException for whatever else
     */
    public Mixture mixture(Composition composition) {
        return blends.mixture(composition);
    }

    boolean isBlend(String designation) {
        return blendByKey.containsKey(key(designation));
    }

    /** A fluid or a blend by designation, name or alias, spelled as for {@link #find}. */
    public Optional<Refrigerant> refrigerant(String designation) {
        Optional<Refrigerant> fluid = find(designation).map(Refrigerant.class::cast);
        return fluid.isPresent()
                ? fluid
                : Optional.ofNullable(blendByKey.get(key(designation))).flatMap(blends::blend);
    }

    private Fluid load(Entry entry) {
        return loaded.computeIfAbsent(entry.designation(), d -> {
            try {
                return FluidReader.read(open(FOLDER + entry.file()));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    /** Up to {@code limit} designations of fluids and computed blends spelled most like the one given, the nearest first. */
    public List<String> similar(String designation, int limit) {
        String wanted = key(designation);
        List<Map.Entry<Integer, String>> ranked = new ArrayList<>();
        byKey.forEach((key, entry) -> ranked.add(Map.entry(unlikeness(wanted, key), entry.designation())));
        blendByKey.forEach((key, blend) -> {
            if (blends.hasFigures(blend)) {
                ranked.add(Map.entry(unlikeness(wanted, key), blend));
            }
        });
        return ranked.stream()
                .filter(r -> r.getKey() <= 1 + Math.max(2, wanted.length() / 3))
                .sorted(Comparator.comparing((Map.Entry<Integer, String> r) -> r.getKey())
                        .thenComparing(Map.Entry::getValue))
                .map(Map.Entry::getValue)
                .distinct()
                .limit(limit)
                .toList();
    }

    private void keep(String designation) {
        keys.put(designation, key(designation));
    }

    private String key(String text) {
        String kept = keys.get(text);
        return kept == null ? spelled(text) : kept;
    }

    private static String spelled(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        StringBuilder key = new StringBuilder(lower.length());
        for (int i = 0; i < lower.length(); i++) {
            char c = lower.charAt(i);
            if (IGNORED.indexOf(c) < 0) {
                key.append(c);
            }
        }
        return numbered(key) ? key.substring(1) : key.toString();
    }

    /** Whether the leading R is that of a number, as in r134a or rc318, and not of a name. */
    private static boolean numbered(CharSequence key) {
        if (key.length() < 2 || key.charAt(0) != 'r') {
            return false;
        }
        char second = key.charAt(1);
        return digit(second) || (second == 'c' || second == 'e') && key.length() > 2 && digit(key.charAt(2));
    }

    private static boolean digit(char c) {
        return c >= '0' && c <= '9';
    }

    /** Edit distance; a designation whose end was left out, R-134 for R-134a, comes before every other. */
    private static int unlikeness(String wanted, String key) {
        return !wanted.isEmpty() && key.startsWith(wanted)
                ? key.length() == wanted.length() ? 0 : 1
                : 1 + distance(wanted, key);
    }

    /** Levenshtein's edit distance. */
    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int replaced = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(replaced, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}
