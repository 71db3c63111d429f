package io.loopstate.web.mapping;

import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.compression.DischargeLevel;
import io.loopstate.engine.compression.SuctionCondition;
import io.loopstate.engine.error.Variable;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Suction and discharge of a compressor as requests give them. */
final class Ports {
    private static final String[] LEVEL = {"suction.pressure", "suction.saturationTemperature"};
    private static final String[] STATE = {"suction.temperature", "suction.superheat", "suction.vaporQuality"};
    private static final String[] DISCHARGE = {"discharge.pressure", "discharge.saturationTemperature", "pressureRatio"
    };

    /** Where the engine's names of the ports come from. */
    static final Map<String, List<String>> INPUTS = Map.of("discharge", List.of(DISCHARGE));

    private Ports() {}

    /** Checks a request with {@code suction}, {@code discharge} and {@code pressureRatio}. */
    static void check(Input<?> input) {
        checkSuction(input);
        input.exactlyOne(DISCHARGE);
    }

    static void checkSuction(Input<?> input) {
        input.exactlyOne(LEVEL);
        input.exactlyOne(STATE);
    }

    static SuctionCondition suction(Input<?> input) {
        Variable given = input.given(STATE[0])
                ? Variable.TEMPERATURE
                : input.given(STATE[1]) ? Variable.SUPERHEAT : Variable.VAPOR_QUALITY;
        String path = "suction." + EngineKinds.name(given);
        SaturationLevel level = input.engine("suction", () -> level(input, "suction"));
        return new SuctionCondition(level, given, input.si(path).orElseThrow());
    }

    static DischargeLevel discharge(Input<?> input) {
        OptionalDouble ratio = input.si("pressureRatio");
        return ratio.isPresent()
                ? DischargeLevel.ratio(ratio.getAsDouble())
                : DischargeLevel.of(input.engine("discharge", () -> level(input, "discharge")));
    }

    /** The level of a record with {@code pressure} and {@code saturationTemperature}. */
    static SaturationLevel level(Input<?> input, String path) {
        OptionalDouble pressure = input.si(path + ".pressure");
        return pressure.isPresent()
                ? SaturationLevel.pressure(pressure.getAsDouble())
                : SaturationLevel.temperature(
                        input.si(path + ".saturationTemperature").orElseThrow());
    }
}
