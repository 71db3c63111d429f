package io.loopstate.web.form;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.Nearest;
import io.loopstate.web.problem.ProblemException;
import io.loopstate.web.problem.ProblemKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/** Chooses the values of a reply that are to be written. */
public final class Selection {
    /** Members that a reply rests on rather than consists of; their values are chosen by pointer or full name only. */
    static final Set<String> TRUST = Set.of("working", "basis", "warnings", "cautions");

    private static final String WARNINGS = "warnings";
    private static final String ENGINE_VERSION = "engineVersion";
    private static final int MOST_NAMES = 60;

    private final JsonNode reply;
    private final List<Leaf> all;

    private Selection(JsonNode reply) {
        this.reply = reply;
        this.all = Leaves.of(reply);
    }

    /**
     * The sheet of a reply.
     *
     * @param reply the whole reply
     * @param type of the reply
     * @param picks pointers or names; empty for every value
     * @throws ProblemException INVALID_REQUEST where a pick means no value or several
     */
    public static Sheet sheet(JsonNode reply, Class<?> type, List<String> picks) {
        return new Selection(reply).sheet(RowsOfReply.of(type), picks);
    }

    /**
     * The values of a reply that is one row among many, with the codes of its warnings behind them.
     *
     * @param picks pointers or names; empty for every value
     * @param unknown told of a pick that means no value of this reply or several; it is left out
     */
    public static List<Leaf> row(JsonNode reply, List<String> picks, BiConsumer<String, ProblemException> unknown) {
        Selection selection = new Selection(reply);
        if (picks.isEmpty()) {
            return selection.withWarnings(
                    selection.all.stream().filter(Selection::ofReply).toList());
        }
        List<Leaf> chosen = new ArrayList<>();
        for (String pick : picks) {
            try {
                chosen.addAll(pick.equals(WARNINGS) ? List.of() : leaves(pick, selection.all));
            } catch (ProblemException e) {
                unknown.accept(pick, e);
            }
        }
        selection.warnings().ifPresent(chosen::add);
        return chosen;
    }

    private Sheet sheet(Optional<RowsOfReply> rows, List<String> picks) {
        if (picks.size() == 1) {
            Optional<JsonNode> array = array(picks.get(0));
            if (array.isPresent()) {
                return Sheet.ofRows(rows(array.get()));
            }
        }
        boolean pointers = picks.stream().anyMatch(pick -> pick.startsWith("/"));
        if (rows.isPresent() && !pointers) {
            List<List<Leaf>> lines = rows.get().in(reply);
            return Sheet.ofRows(
                    picks.isEmpty() ? lines.stream().map(this::withWarnings).toList() : picked(lines, picks));
        }
        if (picks.isEmpty()) {
            return Sheet.of(withWarnings(all.stream().filter(Selection::ofReply).toList()));
        }
        List<Leaf> chosen = new ArrayList<>();
        picks.forEach(pick -> chosen.addAll(leaves(pick, all)));
        return Sheet.of(chosen);
    }

    /** Each row with the values picked; a value that a row lacks but another has is left out of it. */
    private static List<List<Leaf>> picked(List<List<Leaf>> lines, List<String> picks) {
        List<Leaf> any = lines.stream().flatMap(List::stream).toList();
        List<Leaf> distinct = new ArrayList<>();
        for (Leaf leaf : any) {
            if (distinct.stream().noneMatch(other -> other.path().equals(leaf.path()))) {
                distinct.add(leaf);
            }
        }
        List<String> names = picks.stream()
                .flatMap(pick -> leaves(pick, distinct).stream())
                .map(Leaf::name)
                .toList();
        return lines.stream()
                .map(line -> names.stream()
                        .flatMap(
                                name -> line.stream().filter(leaf -> leaf.name().equals(name)))
                        .toList())
                .toList();
    }

    private static boolean ofReply(Leaf leaf) {
        return !TRUST.contains(leaf.first());
    }

    /** The array of objects that a pick means. */
    private Optional<JsonNode> array(String pick) {
        JsonNode node = reply.at(pick.startsWith("/") ? pointer(pick) : pointer('/' + pick.replace('.', '/')));
        return node.isArray() && !node.isEmpty() && node.get(0).isObject() ? Optional.of(node) : Optional.empty();
    }

    /** Every text with a slash in front is a pointer. */
    private static JsonPointer pointer(String text) {
        return JsonPointer.compile(text);
    }

