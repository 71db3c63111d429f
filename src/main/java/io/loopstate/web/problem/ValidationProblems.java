package io.loopstate.web.problem;

import jakarta.validation.ConstraintViolation;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.Negative;
import jakarta.validation.constraints.NegativeOrZero;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Positive;
import jakarta.validation.constraints.PositiveOrZero;
import java.lang.annotation.Annotation;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;

/**
 * Words broken validation constraints: a bound on a number is 422, everything else 400, and 400 where both occur.
 */
public final class ValidationProblems {
    private static final Set<Class<? extends Annotation>> MISSING =
            Set.of(NotNull.class, NotBlank.class, NotEmpty.class);
    private static final Set<Class<? extends Annotation>> BOUNDS = Set.of(
            Min.class,
            Max.class,
            DecimalMin.class,
            DecimalMax.class,
            Positive.class,
            PositiveOrZero.class,
            Negative.class,
            NegativeOrZero.class);

    private ValidationProblems() {}

    /** The validator returns a set: sorted, so that the same request gets the same bytes. */
    public static <T> List<ConstraintViolation<T>> sorted(Set<ConstraintViolation<T>> violations) {
        return violations.isEmpty()
                ? List.of()
                : violations.stream()
                        .sorted(Comparator.comparing((ConstraintViolation<T> violation) ->
                                        violation.getPropertyPath().toString())
                                .thenComparing(ConstraintViolation::getMessage))
                        .toList();
    }

    /** A bound on a number that is broken asks for the impossible; everything else cannot be read. */
    public static ProblemKind kind(ConstraintViolation<?> violation) {
        return BOUNDS.contains(type(violation)) ? ProblemKind.IMPOSSIBLE_INPUT : ProblemKind.INVALID_REQUEST;
    }

    /**
     * The fault of a broken constraint.
     *
     * @param place makes a fault of a code and a detail at the place of the value
     */
    public static Fault fault(ConstraintViolation<?> violation, BiFunction<String, String, Fault> place) {
        Class<? extends Annotation> type = type(violation);
        String code = MISSING.contains(type) ? "missing" : BOUNDS.contains(type) ? "out-of-bounds" : "wrong-value";
        String detail =
                code.equals("missing") ? "This value is required." : "This value " + violation.getMessage() + ".";
        Fault fault = place.apply(code, detail);
        Object got = violation.getInvalidValue();
        return got instanceof Number || got instanceof CharSequence || got instanceof Enum
                ? fault.withGot(got.toString())
                        .withAllowed(violation.getMessage().replaceFirst("^must be ", ""))
                : fault;
    }

    private static Class<? extends Annotation> type(ConstraintViolation<?> violation) {
        return violation.getConstraintDescriptor().getAnnotation().annotationType();
    }
}
