/**
 * Units of measure: reading unit tokens, and conversion between them and SI.
 *
 * <p>Uses {@code java.*} and the units-of-measure libraries only. Used by {@code web.mapping} and {@code web.csv} alone:
 * neither the engine nor the resources know a unit.
 *
 * <p>Numerical policy: factors are exact by definition wherever a definition exists, and name their source. A temperature
 * and a temperature difference are different kinds. A gauge pressure needs the pressure of the atmosphere; a pressure unit
 * without gauge or absolute is refused.
 */
package io.loopstate.units;
