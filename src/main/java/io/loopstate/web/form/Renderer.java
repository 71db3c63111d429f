package io.loopstate.web.form;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.TextNode;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes replies, and refusals that are to look like replies, in the form asked for. */
public final class Renderer {
    private static final int LONGEST_ERROR = 1000;

    private Renderer() {}

    /**
     * A reply as text.
     *
     * @param layout any form but JSON and SVG
     * @param title of the reply, for people
     * @param reply the whole reply
     * @param type of the reply
     * @throws io.loopstate.web.problem.ProblemException where a pick means no value or several
     */
    public static String reply(Layout layout, String title, JsonNode reply, Class<?> type) {
        Sheet sheet = Selection.sheet(reply, type, layout.picks());
        return switch (layout.form()) {
            case CSV, TSV -> SeparatedText.of(sheet, layout);
            case TXT -> single(sheet, layout);
            case XML -> FlatXml.of(sheet, layout);
            case HTML -> page(layout, title, reply, sheet).render();
            case JSON, SVG -> throw new IllegalArgumentException(layout.form().name());
        };
    }

    /** The one number that is asked for, as text; empty where that takes the whole reply. */
    public static Optional<String> number(Layout layout, Object reply) {
        return layout.form() == Form.TXT && layout.picks().size() == 1
                ? PickedNumber.of(reply, layout.picks().get(0)).map(layout::text)
                : Optional.empty();
    }

    /** A refusal as text in the form of the reply. */
    public static String refusal(Layout layout, Problem problem) {
        String text = inline(problem);
        Sheet sheet = Sheet.of(List.of(new Leaf(Trail.of("error"), TextNode.valueOf(text), Optional.empty())));
        return switch (layout.form()) {
            case CSV, TSV -> SeparatedText.of(sheet, layout);
            case XML, SVG -> FlatXml.of(sheet, layout);
            case HTML ->
                new SheetPage(problem.title(), List.of("error"), List.of(List.of(text)), List.of(), "").render();
            case TXT -> text;
            case JSON -> throw new IllegalArgumentException(layout.form().name());
        };
    }

    /** A refusal on one line, for a cell. */
    public static String inline(Problem problem) {
        Stream<String> faults = problem.errors().isEmpty()
                ? Stream.of(constant(problem.code()) + ": " + problem.detail())
                : problem.errors().stream().map(Renderer::inline);
        String text = "#ERR " + faults.collect(Collectors.joining(" | "));
        String line = text.replaceAll("\\s+", " ");
        return line.length() <= LONGEST_ERROR ? line : line.substring(0, LONGEST_ERROR) + "...";
    }

    private static String inline(Fault fault) {
        String place = Objects.requireNonNullElse(fault.parameter(), Objects.requireNonNullElse(fault.pointer(), ""));
        return constant(fault.code()) + ": "
                + (place.isEmpty() ? "" : place + ": ") + fault.detail()
                + (fault.hint() == null ? "" : ' ' + fault.hint());
    }

    private static String constant(String code) {
        return code.toUpperCase(Locale.ROOT).replace('-', '_');
    }

    /** The only value of a sheet; a sheet of several has no single value. */
    private static String single(Sheet sheet, Layout layout) {
        List<JsonNode> values = sheet.rows().stream()
                .flatMap(List::stream)
                .filter(value -> !value.isMissingNode())
                .toList();
        if (values.size() != 1) {
            throw Selection.notSingle(layout.picks().get(0), sheet);
        }
        return layout.text(values.get(0));
    }

    private static SheetPage page(Layout layout, String title, JsonNode reply, Sheet sheet) {
        List<String> notes = new ArrayList<>();
        reply.path("warnings")
                .forEach(warning -> notes.add(warning.path("code").asText() + ": "
                        + warning.path("message").asText()));
        reply.path("cautions").forEach(caution -> notes.add(caution.asText()));
        JsonNode basis = reply.path("basis");
        String foot = Stream.of(basis.path("refrigerant"), basis.path("referenceState"), basis.path("engineVersion"))
                .filter(node -> !node.isMissingNode())
                .map(JsonNode::asText)
                .collect(Collectors.joining(", "));
        if (!sheet.single()) {
            return new SheetPage(
                    title,
                    sheet.columns().stream().map(Sheet.Column::header).toList(),
                    sheet.rows().stream()
                            .map(row ->
                                    row.stream().map(cell -> layout.text(cell)).toList())
                            .toList(),
                    notes,
                    foot);
        }
        List<List<String>> lines = new ArrayList<>();
        for (int i = 0; i < sheet.columns().size(); i++) {
            Sheet.Column column = sheet.columns().get(i);
            lines.add(List.of(
                    column.name(),
                    layout.text(sheet.rows().get(0).get(i)),
                    column.unit().orElse("")));
        }
        return new SheetPage(title, List.of("name", "value", "unit"), lines, notes, foot);
    }

    /** The same tree with its numbers rounded. */
    public static JsonNode rounded(JsonNode node, Layout layout) {
        JsonNodeFactory factory = JsonNodeFactory.instance;
        if (node.isFloatingPointNumber()) {
            return factory.numberNode(NumberText.rounded(node, layout.digits()).doubleValue());
        }
        if (node.isArray()) {
            var array = factory.arrayNode(node.size());
            node.forEach(element -> array.add(rounded(element, layout)));
            return array;
        }
        if (node.isObject()) {
            var object = factory.objectNode();
            node.properties().forEach(member -> object.set(member.getKey(), rounded(member.getValue(), layout)));
            return object;
        }
        return node.isMissingNode() ? MissingNode.getInstance() : node;
    }
}
