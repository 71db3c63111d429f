package io.loopstate.engine.balance;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.fluid.Blend;
import java.util.Optional;

/**
 * Where the two pressures of a machine can lie, and the variables they are sought in: y = ln |ln(p / limit)|, with the limit at
 * which refrigerant and air meet at the end of a coil. The need of a coil falls about as exp(-y), and stays smooth where the
 * outlet asked for, not the coil, sets the pressure.
 *
 * @param evaporatingLimit Pa, above every evaporating pressure
 * @param airLimits whether that is where the vapor would leave as warm as the air; else the critical pressure is near
 * @param lowest evaporating pressure, Pa
 * @param guessed whether that is a guess: the cold end of the saturation line of a blend is costly
 * @param condensingLimit Pa, below every condensing pressure
 * @param highest condensing pressure, Pa
 */
record Window(
        double evaporatingLimit,
        boolean airLimits,
        double lowest,
        boolean guessed,
        double condensingLimit,
        double highest) {
    /** As in the coils: closer to the critical pressure the saturation line is too flat to steer by. */
    private static final double HIGHEST = 0.998;
    /** Closest to a limit, ln(p / limit): closer, rounding decides whether refrigerant or air is the warmer. */
    private static final double CLOSEST = Math.log(1e-8);
    /** K below the air at which the search for an evaporating temperature ends. */
    private static final double DEEPEST = 120;

    /** Evaporating pressures below the limit that are tried before the cold end of a blend is looked for. */
    private static final double USUAL = 60;

    private static final double ABOVE_LOWEST = 1 + 1e-9;
    /** K between tries to find the cold end of a saturation line. */
    private static final double STEP = 10;

    /** A window, or why there is none. */
    record Opening(Optional<Window> window, Optional<NoBalance> closed) {}

    /** @param exact whether the cold end has to be known */
    static Opening of(Loop loop, boolean exact) {
        Equilibrium equilibrium = loop.equilibrium();
        double criticalPressure = equilibrium.refrigerant().criticalPoint().pressure();
        double highest = HIGHEST * criticalPressure;
        double hot = equilibrium.saturationAtPressure(highest).bubble().temperature();
        double outdoor =
                loop.condenser().air().state().dryBulb() + loop.settings().subcooling();
        if (outdoor >= hot) {
            return closed(NoBalance.outdoorTooHot(
                    loop.condenser().air().state().dryBulb(),
                    hot - loop.settings().subcooling()));
        }
        double coldest = equilibrium.refrigerant().minSaturationTemperature() * ABOVE_LOWEST;
        double indoor =
                loop.evaporator().air().state().dryBulb() - loop.settings().superheat();
        if (indoor <= coldest) {
            return closed(NoBalance.indoorTooCold(
                    loop.evaporator().air().state().dryBulb(),
                    coldest + loop.settings().superheat()));
        }
        double top = equilibrium.saturationAtPressure(highest).dew().temperature();
        double evaporatingLimit = indoor < top ? dew(equilibrium, indoor, highest) : highest;
        boolean guess = !exact && equilibrium.refrigerant() instanceof Blend;
        double lowest =
                guess ? evaporatingLimit / USUAL : lowest(equilibrium, Math.max(coldest, indoor - DEEPEST), indoor);
        double condensingLimit = outdoor <= coldest
                ? equilibrium.saturationAtTemperature(coldest).bubble().pressure()
                : equilibrium.saturationAtTemperature(outdoor).bubble().pressure();
        return new Opening(
                Optional.of(new Window(evaporatingLimit, indoor < top, lowest, guess, condensingLimit, highest)),
                Optional.empty());
    }

    private static Opening closed(NoBalance reason) {
        return new Opening(Optional.empty(), Optional.of(reason));
    }

    /** Pa at a dew-point temperature; near its critical point a blend may have none. */
    private static double dew(Equilibrium equilibrium, double temperature, double highest) {
        try {
            return Math.min(
                    highest,
                    equilibrium.saturationAtTemperature(temperature).dew().pressure());
        } catch (EngineException e) {
            return highest;
        }
    }

    /** Pa at the cold end; the saturation line of a blend may end before the range of its components. */
    private static double lowest(Equilibrium equilibrium, double coldest, double warmest) {
        for (double temperature = coldest; temperature < warmest; temperature += STEP) {
            try {
                return equilibrium.saturationAtTemperature(temperature).dew().pressure();
            } catch (EngineException e) {
                // further up
            }
        }
        return equilibrium.saturationAtTemperature(warmest).dew().pressure() / 2;
    }

    /** Pa. */
    double evaporating(double y) {
        return evaporatingLimit * Math.exp(-Math.exp(y));
    }

    /** Pa. */
    double condensing(double y) {
        return condensingLimit * Math.exp(Math.exp(y));
    }

    /** The variable of a condensing pressure above the limit. */
    double condensingVariable(double pressure) {
        return pressure > condensingLimit ? Math.max(CLOSEST, Math.log(Math.log(pressure / condensingLimit))) : CLOSEST;
    }

    /** The variable of an evaporating pressure below the limit. */
    double evaporatingVariable(double pressure) {
        return pressure < evaporatingLimit
                ? Math.max(CLOSEST, Math.log(Math.log(evaporatingLimit / pressure)))
                : CLOSEST;
    }

    double least() {
        return CLOSEST;
    }

    double mostEvaporating() {
        return Math.log(Math.log(evaporatingLimit / lowest));
    }

    double mostCondensing() {
        return Math.log(Math.log(highest / condensingLimit));
    }
}
