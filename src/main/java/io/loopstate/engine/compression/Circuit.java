package io.loopstate.engine.compression;

import io.loopstate.engine.component.Condenser;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.cycle.Inputs;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What a compressor's capacity counts from.
 *
 * @param liquid before the valve, at the discharge pressure: subcooling or temperature
 * @param evaporatorOutletTemperature K at the suction pressure; empty where all superheat counts as useful
 */
public record Circuit(OutletCondition liquid, OptionalDouble evaporatorOutletTemperature) {
    public Circuit {
        Objects.requireNonNull(liquid);
    }

    /** The liquid, at a discharge pressure (Pa). */
    State liquidState(Equilibrium equilibrium, double pressure) {
        return Inputs.trace("liquid", () -> Condenser.outlet(equilibrium, pressure, liquid));
    }

    /** The vapor that leaves the evaporator. */
    State evaporatorOutlet(Equilibrium equilibrium, State suction) {
        return evaporatorOutletTemperature.isEmpty()
                ? suction
                : Inputs.trace(
                        "evaporatorOutletTemperature",
                        () -> equilibrium.atPressureTemperature(
                                suction.pressure(), evaporatorOutletTemperature.getAsDouble()));
    }
}
