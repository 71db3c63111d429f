package io.loopstate.web.page;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.web.page.Question.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A table of the answer.
 *
 * @param id of the element
 * @param title above it
 * @param head names of its columns; empty where it is a list of names and values
 * @param rows its cells, of which the first names the row
 */
public record Table(String id, String title, List<String> head, List<List<String>> rows) {
    /** A row of the reply with what it is called. */
    private record Row(String name, JsonNode node) {}

    /** Copies the lists. */
    public Table {
        head = List.copyOf(head);
        rows = rows.stream().map(List::copyOf).toList();
    }

    /** The part of a reply as a table; empty where the reply has none of it. */
    static Optional<Table> of(Part part, String id, JsonNode reply, Labels labels) {
        return part.columns().isEmpty() ? list(part, id, reply, labels) : grid(part, id, reply, labels);
    }

    private static Optional<Table> list(Part part, String id, JsonNode reply, Labels labels) {
        List<List<String>> rows = new ArrayList<>();
        for (JsonPointer pointer : part.pointers()) {
            reply.at(pointer).properties().forEach(member -> {
                JsonNode value = member.getValue();
                if (value.isValueNode() || Labels.quantity(value)) {
                    rows.add(List.of(Labels.words(member.getKey()), labels.text(value)));
                }
            });
        }
        return rows.isEmpty() ? Optional.empty() : Optional.of(new Table(id, part.title(), List.of(), rows));
    }

    private static Optional<Table> grid(Part part, String id, JsonNode reply, Labels labels) {
        List<Row> rows = rows(part, reply);
        List<String> present = part.columns().stream()
                .filter(column -> rows.stream().anyMatch(row -> shown(row.node().path(column))))
                .toList();
        if (rows.isEmpty() || present.isEmpty()) {
            return Optional.empty();
        }
        List<String> head = new ArrayList<>();
        if (!rows.get(0).name().isEmpty()) {
            head.add("");
        }
        present.forEach(column -> head.add(Labels.words(column) + unit(rows, column, labels)));
        List<List<String>> cells =
                rows.stream().map(row -> cells(row, present, rows, labels)).toList();
        return Optional.of(new Table(id, part.title(), head, cells));
    }

    private static boolean shown(JsonNode value) {
        return !value.isMissingNode() && !(value.isArray() && value.isEmpty());
    }

    private static List<Row> rows(Part part, JsonNode reply) {
        List<Row> rows = new ArrayList<>();
        for (JsonPointer pointer : part.pointers()) {
            JsonNode node = reply.at(pointer);
            if (node.isArray()) {
                node.forEach(element -> rows.add(new Row("", element)));
            } else if (node.isObject()) {
                rows.add(new Row(Labels.words(pointer.last().getMatchingProperty()), node));
            }
        }
        return rows;
    }

    private static List<String> cells(Row row, List<String> columns, List<Row> rows, Labels labels) {
        List<String> cells = new ArrayList<>();
        if (!row.name().isEmpty()) {
            cells.add(row.name());
        }
        for (String column : columns) {
            JsonNode value = row.node().path(column);
            boolean unitAbove =
                    Labels.quantity(value) && !unit(rows, column, labels).isEmpty();
            cells.add(unitAbove ? Labels.number(value) : labels.text(value));
        }
        return cells;
    }

    /** The unit of a column, where all of its values have the same one. */
    private static String unit(List<Row> rows, String column, Labels labels) {
        String units = rows.stream()
                .map(row -> row.node().path(column).path("unit"))
                .filter(unit -> !unit.isMissingNode())
                .map(JsonNode::asText)
                .distinct()
                .collect(Collectors.joining(" "));
        return units.isEmpty() || units.contains(" ") ? "" : ", " + labels.symbol(units);
    }
}
