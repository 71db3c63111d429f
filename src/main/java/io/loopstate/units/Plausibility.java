package io.loopstate.units;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Spots the likely slip of unit: a number that is odd in its unit but usual in another one. It never changes a value.
 *
 * <p>Which units get mixed up, and the wide ranges used for numbers without unit, are common practice, no source.
 */
public final class Plausibility {
    private static final int EXAMPLES = 3;
    private static final Map<QuantityKind, List<UnitToken>> MIXED_UP = new EnumMap<>(QuantityKind.class);
    private static final Map<QuantityKind, Range> USUAL = new EnumMap<>(QuantityKind.class);

    /** A closed range in SI. */
    private record Range(double low, double high) {
        boolean holds(double si) {
            return si >= low && si <= high;
        }
    }

    static {
        mixedUp(QuantityKind.TEMPERATURE, 220.0, 420.0, "degF degC K degR");
        mixedUp(QuantityKind.TEMPERATURE_DIFFERENCE, 0.0, 40.0, "delta_degF K");
        mixedUp(QuantityKind.PRESSURE, 5e4, 5e6, "psig psia bar_g bar_a kPa_a kPa_g MPa_a MPa_g inHg_vac Pa_a");
        mixedUp(QuantityKind.PRESSURE_DIFFERENCE, 10.0, 5e5, "psi_diff kPa_diff bar_diff inH2O_diff Pa_diff");
        mixedUp(QuantityKind.DENSITY, 0.5, 2000.0, "kg_per_m3 lb_per_ft3 g_per_cm3");
        mixedUp(QuantityKind.SPECIFIC_VOLUME, 5e-4, 2.0, "m3_per_kg ft3_per_lb L_per_kg");
        mixedUp(QuantityKind.SPECIFIC_ENERGY, 1e3, 2e6, "kJ_per_kg Btu_per_lb J_per_kg kcal_per_kg");
        mixedUp(QuantityKind.SPECIFIC_ENTROPY, 100.0, 8e3, "kJ_per_kg_K Btu_per_lb_degF J_per_kg_K");
        mixedUp(QuantityKind.SPEED, 0.1, 400.0, "m_per_s ft_per_min ft_per_s km_per_h mph");
        mixedUp(QuantityKind.MASS_FLOW, 1e-3, 20.0, "lb_per_h kg_per_h kg_per_s lb_per_min g_per_s");
        mixedUp(QuantityKind.VOLUME_FLOW, 1e-5, 50.0, "cfm m3_per_h L_per_s gpm L_per_min m3_per_s");
        mixedUp(QuantityKind.POWER, 50.0, 5e6, "kW ton Btu_per_h MBH hp W");
        mixedUp(QuantityKind.LENGTH, 1e-3, 5e3, "m ft inch mm");
        mixedUp(QuantityKind.VOLUME, 1e-6, 1.0, "cm3 in3 L ft3 m3");
        mixedUp(QuantityKind.MASS, 0.05, 500.0, "kg lb oz g");
        mixedUp(QuantityKind.FREQUENCY, 5.0, 500.0, "rpm Hz rad_per_s");
        mixedUp(QuantityKind.RATIO, 0.0, 1.0, "ratio pct");
        mixedUp(QuantityKind.HUMIDITY_RATIO, 1e-4, 0.05, "g_per_kg gr_per_lb kg_per_kg");
        mixedUp(QuantityKind.ELECTRIC_CURRENT, 0.1, 500.0, "A mA");
        mixedUp(QuantityKind.VOLTAGE, 20.0, 1000.0, "V kV");
    }

    private Plausibility() {}

    private static void mixedUp(QuantityKind kind, double low, double high, String units) {
        MIXED_UP.put(kind, List.of(units.split(" ")).stream().map(UnitToken::of).toList());
        USUAL.put(kind, new Range(low, high));
    }

    /**
     * The units in which the same number would be usual, likeliest first; empty if it is usual as it stands.
     *
     * @param reading as given
     * @param low lowest usual value, SI
     * @param high highest usual value, SI
     * @param atmosphere from which gauge readings are counted
     */
    public static List<UnitToken> hints(Reading reading, double low, double high, Atmosphere atmosphere) {
        Range usual = new Range(low, high);
        if (usual.holds(reading.toSi(atmosphere))) {
            return List.of();
        }
        return fitting(reading.kind(), reading.value(), usual, atmosphere).stream()
                .filter(unit -> unit != reading.unit())
                .toList();
    }

    /**
     * The same as {@link #hints} in a sentence, for example "118 kPa_a is outside the usual 300 to 2000 kPa_a; 118 psig
     * would be inside it."; empty if the number is usual as it stands or in no unit at all.
     */
    public static Optional<String> sentence(Reading reading, double low, double high, Atmosphere atmosphere) {
        List<String> others = hints(reading, low, high, atmosphere).stream()
                .limit(EXAMPLES)
                .map(unit -> Numbers.brief(reading.value()) + " " + unit)
                .toList();
        if (others.isEmpty()) {
            return Optional.empty();
        }
        UnitToken unit = reading.unit();
        double from = unit.fromSi(low, atmosphere);
        double to = unit.fromSi(high, atmosphere);
        return Optional.of(Numbers.brief(reading.value()) + " " + unit + " is outside the usual "
                + Numbers.brief(Math.min(from, to)) + " to " + Numbers.brief(Math.max(from, to)) + " " + unit + "; "
                + Nearest.either(others) + " would be inside it.");
    }

    /** Units in which a number without unit would make sense, at most three, never none. */
    static List<UnitToken> likely(QuantityKind kind, double value) {
        Range usual = USUAL.getOrDefault(kind, new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY));
        List<UnitToken> fitting = fitting(kind, value, usual, Atmosphere.standard());
        List<UnitToken> found = fitting.isEmpty() ? candidates(kind) : fitting;
        return found.subList(0, Math.min(EXAMPLES, found.size()));
    }

    private static List<UnitToken> candidates(QuantityKind kind) {
        return MIXED_UP.getOrDefault(kind, kind.units());
    }

    private static List<UnitToken> fitting(QuantityKind kind, double value, Range usual, Atmosphere atmosphere) {
        return candidates(kind).stream()
                .filter(unit -> fits(kind, value, unit, usual, atmosphere))
                .toList();
    }

    private static boolean fits(QuantityKind kind, double value, UnitToken unit, Range usual, Atmosphere atmosphere) {
        try {
            return usual.holds(new Reading(kind, value, unit).toSi(atmosphere));
        } catch (UnitFault impossible) {
            return false;
        }
    }
}
