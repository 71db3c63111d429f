package io.loopstate.engine.compression;

import static io.loopstate.engine.cycle.Working.massFlow;
import static io.loopstate.engine.cycle.Working.power;
import static io.loopstate.engine.cycle.Working.ratio;
import static io.loopstate.engine.cycle.Working.specificVolume;
import static io.loopstate.engine.cycle.Working.temperature;

import io.loopstate.engine.component.SaturationMargin;
import io.loopstate.engine.compression.MapCompressor.Detail;
import io.loopstate.engine.cycle.Basis;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.FindingCode;
import io.loopstate.engine.cycle.Findings;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.cycle.Point;
import io.loopstate.engine.cycle.PointName;
import io.loopstate.engine.cycle.QuantityKind;
import io.loopstate.engine.cycle.RememberingEquilibrium;
import io.loopstate.engine.cycle.Severity;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.cycle.Step.Term;
import io.loopstate.engine.cycle.Working;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/** A compressor by its rating map at one working point. */
public final class MapRating {
    static final String POLYNOMIAL = "AHRI 540, EN 12900 (from memory): polynomial of ten terms over dew temperatures";
    static final String CORRECTION =
            "A. E. Dabiri, C. K. Rice, ASHRAE Transactions 87(2) (1981) 771-782 (from memory), F = 0.75 unless given";
    /** K of superheat that a correction is worth telling for. */
    private static final double WORTH_TELLING = 0.5;

    private MapRating() {}

    /**
     * The map at the point.
     *
     * @throws io.loopstate.engine.error.EngineException where the point lies outside of envelope or map; it names {@code suction},
     *     {@code discharge} or {@code map}
     */
    public static Result calculate(Spec spec) {
        Equilibrium equilibrium = new RememberingEquilibrium(spec.equilibrium());
        State suction = spec.suction().state(equilibrium);
        double pressure = spec.discharge().pressure(equilibrium, suction.pressure());
        Detail detail = spec.map().detail(equilibrium, suction, pressure);
        Optional<EnergyBalance> balance =
                spec.circuit().map(circuit -> EnergyBalance.of(equilibrium, circuit, suction, detail.running()));
        CompressorUnit.Running running = detail.running();
        double isentropicPower =
                running.massFlow() * (detail.isentropic().specificEnthalpy() - suction.specificEnthalpy());
        Figures figures = new Figures(
                detail.suctionDew(),
                detail.dischargeDew(),
                pressure / suction.pressure(),
                detail.ratedFlow(),
                detail.ratedPower(),
                detail.ratedCapacity(),
                detail.ratedState().temperature(),
                running.massFlow(),
                running.electricalPower(),
                detail.current(),
                running.heatLoss(),
                isentropicPower / running.electricalPower(),
                running.discharge().temperature(),
                detail.breach().isEmpty());
        return new Result(
                points(equilibrium, suction, detail),
                figures,
                balance,
                findings(spec, equilibrium, suction, detail, figures),
                spec.explain() ? steps(spec, equilibrium, suction, detail, figures) : List.of());
    }

    private static List<Point> points(Equilibrium equilibrium, State suction, Detail detail) {
        return List.of(
                point(PointName.COMPRESSOR_INLET, equilibrium, suction),
                point(PointName.COMPRESSOR_OUTLET, equilibrium, detail.running().discharge()),
                point(PointName.ISENTROPIC_COMPRESSOR_OUTLET, equilibrium, detail.isentropic()));
    }

    private static Point point(PointName name, Equilibrium equilibrium, State state) {
        return new Point(
                name,
                state,
                SaturationMargin.superheat(equilibrium, state),
                SaturationMargin.subcooling(equilibrium, state));
    }

    private static List<Finding> findings(
            Spec spec, Equilibrium equilibrium, State suction, Detail detail, Figures figures) {
        Findings findings = new Findings(spec.guidance());
        ProcessFindings.ports(findings, equilibrium, suction, detail.running().discharge(), spec.atmosphericPressure());
        envelope(findings, detail);
        if (Math.abs(detail.ratedState().temperature() - suction.temperature()) > WORTH_TELLING) {
            findings.add(
                    FindingCode.SUPERHEAT_CORRECTED,
                    Severity.NOTE,
                    "suction",
                    "The suction differs from that of the rating: flow and power are corrected to its specific volume.",
                    QuantityKind.TEMPERATURE,
                    suction.temperature(),
                    detail.ratedState().temperature(),
                    CORRECTION);
        }
        if (figures.overallEfficiency() > 1) {
            findings.add(
                    FindingCode.EFFICIENCY_IMPLAUSIBLE,
                    Severity.CAUTION,
                    "map",
                    "The map takes less power than compression without loss: units, order of the coefficients or refrigerant do"
                            + " not belong to it.",
                    QuantityKind.RATIO,
                    figures.overallEfficiency(),
                    1,
                    Basis.SECOND_LAW);
        }
        return findings.toList();
    }

