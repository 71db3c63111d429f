package io.loopstate.engine.cycle;

import java.util.OptionalDouble;

/**
 * Heat that a coil exchanged with its air.
 *
 * @param heat W, empty where the readings do not determine it or have the wrong sign
 * @param measured whether it was measured as a whole instead of computed from dry air
 */
record AirHeat(OptionalDouble heat, boolean measured) {
    static final String DRY_AIR = "dry air, its density taken at the entering temperature and the atmosphere";
    static final String SENSIBLE_ONLY = "sensible heat only: a coil that also dries the air takes up more";

    /**
     * The heat m cp dT of dry air, unless the whole was measured.
     *
     * @param sign 1 where the air is heated, -1 where it is cooled
     */
    static AirHeat of(AirStream air, double atmosphere, int sign) {
        if (air.totalHeat().isPresent()) {
            return new AirHeat(air.totalHeat(), true);
        }
        OptionalDouble change =
                Optionals.both(air.leaving(), air.entering(), (leaving, entering) -> sign * (leaving - entering));
        OptionalDouble heat = Optionals.both(
                air.massFlow(atmosphere), change, (flow, kelvin) -> flow * Constants.DRY_AIR_HEAT_CAPACITY * kelvin);
        return new AirHeat(heat.orElse(0) > 0 ? heat : OptionalDouble.empty(), false);
    }
}
