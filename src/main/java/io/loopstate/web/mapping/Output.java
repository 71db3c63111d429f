package io.loopstate.web.mapping;

import io.loopstate.units.Atmosphere;
import io.loopstate.units.PressureReference;
import io.loopstate.units.QuantityKind;
import io.loopstate.units.UnitSelection;
import io.loopstate.units.UnitSystem;
import io.loopstate.units.UnitToken;
import io.loopstate.web.dto.Quantity;
import java.util.OptionalDouble;

/**
 * From SI to the units of a reply. A number that does not apply, NaN or empty, becomes {@code null} and is left out.
 *
 * @param units of the reply
 * @param atmosphere from which gauge pressures count
 */
record Output(UnitSelection units, Atmosphere atmosphere) {

    /** A value of a kind. */
    Quantity of(QuantityKind kind, double si) {
        if (Double.isNaN(si)) {
            return null;
        }
        UnitToken unit = units.unitFor(kind);
        return new Quantity(unit.fromSi(si, atmosphere), unit.name());
    }

    /** A value of a kind, where there is one. */
    Quantity of(QuantityKind kind, OptionalDouble si) {
        return si.isPresent() ? of(kind, si.getAsDouble()) : null;
    }

    /** A plain number, where there is one. */
    Double plain(double value) {
        return Double.isNaN(value) ? null : value;
    }

    /** A plain number, where there is one. */
    Double plain(OptionalDouble value) {
        return value.isPresent() ? plain(value.getAsDouble()) : null;
    }

    /** The same output with pressures in the absolute unit of the set: a gauge unit has no use in a formula. */
    Output absolute() {
        UnitToken unit = units.unitFor(QuantityKind.PRESSURE);
        return unit.reference() == PressureReference.ABSOLUTE
                ? this
                : new Output(units.with(QuantityKind.PRESSURE, system().unitFor(QuantityKind.PRESSURE)), atmosphere);
    }

    /** The set of units. */
    UnitSystem system() {
        return units.system();
    }

    /** The same output with flows of water in gallons per minute where the set would have cubic feet. */
    Output forWater() {
        return preferring(QuantityKind.VOLUME_FLOW, "gpm")
                .preferring(QuantityKind.SENSIBLE_HEAT_FACTOR, "Btu_per_h_gpm_degF");
    }

    /** A unit of IP in place of the usual one of its kind, unless the client chose another. */
    private Output preferring(QuantityKind kind, String unit) {
        boolean usual = system() == UnitSystem.IP && units.unitFor(kind).equals(UnitSystem.IP.unitFor(kind));
        return usual ? new Output(units.with(kind, UnitToken.of(unit)), atmosphere) : this;
    }
}
