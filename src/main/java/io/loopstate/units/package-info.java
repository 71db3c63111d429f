/**
 * Units of measure: what callers write, turned into SI doubles for the engine and back into the units asked for.
 *
 * <p>Doors: {@link io.loopstate.units.QuantityParser} (text to {@link io.loopstate.units.Reading}),
 * {@link io.loopstate.units.Atmosphere} (gauge and vacuum readings to absolute pressure),
 * {@link io.loopstate.units.UnitSelection} (the units of a reply), {@link io.loopstate.units.UnitCatalog} (the list of
 * units), {@link io.loopstate.units.Plausibility} (slips of unit). Every fault is a
 * {@link io.loopstate.units.UnitFault}; it knows no transport.
 *
 * <p>Uses {@code java.*} only. Used by {@code web.mapping} and {@code web.form} alone: neither the engine nor the
 * resources know a unit.
 *
 * <p>Rules: a temperature and a temperature difference are different kinds; a pressure names what it is counted from
 * (absolute, gauge, vacuum), because SP 811 section 7.4 and ISO 80000-1 put that on the quantity and not on the unit;
 * nothing is guessed from the size of a number.
 *
 * <p>Numerical policy: factors are exact by definition wherever a definition exists, and name their source. They stand
 * as rationals in the resource {@code units/units.txt}, each worked out from a UCUM expression by a UCUM library; a test
 * works all of them out again. At run time that library is not used: starting it takes longer than all else here, and
 * it has no gauge pressures. A conversion is within one unit in the last place of the exact result; nothing is rounded
 * for display.
 */
package io.loopstate.units;
