package io.loopstate.engine.compression;

import static io.loopstate.engine.cycle.Working.energy;
import static io.loopstate.engine.cycle.Working.enthalpy;
import static io.loopstate.engine.cycle.Working.massFlow;
import static io.loopstate.engine.cycle.Working.pressure;
import static io.loopstate.engine.cycle.Working.ratio;
import static io.loopstate.engine.cycle.Working.specificVolume;
import static io.loopstate.engine.cycle.Working.temperature;
import static io.loopstate.engine.cycle.Working.volumeFlow;

import io.loopstate.engine.compression.DisplacementRating.Figures;
import io.loopstate.engine.compression.DisplacementRating.Spec;
import io.loopstate.engine.compression.Displacer.Inside;
import io.loopstate.engine.compression.Displacer.Stroke;
import io.loopstate.engine.compression.Machine.Detail;
import io.loopstate.engine.cycle.Basis;
import io.loopstate.engine.cycle.QuantityKind;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.cycle.Step.Term;
import io.loopstate.engine.cycle.Working;
import io.loopstate.engine.property.State;
import java.util.List;
import java.util.Optional;

/**
 * The working of a machine. Numbers at the symbols: 1 suction port, p port of the cylinder, 2 discharge; in the cylinder a start,
 * b end of compression.
 */
final class RatingWorking {
    private static final String CLEARANCE =
            "R. Joel, Basic Engineering Thermodynamics, 5th edition, chapter 14 (from memory), with real volumes";
    private static final String BUILT_IN =
            "E. Winandy, C. Saavedra, J. Lebrun, Appl. Therm. Eng. 22 (2002) 107-120 (from memory)";

    private final Spec spec;
    private final RatingStates states;
    private final Detail detail;
    private final Figures figures;
    private final Working working;

    private RatingWorking(Spec spec, RatingStates states, Figures figures) {
        this.spec = spec;
        this.states = states;
        this.detail = states.detail();
        this.figures = figures;
        this.working = new Working(states.equilibrium());
    }

    static List<Step> of(Spec spec, RatingStates states, Figures figures, Optional<EnergyBalance> balance) {
        RatingWorking steps = new RatingWorking(spec, states, figures);
        steps.ports();
        steps.swept();
        steps.motorHeat();
        if (spec.machine().displacer() instanceof Piston piston) {
            steps.piston(piston);
        } else if (spec.machine().displacer() instanceof Rotor rotor) {
            steps.rotor(rotor);
        } else if (spec.machine().displacer() instanceof Impeller impeller) {
            steps.impeller(impeller);
        } else if (spec.machine().displacer() instanceof CurvedImpeller impeller) {
            steps.curved(impeller);
        }
        steps.power();
        steps.discharge();
        balance.ifPresent(steps::balance);
        return steps.working.toList();
    }

    private void ports() {
        working.formula(
                "pressure ratio",
                "r = p2 / p1",
                Basis.DEFINITION,
                ratio("r", figures.pressureRatio()),
                pressure("p2", states.discharge().pressure()),
                pressure("p1", states.suction().pressure()));
        working.enthalpyOf(
                "enthalpy at the suction", "1", pressure("p1", states.suction().pressure()), states.suction());
    }

    private void swept() {
        spec.cylinders()
                .ifPresent(size -> working.formula(
                        "volume swept in one revolution",
                        size.doubleActing() ? "V = pi/4 (2 D^2 - d^2) L z" : "V = pi/4 D^2 L z",
                        Basis.DEFINITION,
                        Working.of("V", size.volumePerRevolution(), QuantityKind.VOLUME),
                        Working.of("D", size.bore(), QuantityKind.LENGTH),
                        Working.of("L", size.stroke(), QuantityKind.LENGTH),
                        ratio("z", size.cylinders())));
        if (spec.speed().isPresent() && figures.displacementPerRevolution().isPresent()) {
            working.formula(
                    "displacement",
                    "Vd = V N",
                    Basis.DEFINITION,
                    volumeFlow("Vd", figures.displacement()),
                    Working.of("V", figures.displacementPerRevolution().getAsDouble(), QuantityKind.VOLUME),
                    Working.of("N", spec.speed().getAsDouble(), QuantityKind.FREQUENCY));
        }
    }

