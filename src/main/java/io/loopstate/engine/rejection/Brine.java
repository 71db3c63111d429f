package io.loopstate.engine.rejection;

import io.loopstate.engine.component.Require;

/**
 * A liquid in place of water, a mixture with glycol or salt, by the figures of its maker at its mean temperature. No published
 * coefficients of such mixtures are carried; within one coil their change with temperature matters little.
 *
 * @param density kg/m3
 * @param heatCapacity J/(kg K)
 */
public record Brine(double density, double heatCapacity) {
    public Brine {
        Require.positive("density", density);
        Require.positive("specificHeatCapacity", heatCapacity);
    }
}
