package io.loopstate.engine.flash;

import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.fluid.Blend;
import io.loopstate.engine.fluid.Limits;
import io.loopstate.engine.fluid.Mixture;
import io.loopstate.engine.fluid.ReferenceState;
import io.loopstate.engine.fluid.Refrigerant;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The door to the states of every fluid: one equilibrium per fluid and reference state, made when first asked for and kept.
 */
public final class Equilibria {
    private static final double IIR_TEMPERATURE = 273.15;
    private static final double ASHRAE_TEMPERATURE = 233.15;
    private static final double NORMAL_PRESSURE = 101325;
    /** IIR: h = 200 kJ/kg, s = 1 kJ/(kg K) for the saturated liquid at 0 degC. */
    private static final double IIR_ENTHALPY = 200e3;

    private static final double IIR_ENTROPY = 1e3;

    private record Key(String designation, Limits limits, ReferenceState reference) {}

    private record ModelKey(String designation, Limits limits) {}

    private final Map<ModelKey, FluidModel> models = new ConcurrentHashMap<>();
    private final Map<Key, Equilibrium> equilibria = new ConcurrentHashMap<>();
    private final RecentMixtures recent = new RecentMixtures();

    /**
     * What is kept, for whoever watches the service.
     *
     * @param catalogued refrigerants of the catalog whose lines are made, counted once for each range
     * @param compositions of callers' own whose lines are kept
     * @param mostCompositions that are kept; the one not used for longest is forgotten
     * @param hits how often the lines of a composition were kept when they were asked for
     * @param misses how often they had to be made
     */
    public record Kept(int catalogued, int compositions, int mostCompositions, long hits, long misses) {}

    /** What is kept now. */
    public Kept kept() {
        return new Kept(models.size(), recent.size(), RecentMixtures.KEPT, recent.hits(), recent.misses());
    }

    /**
     * States of a refrigerant with a reference state of the caller's choice.
     *
     * @throws EngineException REFERENCE_STATE_UNDEFINED where it has no saturated liquid at the reference point
     */
    public Equilibrium of(Refrigerant refrigerant, ReferenceState reference) {
        return equilibria.computeIfAbsent(
                new Key(refrigerant.designation(), refrigerant.limits(), reference),
                k -> new FluidEquilibrium(withDatum(known(refrigerant), reference), reference));
    }

    private FluidModel known(Refrigerant refrigerant) {
        return models.computeIfAbsent(
                new ModelKey(refrigerant.designation(), refrigerant.limits()), k -> FluidModels.of(refrigerant));
    }

    /**
     * A mixture of the caller's own composition as a refrigerant, its figures computed; a bounded number of them is kept.
     *
     * @throws EngineException NOT_CONVERGED where the model has no phase boundary of the usual form
     */
    public Blend blend(Mixture mixture) {
        return (Blend) recent.of(mixture).fluid();
    }

    /** States of a mixture of the caller's own composition. */
    public Equilibrium of(Mixture mixture, ReferenceState reference) {
        return new FluidEquilibrium(withDatum(recent.of(mixture), reference), reference);
    }

    /** IIR where the fluid is a saturated liquid at 0 degC, else the normal boiling point, else ASHRAE. */
    public static ReferenceState defaultReference(Refrigerant fluid) {
        if (saturated(fluid, IIR_TEMPERATURE)) {
            return ReferenceState.IIR;
        }
        return fluid.normalBoilingPoint().isPresent() ? ReferenceState.NORMAL_BOILING_POINT : ReferenceState.ASHRAE;
    }

    private static boolean saturated(Refrigerant fluid, double temperature) {
        return temperature >= fluid.minSaturationTemperature()
                && temperature < fluid.criticalPoint().temperature();
    }

    private static FluidModel withDatum(FluidModel raw, ReferenceState reference) {
        MolarState datum = Saturated.liquid(raw, datumEdges(raw, reference));
        double molarMass = raw.fluid().molarMass();
        boolean iir = reference == ReferenceState.IIR;
        double enthalpy = iir ? IIR_ENTHALPY * molarMass : 0;
        double entropy = iir ? IIR_ENTROPY * molarMass : 0;
        return raw.shifted(enthalpy - datum.enthalpy(), entropy - datum.entropy());
    }

    private static Dome.Edges datumEdges(FluidModel fluid, ReferenceState reference) {
        if (reference == ReferenceState.NORMAL_BOILING_POINT) {
            if (fluid.fluid().normalBoilingPoint().isPresent()) {
                return fluid.dome().atPressure(NORMAL_PRESSURE);
            }
        } else {
            double t = reference == ReferenceState.IIR ? IIR_TEMPERATURE : ASHRAE_TEMPERATURE;
            if (saturated(fluid.fluid(), t)) {
                return fluid.dome().atTemperature(t);
            }
        }
        throw EngineException.of(
                ErrorCode.REFERENCE_STATE_UNDEFINED,
                fluid.fluid().designation() + " has no saturated liquid at " + reference.words());
    }
}
