package io.loopstate.engine.balance;

import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.Require;

/**
 * What valve and charge keep, K each, 0 or more.
 *
 * @param superheat of the vapor that leaves the evaporator, above its dew point: an expansion valve that follows it
 * @param suctionLineTemperatureRise by which the suction line warms that vapor
 * @param subcooling of the liquid that leaves the condenser, below its bubble point
 */
public record Settings(double superheat, double suctionLineTemperatureRise, double subcooling) {
    public Settings {
        Require.notNegative("superheat", superheat);
        Require.notNegative("suctionLineTemperatureRise", suctionLineTemperatureRise);
        Require.notNegative("subcooling", subcooling);
    }

    OutletCondition vapor() {
        return OutletCondition.superheat(superheat);
    }

    OutletCondition liquid() {
        return OutletCondition.subcooling(subcooling);
    }
}
