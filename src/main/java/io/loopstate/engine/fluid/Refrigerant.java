package io.loopstate.engine.fluid;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Identity, range and sources of a catalogued refrigerant, whatever model stands behind it. */
public interface Refrigerant {
    /** ASHRAE 34 designation with its hyphen, e.g. {@code R-134a}. */
    String designation();

    String name();

    List<String> aliases();

    Optional<String> formula();

    /** CAS registry number; empty for a blend. */
    Optional<String> casNumber();

    Kind kind();

    /** kg/mol. */
    double molarMass();

    Limits limits();

    /** Upper end of the saturation line of the model. */
    CriticalPoint criticalPoint();

    /** Density at the critical point, mol/m3. */
    default double criticalMolarDensity() {
        return criticalPoint().density() / molarMass();
    }

    /** Acentric factor of Pitzer; for a blend the mole-weighted mean, good for starting values only. */
    double acentricFactor();

    /** Lower end of the saturation line: the triple point or the lowest temperature of the equation, K. */
    double minSaturationTemperature();

    /** Saturation temperature at 101.325 kPa, K; empty where the liquid does not exist at that pressure. */
    OptionalDouble normalBoilingPoint();

    /** The equation of state and the papers it rests on. */
    List<Citation> sources();

    /** What the model is. */
    enum Kind {
        /** One compound. */
        PURE,
        /** A mixture of fixed composition treated as one substance, e.g. dry air. */
        PSEUDO_PURE,
        /** A mixture computed from its components. */
        BLEND
    }
}
