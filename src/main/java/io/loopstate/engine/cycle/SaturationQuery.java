package io.loopstate.engine.cycle;

import io.loopstate.engine.component.Require;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.fluid.Refrigerant;
import io.loopstate.engine.transport.TransportProperties;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Both sides of the dome, with what is worth knowing there. */
public final class SaturationQuery {
    private SaturationQuery() {}

    /**
     * Where on the saturation line.
     *
     * @param equilibrium the refrigerant
     * @param given {@code TEMPERATURE} or {@code PRESSURE}
     * @param value K or Pa
     * @param transport correlations for the transport properties; empty to leave them out
     * @param guidance limits for the findings
     */
    public record Spec(
            Equilibrium equilibrium,
            Variable given,
            double value,
            Optional<TransportProperties> transport,
            Guidance guidance) {
        public Spec {
            Objects.requireNonNull(equilibrium);
            Objects.requireNonNull(transport);
            Objects.requireNonNull(guidance);
            if (given != Variable.TEMPERATURE && given != Variable.PRESSURE) {
                throw new IllegalArgumentException("saturation is given by temperature or pressure, not " + given);
            }
            Require.positive(given == Variable.TEMPERATURE ? "temperature" : "pressure", value);
        }
    }

    /**
     * The saturation.
     *
     * @param saturation bubble and dew point
     * @param firstVapor mole fractions of the vapor that forms at the bubble point; empty without components
     * @param firstLiquid mole fractions of the liquid that forms at the dew point; empty without components
     * @param bubbleTransport transport properties of the saturated liquid
     * @param dewTransport transport properties of the saturated vapor
     * @param findings what is worth knowing
     */
    public record Result(
            Saturation saturation,
            List<Double> firstVapor,
            List<Double> firstLiquid,
            Transport bubbleTransport,
            Transport dewTransport,
            List<Finding> findings) {
        public Result {
            firstVapor = List.copyOf(firstVapor);
            firstLiquid = List.copyOf(firstLiquid);
            findings = List.copyOf(findings);
        }
    }

    /** At the dew pressure where the temperature is given; 0 where that pressure has no bubble point in the range. */
    private static double glide(Spec spec, Saturation saturation) {
        if (spec.given() == Variable.PRESSURE || saturation.pressureGlide() == 0) {
            return saturation.temperatureGlide();
        }
        try {
            return spec.equilibrium()
                    .saturationAtPressure(saturation.dew().pressure())
                    .temperatureGlide();
        } catch (EngineException e) {
            if (e.code() == ErrorCode.OUT_OF_RANGE || e.code() == ErrorCode.ABOVE_CRITICAL) {
                return 0;
            }
            throw e;
        }
    }

    /**
     * Bubble and dew point.
     *
     * @throws io.loopstate.engine.error.EngineException where the saturation line does not reach
     */
    public static Result calculate(Spec spec) {
        Saturation saturation = spec.given() == Variable.TEMPERATURE
                ? spec.equilibrium().saturationAtTemperature(spec.value())
                : spec.equilibrium().saturationAtPressure(spec.value());
        Findings findings = new Findings(spec.guidance());
        SharedFindings.nearCritical(
                findings,
                "saturation",
                saturation.dew().pressure(),
                spec.equilibrium().refrigerant().criticalPoint().pressure());
        SharedFindings.glide(findings, glide(spec, saturation));
        Transport bubble = Transport.of(spec.transport(), saturation.bubble(), findings);
        Transport dew = Transport.of(spec.transport(), saturation.dew(), findings);
        return new Result(
                saturation, incipientPhase(spec, true), incipientPhase(spec, false), bubble, dew, findings.toList());
    }

    private static List<Double> incipientPhase(Spec spec, boolean bubble) {
        return spec.equilibrium().refrigerant().kind() == Refrigerant.Kind.BLEND
                ? spec.equilibrium().incipientPhase(spec.given(), spec.value(), bubble)
                : List.of();
    }
}
