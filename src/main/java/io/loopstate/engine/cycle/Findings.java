package io.loopstate.engine.cycle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Collects the findings of one calculation, measured against its guidance. */
public final class Findings {
    private final Guidance guidance;
    private final List<Finding> found = new ArrayList<>();

    /** Measured against this guidance. */
    public Findings(Guidance guidance) {
        this.guidance = guidance;
    }

    /** Whether a value lies above a limit; adds a finding if so. */
    public boolean above(
            Guideline guideline, double value, FindingCode code, Severity severity, String subject, String message) {
        return add(value > guidance.limit(guideline).value(), guideline, value, code, severity, subject, message);
    }

    /** Whether a value lies below a limit; adds a finding if so. */
    public boolean below(
            Guideline guideline, double value, FindingCode code, Severity severity, String subject, String message) {
        return add(value < guidance.limit(guideline).value(), guideline, value, code, severity, subject, message);
    }

    /** Adds a finding whose limit follows from other inputs instead of guidance. */
    public void add(
            FindingCode code,
            Severity severity,
            String subject,
            String message,
            QuantityKind kind,
            double value,
            double limit,
            String basis) {
        found.add(new Finding(
                code,
                severity,
                message,
                subject,
                Optional.of(kind),
                OptionalDouble.of(value),
                OptionalDouble.of(limit),
                basis));
    }

    /** An empty collection measured against the same guidance. */
    public Findings empty() {
        return new Findings(guidance);
    }

    /** Adds the findings of another collection, each as one about this subject. */
    public void addAbout(String subject, Findings others) {
        others.found.forEach(finding -> found.add(finding.about(subject)));
    }

    /** Adds a finding without numbers. */
    public void add(FindingCode code, Severity severity, String subject, String message, String basis) {
        OptionalDouble none = OptionalDouble.empty();
        found.add(new Finding(code, severity, message, subject, Optional.empty(), none, none, basis));
    }

    /** The limit in force, SI. */
    public double limit(Guideline guideline) {
        return guidance.limit(guideline).value();
    }

    /** The findings so far. */
    public List<Finding> toList() {
        return List.copyOf(found);
    }

    private boolean add(
            boolean found,
            Guideline guideline,
            double value,
            FindingCode code,
            Severity severity,
            String subject,
            String message) {
        if (found) {
            Limit limit = guidance.limit(guideline);
            add(code, severity, subject, message, guideline.kind(), value, limit.value(), limit.basis());
        }
        return found;
    }
}
