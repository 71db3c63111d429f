package io.loopstate.engine.rejection;

import io.loopstate.engine.cycle.Basis;
import io.loopstate.engine.cycle.QuantityKind;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.cycle.Step.Term;
import io.loopstate.engine.cycle.Working;
import java.util.ArrayList;
import java.util.List;

/** The working of an evaporating coil: the air, the surface, each zone, their sum, the air behind. */
final class EvaporatorWorking {
    private static final String CROSS_FLOW =
            "cross flow, air unmixed, refrigerant mixed: W. M. Kays, A. L. London, Compact Heat Exchangers (from memory)";

    private final AirCooledEvaporator.Spec spec;
    private final AirCooledEvaporator.Result result;
    private final Working working;

    private EvaporatorWorking(AirCooledEvaporator.Spec spec, AirCooledEvaporator.Result result) {
        this.spec = spec;
        this.result = result;
        this.working = new Working(spec.equilibrium());
    }

    static List<Step> of(AirCooledEvaporator.Spec spec, AirCooledEvaporator.Result result) {
        EvaporatorWorking all = new EvaporatorWorking(spec, result);
        all.zones();
        all.air();
        return all.working.toList();
    }

    private void zones() {
        Term rate = SharedCoil.rate(working, result.air());
        spec.conductance()
                .ifPresent(clean -> SharedCoil.inForce(
                        working,
                        "dry conductance",
                        spec.fan(),
                        spec.dirt(),
                        clean.boiling(),
                        result.conductance().boiling()));
        Term gain = surface();
        List<Term> shares = new ArrayList<>();
        for (EvaporatorZone zone : result.operating().zones()) {
            shares.add(zone(zone, rate, gain));
        }
        double sum = result.operating().zones().stream()
                .mapToDouble(EvaporatorZone::share)
                .sum();
        working.formula(
                spec.evaporating().isPresent()
                        ? "the conductance is that at which the zones fill the coil"
                        : "the evaporating pressure is that at which the zones fill the coil",
                "sum of shares = 1, or less where the outlet asked for sets the pressure",
                "zone method, each zone as its own exchanger",
                Working.ratio("sum", sum),
                shares.toArray(Term[]::new));
        result.operating()
                .search()
                .ifPresent(search -> working.search(
                        "the evaporating pressure", "1 / sum of shares - 1 = 0", search, "p_e", QuantityKind.PRESSURE));
    }

    /** What the surface does; its gain. */
    private Term surface() {
        EvaporatorSurface surface = result.operating().surface();
        Term temperature = Working.temperature("T_s", surface.temperature());
        Term gain = Working.ratio("g", surface.gain());
        if (!surface.wet()) {
            return working.formula(
                    "the surface is warmer than the dew point of the air and stays dry",
                    "g = 1",
                    Basis.DEFINITION,
                    gain,
                    temperature);
        }
        double in = result.air().state().humidityRatio();
        return working.formula(
                "heat of the wet surface over that of a dry one",
                "g = (h_in - h_s - (W_in - W_s) h_water) / (cp (T_in - T_s))",
                "enthalpy as the driving force, Lewis number 1: F. Merkel (1925) (from memory)",
                gain,
                temperature,
                Working.temperature("T_in", result.air().state().dryBulb()),
                Working.of("W_in", in, QuantityKind.HUMIDITY_RATIO),
                Working.of("W_s", in - surface.drying(), QuantityKind.HUMIDITY_RATIO));
    }

    private Term zone(EvaporatorZone zone, Term rate, Term gain) {
        boolean boils = zone.kind() == EvaporatorZone.Kind.BOILING;
        String name = boils ? "boiling" : "superheating";
        Term whole = SharedCoil.conductance(
                "UA",
                boils ? result.conductance().boiling() : result.conductance().superheating());
        Term gamma = working.formula(
                name + ": effectiveness of the air; one less it is the bypass factor",
                "Gamma = 1 - exp(-UA / C_air)",
                CROSS_FLOW,
                Working.ratio("Gamma", zone.effectiveness()),
                whole,
                rate);
        List<Term> terms = new ArrayList<>(List.of(
                Working.power("Q_" + name, zone.heat()),
                gamma,
                rate,
                Working.temperature("T_in", zone.refrigerantInlet()),
                Working.temperature("T_out", zone.refrigerantOutlet()),
                Working.temperature("T_air", result.air().state().dryBulb())));
        if (boils) {
            terms.add(gain);
        }
        String divisor = boils ? "Gamma C_air g" : "Gamma C_air";
        return working.formula(
                "share of the coil that the zone " + name + " needs",
                "x = Q / (" + divisor
                        + " (T_out - T_in)) ln((T_air - T_in) / (T_air - T_out)); constant temperature: x = Q / ("
                        + divisor + " (T_air - T_in))",
                CROSS_FLOW,
                Working.ratio("x_" + name, zone.share()),
                terms.toArray(Term[]::new));
    }

    private void air() {
        working.formula(
                "air behind the coil: its enthalpy, and with it what condensed",
                "m_air (h_in - h_out) = Q + m_water h_water(T_out)",
                Basis.FIRST_LAW,
                Working.temperature("T_out", result.behind().state().dryBulb()),
                Working.power("Q", result.operating().heat()),
                Working.massFlow("m_air", result.air().massFlow()),
                Working.massFlow("m_water", result.behind().condensate()));
        working.formula(
                "sensible heat; the rest is latent, less what the condensate carries away",
                result.behind().condensate() > 0 ? "Q_s = m_air cp_out (T_in - T_out)" : "Q_s = Q",
                AirFactors.SOURCE,
                Working.power("Q_s", result.behind().sensibleHeat()),
                Working.power("Q", result.operating().heat()));
    }
}
