package io.loopstate.engine.balance;

import io.loopstate.engine.component.Require;
import io.loopstate.engine.rejection.AirSide;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * The evaporating coil and the indoor air.
 *
 * @param air that enters
 * @param airflow not counted in leaving air
 * @param boiling conductance of the whole coil if all of it boiled, W/K, at this airflow
 * @param superheating conductance of the whole coil if all of it superheated, W/K
 * @param airflowExponent with which both follow the airflow, 0 to below 1
 * @param fanPower W of the fan in this air
 */
public record EvaporatorSide(
        AirSide.Air air,
        AirSide.Airflow airflow,
        double boiling,
        double superheating,
        double airflowExponent,
        OptionalDouble fanPower) {
    public EvaporatorSide {
        Require.positive("evaporator.fanPower", fanPower);
        Objects.requireNonNull(air);
        Objects.requireNonNull(airflow);
        Require.positive("evaporator.conductance", boiling);
        Require.positive("evaporator.superheatingConductance", superheating);
        Require.properShare("evaporator.airflowExponent", airflowExponent);
    }

    /** Without the power of its fan. */
    public EvaporatorSide(
            AirSide.Air air, AirSide.Airflow airflow, double boiling, double superheating, double airflowExponent) {
        this(air, airflow, boiling, superheating, airflowExponent, OptionalDouble.empty());
    }
}
