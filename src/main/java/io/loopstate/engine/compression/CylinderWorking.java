package io.loopstate.engine.compression;

import static io.loopstate.engine.cycle.Working.pressure;
import static io.loopstate.engine.cycle.Working.ratio;
import static io.loopstate.engine.cycle.Working.specificVolume;
import static io.loopstate.engine.cycle.Working.temperature;

import io.loopstate.engine.compression.ClosedCylinder.Figures;
import io.loopstate.engine.cycle.Basis;
import io.loopstate.engine.cycle.QuantityKind;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.cycle.Step.Term;
import io.loopstate.engine.cycle.Working;
import io.loopstate.engine.property.State;
import java.util.List;

/** The working of a closed cylinder. Numbers at the symbols: 1 start, 2 end. */
final class CylinderWorking {
    private CylinderWorking() {}

    static List<Step> of(ClosedCylinder.Spec spec, State start, State end, Figures figures) {
        Working working = new Working(spec.equilibrium());
        Term p1 = pressure("p1", start.pressure());
        Term t1 = temperature("T1", start.temperature());
        Term v1 = working.property(
                "specific volume at the start", "v1 = v(p1, T1)", specificVolume("v1", start.specificVolume()), p1, t1);
        Term m = working.formula(
                "mass inside",
                "m = V1 / v1",
                Basis.DEFINITION,
                Working.of("m", figures.mass(), QuantityKind.MASS),
                Working.of("V1", figures.startVolume(), QuantityKind.VOLUME),
                v1);
        Term v2 = specificVolume("v2", end.specificVolume());
        working.property(path(spec), formula(spec), pressure("p2", end.pressure()), p1, v1, v2);
        working.property(
                "temperature at the end",
                "T2 = T(p2, v2)",
                temperature("T2", end.temperature()),
                pressure("p2", end.pressure()),
                v2);
        Term energy = working.property(
                "change of the internal energy",
                "dU = m (u2 - u1)",
                Working.of("dU", figures.energyChange(), QuantityKind.ENERGY),
                m);
        Term work = working.property(
                "work done on the gas", work(spec), Working.of("W", figures.work(), QuantityKind.ENERGY), m);
        working.formula(
                "heat taken up by the gas",
                "Q = dU - W",
                Basis.FIRST_LAW,
                Working.of("Q", figures.heat(), QuantityKind.ENERGY),
                energy,
                work);
        working.formula(
                "work of the surrounding air on the piston",
                "W_air = p_atmosphere (V1 - V2)",
                Basis.DEFINITION,
                Working.of("W_air", figures.workOfAtmosphere(), QuantityKind.ENERGY),
                pressure("p_atmosphere", spec.atmosphericPressure()),
                Working.of("V1", figures.startVolume(), QuantityKind.VOLUME),
                Working.of("V2", figures.endVolume(), QuantityKind.VOLUME));
        working.formula(
                "index between the ends",
                "n = ln(p2/p1) / ln(v1/v2)",
                Basis.DEFINITION,
                ratio("n", figures.index()),
                pressure("p2", end.pressure()),
                p1,
                v1,
                v2);
        return working.toList();
    }

    private static String path(ClosedCylinder.Spec spec) {
        return switch (spec.path()) {
            case ISOTHERMAL -> "pressure at the end, at constant temperature";
            case ADIABATIC -> "pressure at the end, at constant entropy";
            case POLYTROPIC -> "pressure at the end, p v^n constant";
            case FREE_EXPANSION -> "pressure at the end, at constant internal energy";
        };
    }

    private static String formula(ClosedCylinder.Spec spec) {
        return switch (spec.path()) {
            case ISOTHERMAL -> "p2 = p(T1, v2)";
            case ADIABATIC -> "p2 = p(s1, v2)";
            case POLYTROPIC -> "p2 = p1 (v1/v2)^n";
            case FREE_EXPANSION -> "p2 = p(u1, v2)";
        };
    }

    private static String work(ClosedCylinder.Spec spec) {
        return switch (spec.path()) {
            case ISOTHERMAL -> "W = m ((u2 - u1) - T1 (s2 - s1))";
            case ADIABATIC -> "W = m (u2 - u1)";
            case POLYTROPIC ->
                spec.index().orElseThrow() == 1 ? "W = m p1 v1 ln(v1/v2)" : "W = m p1 v1 ((v1/v2)^(n-1) - 1) / (n-1)";
            case FREE_EXPANSION -> "W = 0";
        };
    }
}
