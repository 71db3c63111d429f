package io.loopstate.engine.rejection;

import io.loopstate.engine.cycle.Basis;
import io.loopstate.engine.cycle.QuantityKind;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.cycle.Step.Term;
import io.loopstate.engine.cycle.Working;
import java.util.ArrayList;
import java.util.List;

/** The working of a condensing coil: the air, then each zone, then their sum. */
final class CoilWorking {
    private static final String CROSS_FLOW =
            "cross flow, air unmixed, refrigerant mixed: W. M. Kays, A. L. London, Compact Heat Exchangers (from memory)";

    private CoilWorking() {}

    static List<Step> of(AirCooledCondenser.Spec spec, AirCooledCondenser.Result result) {
        Working working = new Working(spec.equilibrium());
        Term rate = SharedCoil.rate(working, result.air());
        spec.conductance()
                .ifPresent(clean -> SharedCoil.inForce(
                        working,
                        "conductance",
                        spec.fan(),
                        spec.dirt(),
                        clean.condensing(),
                        result.conductance().condensing()));
        List<Term> shares = new ArrayList<>();
        for (CoilZone zone : result.operating().zones()) {
            shares.add(zone(working, spec, result, zone, rate));
        }
        double sum =
                result.operating().zones().stream().mapToDouble(CoilZone::share).sum();
        working.formula(
                spec.condensing().isPresent()
                        ? "the conductance is that at which the zones fill the coil"
                        : "the condensing pressure is that at which the zones fill the coil",
                "sum of shares = 1, or less where the outlet asked for sets the pressure",
                "zone method, each zone as its own exchanger",
                Working.ratio("sum", sum),
                shares.toArray(Term[]::new));
        result.operating()
                .search()
                .ifPresent(search -> working.search(
                        "the condensing pressure", "1 / sum of shares - 1 = 0", search, "p_c", QuantityKind.PRESSURE));
        working.formula(
                "air behind the coil",
                "T_leaving = T_entering + Q / C_air",
                Basis.FIRST_LAW,
                Working.temperature("T_leaving", result.operating().airOutlet()),
                Working.temperature("T_entering", result.air().state().dryBulb()),
                Working.power("Q", result.operating().heat()),
                rate);
        return working.toList();
    }

    private static Term zone(
            Working working, AirCooledCondenser.Spec spec, AirCooledCondenser.Result result, CoilZone zone, Term rate) {
        String name = switch (zone.kind()) {
            case DESUPERHEATING -> "desuperheating";
            case CONDENSING -> "condensing";
            case SUBCOOLING -> "subcooling";
        };
        Term heat = Working.power("Q_" + name, zone.heat());
        Term inlet = Working.temperature("T_in", zone.refrigerantInlet());
        Term outlet = Working.temperature("T_out", zone.refrigerantOutlet());
        Term air = Working.temperature("T_air", zone.airInlet());
        Term whole = SharedCoil.conductance("UA", result.conductance().of(zone.kind()));
        boolean series = spec.arrangement() == Arrangement.SERIES;
        Term gamma = working.formula(
                name + ": effectiveness of the air",
                series
                        ? "Gamma = (Q / C_air) / (T_in - T_out) ln((T_in - T_air) / (T_out - T_air)); constant temperature:"
                                + " Gamma = Q / (C_air (T_in - T_air))"
                        : "Gamma = 1 - exp(-UA / C_air)",
                CROSS_FLOW,
                Working.ratio("Gamma", zone.effectiveness()),
                series ? new Term[] {heat, rate, inlet, outlet, air} : new Term[] {whole, rate});
        return working.formula(
                "share of the coil that the zone " + name + " needs",
                series
                        ? "x = -(C_air / UA) ln(1 - Gamma)"
                        : "x = Q / (Gamma C_air (T_in - T_out)) ln((T_in - T_air) / (T_out - T_air)); constant temperature: x ="
                                + " Q / (Gamma C_air (T_in - T_air))",
                CROSS_FLOW,
                Working.ratio("x_" + name, zone.share()),
                series ? new Term[] {rate, whole, gamma} : new Term[] {heat, gamma, rate, inlet, outlet, air});
    }
}
