package io.loopstate.web.mapping;

import io.loopstate.units.Plausibility;
import io.loopstate.units.QuantityKind;
import io.loopstate.units.Reading;
import io.loopstate.web.dto.Warning;
import io.loopstate.web.dto.WarningSeverity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Spots the likely slip of unit among inputs: a number outside the usual range that would be inside it in another unit.
 *
 * <p>The usual ranges are wide: common practice, no source. Those of pressures are shares of the critical pressure, so that
 * they fit every refrigerant.
 */
final class UnitSlips {
    private static final double CELSIUS_ZERO = 273.15;

    /** Code of the warning. */
    static final String CODE = "IMPLAUSIBLE_UNIT";

    /** Usual inputs of a design. */
    static final List<Usual> DESIGN = List.of(
            celsius("evaporating.temperature", -80, 40),
            ofCritical("evaporating.pressure", 0.01, 0.5),
            celsius("condensing.temperature", -20, 100),
            ofCritical("condensing.pressure", 0.05, 2),
            kelvin("superheat", 0, 40),
            celsius("evaporatorOutletTemperature", -80, 60),
            kelvin("subcooling", 0, 40),
            celsius("condenserOutletTemperature", -30, 90),
            celsius("gasCoolerOutletTemperature", 0, 90),
            celsius("compressorInletTemperature", -80, 60));

    /** Usual readings of a running unit. */
    static final List<Usual> READINGS = List.of(
            ofCritical("suctionPressure", 0.01, 0.5),
            celsius("suctionLineTemperature", -60, 60),
            ofCritical("dischargePressure", 0.05, 2),
            celsius("dischargeLineTemperature", 0, 200),
            ofCritical("liquidLinePressure", 0.05, 2),
            celsius("liquidLineTemperature", -20, 80),
            celsius("evaporatorOutletTemperature", -60, 60),
            celsius("outdoorAirTemperature", -50, 60),
            celsius("condenserAir.enteringTemperature", -50, 60),
            celsius("condenserAir.leavingTemperature", -50, 80),
            celsius("evaporatorAir.enteringTemperature", -50, 60),
            celsius("evaporatorAir.leavingTemperature", -60, 60));

    /** Usual inputs at the ports of a compressor. */
    static final List<Usual> COMPRESSION_PORTS = List.of(
            ofCritical("suction.pressure", 0.005, 0.7),
            celsius("suction.saturationTemperature", -80, 40),
            celsius("suction.temperature", -80, 80),
            kelvin("suction.superheat", 0, 60),
            ofCritical("discharge.pressure", 0.02, 3),
            celsius("discharge.saturationTemperature", -30, 100));

    /** The same with a measured discharge temperature. */
    static final List<Usual> COMPRESSION = Stream.concat(
                    COMPRESSION_PORTS.stream(), Stream.of(celsius("discharge.temperature", 0, 250)))
            .toList();

    /** Usual inputs of a condenser's duty. */
    static final List<Usual> DUTY = List.of(
            celsius("condensing.temperature", -20, 100),
            ofCritical("condensing.pressure", 0.05, 2),
            celsius("condenserInletTemperature", 0, 200),
            celsius("evaporating.temperature", -80, 40),
            ofCritical("evaporating.pressure", 0.01, 0.5),
            kelvin("superheat", 0, 40),
            kelvin("subcooling", 0, 40),
            celsius("condenserOutletTemperature", -30, 90),
            celsius("gasCoolerOutletTemperature", 0, 90));

    /** Usual air of a coil. */
    static final List<Usual> AIR_SIDE = List.of(
            celsius("entering.dryBulb", -50, 60),
            celsius("entering.wetBulb", -50, 60),
            celsius("entering.dewPoint", -60, 40),
            celsius("leaving.dryBulb", -60, 90),
            celsius("leaving.wetBulb", -60, 60),
            celsius("leaving.dewPoint", -60, 40),
            celsius("saturationTemperature", -80, 100));

