package io.loopstate.web.form;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.loopstate.web.dto.Rows;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which elements of a reply are the rows of its table.
 *
 * @param member of the reply
 * @param each member of each element whose elements are the rows, empty where the elements themselves are
 */
record RowsOfReply(String member, String each) {
    private static final ClassValue<Optional<RowsOfReply>> KNOWN = new ClassValue<>() {
        @Override
        protected Optional<RowsOfReply> computeValue(Class<?> type) {
            if (type.isRecord()) {
                for (RecordComponent component : type.getRecordComponents()) {
                    Rows rows = component.getAnnotation(Rows.class);
                    if (rows != null) {
                        return Optional.of(new RowsOfReply(component.getName(), rows.each()));
                    }
                }
            }
            return Optional.empty();
        }
    };

    /** The rows of a kind of reply; empty where the reply is one row. */
    static Optional<RowsOfReply> of(Class<?> reply) {
        return KNOWN.get(reply);
    }

    /** The values of each row. */
    List<List<Leaf>> in(JsonNode reply) {
        List<List<Leaf>> rows = new ArrayList<>();
        for (JsonNode element : reply.path(member)) {
            if (each.isEmpty()) {
                rows.add(Leaves.of(element));
            } else {
                List<Leaf> shared = Leaves.of(element.<ObjectNode>deepCopy().without(each));
                for (JsonNode inner : element.path(each)) {
                    List<Leaf> row = new ArrayList<>(shared);
                    row.addAll(Leaves.of(inner, Trail.of(each)));
                    rows.add(row);
                }
            }
        }
        return rows;
    }
}
