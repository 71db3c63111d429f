package io.loopstate.web.mapping;

import io.loopstate.engine.cycle.SaturationTemperatures;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.dto.LevelTemperatures;

/** A level of the engine in the units of the reply. */
final class Levels {
    private Levels() {}

    static LevelTemperatures of(Output out, SaturationTemperatures level) {
        return new LevelTemperatures(
                out.of(QuantityKind.PRESSURE, level.pressure()),
                out.of(QuantityKind.TEMPERATURE, level.bubble()),
                out.of(QuantityKind.TEMPERATURE, level.midpoint()),
                out.of(QuantityKind.TEMPERATURE, level.dew()),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, level.glide()));
    }
}
