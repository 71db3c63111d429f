package io.loopstate.web.form;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A reply as columns and rows.
 *
 * @param columns in their order
 * @param rows as many cells as columns; a missing node where a row has no such value
 * @param single whether the reply as such is the one row
 */
public record Sheet(List<Column> columns, List<List<JsonNode>> rows, boolean single) {
    /**
     * A column.
     *
     * @param name flattened
     * @param unit of its quantities
     */
    public record Column(String name, Optional<String> unit) {
        /** The name with the unit. */
        public String header() {
            return unit.map(token -> name + '_' + token).orElse(name);
        }
    }

    /** Copies the lists. */
    public Sheet {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /** One row of values. */
    public static Sheet of(List<Leaf> leaves) {
        return of(List.of(leaves), true);
    }

    /** Rows of values; a value stands in the column of its name and unit. */
    public static Sheet ofRows(List<List<Leaf>> rows) {
        return of(rows, false);
    }

    private static Sheet of(List<List<Leaf>> rows, boolean single) {
        Map<Column, Integer> places = new HashMap<>();
        List<Column> columns = columns(rows);
        columns.forEach(column -> places.put(column, places.size()));
        List<List<JsonNode>> cells = new ArrayList<>();
        for (List<Leaf> row : rows) {
            List<JsonNode> line = new ArrayList<>(Collections.nCopies(places.size(), MissingNode.getInstance()));
            row.forEach(leaf -> line.set(places.get(new Column(leaf.name(), leaf.unit())), leaf.value()));
            cells.add(line);
        }
        return new Sheet(columns, cells, single);
    }

    /** A column that a later row is the first to have stands behind the one that is before it there. */
    private static List<Column> columns(List<List<Leaf>> rows) {
        List<Column> columns = new ArrayList<>();
        Set<Column> known = new HashSet<>();
        for (List<Leaf> row : rows) {
            Column before = null;
            for (Leaf leaf : row) {
                Column column = new Column(leaf.name(), leaf.unit());
                if (known.add(column)) {
                    columns.add(columns.lastIndexOf(before) + 1, column);
                }
                before = column;
            }
        }
        return columns;
    }
}
