package io.loopstate.engine.cycle;

import io.loopstate.engine.component.SaturationMargin;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.property.State;
import io.loopstate.engine.transport.TransportProperties;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/** One state with its distance from saturation. */
public final class StateQuery {
    private StateQuery() {}

    /**
     * The state and its distance from saturation.
     *
     * @throws io.loopstate.engine.error.EngineException where there is none inside the range of the equation of state, or
     *     several
     */
    public static Result calculate(Spec spec) {
        Equilibrium equilibrium = spec.equilibrium();
        State state =
                equilibrium.state(spec.first(), spec.firstValue(), spec.second(), spec.secondValue(), spec.phase());
        Findings findings = new Findings(spec.guidance());
        SharedFindings.nearCritical(findings, equilibrium.refrigerant().criticalPoint(), state);
        return new Result(
                state,
                margin(spec, Variable.SUPERHEAT, SaturationMargin.superheat(equilibrium, state)),
                margin(spec, Variable.SUBCOOLING, SaturationMargin.subcooling(equilibrium, state)),
                Transport.of(spec.transport(), state, findings),
                findings.toList());
    }

    /** A distance that was given holds where the other side of the dome lies outside the range and none is found. */
    private static OptionalDouble margin(Spec spec, Variable variable, OptionalDouble found) {
        if (found.isPresent() || spec.first() != variable && spec.second() != variable) {
            return found;
        }
        return OptionalDouble.of(spec.first() == variable ? spec.firstValue() : spec.secondValue());
    }

    /**
     * Two variables of the state, SI.
     *
     * @param equilibrium the refrigerant
     * @param first a variable
     * @param firstValue its value
     * @param second another variable
     * @param secondValue its value
     * @param phase which state to take where several satisfy the two; empty to be told of them by an error
     * @param transport correlations for the transport properties; empty to leave them out
     * @param guidance limits for the findings
     */
    public record Spec(
            Equilibrium equilibrium,
            Variable first,
            double firstValue,
            Variable second,
            double secondValue,
            Optional<Phase> phase,
            Optional<TransportProperties> transport,
            Guidance guidance) {
        public Spec {
            Objects.requireNonNull(equilibrium);
            Objects.requireNonNull(first);
            Objects.requireNonNull(second);
            Objects.requireNonNull(phase);
            Objects.requireNonNull(transport);
            Objects.requireNonNull(guidance);
        }
    }

    /**
     * The state.
     *
     * @param state the state
     * @param superheat K above the dew point at its pressure; only for vapor below the critical pressure
     * @param subcooling K below the bubble point at its pressure; only for liquid below the critical pressure
     * @param transport transport properties
     * @param findings what is worth knowing
     */
    public record Result(
            State state,
            OptionalDouble superheat,
            OptionalDouble subcooling,
            Transport transport,
            List<Finding> findings) {
        public Result {
            findings = List.copyOf(findings);
        }
    }
}
