package io.loopstate.web.mapping;

import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.SaturationBasis;
import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.web.dto.LevelRequest;
import io.loopstate.web.dto.Quantity;

/** Levels and outlet conditions that several requests state in the same members. */
final class OutletConditions {
    /** How the refrigerant leaves a condenser. */
    static final String[] CONDENSER = {
        "subcooling", "condenserOutletTemperature", "condenserOutletQuality", "gasCoolerOutletTemperature"
    };

    private OutletConditions() {}

    static SaturationLevel level(LevelRequest level) {
        return level.temperature() == null
                ? SaturationLevel.pressure(level.pressure().value())
                : SaturationLevel.temperature(
                        level.temperature().value(),
                        level.basis() == null
                                ? SaturationBasis.DEW
                                : SaturationBasis.valueOf(level.basis().name()));
    }

    /** One of the four is not {@code null}. */
    static OutletCondition condenser(
            Quantity subcooling, Quantity outletTemperature, Double quality, Quantity gasCoolerTemperature) {
        if (subcooling != null) {
            return OutletCondition.subcooling(subcooling.value());
        }
        if (quality != null) {
            return OutletCondition.quality(quality);
        }
        return OutletCondition.temperature(
                (outletTemperature == null ? gasCoolerTemperature : outletTemperature).value());
    }
}
