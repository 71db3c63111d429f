package io.loopstate.wiring;

import jakarta.validation.MessageInterpolator;
import jakarta.validation.Validation;
import jakarta.validation.Validator;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import java.lang.annotation.Annotation;
import java.util.Locale;
import java.util.Set;
import org.hibernate.validator.HibernateValidator;
import org.hibernate.validator.messageinterpolation.ParameterMessageInterpolator;

/**
 * The validator of request records. It reads the constraints of a record when the first request of that kind arrives, and
 * words what is broken in English wherever the service runs, without an expression language.
 */
public final class Constraints {
    private Constraints() {}

    /** A validator for every built-in constraint. */
    public static Validator validator() {
        return Validation.byProvider(HibernateValidator.class)
                .configure()
                .ignoreXmlConfiguration()
                .messageInterpolator(new Wording())
                .buildValidatorFactory()
                .getValidator();
    }

    private static final class Wording implements MessageInterpolator {
        private final MessageInterpolator library = new ParameterMessageInterpolator(Set.of(), Locale.ENGLISH, false);

        @Override
        public String interpolate(String template, Context context) {
            Annotation constraint = context.getConstraintDescriptor().getAnnotation();
            // Only these two are worded by expressions in the library.
            if (constraint instanceof DecimalMin least) {
                return (least.inclusive() ? "must be greater than or equal to " : "must be greater than ")
                        + least.value();
            }
            if (constraint instanceof DecimalMax most) {
                return (most.inclusive() ? "must be less than or equal to " : "must be less than ") + most.value();
            }
            return library.interpolate(template, context);
        }

        @Override
        public String interpolate(String template, Context context, Locale locale) {
            return interpolate(template, context);
        }
    }
}
