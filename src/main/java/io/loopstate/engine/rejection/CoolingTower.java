package io.loopstate.engine.rejection;

import io.loopstate.engine.component.Require;
import io.loopstate.engine.cycle.Constants;
import java.util.OptionalDouble;

/**
 * The water of a cooling tower that takes the heat of a condenser. Heat leaves by evaporation alone; drift is left out.
 *
 * @param evaporation kg/s
 * @param bleed kg/s drawn off to keep solids down; empty where no concentration is given
 * @param makeUp kg/s, both together; empty likewise
 * @param nominalTons heat over that of a nominal tower ton, 15 000 Btu/h
 * @param range K by which the tower cools the water
 * @param approach K of the water that leaves the tower over the wet bulb; empty where that is not given
 */
public record CoolingTower(
        double evaporation,
        OptionalDouble bleed,
        OptionalDouble makeUp,
        double nominalTons,
        double range,
        OptionalDouble approach) {
    /** W in a nominal tower ton: an evaporator's ton and a quarter of it on top. Common practice, no source. */
    static final double WATT_PER_TOWER_TON = 15_000 / Constants.BTU_PER_HOUR_PER_WATT;

    /**
     * What is known of the tower.
     *
     * @param wetBulb of the air, K
     * @param cyclesOfConcentration solids in the water of the tower over those in the make-up water, above 1
     */
    public record Conditions(OptionalDouble wetBulb, OptionalDouble cyclesOfConcentration) {
        public Conditions {
            Require.positive("coolingTower.wetBulb", wetBulb);
        }
    }

    /**
     * The tower at a heat.
     *
     * @param heat W
     * @param latentHeat of the water, J/kg
     * @param cold K, water that leaves the tower
     * @param warm K, water that comes to the tower
     */
    static CoolingTower of(Conditions conditions, double heat, double latentHeat, double cold, double warm) {
        double evaporation = heat / latentHeat;
        OptionalDouble cycles = conditions.cyclesOfConcentration();
        // Solids: makeUp c = bleed n c, and makeUp = evaporation + bleed.
        OptionalDouble bleed = cycles.isPresent()
                ? OptionalDouble.of(evaporation / (cycles.getAsDouble() - 1))
                : OptionalDouble.empty();
        return new CoolingTower(
                evaporation,
                bleed,
                bleed.isPresent() ? OptionalDouble.of(evaporation + bleed.getAsDouble()) : bleed,
                heat / WATT_PER_TOWER_TON,
                warm - cold,
                conditions.wetBulb().isPresent()
                        ? OptionalDouble.of(cold - conditions.wetBulb().getAsDouble())
                        : OptionalDouble.empty());
    }
}
