package io.loopstate.engine.flash;

import io.loopstate.engine.coexistence.BoundaryPoint;
import io.loopstate.engine.coexistence.Feed;
import io.loopstate.engine.coexistence.MixtureSplit;
import io.loopstate.engine.coexistence.PhaseBoundary;
import io.loopstate.engine.eos.HelmholtzModel;
import io.loopstate.engine.eos.Isotherm;
import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.fluid.Blend;
import io.loopstate.engine.fluid.BlendFigures;
import io.loopstate.engine.fluid.CriticalPoint;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.Mixture;
import io.loopstate.engine.fluid.Refrigerant;
import java.util.List;
import java.util.OptionalDouble;

/** Makes what the flashes need of a refrigerant: its dome and what lies inside. */
final class FluidModels {
    private static final double NORMAL_PRESSURE = 101325;
    /** Room above the highest density of the range for iterations to move in. */
    private static final double DENSITY_MARGIN = 1.2;

    private FluidModels() {}

    static FluidModel of(Refrigerant refrigerant) {
        return refrigerant instanceof Blend blend
                ? blend(blend, boundary(blend.mixture()))
                : fluid((Fluid) refrigerant);
    }

    /** A mixture whose figures are not known yet. */
    static FluidModel of(Mixture mixture) {
        PhaseBoundary boundary = boundary(mixture);
        return blend(new Blend(mixture, List.of(), figures(boundary)), boundary);
    }

    private static FluidModel fluid(Fluid fluid) {
        boolean pure = fluid.kind() == Refrigerant.Kind.PURE;
        Dome dome = pure ? new SaturationCurve(fluid) : new PseudoPureDome(fluid);
        Coexistence coexistence = pure ? new LeverRule() : new NoCoexistence();
        double highest = fluid.maxMolarDensity()
                .orElseGet(() -> densest(
                        fluid,
                        fluid.model(),
                        dome.atTemperature(fluid.minSaturationTemperature()).liquidDensity()));
        double tMin = fluid.limits().minTemperature();
        MolarState coldest =
                fluid.model().isotherm(tMin).state(dome.atTemperature(tMin).liquidDensity());
        boolean contracts = coldest.pressureByTemperature() < 0;
        return new FluidModel(
                fluid, fluid.model(), dome, coexistence, DENSITY_MARGIN * highest, contracts, new IsobarStarts());
    }

    private static FluidModel blend(Blend blend, PhaseBoundary boundary) {
        HelmholtzModel model = boundary.feed().merged();
        Dome dome = new BlendDome(boundary);
        double liquid =
                boundary.atTemperature(blend.minSaturationTemperature(), true).density();
        Coexistence coexistence = new BlendCoexistence(boundary, new MixtureSplit(boundary), 0, 0);
        return new FluidModel(
                blend,
                model,
                dome,
                coexistence,
                DENSITY_MARGIN * densest(blend, model, liquid),
                false,
                new IsobarStarts());
    }

    static PhaseBoundary boundary(Mixture mixture) {
        List<Feed.Component> components = mixture.components().stream()
                .map(Mixture.Component::fluid)
                .map(f -> new Feed.Component(
                        f.criticalPoint().temperature(),
                        f.criticalPoint().pressure(),
                        f.acentricFactor(),
                        f.molarMass()))
                .toList();
        try {
            return new PhaseBoundary(
                    new Feed(mixture.model(), mixture.moleFractions(), components),
                    mixture.limits().minTemperature());
        } catch (EngineException e) {
            throw EngineException.of(
                    ErrorCode.NO_PHASE_BOUNDARY,
                    "the model of " + mixture.designation()
                            + " has no bubble and dew line that meet in a critical point, "
                            + "so that it is not computed (" + e.getMessage() + ")");
        }
    }

    static BlendFigures figures(PhaseBoundary boundary) {
        BoundaryPoint critical = boundary.critical();
        BoundaryPoint hottest = boundary.hottest();
        BoundaryPoint tightest = boundary.tightest();
        return new BlendFigures(
                new CriticalPoint(
                        critical.temperature(),
                        critical.pressure(),
                        critical.density() * boundary.feed().molarMass()),
                hottest.temperature(),
                hottest.pressure(),
                tightest.pressure(),
                tightest.temperature(),
                normal(boundary, true),
                normal(boundary, false),
                boundary.minTemperature());
    }

    private static OptionalDouble normal(PhaseBoundary boundary, boolean bubble) {
        double lowest =
                boundary.atTemperature(boundary.minTemperature(), bubble).pressure();
        return NORMAL_PRESSURE >= lowest
                        && NORMAL_PRESSURE < boundary.critical().pressure()
                ? OptionalDouble.of(boundary.atPressure(NORMAL_PRESSURE, bubble).temperature())
                : OptionalDouble.empty();
    }

    /** Density at the lowest temperature and highest pressure, or where the isotherm stops rising before that; from the saturated liquid on. */
    private static double densest(Refrigerant fluid, HelmholtzModel model, double liquid) {
        Isotherm isotherm = model.isotherm(fluid.minSaturationTemperature());
        double density = liquid;
        Isotherm.Pressure p = isotherm.pressure(density);
        while (p.value() < fluid.limits().maxPressure() && p.slope() > 0) {
            density *= 1.01;
            p = isotherm.pressure(density);
        }
        return density;
    }
}