    /** Tells of a point outside the envelope, and of the limit that it does not keep. */
    static void envelope(Findings findings, Detail detail) {
        detail.breach()
                .ifPresent(breach -> findings.add(
                        FindingCode.OUTSIDE_ENVELOPE,
                        Severity.DANGER,
                        "map.envelope." + breach.member(),
                        breach.message()
                                + ": a polynomial of third degree may be far off there, and the compressor is not meant to"
                                + " run there.",
                        QuantityKind.valueOf(breach.measure().name()),
                        breach.got(),
                        breach.limit(),
                        "envelope given"));
    }

    private static List<Step> steps(Spec spec, Equilibrium equilibrium, State suction, Detail detail, Figures figures) {
        Working working = new Working(equilibrium);
        Term s = temperature("S", detail.suctionDew());
        Term d = temperature("D", detail.dischargeDew());
        String capacity = spec.map().capacity().isPresent() ? "m_r = Q_r(S, D) / (h_r - h_liquid,r)" : "m_r = X(S, D)";
        Term ratedFlow = working.formula(
                "rated mass flow", capacity, POLYNOMIAL, massFlow("m_r", figures.ratedMassFlow()), s, d);
        Term ratedPower =
                working.formula("rated power", "P_r = X(S, D)", POLYNOMIAL, power("P_r", figures.ratedPower()), s, d);
        Term flow = working.formula(
                "mass flow at the actual suction",
                "m = m_r (1 + F (v_r/v - 1))",
                CORRECTION,
                massFlow("m", figures.massFlow()),
                ratedFlow,
                ratio("F", spec.map().correctionFactor()),
                specificVolume("v_r", detail.ratedState().specificVolume()),
                specificVolume("v", suction.specificVolume()));
        working.formula(
                "power at the actual suction",
                "P = P_r (m/m_r) (dh_s/dh_s,r)",
                CORRECTION,
                power("P", figures.power()),
                ratedPower,
                flow,
                ratedFlow);
        working.formula(
                "discharge temperature, from h2 = h1 + (P - Q_loss) / m",
                "T2 = T(p2, h2)",
                Basis.FIRST_LAW,
                temperature("T2", figures.dischargeTemperature()),
                power("P", figures.power()),
                power("Q_loss", figures.heatLoss()),
                flow);
        return working.toList();
    }

    /**
     * A map and a working point.
     *
     * @param equilibrium the refrigerant
     * @param suction state at the suction port
     * @param discharge pressure
     * @param map the compressor
     * @param circuit what the capacity counts from; empty for the compressor alone
     * @param atmosphericPressure Pa, to tell a vacuum
     * @param guidance limits for the findings
     * @param explain whether the result shows its working
     */
    public record Spec(
            Equilibrium equilibrium,
            SuctionCondition suction,
            DischargeLevel discharge,
            MapCompressor map,
            Optional<Circuit> circuit,
            double atmosphericPressure,
            Guidance guidance,
            boolean explain) {
        public Spec {
            Objects.requireNonNull(equilibrium);
            Objects.requireNonNull(suction);
            Objects.requireNonNull(discharge);
            Objects.requireNonNull(map);
            Objects.requireNonNull(circuit);
            Objects.requireNonNull(guidance);
        }
    }

    /**
     * The map at the point.
     *
     * @param points compressor inlet, outlet, isentropic outlet
     * @param figures rated and actual
     * @param balance of the circuit, where its liquid was given
     * @param findings what is unwise or worth knowing
     * @param steps the working; empty unless asked for
     */
    public record Result(
            List<Point> points,
            Figures figures,
            Optional<EnergyBalance> balance,
            List<Finding> findings,
            List<Step> steps) {
        public Result {
            points = List.copyOf(points);
            findings = List.copyOf(findings);
            steps = List.copyOf(steps);
        }
    }

    /**
     * Rated and actual figures.
     *
     * @param suctionDew K
     * @param dischargeDew K
     * @param pressureRatio absolute
     * @param ratedMassFlow kg/s
     * @param ratedPower W
     * @param ratedCapacity W at the suction and the liquid of the rating
     * @param ratedSuctionTemperature K
     * @param massFlow kg/s at the actual suction
     * @param power W at the actual suction
     * @param current A at the actual suction, where there is a map of it
     * @param heatLoss W
     * @param overallEfficiency isentropic power over power
     * @param dischargeTemperature K
     * @param insideEnvelope whether the map holds here
     */
    public record Figures(
            double suctionDew,
            double dischargeDew,
            double pressureRatio,
            double ratedMassFlow,
            double ratedPower,
            double ratedCapacity,
            double ratedSuctionTemperature,
            double massFlow,
            double power,
            OptionalDouble current,
            double heatLoss,
            double overallEfficiency,
            double dischargeTemperature,
            boolean insideEnvelope) {}
}
