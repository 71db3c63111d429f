package io.loopstate.web.verify;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.web.dto.Quantity;
import io.loopstate.web.dto.VerifyCaseReport;
import io.loopstate.web.dto.VerifyRefusal;
import io.loopstate.web.dto.VerifyReport;
import io.loopstate.web.dto.VerifyTotals;
import io.loopstate.web.dto.VerifyValueReport;
import io.loopstate.web.dto.VerifyWarning;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.Problem;
import io.loopstate.web.problem.ProblemException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Answers the requests of a file and compares the replies with what is expected. */
public final class Verifier {
    private final Answers answers;
    private final String engineVersion;

    /** Compares these answers. */
    public Verifier(Answers answers, String engineVersion) {
        this.answers = answers;
        this.engineVersion = engineVersion;
    }

    /**
     * The report on a file of at most 1000 cases of at most 100 expectations each.
     *
     * @throws ProblemException with every fault of the file
     */
    public VerifyReport verify(JsonNode file) {
        Suite suite = SuiteReader.read(file);
        List<VerifyCaseReport> cases = suite.cases().stream().map(this::report).toList();
        List<VerifyValueReport> values =
                cases.stream().flatMap(one -> one.expectations().stream()).toList();
        int passed = (int) cases.stream().filter(VerifyCaseReport::passed).count();
        VerifyTotals totals = new VerifyTotals(
                cases.size(),
                passed,
                values.size(),
                (int) values.stream().filter(VerifyValueReport::passed).count(),
                cases.stream().mapToInt(one -> one.warnings().size()).sum());
        return new VerifyReport(suite.name(), passed == cases.size(), totals, cases, engineVersion);
    }

    private VerifyCaseReport report(Case one) {
        Answer answer = answers.toBody(one.operation(), one.request());
        Optional<String> message = unexpected(one, answer);
        Judge judge = new Judge(answer);
        List<VerifyValueReport> values = one.expected().stream()
                .map(expected -> message.isPresent() && answer.problem().isPresent() != one.refusalExpected()
                        ? Judge.failed(expected, "Not compared: " + message.get())
                        : judge.judge(expected))
                .toList();
        JsonNode tree = answer.tree();
        return new VerifyCaseReport(
                one.id(),
                one.operation(),
                message.isEmpty() && values.stream().allMatch(VerifyValueReport::passed),
                answer.status(),
                message.orElse(null),
                values,
                answer.problem().map(Verifier::refusal).orElse(null),
                tree.at("/basis/referenceState").textValue(),
                quantity(tree.at("/basis/atmosphere/pressure")),
                warnings(tree.path("warnings")));
    }

    /** What was not as expected beside the values. */
    private static Optional<String> unexpected(Case one, Answer answer) {
        String answered = answer.problem()
                .map(problem -> "refused with " + problem.status() + ' ' + problem.code() + ": " + problem.detail())
                .orElse("answered with 200.");
        if (one.problem().isPresent() && !answer.problem().map(Problem::code).equals(one.problem())) {
            return Optional.of("The problem " + one.problem().get() + " is expected, but the request was " + answered);
        }
        int status = one.status().orElse(one.problem().isPresent() ? answer.status() : 200);
        return status == answer.status()
                ? Optional.empty()
                : Optional.of("The status " + status + " is expected, but the request was " + answered);
    }

    private static VerifyRefusal refusal(Problem problem) {
        return new VerifyRefusal(
                problem.code(),
                problem.detail(),
                problem.errors().stream().map(Verifier::fault).toList());
    }

    private static String fault(Fault fault) {
        return fault.pointer() == null ? fault.code() : fault.code() + " at " + fault.pointer();
    }

    private static Quantity quantity(JsonNode node) {
        return node.isMissingNode()
                ? null
                : new Quantity(node.get("value").doubleValue(), node.get("unit").textValue());
    }

    private static List<VerifyWarning> warnings(JsonNode nodes) {
        List<VerifyWarning> warnings = new ArrayList<>();
        nodes.forEach(node -> warnings.add(new VerifyWarning(
                node.get("code").textValue(),
                node.get("severity").textValue(),
                node.get("subject").textValue(),
                node.get("message").textValue())));
        return warnings;
    }
}
