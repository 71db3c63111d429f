package io.loopstate.engine.component;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.property.State;
import java.util.Optional;
import java.util.OptionalDouble;

/** How far a state lies from saturation at its own pressure: vapor from its dew point, liquid from its bubble point. */
public final class SaturationMargin {
    /** Distance from saturation, K, within which a given temperature counts as saturated: rounding of its pressure. */
    public static final double SATURATED = 1e-6;

    private SaturationMargin() {}

    /**
     * K above the dew point at the state's pressure; empty for anything but vapor, and where the pressure has no dew point
     * (at or above the critical pressure, or below the lowest pressure of the saturation line).
     */
    public static OptionalDouble superheat(Equilibrium equilibrium, State state) {
        if (state.phase() != Phase.VAPOR) {
            return OptionalDouble.empty();
        }
        if (state.saturated()) {
            return OptionalDouble.of(0);
        }
        return toOptionalDouble(saturation(equilibrium, state.pressure())
                .map(saturation -> state.temperature() - saturation.dew().temperature()));
    }

    /**
     * K below the bubble point at the state's pressure; empty for anything but liquid, and where the pressure has no bubble
     * point.
     */
    public static OptionalDouble subcooling(Equilibrium equilibrium, State state) {
        if (state.phase() != Phase.LIQUID) {
            return OptionalDouble.empty();
        }
        if (state.saturated()) {
            return OptionalDouble.of(0);
        }
        return toOptionalDouble(saturation(equilibrium, state.pressure())
                .map(saturation -> saturation.bubble().temperature() - state.temperature()));
    }

    /** Both sides of the dome at a pressure (Pa), empty where the saturation line does not reach it. */
    public static Optional<Saturation> saturation(Equilibrium equilibrium, double pressure) {
        if (pressure >= equilibrium.refrigerant().criticalPoint().pressure()) {
            return Optional.empty();
        }
        try {
            return Optional.of(equilibrium.saturationAtPressure(pressure));
        } catch (EngineException exception) {
            if (exception.code() == ErrorCode.OUT_OF_RANGE || exception.code() == ErrorCode.ABOVE_CRITICAL) {
                return Optional.empty();
            }
            throw exception;
        }
    }

    private static OptionalDouble toOptionalDouble(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }
}