    private static List<List<Leaf>> rows(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false).map(Leaves::of).toList();
    }

    /** Warnings as codes, and the engine's version: what a number should not be parted from. */
    private List<Leaf> withWarnings(List<Leaf> leaves) {
        List<Leaf> more = new ArrayList<>(leaves);
        warnings().ifPresent(more::add);
        JsonNode version = reply.path("basis").path(ENGINE_VERSION);
        if (version.isTextual()) {
            more.add(new Leaf(Trail.of(ENGINE_VERSION), version, Optional.empty()));
        }
        return more;
    }

    private Optional<Leaf> warnings() {
        if (!reply.path(WARNINGS).isArray()) {
            return Optional.empty();
        }
        String codes = StreamSupport.stream(reply.get(WARNINGS).spliterator(), false)
                .map(warning -> warning.path("code").asText())
                .collect(Collectors.joining("; "));
        return Optional.of(new Leaf(Trail.of(WARNINGS), TextNode.valueOf(codes), Optional.empty()));
    }

    /** The values that a pick means: one, or all below an object. */
    private static List<Leaf> leaves(String pick, List<Leaf> all) {
        return pick.startsWith("/") ? atPointer(pick, all) : named(pick, all);
    }

    private static List<Leaf> atPointer(String text, List<Leaf> all) {
        JsonPointer pointer = pointer(text);
        for (Leaf leaf : all) {
            if (leaf.pointer().equals(pointer)) {
                return List.of(leaf);
            }
            if (leaf.unit().isPresent() && pointer.equals(leaf.pointer().appendProperty("value"))) {
                return List.of(leaf.withoutUnit());
            }
            if (leaf.unit().isPresent() && pointer.equals(leaf.pointer().appendProperty("unit"))) {
                return List.of(leaf.itsUnit());
            }
        }
        List<Leaf> below = all.stream()
                .filter(leaf -> leaf.pointer().toString().startsWith(text + '/'))
                .toList();
        if (below.isEmpty()) {
            throw unknown(
                    text, all.stream().map(leaf -> leaf.pointer().toString()).toList(), List.of());
        }
        return below;
    }

    private static List<Leaf> named(String name, List<Leaf> all) {
        for (Leaf leaf : all) {
            if (leaf.named(name)) {
                return List.of(leaf);
            }
        }
        List<Leaf> ends = all.stream()
                .filter(Selection::ofReply)
                .filter(leaf -> leaf.endsWith(name))
                .toList();
        if (ends.size() > 1) {
            throw new ProblemException(
                    ProblemKind.INVALID_REQUEST,
                    Fault.parameter("pick", "ambiguous-name", "Several values of the reply have this name.")
                            .withGot(name)
                            .withAllowed(names(ends.stream().map(Leaf::name).toList())));
        }
        if (ends.size() == 1) {
            return ends;
        }
        List<Leaf> below = all.stream()
                .filter(leaf -> String.join(".", leaf.path()).startsWith(name + '.'))
                .toList();
        if (below.isEmpty()) {
            throw unknown(
                    name,
                    all.stream().filter(Selection::ofReply).map(Leaf::name).toList(),
                    all);
        }
        return below;
    }

    /** The refusal of a pick that means several values where one is wanted. */
    static ProblemException notSingle(String pick, Sheet sheet) {
        return new ProblemException(
                ProblemKind.INVALID_REQUEST,
                Fault.parameter(
                                "pick",
                                "several-values",
                                "This form holds one value, and this name means several or none.")
                        .withGot(pick)
                        .withAllowed(names(
                                sheet.columns().stream().map(Sheet.Column::name).toList())));
    }

    private static ProblemException unknown(String pick, List<String> known, List<Leaf> all) {
        return new ProblemException(
                ProblemKind.INVALID_REQUEST,
                Fault.parameter("pick", "unknown-value", "This reply has no value of this name.")
                        .withGot(pick)
                        .withAllowed(names(known))
                        .withHint(Nearest.hint(pick, withEnds(known, all))));
    }

    /** The names, and the last part of each, by which values are mostly picked. */
    private static List<String> withEnds(List<String> known, List<Leaf> all) {
        return Stream.concat(
                        known.stream(), all.stream().filter(Selection::ofReply).map(Leaf::last))
                .distinct()
                .toList();
    }

    private static String names(List<String> names) {
        String first = names.stream().limit(MOST_NAMES).collect(Collectors.joining(", "));
        return names.size() <= MOST_NAMES ? first : first + " and " + (names.size() - MOST_NAMES) + " more";
    }
}
