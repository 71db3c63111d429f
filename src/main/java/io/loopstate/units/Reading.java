package io.loopstate.units;

/**
 * A number with its unit, as a caller gave it or is to get it.
 *
 * @param kind what it measures
 * @param value the number in {@code unit}, finite
 * @param unit a unit of {@code kind}
 */
public record Reading(QuantityKind kind, double value, UnitToken unit) {

    /** Refuses a unit of another kind and a number that is not finite. */
    public Reading {
        if (!Double.isFinite(value) || !unit.measures(kind)) {
            throw new IllegalArgumentException("not a " + kind.words() + ": " + value + " " + unit);
        }
    }

    /** An engine's SI value in the unit asked for. */
    public static Reading ofSi(QuantityKind kind, double si, UnitToken unit, Atmosphere atmosphere) {
        return new Reading(kind, unit.fromSi(si, atmosphere), unit);
    }

    /**
     * The value in {@link QuantityKind#siUnit()}.
     *
     * @throws UnitFault as {@link UnitToken#toSi}
     */
    public double toSi(Atmosphere atmosphere) {
        if (kind == QuantityKind.TEMPERATURE_DIFFERENCE) {
            // K and degR stand for both kinds; as a difference they may be negative.
            return unit.differenceToSi(value);
        }
        return unit.toSi(value, atmosphere);
    }

    /** The same quantity in another unit of its kind. */
    public Reading in(UnitToken other, Atmosphere atmosphere) {
        return other == unit ? this : ofSi(kind, toSi(atmosphere), other, atmosphere);
    }

    /** The number and the canonical unit, as the parser reads it back. */
    @Override
    public String toString() {
        return value + " " + unit;
    }
}
