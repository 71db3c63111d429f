package io.loopstate.units;

import java.util.List;
import java.util.Optional;

/**
 * A unit of measurement under its canonical ASCII name, such as {@code psig}, {@code degF} or {@code m3_per_h}. There
 * is one instance per unit, so identity is equality.
 *
 * <p>SI values are those of {@link QuantityKind#siUnit()}; pressures are absolute on the SI side.
 */
public final class UnitToken {
    private static final String QUDT = "http://qudt.org/vocab/unit/";

    private final String name;
    private final List<QuantityKind> kinds;
    private final PressureReference reference;
    private final Scale scale;
    private final UnitTable.Row row;

    UnitToken(String name, List<QuantityKind> kinds, PressureReference reference, UnitTable.Row row) {
        this.name = name;
        this.kinds = List.copyOf(kinds);
        this.reference = reference;
        this.scale = row.scale();
        this.row = row;
    }

    /**
     * The unit with exactly this canonical name. For what people write, use {@link QuantityParser}.
     *
     * @throws UnitFault {@link UnitFaultCode#UNKNOWN_UNIT}
     */
    public static UnitToken of(String name) {
        return UnitCatalog.token(name);
    }

    /** The canonical name, ASCII letters, digits and underscores. */
    public String name() {
        return name;
    }

    /** The kind that it measures first of all. */
    public QuantityKind kind() {
        return kinds.get(0);
    }

    /** Whether it measures this kind; kelvin and degree Rankine measure two. */
    public boolean measures(QuantityKind kind) {
        return kinds.contains(kind);
    }

    /** What its numbers are counted from, {@link PressureReference#NONE} but for pressures. */
    public PressureReference reference() {
        return reference;
    }

    /** The name in words, for example "bar, gauge". */
    public String words() {
        return qualified(row.words(), ", " + reference.words());
    }

    /** The printed symbol, for example "bar(g)" or "°F". */
    public String symbol() {
        return switch (reference) {
            case ABSOLUTE -> qualified(row.symbol(), "(a)");
            case GAUGE -> qualified(row.symbol(), "(g)");
            case VACUUM -> qualified(row.symbol(), " vacuum");
            case DIFFERENCE, NONE -> row.symbol();
        };
    }

    private String qualified(String text, String qualifier) {
        return reference == PressureReference.NONE || !row.needsReference() ? text : text + qualifier;
    }

    /**
     * The code of the Unified Code for Units of Measure, empty where it has none. It says nothing of gauge or absolute.
     */
    public Optional<String> ucum() {
        return Optional.of(row.ucum()).filter(code -> !code.isEmpty());
    }

    /** The IRI in the QUDT vocabulary, empty where it has none. It says nothing of gauge or absolute. */
    public Optional<String> qudt() {
        return Optional.of(row.qudt()).filter(local -> !local.isEmpty()).map(QUDT::concat);
    }

    /** Other spellings that are accepted; beyond these, case, spaces and the order of a product's factors are free. */
    public List<String> spellings() {
        return row.spellingsOf(reference);
    }

    /** Where the definition comes from and what else must be known, empty for the plain UCUM definition. */
    public String note() {
        return row.note();
    }

    /** The double nearest to the exact size of one unit in SI. */
    public double factor() {
        return scale.factor();
    }

    /** The SI value at the number zero, for the temperature scales; 0 else. Gauge zero is the {@link Atmosphere}. */
    public double offset() {
        return scale.offset();
    }

    /** Whether one step on both is the same size, as for degF and delta_degF or psig and psia. */
    boolean stepsLike(UnitToken other) {
        return scale.stepsLike(other.scale);
    }

    /**
     * Converts to SI.
     *
     * @param value the number in this unit, a point on its scale; for differences in K or degR see {@link Reading#toSi}
     * @param atmosphere from which gauge and vacuum readings are counted; other units do not look at it
     * @return the value in {@link QuantityKind#siUnit()}, absolute for pressures, within one unit in the last place
     * @throws UnitFault below absolute zero ({@link UnitFaultCode#TEMPERATURE_BELOW_ABSOLUTE_ZERO},
     *     {@link UnitFaultCode#PRESSURE_BELOW_ABSOLUTE_ZERO}, {@link UnitFaultCode#VACUUM_BELOW_ABSOLUTE_ZERO}), a
     *     vacuum with a minus sign, or a number that is not finite or becomes so
     */
    public double toSi(double value, Atmosphere atmosphere) {
        double si = switch (reference) {
            case GAUGE -> scale.stepsUp(atmosphere.pressure(), value);
            case VACUUM -> scale.stepsUp(atmosphere.pressure(), -value);
            case ABSOLUTE, DIFFERENCE, NONE -> scale.toSi(value);
        };
        if (!Double.isFinite(si)) {
            throw PhysicalLimits.notFinite(value, this);
        }
        if (si < 0.0 || reference == PressureReference.VACUUM) {
            return PhysicalLimits.check(value, this, si, atmosphere);
        }
        return si;
    }

    /** A difference to SI: steps only, neither offset nor limit. */
    double differenceToSi(double value) {
        double si = scale.toSi(value);
        if (!Double.isFinite(si)) {
            throw PhysicalLimits.notFinite(value, this);
        }
        return si;
    }

    /**
     * Converts from SI, the inverse of {@link #toSi}. A vacuum unit gives a negative number above the atmosphere.
     *
     * @throws IllegalArgumentException if {@code si} is not finite
     */
    public double fromSi(double si, Atmosphere atmosphere) {
        double value = switch (reference) {
            case GAUGE -> scale.steps(si - atmosphere.pressure());
            case VACUUM -> scale.steps(atmosphere.pressure() - si);
            case ABSOLUTE, DIFFERENCE, NONE -> scale.fromSi(si);
        };
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("not a finite quantity: " + si + " in SI as " + name);
        }
        return value;
    }

    /** The canonical name. */
    @Override
    public String toString() {
        return name;
    }
}
