package io.loopstate.engine.transport;

import io.loopstate.engine.fluid.JsonObject;

/** psi = sum n (rho/rhoRef)^t: what a fitted fluid multiplies the density of its conformal state by. */
record ShapeFactor(double referenceDensity, PowerSum sum) {
    static ShapeFactor of(JsonObject json) {
        return new ShapeFactor(json.number("rhoRef"), PowerSum.of(json));
    }

    /** @param density of the fluid, mol/m3 */
    double at(double density) {
        return sum.at(density / referenceDensity);
    }
}
