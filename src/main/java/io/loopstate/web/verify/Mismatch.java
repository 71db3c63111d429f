package io.loopstate.web.verify;

import io.loopstate.web.dto.VerifyCaseReport;
import io.loopstate.web.dto.VerifyReport;
import io.loopstate.web.dto.VerifyValueReport;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.Pointer;
import io.loopstate.web.problem.Problem;
import io.loopstate.web.problem.ProblemKind;
import java.util.ArrayList;
import java.util.List;

/** A report with a mismatch as a refusal, for clients that ask for one. */
public final class Mismatch {
    private static final int MOST = 50;

    private Mismatch() {}

    /** The problem of a report that has not passed; the first 50 mismatches at their places in the file. */
    public static Problem of(VerifyReport report) {
        List<Fault> faults = new ArrayList<>();
        for (int i = 0; i < report.cases().size() && faults.size() < MOST; i++) {
            add(
                    faults,
                    Pointer.child(Pointer.ROOT + "/cases", i),
                    report.cases().get(i));
        }
        int failed = report.totals().cases() - report.totals().casesPassed();
        String detail = failed + " of " + report.totals().cases() + " cases failed.";
        return Problem.of(ProblemKind.EXPECTATIONS_NOT_MET, detail, faults.subList(0, Math.min(MOST, faults.size())));
    }

    private static void add(List<Fault> faults, String pointer, VerifyCaseReport one) {
        if (one.message() != null) {
            faults.add(Fault.at(pointer, "unexpected-answer", one.message()));
        }
        for (int i = 0; i < one.expectations().size(); i++) {
            VerifyValueReport value = one.expectations().get(i);
            if (!value.passed() && one.message() == null) {
                faults.add(Fault.at(Pointer.child(pointer + "/expect", i), "mismatch", ReportLines.failure(value)));
            }
        }
    }
}
