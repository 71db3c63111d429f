package io.loopstate.web.verification;

import io.loopstate.web.dto.VerificationReply;
import io.loopstate.web.dto.VerifiedOutcome;
import io.loopstate.web.dto.VerifiedSource;
import io.loopstate.web.dto.VerifiedValue;
import io.loopstate.web.verify.JUnitXml;
import java.util.List;

/** A report as the XML that build servers read: a suite for each source, a test for each value. */
public final class VerificationXml {
    private VerificationXml() {}

    /** A report with details as XML; known deviations pass, and are told with their reason. */
    public static String of(VerificationReply report) {
        return JUnitXml.of(
                "published values",
                report.sources().stream().map(VerificationXml::group).toList());
    }

    private static JUnitXml.Group group(VerifiedSource source) {
        return new JUnitXml.Group(
                source.source(),
                source.values().stream().map(VerificationXml::test).toList());
    }

    private static JUnitXml.Test test(VerifiedValue value) {
        List<String> lines = value.outcome() == VerifiedOutcome.MET
                ? List.of()
                : List.of(Comparison.words(value), value.reason() == null ? value.request() : value.reason());
        boolean failed = value.outcome() == VerifiedOutcome.UNEXPECTED;
        return new JUnitXml.Test(
                value.id() + ' ' + value.quantity(), failed ? lines : List.of(), failed ? List.of() : lines);
    }
}
