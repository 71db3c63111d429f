package io.loopstate.web.page;

import com.fasterxml.jackson.core.JsonPointer;
import java.util.List;
import java.util.Optional;

/**
 * A calculation that the page can ask for.
 *
 * @param key its name on the page
 * @param label of its tab
 * @param purpose what it answers, in a sentence
 * @param operation its path below the version
 * @param picture what its picture shows; empty where none is shown
 * @param groups its fields
 * @param figures what a person looks at first, and what a cell of a spreadsheet may hold
 * @param tables the rest of the answer
 */
record Question(
        String key,
        String label,
        String purpose,
        String operation,
        Optional<String> picture,
        List<Group> groups,
        List<Figure> figures,
        List<Part> tables) {

    /**
     * Fields that belong together.
     *
     * @param title for a person
     * @param side name of the style: which side of the loop
     * @param folded whether they are put away until wanted
     * @param fields the fields
     */
    record Group(String title, String side, boolean folded, List<Field> fields) {}

    /**
     * A value of the reply.
     *
     * @param label for a person
     * @param pick its name among the values of the reply
     * @param pointer where it stands
     */
    record Figure(String label, String pick, JsonPointer pointer) {
        static Figure of(String label, String pick, String pointer) {
            return new Figure(label, pick, JsonPointer.compile(pointer));
        }
    }

    /**
     * A part of the reply that becomes a table.
     *
     * @param title for a person
     * @param pointers where its rows stand: an array of rows, or objects of which each is a row
     * @param columns members of a row, in order; empty for a table of names and values
     */
    record Part(String title, List<JsonPointer> pointers, List<String> columns) {
        static Part rows(String title, List<String> pointers, String... columns) {
            return new Part(title, pointers.stream().map(JsonPointer::compile).toList(), List.of(columns));
        }

        static Part list(String title, String... pointers) {
            return new Part(
                    title, List.of(pointers).stream().map(JsonPointer::compile).toList(), List.of());
        }
    }

    List<Field> fields() {
        return groups.stream().flatMap(group -> group.fields().stream()).toList();
    }
}
