package io.loopstate.engine.balance;

import static io.loopstate.engine.cycle.Working.massFlow;
import static io.loopstate.engine.cycle.Working.power;
import static io.loopstate.engine.cycle.Working.pressure;
import static io.loopstate.engine.cycle.Working.ratio;
import static io.loopstate.engine.cycle.Working.temperature;

import io.loopstate.engine.air.AirState;
import io.loopstate.engine.balance.Levels.Attempt;
import io.loopstate.engine.balance.Loop.Trial;
import io.loopstate.engine.compression.EnergyBalance;
import io.loopstate.engine.cycle.Basis;
import io.loopstate.engine.cycle.QuantityKind;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.cycle.Step.Term;
import io.loopstate.engine.cycle.Working;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.rejection.AirCooledCondenser;
import io.loopstate.engine.rejection.AirFactors;
import io.loopstate.engine.rejection.CoilAir;
import io.loopstate.engine.rejection.Dirt;
import io.loopstate.engine.rejection.Load;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The working of a balance: the levels that were tried, then every component at those that were found. */
final class BalanceWorking {
    /** Trials that are shown: the first ones and the last ones. */
    private static final int SHOWN = 12;

    private static final String METHOD =
            "both coils filled exactly: C. G. Broyden, Math. Comp. 19 (1965) 577 (from memory), brackets where that fails";
    private static final String COIL =
            "cross flow, air unmixed, refrigerant mixed: W. M. Kays, A. L. London, Compact Heat Exchangers (from memory); wet"
                    + " surface: Lewis number 1";

    private final Loop loop;
    private final Trial trial;
    private final Balanced balanced;
    private final Working working;

    private BalanceWorking(Loop loop, Trial trial, Balanced balanced) {
        this.loop = loop;
        this.trial = trial;
        this.balanced = balanced;
        this.working = new Working(loop.equilibrium());
    }

    static List<Step> of(
            SystemBalance.Spec spec, Loop loop, Levels levels, CompressorAtBalance compressor, Balanced balanced) {
        Trial trial = levels.balance().orElseThrow();
        BalanceWorking before = new BalanceWorking(loop, trial, balanced);
        before.trials(levels);
        before.states();
        BalanceWorking after = new BalanceWorking(loop, trial, balanced);
        after.evaporator();
        after.energy();
        List<Step> steps = new ArrayList<>(before.working.toList());
        steps.addAll(compressor.steps());
        steps.addAll(coil(spec, trial, balanced));
        steps.addAll(after.working.toList());
        return steps;
    }

    private void trials(Levels levels) {
        List<Attempt> tried = levels.tried();
        for (int k = 0; k < tried.size(); k++) {
            if (k < SHOWN / 2 || k >= tried.size() - SHOWN / 2) {
                attempt(k + 1, tried.size(), tried.get(k));
            }
        }
    }

    private void attempt(int number, int count, Attempt attempt) {
        double miss = Math.max(Math.abs(attempt.evaporatorShare() - 1), Math.abs(attempt.condenserShare() - 1));
        working.formula(
                "trial " + number + " of " + count
                        + ": dew temperatures, the flow of the compressor there, and the share of each coil that it needs",
                "miss = max(|x_e - 1|, |x_c - 1|)",
                METHOD,
                ratio("miss", miss),
                temperature("T_e", dew(attempt.evaporating())),
                temperature("T_c", dew(attempt.condensing())),
                massFlow("m", attempt.massFlow()),
                ratio("x_e", attempt.evaporatorShare()),
                ratio("x_c", attempt.condenserShare()));
    }

    private double dew(double pressure) {
        return loop.equilibrium().saturationAtPressure(pressure).dew().temperature();
    }

    private void states() {
        Term evaporating = pressure("p_e", trial.evaporating());
        Term condensing = pressure("p_c", trial.condensing());
        working.enthalpyOf(
                "enthalpy of the vapor that leaves the evaporator, dew point and superheat",
                "_vapor",
                evaporating,
                trial.vapor());
        working.enthalpyOf("enthalpy at the suction, behind the suction line", "1", evaporating, trial.suction());
        working.enthalpyOf(
                "enthalpy of the liquid, bubble point less subcooling; the valve keeps it",
                "_liquid",
                condensing,
                trial.liquid());
    }