    /** Usual inputs of a condensing coil. */
    static final List<Usual> COIL = List.of(
            celsius("entering.dryBulb", -50, 60),
            celsius("entering.wetBulb", -50, 60),
            celsius("leavingDryBulb", -50, 90),
            celsius("condensing.temperature", -20, 100),
            ofCritical("condensing.pressure", 0.05, 2),
            celsius("condenserInletTemperature", 0, 200),
            kelvin("inletSuperheat", 0, 100),
            kelvin("subcooling", 0, 40),
            celsius("condenserOutletTemperature", -30, 90));

    /** Usual inputs of an evaporating coil. */
    static final List<Usual> EVAPORATING_COIL = List.of(
            celsius("entering.dryBulb", -50, 60),
            celsius("entering.wetBulb", -50, 60),
            celsius("leaving.dryBulb", -60, 50),
            celsius("leaving.wetBulb", -60, 50),
            celsius("evaporating.temperature", -80, 40),
            ofCritical("evaporating.pressure", 0.01, 0.7),
            celsius("liquidTemperature", -30, 80),
            ofCritical("liquidPressure", 0.05, 2),
            kelvin("superheat", 0, 40),
            celsius("evaporatorOutletTemperature", -60, 60));

    /** Usual inputs of a gas cooler. */
    static final List<Usual> GAS_COOLER = List.of(
            celsius("entering.dryBulb", -50, 60),
            celsius("entering.wetBulb", -50, 60),
            celsius("leavingDryBulb", -50, 90),
            ofCritical("pressure", 0.9, 3),
            celsius("gasCoolerInletTemperature", 20, 200),
            celsius("gasCoolerOutletTemperature", 0, 90));

    /** Usual inputs of a machine in balance. */
    static final List<Usual> BALANCE = List.of(
            celsius("outdoorAir.dryBulb", -50, 60),
            celsius("outdoorAir.wetBulb", -50, 60),
            celsius("indoorAir.dryBulb", -50, 60),
            celsius("indoorAir.wetBulb", -50, 60),
            kelvin("superheat", 0, 40),
            kelvin("suctionLineTemperatureRise", 0, 40),
            kelvin("subcooling", 0, 40));

    /** Usual water of a coil. */
    static final List<Usual> WATER_SIDE = List.of(
            celsius("enteringTemperature", 1, 60),
            celsius("leavingTemperature", 1, 75),
            celsius("saturationTemperature", -20, 90),
            celsius("coolingTower.wetBulb", -20, 35));

    /** The usual range of an input, SI, or as shares of the critical pressure. */
    record Usual(String path, double low, double high, boolean ofCriticalPressure) {}

    private UnitSlips() {}

    static List<Warning> of(Input<?> input, List<Usual> usual) {
        List<Warning> warnings = new ArrayList<>();
        for (Usual range : usual) {
            input.reading(range.path())
                    .flatMap(reading -> warning(input, range, reading))
                    .ifPresent(warnings::add);
        }
        return warnings;
    }

    private static Optional<Warning> warning(Input<?> input, Usual range, Reading reading) {
        double scale = range.ofCriticalPressure()
                ? input.equilibrium().refrigerant().criticalPoint().pressure()
                : 1;
        double low = range.low() * scale;
        double high = range.high() * scale;
        double si = reading.toSi(input.atmosphere());
        QuantityKind kind = reading.kind();
        return Plausibility.sentence(reading, low, high, input.atmosphere())
                .map(sentence -> new Warning(
                        CODE,
                        WarningSeverity.CAUTION,
                        sentence,
                        range.path(),
                        input.output().of(kind, si),
                        input.output().of(kind, si < low ? low : high),
                        "usual range of this input: common practice, no source"));
    }

    private static Usual celsius(String path, double low, double high) {
        return new Usual(path, low + CELSIUS_ZERO, high + CELSIUS_ZERO, false);
    }

    private static Usual kelvin(String path, double low, double high) {
        return new Usual(path, low, high, false);
    }

    private static Usual ofCritical(String path, double low, double high) {
        return new Usual(path, low, high, true);
    }
}
