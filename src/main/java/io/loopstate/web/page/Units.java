package io.loopstate.web.page;

import java.util.List;

/**
 * Units that a field offers: those on gauges, thermometers and nameplates, not all that a request may use.
 *
 * @param tokens names of the units; none for a plain number
 * @param usualIp the one chosen where the page speaks inch-pound
 * @param usualSi the one chosen where it speaks SI
 */
record Units(List<String> tokens, String usualIp, String usualSi) {
    /** On the low side, where a gauge may stand below the atmosphere. */
    static final Units LOW_PRESSURE = new Units(
            List.of("psig", "psia", "inHg_vac", "bar_g", "bar_a", "kPa_g", "kPa_a", "MPa_g"), "psig", "bar_g");

    static final Units PRESSURE =
            new Units(List.of("psig", "psia", "bar_g", "bar_a", "kPa_g", "kPa_a", "MPa_g"), "psig", "bar_g");
    static final Units TEMPERATURE = new Units(List.of("degF", "degC", "K"), "degF", "degC");
    static final Units DIFFERENCE = new Units(List.of("delta_degF", "delta_K"), "delta_degF", "delta_K");
    static final Units FLOW = new Units(List.of("cfm", "m3_per_h", "L_per_s"), "cfm", "m3_per_h");
    static final Units POWER = new Units(List.of("Btu_per_h", "ton", "W", "kW", "hp"), "Btu_per_h", "kW");
    static final Units ELECTRIC_POWER = new Units(List.of("W", "kW"), "W", "kW");
    static final Units LENGTH = new Units(List.of("ft", "m"), "ft", "m");
    static final Units VOLTAGE = one("V");
    static final Units CURRENT = one("A");
    static final Units NONE = new Units(List.of(), "", "");

    private static Units one(String token) {
        return new Units(List.of(token), token, token);
    }

    String usual(boolean inchPound) {
        return inchPound ? usualIp : usualSi;
    }
}
