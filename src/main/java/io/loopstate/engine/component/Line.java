package io.loopstate.engine.component;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;

/** A pipe between two components. Kinetic energy is left out. */
public final class Line {
    private Line() {}

    /**
     * The state at the end of a line: h + q at p - dp.
     *
     * @param pressureDrop Pa
     * @param heat J/kg taken up, negative if given off
     * @throws EngineException {@code CONTRADICTORY_INPUTS} if the drop leaves no pressure
     */
    public static State outlet(Equilibrium equilibrium, State inlet, double pressureDrop, double heat) {
        if (pressureDrop == 0 && heat == 0) {
            return inlet;
        }
        return equilibrium.atPressureEnthalpy(pressure(inlet, pressureDrop), inlet.specificEnthalpy() + heat);
    }

    /** The state at the end of the suction line, its gain given in one of the ways of {@link SuctionLineGain}. */
    public static State suctionOutlet(Equilibrium equilibrium, State inlet, double pressureDrop, SuctionLineGain gain) {
        return switch (gain.given()) {
            case HEAT -> outlet(equilibrium, inlet, pressureDrop, gain.value());
            case TEMPERATURE_RISE ->
                gain.value() == 0 && pressureDrop == 0
                        ? inlet
                        : equilibrium.atPressureTemperature(
                                pressure(inlet, pressureDrop), inlet.temperature() + gain.value());
            case COMPRESSOR_INLET_TEMPERATURE ->
                equilibrium.atPressureTemperature(pressure(inlet, pressureDrop), gain.value());
        };
    }

    private static double pressure(State inlet, double drop) {
        if (!(drop < inlet.pressure())) {
            throw EngineException.of(
                    ErrorCode.CONTRADICTORY_INPUTS,
                    "The pressure drop leaves no pressure at the end of the line.",
                    Variable.PRESSURE,
                    drop,
                    Double.NaN,
                    inlet.pressure());
        }
        return inlet.pressure() - drop;
    }
}
