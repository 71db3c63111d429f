package io.loopstate.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Printed values that the engine is known not to round to, each with a bound in units of its last printed digit and the
 * evidence that the print, not the engine, is off or belongs to another equation.
 */
final class KnownDeviations {
    /** A bound may not be more than this factor above the deviation it was stated for. */
    private static final double TIGHT = 1.2;

    private record Known(String printed, double units) {}

    private final Map<String, Known> known = new TreeMap<>();
    private final Set<String> seen = new HashSet<>();

    /** @param table whose deviations these are */
    KnownDeviations(String table) {
        for (NamedCsvRecord row : PublishedTable.records("known-deviations.csv")) {
            if (row.getField("table").equals(table)) {
                String key = key(row.getField("id"), row.getField("column"));
                assertFalse(row.getField("evidence").isBlank(), key + ": no evidence");
                Known value = new Known(row.getField("printed"), Double.parseDouble(row.getField("units")));
                assertEquals(null, known.put(key, value), key + ": listed twice");
            }
        }
    }

    /** Whether a deviation is listed, of this printed value and of this size. */
    boolean covers(String id, String column, String printed, double units) {
        Known value = known.get(key(id, column));
        boolean covered = value != null
                && value.printed().equals(printed)
                && units <= value.units()
                && value.units() <= TIGHT * units;
        if (covered) {
            seen.add(key(id, column));
        }
        return covered;
    }

    /** Fails where a listed value is met after all, or no longer in the table. */
    void requireAllSeen() {
        Set<String> gone = new HashSet<>(known.keySet());
        gone.removeAll(seen);
        assertEquals(Set.of(), gone, "listed as deviating, but met or absent");
    }

    private static String key(String id, String column) {
        return id + " " + column;
    }
}
