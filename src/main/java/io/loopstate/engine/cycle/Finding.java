package io.loopstate.engine.cycle;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something possible but unwise, implausible or worth knowing about a result. The message holds no number with a unit;
 * value and limit stand beside it, so that they can be shown in any unit.
 *
 * @param code stable name
 * @param severity how much it matters
 * @param message plain English
 * @param subject name of the input or result it is about, e.g. {@code suctionLineTemperature}
 * @param kind what value and limit are; empty where neither is given
 * @param value SI
 * @param limit SI
 * @param basis where the limit comes from: a source, or {@code common practice, no source}
 */
public record Finding(
        FindingCode code,
        Severity severity,
        String message,
        String subject,
        Optional<QuantityKind> kind,
        OptionalDouble value,
        OptionalDouble limit,
        String basis) {
    public Finding {
        Objects.requireNonNull(code);
        Objects.requireNonNull(severity);
        Objects.requireNonNull(message);
        Objects.requireNonNull(subject);
        Objects.requireNonNull(basis);
        if (kind.isEmpty() && (value.isPresent() || limit.isPresent())) {
            throw new IllegalArgumentException("a value or limit needs its kind");
        }
    }

    /** The same finding as one about another input or result. */
    public Finding about(String other) {
        return new Finding(code, severity, message, other, kind, value, limit, basis);
    }
}
