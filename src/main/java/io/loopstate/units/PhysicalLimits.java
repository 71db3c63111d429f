package io.loopstate.units;

/** Readings that no instrument can show: below absolute zero, or a vacuum with the wrong sign. */
final class PhysicalLimits {
    private PhysicalLimits() {}

    static UnitFault notFinite(double value, UnitToken unit) {
        return UnitFault.of(
                UnitFaultCode.NUMBER_NOT_FINITE,
                "The number is too large to be converted from " + unit + ".",
                value + " " + unit,
                "a finite number",
                "");
    }

    /** Passes what is possible for the unit's kind; {@code si} is the value already converted and is returned. */
    static double check(double value, UnitToken unit, double si, Atmosphere atmosphere) {
        if (si < 0.0 && si >= -roundingAtZero(unit, atmosphere)) {
            // Absolute zero written as a decimal number on a scale with another zero.
            return 0.0;
        }
        String got = Numbers.brief(value) + " " + unit;
        if (unit.reference() == PressureReference.VACUUM) {
            checkVacuum(value, unit, si, atmosphere, got);
        } else if (si < 0.0 && unit.kind() == QuantityKind.PRESSURE) {
            String surroundings = unit.reference() == PressureReference.GAUGE ? " with " + atmosphere.describe() : "";
            throw UnitFault.of(
                    UnitFaultCode.PRESSURE_BELOW_ABSOLUTE_ZERO,
                    got + " is an absolute pressure below zero" + surroundings + ".",
                    got,
                    "at least " + Numbers.brief(unit.fromSi(0.0, atmosphere)) + " " + unit,
                    "Check the sign and the unit; a pressure difference is a different kind of quantity.");
        } else if (si < 0.0 && unit.kind() == QuantityKind.TEMPERATURE) {
            throw UnitFault.of(
                    UnitFaultCode.TEMPERATURE_BELOW_ABSOLUTE_ZERO,
                    got + " is below absolute zero.",
                    got,
                    "at least " + Numbers.brief(unit.fromSi(0.0, atmosphere)) + " " + unit,
                    "Check the sign and the unit; a temperature difference is a different kind of quantity.");
        }
        return si;
    }

    private static double roundingAtZero(UnitToken unit, Atmosphere atmosphere) {
        return switch (unit.reference()) {
            case GAUGE, VACUUM -> 2.0 * Math.ulp(atmosphere.pressure());
            case ABSOLUTE, DIFFERENCE, NONE -> unit.offset() == 0.0 ? 0.0 : 2.0 * Math.ulp(unit.offset());
        };
    }

    private static void checkVacuum(double value, UnitToken unit, double si, Atmosphere atmosphere, String got) {
        String range = "0 to " + Numbers.brief(unit.fromSi(0.0, atmosphere)) + " " + unit;
        if (value < 0.0) {
            throw UnitFault.of(
                    UnitFaultCode.VACUUM_NEGATIVE,
                    "A vacuum is counted down from the atmosphere and takes no minus sign.",
                    got,
                    range,
                    "Write " + Numbers.brief(-value) + " " + unit
                            + ", or use a gauge unit such as psig or bar_g for a pressure above the atmosphere.");
        }
        if (si < 0.0) {
            throw UnitFault.of(
                    UnitFaultCode.VACUUM_BELOW_ABSOLUTE_ZERO,
                    got + " is a deeper vacuum than there is: the reading is counted down from the atmosphere, "
                            + atmosphere.describe() + ".",
                    got,
                    range,
                    "Check the reading and the altitude or atmospheric pressure; "
                            + "an absolute pressure is written in inHg_a, psia or kPa_a.");
        }
    }
}