    /** The steps of the condensing coil by itself, with this flow. */
    private static List<Step> coil(SystemBalance.Spec spec, Trial trial, Balanced balanced) {
        return AirCooledCondenser.calculate(new AirCooledCondenser.Spec(
                        spec.equilibrium(),
                        spec.atmosphere(),
                        spec.condenser().air(),
                        spec.condenser().airflow(),
                        spec.condenser().arrangement(),
                        (e, p, s) -> e.atPressureEnthalpy(
                                p, trial.running().discharge().specificEnthalpy()),
                        spec.settings().liquid(),
                        Optional.of(Load.massFlow(balanced.massFlow())),
                        OptionalDouble.empty(),
                        Optional.empty(),
                        Optional.of(spec.condenser().conductance()),
                        spec.condenser().fan(),
                        Dirt.none(),
                        OptionalDouble.empty(),
                        spec.guidance(),
                        true))
                .steps();
    }

    private void evaporator() {
        CoilAir air = loop.evaporator().air();
        Term heat = working.formula(
                "heat taken up in the evaporator",
                "Qe = m (h_vapor - h_liquid)",
                Basis.FIRST_LAW,
                power("Qe", balanced.energy().refrigeratingCapacity()),
                massFlow("m", balanced.massFlow()),
                Working.enthalpy("h_vapor", trial.vapor().specificEnthalpy()),
                Working.enthalpy("h_liquid", trial.liquid().specificEnthalpy()));
        Term rate = working.formula(
                "capacity rate of the indoor air",
                "C_in = m_air cp",
                "ASHRAE Handbook - Fundamentals 2017, chapter 1 (from memory)",
                Working.of("C_in", air.capacityRate(), QuantityKind.THERMAL_CONDUCTANCE),
                massFlow("m_air", air.massFlow()),
                Working.of("cp", air.state().heatCapacity(), QuantityKind.SPECIFIC_HEAT_CAPACITY));
        Term gamma = working.formula(
                "effectiveness of the indoor air",
                "Gamma = 1 - exp(-UA / C_in)",
                COIL,
                ratio("Gamma", -Math.expm1(-loop.evaporator().boiling() / air.capacityRate())),
                Working.of("UA", loop.evaporator().boiling(), QuantityKind.THERMAL_CONDUCTANCE),
                rate);
        Term boiling = boiling(gamma, rate);
        working.formula(
                "the rest of the coil superheats; less than 1 where the superheat asked for sets the pressure",
                "x_e = x_boiling + x_superheating",
                "zone method, each zone as its own exchanger",
                ratio("x_e", trial.evaporatorShare()),
                boiling,
                ratio(
                        "x_superheating",
                        trial.evaporatorShare() - balanced.evaporator().boilingShare()));
        working.formula(
                "latent heat: water that leaves the air",
                "Q_latent = Qe - Q_sensible, Q_sensible = m_air cp_leaving (T_air - T_leaving)",
                Basis.FIRST_LAW,
                power("Q_latent", balanced.evaporator().latentHeat()),
                heat,
                power("Q_sensible", balanced.evaporator().sensibleHeat()),
                massFlow("m_water", balanced.evaporator().condensate()),
                temperature("T_leaving", balanced.evaporator().leaving().state().dryBulb()));
    }

