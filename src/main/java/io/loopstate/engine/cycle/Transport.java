package io.loopstate.engine.cycle;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.property.State;
import io.loopstate.engine.transport.TransportProperties;
import io.loopstate.engine.transport.TransportValues;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Transport properties of a state; each is empty where the refrigerant has no correlation for it, or the correlation no
 * value there.
 *
 * @param viscosity Pa s, of one phase
 * @param thermalConductivity W/(m K), of one phase
 * @param surfaceTension N/m between liquid and vapor, of saturated states
 */
public record Transport(OptionalDouble viscosity, OptionalDouble thermalConductivity, OptionalDouble surfaceTension) {
    public Transport {
        Objects.requireNonNull(viscosity);
        Objects.requireNonNull(thermalConductivity);
        Objects.requireNonNull(surfaceTension);
    }

    /** Nothing known. */
    public static Transport none() {
        OptionalDouble none = OptionalDouble.empty();
        return new Transport(none, none, none);
    }

    /** Those of a state; what does not converge becomes a finding, since the state itself is sound. */
    static Transport of(Optional<TransportProperties> properties, State state, Findings findings) {
        if (properties.isEmpty()) {
            return none();
        }
        TransportValues values = values(properties.get(), state, findings);
        OptionalDouble tension =
                state.saturated() ? properties.get().surfaceTension(state.temperature()) : OptionalDouble.empty();
        return new Transport(values.viscosity(), values.thermalConductivity(), tension);
    }

    private static TransportValues values(TransportProperties properties, State state, Findings findings) {
        try {
            return properties.at(state);
        } catch (EngineException exception) {
            if (exception.code() != ErrorCode.NOT_CONVERGED) {
                throw exception;
            }
            findings.add(
                    FindingCode.TRANSPORT_NOT_CONVERGED,
                    Severity.NOTE,
                    "viscosity",
                    "Viscosity and thermal conductivity did not converge at this state and are left out.",
                    "iteration limit of the corresponding-states correlation");
            return TransportValues.NONE;
        }
    }
}