    private void curved(CurvedImpeller impeller) {
        double head = detail.stroke().isentropicWork();
        double flow = impeller.flowCoefficient(head);
        Term psi = working.formula(
                "head coefficient that each stage needs",
                "psi = dh_s / (z u^2)",
                Basis.DEFINITION,
                ratio("psi", impeller.neededCoefficient(head)),
                energy("dh_s", head),
                ratio("z", impeller.stages()),
                Working.of("u", impeller.tipSpeed(), QuantityKind.SPEED));
        Term phi = working.formula(
                "flow coefficient on the falling side of the curve, by trial between surge and choke",
                "psi_curve(phi) - psi = 0",
                "curve given; R. P. Brent, Algorithms for Minimization without Derivatives (1973), chapter 4 (from memory)",
                ratio("phi", flow),
                psi,
                ratio("phi_surge", impeller.curve().surge()),
                ratio("phi_choke", impeller.curve().choke()));
        working.formula(
                "volume drawn in: fan laws, in proportion to the speed",
                "V = phi u D^2",
                Basis.DEFINITION,
                volumeFlow("V", impeller.volumeFlow(flow)),
                phi,
                Working.of("u", impeller.tipSpeed(), QuantityKind.SPEED),
                Working.of("D", impeller.diameter(), QuantityKind.LENGTH));
        working.formula(
                "work on the vapor",
                "w = dh_s / eta(phi)",
                Basis.DEFINITION,
                energy("w", detail.stroke().work()),
                energy("dh_s", head),
                ratio("eta", impeller.curve().efficiency(flow)));
    }

    private void motorHeat() {
        if (detail.port() == detail.suction()) {
            return;
        }
        Drive drive = spec.machine().drive();
        working.formula(
                "enthalpy after the motor, which warms the suction vapor; solved with the work below",
                "hp = h1 + w / eta_mech (1 / eta_motor - 1)",
                Basis.FIRST_LAW,
                enthalpy("hp", detail.port().specificEnthalpy()),
                enthalpy("h1", detail.suction().specificEnthalpy()),
                energy("w", detail.stroke().work()),
                ratio("eta_mech", drive.mechanicalEfficiency()),
                ratio("eta_motor", drive.motorEfficiency()));
        working.property(
                "temperature after the motor",
                "Tp = T(p1, hp)",
                temperature("Tp", detail.port().temperature()),
                pressure("p1", detail.port().pressure()),
                enthalpy("hp", detail.port().specificEnthalpy()));
    }

    private void piston(Piston piston) {
        Inside inside = detail.stroke().inside().orElseThrow();
        Term reexpansion = ratio("v4/v3", inside.reexpansion().getAsDouble());
        if (piston.polytropicIndex().isPresent()) {
            working.formula(
                    "re-expansion of the clearance vapor",
                    "v4/v3 = (pb / pa)^(1/n)",
                    CLEARANCE,
                    reexpansion,
                    pressure("pb", inside.end().pressure()),
                    pressure("pa", inside.inlet().pressure()),
                    ratio("n", piston.polytropicIndex().getAsDouble()));
        } else {
            working.property(
                    "re-expansion of the clearance vapor at constant entropy, from the end of compression",
                    "v4/v3 = v(pa, sb) / vb",
                    reexpansion,
                    pressure("pa", inside.inlet().pressure()),
                    specificVolume("vb", inside.end().specificVolume()));
        }
        Term filling = working.formula(
                "filling of the cylinder",
                "eta_c = 1 + C - C v4/v3",
                CLEARANCE,
                ratio("eta_c", detail.stroke().filling()),
                ratio("C", piston.clearance()),
                reexpansion);
        flow("m = Vd eta_c (1 - leak) / va", inside.inlet(), "va", filling, ratio("leak", piston.leakage()));
        work(
                piston.polytropicIndex().isPresent()
                        ? "w = n/(n-1) pa va ((pb/pa)^((n-1)/n) - 1), not below hb - ha"
                        : "w = (h(pb, sa) - ha) / eta_s");
    }

    private void rotor(Rotor rotor) {
        flow("m = Vd eta_v / vp", detail.port(), "vp", ratio("eta_v", rotor.volumetricEfficiency()));
        Optional<Inside> built = detail.stroke().inside();
        if (built.isEmpty()) {
            work("w = (h(p2, sp) - hp) / eta_s");
            return;
        }
        State end = built.get().end();
        Term pressure = working.property(
                "pressure where the built-in volume ratio ends compression",
                "pi = p(vp / Vi, sp)",
                pressure("pi", end.pressure()),
                specificVolume("vp", detail.port().specificVolume()),
                ratio("Vi", rotor.builtInVolumeRatio().orElseThrow()));
        working.formula(
                "work to that pressure and at constant volume to the discharge",
                "wi = hi - hp + vi (p2 - pi)",
                BUILT_IN,
                energy(
                        "wi",
                        detail.stroke().isentropicWork()
                                + built.get().mismatchWork().getAsDouble()),
                enthalpy("hi", end.specificEnthalpy()),
                enthalpy("hp", detail.port().specificEnthalpy()),
                specificVolume("vi", end.specificVolume()),
                Working.pressure("p2", states.discharge().pressure()),
                pressure);
        work("w = wi / eta_s");
    }

