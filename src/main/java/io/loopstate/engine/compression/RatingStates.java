package io.loopstate.engine.compression;

import io.loopstate.engine.component.Compressor;
import io.loopstate.engine.component.SaturationMargin;
import io.loopstate.engine.compression.DisplacementRating.Figures;
import io.loopstate.engine.compression.DisplacementRating.Head;
import io.loopstate.engine.compression.DisplacementRating.InsideFigures;
import io.loopstate.engine.compression.DisplacementRating.Spec;
import io.loopstate.engine.compression.Machine.Detail;
import io.loopstate.engine.cycle.Inputs;
import io.loopstate.engine.cycle.Optionals;
import io.loopstate.engine.cycle.Point;
import io.loopstate.engine.cycle.PointName;
import io.loopstate.engine.cycle.RememberingEquilibrium;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.property.State;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A machine at its working point.
 *
 * @param equilibrium the refrigerant
 * @param detail the machine
 * @param isentropic at the discharge pressure with the entropy of the suction
 */
record RatingStates(Equilibrium equilibrium, Detail detail, State isentropic) {
    static RatingStates of(Spec spec) {
        Equilibrium equilibrium = new RememberingEquilibrium(spec.equilibrium());
        State suction = spec.suction().state(equilibrium);
        double pressure = spec.discharge().pressure(equilibrium, suction.pressure());
        return Inputs.trace(
                "discharge",
                () -> new RatingStates(
                        equilibrium,
                        spec.machine().detail(equilibrium, suction, pressure),
                        Compressor.isentropicOutlet(equilibrium, suction, pressure)));
    }

    State suction() {
        return detail.suction();
    }

    State discharge() {
        return detail.running().discharge();
    }

    Figures figures(Spec spec) {
        double swept = spec.machine().displacer().sweptFlow(detail.stroke(), detail.port());
        double flow = detail.running().massFlow();
        double volume = flow * suction().specificVolume();
        double isentropicPower =
                flow * (isentropic.specificEnthalpy() - suction().specificEnthalpy());
        OptionalDouble perRevolution = spec.cylinders().isPresent()
                ? OptionalDouble.of(spec.cylinders().get().volumePerRevolution())
                : Optionals.map(spec.speed(), speed -> swept / speed);
        double electrical = detail.electricalPower();
        return new Figures(
                discharge().pressure() / suction().pressure(),
                perRevolution,
                swept,
                volume / swept,
                flow,
                volume,
                isentropicPower,
                detail.indicatedPower(),
                detail.shaftPower() - detail.indicatedPower(),
                detail.shaftPower(),
                detail.driveLoss(),
                detail.motorLoss(),
                electrical,
                detail.shellLoss(),
                detail.running().heatLoss(),
                spec.supply().map(s -> OptionalDouble.of(s.current(electrical))).orElse(OptionalDouble.empty()),
                isentropicPower / detail.shaftPower(),
                isentropicPower / electrical,
                detail.port().temperature() - suction().temperature(),
                discharge().temperature());
    }

    Optional<InsideFigures> inside() {
        double flow = detail.running().massFlow();
        return detail.stroke()
                .inside()
                .map(inside -> new InsideFigures(
                        inside.inlet().pressure(),
                        inside.end().pressure(),
                        inside.end().temperature(),
                        Optionals.when(
                                inside.reexpansion().isPresent(),
                                detail.stroke().filling()),
                        inside.reexpansion(),
                        Optionals.map(inside.mismatchWork(), work -> flow * work),
                        flow * detail.stroke().heat()));
    }

    Optional<Head> head(Spec spec) {
        if (spec.machine().displacer() instanceof CurvedImpeller curved) {
            return Optional.of(head(curved));
        }
        if (!(spec.machine().displacer() instanceof Impeller impeller)) {
            return Optional.empty();
        }
        double needed = detail.stroke().isentropicWork();
        double sound = detail.port().speedOfSound();
        return Optional.of(new Head(
                needed,
                impeller.head(),
                impeller.neededCoefficient(needed),
                impeller.tipSpeed(),
                Optionals.when(!Double.isNaN(sound), impeller.tipSpeed() / sound),
                Optional.empty()));
    }

    private Head head(CurvedImpeller impeller) {
        double needed = detail.stroke().isentropicWork();
        double sound = detail.port().speedOfSound();
        double flow = impeller.flowCoefficient(needed);
        return new Head(
                needed,
                OptionalDouble.of(needed),
                impeller.neededCoefficient(needed),
                impeller.tipSpeed(),
                Optionals.when(!Double.isNaN(sound), impeller.tipSpeed() / sound),
                Optional.of(new DisplacementRating.OnCurve(
                        flow,
                        impeller.curve().efficiency(flow),
                        impeller.volumeFlow(impeller.curve().surge()),
                        impeller.volumeFlow(impeller.curve().choke()))));
    }

    Optional<EnergyBalance> balance(Spec spec) {
        return spec.circuit().map(circuit -> EnergyBalance.of(equilibrium, circuit, suction(), detail.running()));
    }

    Optional<CompressionProcess.Liquid> liquid() {
        return WetSuction.of(equilibrium, suction(), discharge());
    }

    List<Point> points() {
        return List.of(
                point(PointName.COMPRESSOR_INLET, suction()),
                point(PointName.COMPRESSOR_OUTLET, discharge()),
                point(PointName.ISENTROPIC_COMPRESSOR_OUTLET, isentropic));
    }

    /** Whether the suction vapor is dry. */
    boolean dry() {
        return suction().phase() != Phase.TWO_PHASE;
    }

    private Point point(PointName name, State state) {
        return new Point(
                name,
                state,
                SaturationMargin.superheat(equilibrium, state),
                SaturationMargin.subcooling(equilibrium, state));
    }
}
