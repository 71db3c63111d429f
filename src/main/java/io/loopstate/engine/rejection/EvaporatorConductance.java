package io.loopstate.engine.rejection;

import io.loopstate.engine.component.Require;

/**
 * Conductance of a whole evaporating coil by what it does, dry.
 *
 * @param boiling if all of it boiled, W/K
 * @param superheating if all of it superheated, W/K
 */
public record EvaporatorConductance(double boiling, double superheating) {
    public EvaporatorConductance {
        Require.positive("conductance", boiling);
        Require.positive("superheatingConductance", superheating);
    }

    EvaporatorConductance at(Fan fan, Dirt dirt) {
        double blown = fan.conductance();
        return new EvaporatorConductance(dirt.under(blown * boiling), dirt.under(blown * superheating));
    }
}
