package io.loopstate.engine.compression;

import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import java.util.Optional;
import java.util.OptionalDouble;

/** What moves and compresses the vapor: pistons, rotors or an impeller. */
public sealed interface Displacer permits Piston, Rotor, Impeller, CurvedImpeller {
    /** m3/s swept; of an impeller the volume drawn in. */
    double sweptFlow();

    /** m3/s swept while a stroke goes on; of an impeller the volume that it draws in there. */
    default double sweptFlow(Stroke stroke, State port) {
        return sweptFlow();
    }

    /**
     * From the vapor that arrives to the discharge pressure.
     *
     * @param port state before the cylinder, rotor or impeller, after any heat from the motor
     */
    Stroke stroke(Equilibrium equilibrium, State port, double dischargePressure);

    /** The work of {@link #stroke} alone, J/kg, at a fraction of its cost. */
    double work(Equilibrium equilibrium, State port, double dischargePressure);

    /**
     * What happens inside.
     *
     * @param massFlow kg/s
     * @param work J/kg done on the vapor, losses inside included
     * @param isentropicWork J/kg from the port to the discharge pressure at constant entropy
     * @param heat J/kg given off by a cooled cylinder
     * @param filling volume drawn in at the state of the cylinder over volume swept
     * @param inside what is known of the inside
     */
    record Stroke(
            double massFlow,
            double work,
            double isentropicWork,
            double heat,
            double filling,
            Optional<Inside> inside) {}

    /**
     * Pressures and states inside a cylinder or between rotors.
     *
     * @param inlet state at the start of compression
     * @param end state at the end of the compression inside
     * @param reexpansion volume of the clearance vapor after re-expansion over that before
     * @param mismatchWork J/kg lost because compression inside ends above or below the discharge pressure
     */
    record Inside(State inlet, State end, OptionalDouble reexpansion, OptionalDouble mismatchWork) {}
}
