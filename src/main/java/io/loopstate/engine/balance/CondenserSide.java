package io.loopstate.engine.balance;

import io.loopstate.engine.rejection.AirCooledCondenser.Fan;
import io.loopstate.engine.rejection.AirSide;
import io.loopstate.engine.rejection.Arrangement;
import io.loopstate.engine.rejection.Conductance;
import java.util.Objects;

/**
 * The condensing coil and the outdoor air.
 *
 * @param air that enters
 * @param airflow at full fan speed, not counted in leaving air
 * @param conductance at full airflow, by what the coil does
 * @param arrangement how the air passes the zones
 * @param fan what the fan does
 */
public record CondenserSide(
        AirSide.Air air, AirSide.Airflow airflow, Conductance conductance, Arrangement arrangement, Fan fan) {
    public CondenserSide {
        Objects.requireNonNull(air);
        Objects.requireNonNull(airflow);
        Objects.requireNonNull(conductance);
        Objects.requireNonNull(arrangement);
        Objects.requireNonNull(fan);
    }

    /** Airflow over that at full speed, with the fan at a share of full speed. */
    double airflowShare(double speed) {
        return Math.max(speed, fan.naturalDraft());
    }
}
