package io.loopstate.engine.flash;

import io.loopstate.engine.eos.HelmholtzModel;
import io.loopstate.engine.eos.Isotherm;
import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.fluid.Fluid;
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
    /** Room above the highest density of the range for iterations to move in. */
    private static final double DENSITY_MARGIN = 1.2;

    private record Key(Fluid fluid, ReferenceState reference) {}

    private final Map<Fluid, FluidModel> models = new ConcurrentHashMap<>();
    private final Map<Key, Equilibrium> equilibria = new ConcurrentHashMap<>();

    /**
     * States of a fluid with a reference state of the caller's choice.
     *
     * @throws EngineException REFERENCE_STATE_UNDEFINED where the fluid has no saturated liquid at the reference point
     */
    public Equilibrium of(Fluid fluid, ReferenceState reference) {
        return equilibria.computeIfAbsent(new Key(fluid, reference), k -> make(fluid, reference));
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

    private Equilibrium make(Fluid fluid, ReferenceState reference) {
        FluidModel raw = models.computeIfAbsent(fluid, Equilibria::model);
        MolarState datum = Saturated.liquid(raw, datumEdges(raw, reference));
        boolean iir = reference == ReferenceState.IIR;
        double enthalpy = iir ? IIR_ENTHALPY * fluid.molarMass() : 0;
        double entropy = iir ? IIR_ENTROPY * fluid.molarMass() : 0;
        HelmholtzModel shifted = fluid.model().shifted(enthalpy - datum.enthalpy(), entropy - datum.entropy());
        return new FluidEquilibrium(
                new FluidModel(fluid, shifted, raw.dome(), raw.maxDensity(), raw.densityMaximum(), new IsobarStarts()),
                reference);
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
                fluid.fluid().designation() + " has no saturated liquid at the reference point " + reference);
    }

    private static FluidModel model(Fluid fluid) {
        Dome dome = fluid.kind() == Refrigerant.Kind.PURE ? new SaturationCurve(fluid) : new PseudoPureDome(fluid);
        double highest = fluid.maxMolarDensity().orElseGet(() -> densest(fluid, dome));
        double tMin = fluid.limits().minTemperature();
        MolarState coldest =
                fluid.model().isotherm(tMin).state(dome.atTemperature(tMin).liquidDensity());
        boolean contracts = coldest.pressureByTemperature() < 0;
        return new FluidModel(fluid, fluid.model(), dome, DENSITY_MARGIN * highest, contracts, new IsobarStarts());
    }

    /** Density at the lowest temperature and highest pressure, or where the isotherm stops rising before that. */
    private static double densest(Fluid fluid, Dome dome) {
        double t = fluid.limits().minTemperature();
        Isotherm isotherm = fluid.model().isotherm(t);
        double density = dome.atTemperature(t).liquidDensity();
        Isotherm.Pressure p = isotherm.pressure(density);
        while (p.value() < fluid.limits().maxPressure() && p.slope() > 0) {
            density *= 1.01;
            p = isotherm.pressure(density);
        }
        return density;
    }
}
