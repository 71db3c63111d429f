package io.loopstate.units;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads the resource {@code units/units.txt}; its head describes the columns. */
final class UnitTable {
    private static final String RESOURCE = "/units/units.txt";
    private static final int COLUMNS = 10;

    private final List<Row> rows = new ArrayList<>();
    private final Map<String, String> refusals = new LinkedHashMap<>();

    /** One scale: the tokens on it and what is known of it. */
    record Row(
            List<String> tokens,
            List<QuantityKind> kinds,
            String words,
            String symbol,
            String ucum,
            String definition,
            Scale scale,
            String factor,
            String qudt,
            List<String> spellings,
            String note) {

        /** Pressures are read on more than one reference; a unit with one token only needs no qualifier. */
        boolean needsReference() {
            return kinds.contains(QuantityKind.PRESSURE) && tokens.size() > 1;
        }

        /** Symbol, UCUM code and further spellings, without any word of what is counted from where. */
        List<String> bareSpellings() {
            Set<String> all = new LinkedHashSet<>();
            all.add(symbol);
            if (!ucum.isEmpty()) {
                all.add(ucum);
            }
            all.addAll(spellings);
            return List.copyOf(all);
        }

        /** The accepted spellings beside the token itself. */
        List<String> spellingsOf(PressureReference reference) {
            if (!needsReference()) {
                return bareSpellings();
            }
            List<String> all = new ArrayList<>();
            for (String bare : bareSpellings()) {
                switch (reference) {
                    case GAUGE -> Collections.addAll(all, bare + "(g)", bare + " gauge");
                    case ABSOLUTE -> Collections.addAll(all, bare + "(a)", bare + " abs");
                    case VACUUM -> all.add(bare + " vacuum");
                    case DIFFERENCE, NONE -> Collections.addAll(all, bare, bare + " diff", "Δ" + bare);
                }
            }
            return List.copyOf(all);
        }
    }

    private UnitTable() {}

    static UnitTable load() {
        UnitTable table = new UnitTable();
        try (InputStream stream = UnitTable.class.getResourceAsStream(RESOURCE)) {
            if (stream == null) {
                throw new IllegalStateException("resource missing: " + RESOURCE);
            }
            BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8));
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                table.read(line);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return table;
    }

    List<Row> rows() {
        return Collections.unmodifiableList(rows);
    }

    /** Spellings that are refused, with the reason. */
    Map<String, String> refusals() {
        return Collections.unmodifiableMap(refusals);
    }

    private void read(String line) {
        if (line.isBlank() || line.startsWith("#")) {
            return;
        }
        String[] cells = line.split("\\|", -1);
        for (int i = 0; i < cells.length; i++) {
            cells[i] = cells[i].strip();
        }
        if (line.startsWith("!")) {
            for (String spelling : commas(cells[0].substring(1))) {
                refusals.put(spelling, cells[1]);
            }
            return;
        }
        if (cells.length != COLUMNS) {
            throw new IllegalStateException("not " + COLUMNS + " columns: " + line);
        }
        List<QuantityKind> kinds = new ArrayList<>();
        for (String key : cells[1].split(" ")) {
            kinds.add(QuantityKind.ofKey(key));
        }
        rows.add(new Row(
                List.of(cells[0].split(" ")),
                List.copyOf(kinds),
                cells[2],
                cells[3],
                cells[4],
                cells[5].isEmpty() ? cells[4] : cells[5],
                new Scale(cells[6]),
                cells[6],
                cells[7],
                commas(cells[8]),
                cells[9]));
    }

    private static List<String> commas(String cell) {
        List<String> texts = new ArrayList<>();
        for (String text : cell.split(",")) {
            if (!text.isBlank()) {
                texts.add(text.strip());
            }
        }
        return List.copyOf(texts);
    }
}
