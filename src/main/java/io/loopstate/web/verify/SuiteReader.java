package io.loopstate.web.verify;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeType;
import io.loopstate.web.dto.VerifyCase;
import io.loopstate.web.dto.VerifyRequest;
import io.loopstate.web.mapping.Operations;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.Nearest;
import io.loopstate.web.problem.Pointer;
import io.loopstate.web.problem.ProblemException;
import io.loopstate.web.problem.ProblemKind;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;

/** Reads a file of cases; everything that is wrong with it is told at once. */
final class SuiteReader {
    /** Cases of a file. */
    static final int MOST_CASES = 1000;
    /** Expectations of a case. */
    static final int MOST_EXPECTATIONS = 100;

    private static final int LONGEST_NAME = 200;
    private static final String UNNAMED = "verify";
    private static final List<String> PROBLEMS = Stream.of(ProblemKind.values())
            .filter(kind -> kind.status() == 400 || kind.status() == 422)
            .filter(kind -> kind != ProblemKind.EXPECTATIONS_NOT_MET)
            .map(ProblemKind::code)
            .toList();

    private final List<Fault> faults = new ArrayList<>();
    private final Set<String> ids = new HashSet<>();

    private SuiteReader() {}

    /**
     * Reads a file.
     *
     * @throws ProblemException {@link ProblemKind#INVALID_REQUEST}, with every fault
     */
    static Suite read(JsonNode file) {
        SuiteReader reader = new SuiteReader();
        Optional<Suite> suite = FileNode.of(file, Pointer.ROOT, VerifyRequest.class, reader.faults)
                .map(reader::suite);
        if (!reader.faults.isEmpty()) {
            throw new ProblemException(ProblemKind.INVALID_REQUEST, reader.faults);
        }
        return suite.orElseThrow();
    }

    private Suite suite(FileNode file) {
        String name = file.text("name", LONGEST_NAME).orElse(UNNAMED);
        file.require("cases", "an array of 1 to " + MOST_CASES + " cases");
        List<JsonNode> nodes = file.list("cases", MOST_CASES);
        List<Case> cases = new ArrayList<>(nodes.size());
        for (int i = 0; i < nodes.size(); i++) {
            FileNode.of(nodes.get(i), Pointer.child(file.pointer("cases"), i), VerifyCase.class, faults)
                    .flatMap(this::read)
                    .ifPresent(cases::add);
        }
        return new Suite(name, cases);
    }

    private Optional<Case> read(FileNode node) {
        node.require("id", "1 to " + LONGEST_NAME + " characters");
        Optional<String> id = node.text("id", LONGEST_NAME);
        if (id.isPresent() && !ids.add(id.get())) {
            node.fault("id", "duplicate-id", "Another case has this id.", id.get(), "ids that are unique in the file");
        }
        Optional<String> operation = operation(node);
        node.require("request", "the body of the calculation");
        Optional<JsonNode> request = node.member("request", JsonNodeType.OBJECT);
        Optional<String> problem = problem(node);
        OptionalInt status = status(node);
        Optional<JsonNode> expect = node.member("expect");
        boolean otherwise = problem.isPresent() || status.isPresent();
        if (expect.isEmpty() && !otherwise) {
            node.fault("missing", "Nothing is expected of this case.", "expect, expectProblem or expectedStatus");
        }
        // An empty list is one that is not given, where something else is expected.
        boolean none = otherwise
                && expect.isPresent()
                && expect.get().isArray()
                && expect.get().isEmpty();
        List<Expected> expected = none ? List.of() : expected(node);
        return operation.isPresent() && id.isPresent() && request.isPresent()
                ? Optional.of(new Case(id.get(), operation.get(), request.get(), expected, problem, status))
                : Optional.empty();
    }

    private List<Expected> expected(FileNode node) {
        List<JsonNode> nodes = node.list("expect", MOST_EXPECTATIONS);
        List<Expected> expected = new ArrayList<>(nodes.size());
        for (int i = 0; i < nodes.size(); i++) {
            ExpectedReader.read(nodes.get(i), Pointer.child(node.pointer("expect"), i), faults)
                    .ifPresent(expected::add);
        }
        return expected;
    }

    private static Optional<String> operation(FileNode node) {
        String names = String.join(", ", Operations.names());
        node.require("operation", names);
        Optional<String> name = node.member("operation", JsonNodeType.STRING)
                .map(JsonNode::textValue)
                .map(given -> given.replaceFirst("^/?v1/", ""));
        if (name.isPresent() && Operations.named(name.get()).isEmpty()) {
            node.fault(
                    "operation",
                    "unknown-operation",
                    "There is no calculation of this name.",
                    name.get(),
                    names,
                    Optional.ofNullable(Nearest.hint(name.get(), Operations.names())));
            return Optional.empty();
        }
        return name;
    }

    private static Optional<String> problem(FileNode node) {
        Optional<String> given =
                node.member("expectProblem", JsonNodeType.STRING).map(JsonNode::textValue);
        Optional<String> code = given.map(
                text -> text.replaceFirst("^urn:loopstate:problem:", "").toLowerCase(Locale.ROOT));
        if (code.isPresent() && !PROBLEMS.contains(code.get())) {
            node.fault(
                    "expectProblem",
                    "unknown-problem",
                    "No calculation is refused with this problem.",
                    given.get(),
                    String.join(", ", PROBLEMS),
                    Optional.ofNullable(Nearest.hint(code.get(), PROBLEMS)));
        }
        return code;
    }

    private static OptionalInt status(FileNode node) {
        Optional<JsonNode> given = node.member("expectedStatus", JsonNodeType.NUMBER);
        if (given.isEmpty()) {
            return OptionalInt.empty();
        }
        int status = given.get().isInt() ? given.get().intValue() : 0;
        if (status != 200 && status != 400 && status != 422) {
            node.fault(
                    "expectedStatus",
                    "wrong-value",
                    "No calculation is answered with this status.",
                    given.get().asText(),
                    "200, 400 or 422");
        }
        return OptionalInt.of(status);
    }
}
