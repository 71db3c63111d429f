package io.loopstate.engine.rejection;

import io.loopstate.engine.component.Require;

/**
 * Conductance that a coil would have if all of its area did one thing, W/K: area times the coefficient of that zone.
 *
 * @param desuperheating vapor cooling
 * @param condensing vapor becoming liquid, or in an evaporator liquid becoming vapor
 * @param subcooling liquid cooling
 */
public record Conductance(double desuperheating, double condensing, double subcooling) {
    public Conductance {
        Require.positive("zoneConductances.desuperheating", desuperheating);
        Require.positive("zoneConductances.condensing", condensing);
        Require.positive("zoneConductances.subcooling", subcooling);
    }

    /** One and the same in every zone, W/K. */
    public static Conductance uniform(double conductance) {
        Require.positive("conductance", conductance);
        return new Conductance(conductance, conductance, conductance);
    }

    /** Each times a factor. */
    public Conductance times(double factor) {
        return new Conductance(factor * desuperheating, factor * condensing, factor * subcooling);
    }

    /** With a fan and under dirt. */
    Conductance at(Fan fan, Dirt dirt) {
        Conductance blown = times(fan.conductance());
        return new Conductance(
                dirt.under(blown.desuperheating), dirt.under(blown.condensing), dirt.under(blown.subcooling));
    }

    double of(CoilZone.Kind kind) {
        return switch (kind) {
            case DESUPERHEATING -> desuperheating;
            case CONDENSING -> condensing;
            case SUBCOOLING -> subcooling;
        };
    }
}
