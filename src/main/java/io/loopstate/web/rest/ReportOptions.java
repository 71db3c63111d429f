package io.loopstate.web.rest;

import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.Nearest;
import io.loopstate.web.problem.ProblemException;
import io.loopstate.web.problem.ProblemKind;
import jakarta.ws.rs.core.MediaType;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The parameters of a request for a report.
 *
 * @param form of the report
 * @param onMismatch status of a report with a mismatch
 * @param source the one that is asked for; empty for all
 * @param details whether single values are told
 */
record ReportOptions(ReportForm form, int onMismatch, Optional<String> source, boolean details) {
    private static final String FORMAT = "format";
    private static final String ON_MISMATCH = "onMismatch";
    private static final String SOURCE = "source";
    private static final String DETAILS = "details";
    private static final String CACHE_BUSTER = "_";

    /** Of {@code /v1/verify}. */
    static ReportOptions ofVerify(Map<String, List<String>> parameters, List<MediaType> accepted) {
        return of(
                parameters,
                accepted,
                List.of(ReportForm.JSON, ReportForm.JUNIT, ReportForm.TAP),
                List.of(FORMAT, ON_MISMATCH),
                List.of());
    }

    /** Of {@code /v1/verification}, whose details are told by default where one source is asked for. */
    static ReportOptions ofVerification(
            Map<String, List<String>> parameters, List<MediaType> accepted, List<String> sources) {
        return of(
                parameters,
                accepted,
                List.of(ReportForm.JSON, ReportForm.HTML, ReportForm.JUNIT),
                List.of(FORMAT, SOURCE, DETAILS),
                sources);
    }

    private static ReportOptions of(
            Map<String, List<String>> parameters,
            List<MediaType> accepted,
            List<ReportForm> forms,
            List<String> known,
            List<String> sources) {
        List<Fault> faults = new ArrayList<>();
        parameters.keySet().stream().sorted().forEach(name -> {
            if (!known.contains(name) && !name.equals(CACHE_BUSTER)) {
                faults.add(Fault.parameter(name, "unknown-parameter", "There is no parameter of this name here.")
                        .withGot(name)
                        .withAllowed(String.join(", ", known))
                        .withHint(Nearest.hint(name, known)));
            }
        });
        List<String> keys = forms.stream().map(ReportForm::key).toList();
        String format = one(FORMAT, parameters, keys, faults);
        String onMismatch = one(ON_MISMATCH, parameters, List.of("200", "422"), faults);
        String source = one(SOURCE, parameters, sources, faults);
        String details = one(DETAILS, parameters, List.of("true", "false"), faults);
        if (!faults.isEmpty()) {
            throw new ProblemException(ProblemKind.INVALID_REQUEST, faults);
        }
        ReportForm form = ReportForm.named(format)
                .or(() -> ReportForm.accepted(forms, accepted))
                .orElse(ReportForm.JSON);
        return new ReportOptions(
                form,
                onMismatch.equals("422") ? 422 : 200,
                Optional.of(source).filter(name -> !name.isEmpty()),
                details.isEmpty() ? !source.isEmpty() : details.equals("true"));
    }

    /** The value of a parameter, empty where it is not given or faulty. */
    private static String one(
            String name, Map<String, List<String>> parameters, List<String> allowed, List<Fault> faults) {
        List<String> values = parameters.getOrDefault(name, List.of());
        if (values.isEmpty()) {
            return "";
        }
        if (values.size() > 1 || !allowed.contains(values.get(0))) {
            faults.add(Fault.parameter(name, "wrong-value", "This parameter has another value than those allowed.")
                    .withGot(String.join(", ", values))
                    .withAllowed("one of " + String.join(", ", allowed))
                    .withHint(Nearest.hint(values.get(0), allowed)));
            return "";
        }
        return values.get(0);
    }
}
