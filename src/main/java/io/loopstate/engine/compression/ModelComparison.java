package io.loopstate.engine.compression;

import static io.loopstate.engine.cycle.Working.massFlow;
import static io.loopstate.engine.cycle.Working.power;
import static io.loopstate.engine.cycle.Working.ratio;
import static io.loopstate.engine.cycle.Working.specificVolume;
import static io.loopstate.engine.cycle.Working.volumeFlow;

import io.loopstate.engine.compression.CompressorUnit.Running;
import io.loopstate.engine.cycle.Basis;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.FindingCode;
import io.loopstate.engine.cycle.Findings;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.cycle.Guideline;
import io.loopstate.engine.cycle.RememberingEquilibrium;
import io.loopstate.engine.cycle.Severity;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.cycle.Working;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import java.util.List;
import java.util.Objects;

/** A rating map and a displacement model of the same compressor at one working point. */
public final class ModelComparison {
    private ModelComparison() {}

    /**
     * Both, and how far they are apart.
     *
     * @throws io.loopstate.engine.error.EngineException where one of them cannot run there, as {@link MapRating} and {@link
     *     DisplacementRating} say
     */
    public static Result calculate(Spec spec) {
        Equilibrium equilibrium = new RememberingEquilibrium(spec.equilibrium());
        State suction = spec.suction().state(equilibrium);
        double pressure = spec.discharge().pressure(equilibrium, suction.pressure());
        MapCompressor.Detail rated = spec.map().detail(equilibrium, suction, pressure);
        Running map = rated.running();
        Machine.Detail detail = spec.machine().detail(equilibrium, suction, pressure);
        Running model = detail.running();
        double swept = spec.machine().displacer().sweptFlow(detail.stroke(), detail.port());
        double isentropic = rated.isentropic().specificEnthalpy() - suction.specificEnthalpy();
        Figures figures = new Figures(
                map,
                model,
                model.massFlow() / map.massFlow() - 1,
                model.electricalPower() / map.electricalPower() - 1,
                model.discharge().temperature() - map.discharge().temperature(),
                map.massFlow() * suction.specificVolume() / swept,
                model.massFlow() * suction.specificVolume() / swept,
                map.massFlow() * isentropic / map.electricalPower(),
                model.massFlow() * isentropic / model.electricalPower());
        return new Result(
                figures,
                findings(spec, rated, figures),
                spec.explain() ? steps(equilibrium, suction, swept, figures) : List.of());
    }

    private static List<Finding> findings(Spec spec, MapCompressor.Detail rated, Figures figures) {
        Findings findings = new Findings(spec.guidance());
        MapRating.envelope(findings, rated);
        double worse = Math.max(Math.abs(figures.massFlowDifference()), Math.abs(figures.powerDifference()));
        findings.above(
                Guideline.MAX_MODEL_DIFFERENCE,
                worse,
                FindingCode.MODELS_DISAGREE,
                Severity.CAUTION,
                "machine",
                "Map and displacement model differ by more than the limit in flow or power, as a share: one of them has a wrong"
                        + " size, speed, unit or efficiency.");
        return findings.toList();
    }

    private static List<Step> steps(Equilibrium equilibrium, State suction, double swept, Figures figures) {
        Working working = new Working(equilibrium);
        Step.Term mapFlow = working.formula(
                "mass flow by the map",
                "m_map = m_r (1 + F (v_r/v - 1))",
                MapRating.CORRECTION,
                massFlow("m_map", figures.map().massFlow()));
        Step.Term modelFlow = working.formula(
                "mass flow by the displacement",
                "m = Vd eta_v / v",
                Basis.DEFINITION,
                massFlow("m", figures.model().massFlow()),
                volumeFlow("Vd", swept),
                ratio("eta_v", figures.modelVolumetricEfficiency()),
                specificVolume("v", suction.specificVolume()));
        working.formula(
                "difference of the flows",
                "d_m = m / m_map - 1",
                Basis.DEFINITION,
                ratio("d_m", figures.massFlowDifference()),
                modelFlow,
                mapFlow);
        working.formula(
                "difference of the powers",
                "d_P = P / P_map - 1",
                Basis.DEFINITION,
                ratio("d_P", figures.powerDifference()),
                power("P", figures.model().electricalPower()),
                power("P_map", figures.map().electricalPower()));
        working.formula(
                "volumetric efficiency that would give the flow of the map",
                "eta_v,map = m_map v / Vd",
                Basis.DEFINITION,
                ratio("eta_v,map", figures.mapVolumetricEfficiency()),
                mapFlow,
                specificVolume("v", suction.specificVolume()),
                volumeFlow("Vd", swept));
        return working.toList();
    }

    /**
     * Two models and a working point.
     *
     * @param equilibrium the refrigerant
     * @param suction state at the suction port
     * @param discharge pressure
     * @param map by its rating
     * @param machine by its displacement
     * @param guidance limits for the findings
     * @param explain whether the result shows its working
     */
    public record Spec(
            Equilibrium equilibrium,
            SuctionCondition suction,
            DischargeLevel discharge,
            MapCompressor map,
            Machine machine,
            Guidance guidance,
            boolean explain) {
        public Spec {
            Objects.requireNonNull(equilibrium);
            Objects.requireNonNull(suction);
            Objects.requireNonNull(discharge);
            Objects.requireNonNull(map);
            Objects.requireNonNull(machine);
            Objects.requireNonNull(guidance);
        }
    }

    /**
     * Both.
     *
     * @param figures side by side
     * @param findings what is worth knowing
     * @param steps the working; empty unless asked for
     */
    public record Result(Figures figures, List<Finding> findings, List<Step> steps) {
        public Result {
            findings = List.copyOf(findings);
            steps = List.copyOf(steps);
        }
    }

    /**
     * Both models side by side.
     *
     * @param map by its rating
     * @param model by its displacement
     * @param massFlowDifference model over map less 1
     * @param powerDifference likewise, of the electrical power
     * @param dischargeTemperatureDifference K, model less map
     * @param mapVolumetricEfficiency that the displacement would need for the flow of the map
     * @param modelVolumetricEfficiency of the model
     * @param mapEfficiency isentropic over electrical power
     * @param modelEfficiency likewise
     */
    public record Figures(
            Running map,
            Running model,
            double massFlowDifference,
            double powerDifference,
            double dischargeTemperatureDifference,
            double mapVolumetricEfficiency,
            double modelVolumetricEfficiency,
            double mapEfficiency,
            double modelEfficiency) {}
}
