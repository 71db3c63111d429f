package io.loopstate.engine.compression;

import io.loopstate.engine.component.Compressor;
import io.loopstate.engine.component.SaturationMargin;
import io.loopstate.engine.compression.CompressionProcess.Figures;
import io.loopstate.engine.compression.CompressionProcess.Flow;
import io.loopstate.engine.compression.CompressionProcess.Isothermal;
import io.loopstate.engine.compression.CompressionProcess.Liquid;
import io.loopstate.engine.compression.CompressionProcess.Spec;
import io.loopstate.engine.cycle.Inputs;
import io.loopstate.engine.cycle.Point;
import io.loopstate.engine.cycle.PointName;
import io.loopstate.engine.cycle.RememberingEquilibrium;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.property.State;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The states at both ends of a compression and the work between them.
 *
 * @param equilibrium the fluid
 * @param inlet at the suction
 * @param isentropic at the discharge pressure with the entropy of the inlet
 * @param outlet at the discharge
 * @param polytropicWork J/kg, integral of v dp along the path
 * @param work J/kg put in
 * @param heatLoss J/kg given off
 */
record ProcessEnds(
        Equilibrium equilibrium,
        State inlet,
        State isentropic,
        State outlet,
        OptionalDouble polytropicWork,
        double work,
        double heatLoss) {

    static ProcessEnds of(Spec spec) {
        Equilibrium equilibrium = new RememberingEquilibrium(spec.equilibrium());
        State inlet = spec.suction().state(equilibrium);
        double pressure = spec.discharge().pressure(equilibrium, inlet.pressure());
        State isentropic = Inputs.trace("discharge", () -> Compressor.isentropicOutlet(equilibrium, inlet, pressure));
        double loss = spec.heatLossFraction();
        double value = spec.measure().value();
        return switch (spec.measure().kind()) {
            case ISENTROPIC_EFFICIENCY ->
                Inputs.trace("isentropicEfficiency", () -> ofWork(equilibrium, inlet, isentropic, value, loss));
            case POLYTROPIC_EFFICIENCY ->
                Inputs.trace(
                        "polytropicEfficiency",
                        () -> ofPolytropicEfficiency(equilibrium, inlet, isentropic, value, loss));
            case POLYTROPIC_INDEX ->
                Inputs.trace("polytropicIndex", () -> ofIndex(equilibrium, inlet, isentropic, value));
            case DISCHARGE_TEMPERATURE ->
                Inputs.trace(
                        "discharge",
                        () -> ofOutlet(
                                equilibrium,
                                inlet,
                                isentropic,
                                equilibrium.atPressureTemperature(pressure, value),
                                loss));
        };
    }

    private static ProcessEnds ofWork(
            Equilibrium equilibrium, State inlet, State isentropic, double efficiency, double loss) {
        double isentropicWork = isentropic.specificEnthalpy() - inlet.specificEnthalpy();
        double work = isentropicWork / efficiency;
        if (efficiency == 1 && loss == 0) {
            return new ProcessEnds(equilibrium, inlet, isentropic, isentropic, OptionalDouble.of(work), work, 0);
        }
        State outlet =
                equilibrium.atPressureEnthalpy(isentropic.pressure(), inlet.specificEnthalpy() + (1 - loss) * work);
        return new ProcessEnds(
                equilibrium,
                inlet,
                isentropic,
                outlet,
                polytropicWork(equilibrium, inlet, isentropic, outlet),
                work,
                loss * work);
    }

    private static ProcessEnds ofPolytropicEfficiency(
            Equilibrium equilibrium, State inlet, State isentropic, double efficiency, double loss) {
        double share = (1 - loss) / efficiency;
        State outlet = share == 1 ? isentropic : PolytropicPath.end(equilibrium, inlet, isentropic.pressure(), share);
        double rise = outlet.specificEnthalpy() - inlet.specificEnthalpy();
        double work = rise / (1 - loss);
        return new ProcessEnds(
                equilibrium, inlet, isentropic, outlet, OptionalDouble.of(efficiency * work), work, loss * work);
    }

    /**
     * The integral of v dp along p v^n = constant is exact for any fluid. Below the isentropic index the path is that of a
     * cooled cylinder, work is that integral and the rest is heat; above it, of a compressor with losses and without heat.
     */
    private static ProcessEnds ofIndex(Equilibrium equilibrium, State inlet, State isentropic, double index) {
        double ratio = isentropic.pressure() / inlet.pressure();
        double volume = inlet.specificVolume() * Math.pow(ratio, -1 / index);
        State outlet = equilibrium.state(Variable.PRESSURE, isentropic.pressure(), Variable.SPECIFIC_VOLUME, volume);
        double polytropic = IndexPath.flowWork(inlet.pressure(), inlet.specificVolume(), ratio, index);
        double work = Math.max(polytropic, outlet.specificEnthalpy() - inlet.specificEnthalpy());
        double heat = work - (outlet.specificEnthalpy() - inlet.specificEnthalpy());
        return new ProcessEnds(equilibrium, inlet, isentropic, outlet, OptionalDouble.of(polytropic), work, heat);
    }

    private static ProcessEnds ofOutlet(
            Equilibrium equilibrium, State inlet, State isentropic, State outlet, double loss) {
        double work = (outlet.specificEnthalpy() - inlet.specificEnthalpy()) / (1 - loss);
        return new ProcessEnds(
                equilibrium,
                inlet,
                isentropic,
                outlet,
                polytropicWork(equilibrium, inlet, isentropic, outlet),
                work,
                loss * work);
    }

    private static OptionalDouble polytropicWork(Equilibrium equilibrium, State inlet, State isentropic, State outlet) {
        double isentropicWork = isentropic.specificEnthalpy() - inlet.specificEnthalpy();
        OptionalDouble share = PolytropicPath.share(equilibrium, inlet, outlet, isentropicWork);
        return share.isPresent()
                ? OptionalDouble.of((outlet.specificEnthalpy() - inlet.specificEnthalpy()) / share.getAsDouble())
                : share;
    }

    double isentropicWork() {
        return isentropic.specificEnthalpy() - inlet.specificEnthalpy();
    }

    double pressureRatio() {
        return outlet.pressure() / inlet.pressure();
    }

    Figures figures() {
        return new Figures(
                pressureRatio(),
                inlet.specificVolume() / outlet.specificVolume(),
                isentropicWork(),
                polytropicWork,
                work,
                heatLoss,
                isentropicWork() / work,
                polytropicWork.isPresent()
                        ? OptionalDouble.of(polytropicWork.getAsDouble() / work)
                        : OptionalDouble.empty(),
                IndexPath.between(inlet, isentropic),
                IndexPath.between(inlet, outlet),
                outlet.temperature(),
                isentropic.temperature());
    }

    /** Reversible isothermal work is the change of the Gibbs energy: from dh = T ds + v dp. */
    Optional<Isothermal> isothermal() {
        State end;
        try {
            end = equilibrium.atPressureTemperature(outlet.pressure(), inlet.temperature());
        } catch (EngineException exception) {
            if (exception.code() == ErrorCode.OUT_OF_RANGE || exception.code() == ErrorCode.ON_SATURATION_LINE) {
                return Optional.empty();
            }
            throw exception;
        }
        double heat = inlet.temperature() * (inlet.specificEntropy() - end.specificEntropy());
        double least = end.specificEnthalpy() - inlet.specificEnthalpy() + heat;
        return Optional.of(new Isothermal(least, heat, least / work, end.phase() == Phase.LIQUID));
    }

    Optional<Liquid> liquid() {
        return WetSuction.of(equilibrium, inlet, outlet);
    }

    Optional<Flow> flow(Spec spec) {
        if (spec.massFlow().isEmpty() && spec.suctionVolumeFlow().isEmpty()) {
            return Optional.empty();
        }
        double flow = spec.massFlow().isPresent()
                ? spec.massFlow().getAsDouble()
                : spec.suctionVolumeFlow().getAsDouble() * inlet.density();
        return Optional.of(new Flow(
                flow, flow * inlet.specificVolume(), flow * outlet.specificVolume(), flow * work, flow * heatLoss));
    }

    List<Point> points() {
        return List.of(
                point(PointName.COMPRESSOR_INLET, inlet),
                point(PointName.COMPRESSOR_OUTLET, outlet),
                point(PointName.ISENTROPIC_COMPRESSOR_OUTLET, isentropic));
    }

    private Point point(PointName name, State state) {
        return new Point(
                name,
                state,
                SaturationMargin.superheat(equilibrium, state),
                SaturationMargin.subcooling(equilibrium, state));
    }
}
