package io.loopstate.engine.fluid;

import io.loopstate.engine.eos.CriticalPointSolver;
import io.loopstate.engine.eos.HelmholtzModel;
import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.eos.ResidualHelmholtz;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Reads a fluid from its coefficient file; the format is that of {@code src/main/resources/fluids}. */
public final class FluidReader {
    private FluidReader() {}

    /** Reads one fluid and closes the stream. */
    public static Fluid read(InputStream stream) throws IOException {
        return fluid(JsonObject.read(stream));
    }

    private static Fluid fluid(JsonObject json) {
        double molarMass = json.number("molarMass");
        JsonObject reducing = json.object("reducingPoint");
        HelmholtzModel model = new HelmholtzModel(
                json.number("gasConstant"),
                reducing.number("T"),
                reducing.number("rho"),
                TermReader.ideal(json.objects("ideal")),
                new ResidualHelmholtz(TermReader.residual(json.objects("residual"))));
        Refrigerant.Kind kind = json.text("kind").equals("pure") ? Refrigerant.Kind.PURE : Refrigerant.Kind.PSEUDO_PURE;
        JsonObject validity = json.object("validity");
        return new Fluid(
                json.text("designation"),
                json.text("name"),
                json.optionalTexts("aliases"),
                json.optionalText("formula"),
                json.optionalText("cas"),
                kind,
                molarMass,
                new Limits(validity.number("Tmin"), validity.number("Tmax"), validity.number("pMax")),
                criticalPoint(json, model, molarMass),
                json.flag("normalBoilingPointExtrapolated")
                        ? OptionalDouble.empty()
                        : json.optionalNumber("normalBoilingPoint"),
                json.number("acentricFactor"),
                validity.optionalNumber("rhoMax"),
                model,
                auxiliaries(json.object("auxiliary"), kind),
                json.optionalObject("transport"),
                sources(json.object("source")));
    }

    /**
     * The file's numerical value has ten digits; the saturation line near its end needs all sixteen. The phase boundary of
     * a pseudo-pure fluid does not come from its equation, so there the stated point is the end.
     */
    private static CriticalPoint criticalPoint(JsonObject json, HelmholtzModel model, double molarMass) {
        if (!json.has("numericalCriticalPoint")) {
            JsonObject point = json.object("criticalPoint");
            return new CriticalPoint(point.number("T"), point.number("p"), point.number("rho") * molarMass);
        }
        JsonObject stated = json.object("numericalCriticalPoint");
        MolarState state = CriticalPointSolver.refine(model, stated.number("T"), stated.number("rho"));
        return new CriticalPoint(state.temperature(), state.pressure(), state.density() * molarMass);
    }

    private static Auxiliaries auxiliaries(JsonObject json, Refrigerant.Kind kind) {
        boolean pure = kind == Refrigerant.Kind.PURE;
        return new Auxiliaries(
                new AuxiliaryEquation(json.object(pure ? "vaporPressure" : "bubblePressure")),
                new AuxiliaryEquation(json.object(pure ? "vaporPressure" : "dewPressure")),
                new AuxiliaryEquation(json.object("saturatedLiquidDensity")),
                new AuxiliaryEquation(json.object("saturatedVaporDensity")));
    }

    private static List<Citation> sources(JsonObject json) {
        List<Citation> sources = new ArrayList<>();
        for (String role : List.of("eos", "idealGas", "bubbleAndDewPressure")) {
            json.optionalObject(role).ifPresent(source -> addWithFurther(source, sources));
        }
        return List.copyOf(sources);
    }

    private static void addWithFurther(JsonObject source, List<Citation> sources) {
        sources.add(new Citation(source.text("citation"), source.optionalText("doi")));
        if (source.has("further")) {
            source.objects("further").forEach(further -> addWithFurther(further, sources));
        }
    }
}
