package io.loopstate.engine.balance;

import io.loopstate.engine.component.Require;
import io.loopstate.engine.rejection.AirSide;
import io.loopstate.engine.rejection.Arrangement;
import io.loopstate.engine.rejection.Conductance;
import io.loopstate.engine.rejection.Fan;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * The condensing coil and the outdoor air.
 *
 * @param air that enters
 * @param airflow at full fan speed, not counted in leaving air
 * @param conductance at full airflow, by what the coil does
 * @param arrangement how the air passes the zones
 * @param fan what the fan does
 * @param fanPower W of the fan at full speed in this air
 */
public record CondenserSide(
        AirSide.Air air,
        AirSide.Airflow airflow,
        Conductance conductance,
        Arrangement arrangement,
        Fan fan,
        OptionalDouble fanPower) {
    public CondenserSide {
        Require.positive("condenser.fanPower", fanPower);
        Objects.requireNonNull(air);
        Objects.requireNonNull(airflow);
        Objects.requireNonNull(conductance);
        Objects.requireNonNull(arrangement);
        Objects.requireNonNull(fan);
    }

    /** Without the power of its fan. */
    public CondenserSide(
            AirSide.Air air, AirSide.Airflow airflow, Conductance conductance, Arrangement arrangement, Fan fan) {
        this(air, airflow, conductance, arrangement, fan, OptionalDouble.empty());
    }
}
