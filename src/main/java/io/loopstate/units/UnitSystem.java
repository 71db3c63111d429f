package io.loopstate.units;

import java.util.Locale;

/** A set of units for replies. */
public enum UnitSystem {
    /** Metric units as they stand on a European gauge set: degC, kPa, kJ/kg, kW. */
    SI,
    /** Inch-pound units: degF, psia, Btu/lb, Btu/h. */
    IP;

    /** The unit of a kind in this set. */
    public UnitToken unitFor(QuantityKind kind) {
        return kind.replyUnit(this);
    }

    /**
     * Reads {@code SI} or {@code IP}, in any case.
     *
     * @throws UnitFault {@link UnitFaultCode#UNKNOWN_UNIT_SYSTEM}
     */
    public static UnitSystem parse(String text) {
        String name = text == null ? "" : text.strip();
        return switch (name.length() > 2 ? "" : name.toUpperCase(Locale.ROOT)) {
            case "SI" -> SI;
            case "IP" -> IP;
            default ->
                throw UnitFault.of(
                        UnitFaultCode.UNKNOWN_UNIT_SYSTEM,
                        "\"" + UnitFault.clip(name) + "\" is not a set of units.",
                        name,
                        "SI, IP",
                        "SI for metric units, IP for inch-pound units.");
        };
    }
}