    private void impeller(Impeller impeller) {
        working.formula(
                "head coefficient that each stage needs",
                "psi = (h(p2, sp) - hp) / (z u^2)",
                "definition of the head coefficient",
                ratio("psi", impeller.neededCoefficient(detail.stroke().isentropicWork())),
                energy("h(p2, sp) - hp", detail.stroke().isentropicWork()),
                ratio("z", impeller.stages()),
                Working.of("u", impeller.tipSpeed(), QuantityKind.SPEED));
        flow("m = Vd / vp", detail.port(), "vp");
        work("w = (h(p2, sp) - hp) / eta_s");
    }

    private void flow(String formula, State at, String symbol, Term... factors) {
        Term[] inputs = new Term[factors.length + 2];
        inputs[0] = volumeFlow("Vd", figures.displacement());
        System.arraycopy(factors, 0, inputs, 1, factors.length);
        inputs[factors.length + 1] = specificVolume(symbol, at.specificVolume());
        working.formula("mass flow", formula, Basis.DEFINITION, massFlow("m", figures.massFlow()), inputs);
        working.formula(
                "volumetric efficiency",
                "eta_v,1 = m v1 / Vd",
                Basis.DEFINITION,
                ratio("eta_v,1", figures.volumetricEfficiency()),
                massFlow("m", figures.massFlow()),
                specificVolume("v1", states.suction().specificVolume()),
                volumeFlow("Vd", figures.displacement()));
    }

    private void work(String formula) {
        Stroke stroke = detail.stroke();
        working.property("work on the vapor", formula, energy("w", stroke.work()));
    }

    private void power() {
        Drive drive = spec.machine().drive();
        Term shaft = working.formula(
                "shaft power",
                "P = m w / eta_mech",
                Basis.DEFINITION,
                Working.power("P", figures.shaftPower()),
                massFlow("m", figures.massFlow()),
                energy("w", detail.stroke().work()),
                ratio("eta_mech", drive.mechanicalEfficiency()));
        Term electrical = working.formula(
                "electrical power",
                "P_el = P / (eta_drive eta_motor)",
                Basis.DEFINITION,
                Working.power("P_el", figures.electricalPower()),
                shaft,
                ratio("eta_drive", drive.driveEfficiency()),
                ratio("eta_motor", drive.motorEfficiency()));
        spec.supply()
                .ifPresent(supply -> working.formula(
                        "current",
                        supply.phases() == 3 ? "I = P_el / (sqrt(3) U pf)" : "I = P_el / (U pf)",
                        "definition of active power",
                        Working.of("I", figures.current().orElseThrow(), QuantityKind.CURRENT),
                        electrical,
                        Working.of("U", supply.voltage(), QuantityKind.VOLTAGE),
                        ratio("pf", supply.powerFactor())));
    }

    private void discharge() {
        Term loss = Working.power("Q_loss", figures.heatLoss());
        Term h2 = working.formula(
                "enthalpy at the discharge: what the motor takes and does not lose to the surroundings is in the vapor",
                "h2 = h1 + (P_el - Q_loss) / m",
                Basis.FIRST_LAW,
                enthalpy("h2", states.discharge().specificEnthalpy()),
                enthalpy("h1", states.suction().specificEnthalpy()),
                Working.power("P_el", figures.electricalPower()),
                loss,
                massFlow("m", figures.massFlow()));
        working.property(
                "discharge temperature",
                "T2 = T(p2, h2)",
                temperature("T2", figures.dischargeTemperature()),
                pressure("p2", states.discharge().pressure()),
                h2);
    }

    private void balance(EnergyBalance balance) {
        working.formula(
                "heat rejected, checked against m (h2 - h_liquid)",
                "Qc = Qe + Q_line + P_el - Q_loss",
                Basis.FIRST_LAW,
                Working.power("Qc", balance.heatRejected()),
                Working.power("Qe", balance.refrigeratingCapacity()),
                Working.power("Q_line", balance.suctionLineHeatGain()),
                Working.power("P_el", balance.electricalPower()),
                Working.power("Q_loss", balance.heatLoss()));
    }
}
