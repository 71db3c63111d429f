package io.loopstate.engine.fluid;

import io.loopstate.engine.eos.HelmholtzModel;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A fluid with an equation of state of its own: a pure compound or a pseudo-pure blend. Built by {@link FluidReader} from a
 * coefficient file.
 */
public record Fluid(
        String designation,
        String name,
        List<String> aliases,
        Optional<String> formula,
        Optional<String> casNumber,
        Kind kind,
        double molarMass,
        Limits limits,
        CriticalPoint criticalPoint,
        OptionalDouble normalBoilingPoint,
        double acentricFactor,
        OptionalDouble maxMolarDensity,
        HelmholtzModel model,
        Auxiliaries auxiliaries,
        Optional<JsonObject> transport,
        List<Citation> sources)
        implements Refrigerant {

    @Override
    public double minSaturationTemperature() {
        return limits.minTemperature();
    }

    /** The same fluid under other limits, e.g. to exercise the solvers at the edges. */
    public Fluid withLimits(Limits other) {
        return new Fluid(
                designation,
                name,
                aliases,
                formula,
                casNumber,
                kind,
                molarMass,
                other,
                criticalPoint,
                normalBoilingPoint,
                acentricFactor,
                maxMolarDensity,
                model,
                auxiliaries,
                transport,
                sources);
    }
}
