package io.loopstate.engine.balance;

import io.loopstate.engine.component.Require;
import io.loopstate.engine.rejection.AirSide;
import java.util.Objects;

/**
 * The evaporating coil and the indoor air.
 *
 * @param air that enters
 * @param airflow not counted in leaving air
 * @param boiling conductance of the whole coil if all of it boiled, W/K, at this airflow
 * @param superheating conductance of the whole coil if all of it superheated, W/K
 * @param airflowExponent with which both follow the airflow, 0 to below 1
 */
public record EvaporatorSide(
        AirSide.Air air, AirSide.Airflow airflow, double boiling, double superheating, double airflowExponent) {
    public EvaporatorSide {
        Objects.requireNonNull(air);
        Objects.requireNonNull(airflow);
        Require.positive("evaporator.conductance", boiling);
        Require.positive("evaporator.superheatingConductance", superheating);
        Require.properShare("evaporator.airflowExponent", airflowExponent);
    }
}