    /** The zone in which the refrigerant boils: from its state behind the valve to the dew point. */
    private Term boiling(Term gamma, Term rate) {
        AirState air = loop.evaporator().air().state();
        Saturation saturation = loop.equilibrium().saturationAtPressure(trial.evaporating());
        double quality =
                (trial.liquid().specificEnthalpy() - saturation.bubble().specificEnthalpy()) / saturation.latentHeat();
        double inlet = saturation.bubble().temperature() + Math.max(0, quality) * saturation.temperatureGlide();
        double surface = (inlet + saturation.dew().temperature()) / 2;
        Term entering = temperature("T_air", air.dryBulb());
        Term gain = working.formula(
                "gain of a surface at the mean temperature of the boiling refrigerant: enthalpy over temperature difference where"
                        + " it is below the dew point of the air, else 1",
                "g = (h_air - h_s - (W_air - W_s) h_water,s) / (cp (T_air - T_s))",
                COIL,
                ratio("g", gain(air, surface)),
                entering,
                temperature("T_s", surface),
                Working.of("W_air", air.humidityRatio(), QuantityKind.HUMIDITY_RATIO),
                Working.of(
                        "W_s", AirState.saturatedHumidityRatio(air.pressure(), surface), QuantityKind.HUMIDITY_RATIO));
        double heat = balanced.massFlow()
                * (saturation.dew().specificEnthalpy() - trial.liquid().specificEnthalpy());
        return working.formula(
                "share of the coil in which the refrigerant boils",
                "x_boiling = Q_boiling / (Gamma C_in g (T_dew - T_in)) ln((T_air - T_in) / (T_air - T_dew)); constant temperature:"
                        + " x_boiling = Q_boiling / (Gamma C_in g (T_air - T_in))",
                COIL,
                ratio("x_boiling", balanced.evaporator().boilingShare()),
                power("Q_boiling", heat),
                gamma,
                rate,
                gain,
                entering,
                temperature("T_in", inlet),
                temperature("T_dew", saturation.dew().temperature()));
    }

    private static double gain(AirState air, double surface) {
        double water = AirState.saturatedHumidityRatio(air.pressure(), surface);
        if (water >= air.humidityRatio()) {
            return 1;
        }
        double removed = (air.humidityRatio() - water) * AirFactors.waterEnthalpy(surface);
        double wet = air.specificEnthalpy() - new AirState(air.pressure(), surface, water).specificEnthalpy() - removed;
        return wet / (air.heatCapacity() * (air.dryBulb() - surface));
    }

    private void energy() {
        EnergyBalance energy = balanced.energy();
        Term capacity = power("Qe", energy.refrigeratingCapacity());
        Term electrical = power("P_el", energy.electricalPower());
        working.formula(
                "heat rejected, checked against m (h2 - h_liquid)",
                "Qc = Qe + Q_line + P_el - Q_loss",
                Basis.FIRST_LAW,
                power("Qc", energy.heatRejected()),
                capacity,
                power("Q_line", energy.suctionLineHeatGain()),
                electrical,
                power("Q_loss", energy.heatLoss()));
        working.formula(
                "coefficient of performance, fans not counted",
                "COP = Qe / P_el",
                Basis.DEFINITION,
                ratio("COP", energy.coefficientOfPerformance()),
                capacity,
                electrical);
        balanced.system().ifPresent(system -> system(system, capacity, electrical));
    }

    private void system(SystemFigures system, Term capacity, Term electrical) {
        Term total = working.formula(
                "power of compressor and fans, those of the fans by the fan laws: as the cube of the speed, as the density",
                "P = P_el + P_condenserFan + P_evaporatorFan",
                Basis.DEFINITION,
                power("P", system.electricalPower()),
                electrical,
                power("P_condenserFan", system.condenserFanPower().orElse(0)),
                power("P_evaporatorFan", system.evaporatorFanPower().orElse(0)));
        working.formula(
                "coefficient of performance with the fans",
                "COP_system = Qe / P",
                Basis.DEFINITION,
                ratio("COP_system", system.coefficientOfPerformance()),
                capacity,
                total);
        system.netCapacity()
                .ifPresent(net -> working.formula(
                        "net capacity: the evaporator fan heats the air that it moves",
                        "Q_net = Qe - P_evaporatorFan",
                        Basis.FIRST_LAW,
                        power("Q_net", net),
                        capacity,
                        power("P_evaporatorFan", system.evaporatorFanPower().orElseThrow())));
    }
}
