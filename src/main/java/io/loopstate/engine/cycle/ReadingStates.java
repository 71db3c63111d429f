package io.loopstate.engine.cycle;

import io.loopstate.engine.component.Compressor;
import io.loopstate.engine.component.Condenser;
import io.loopstate.engine.component.ExpansionValve;
import io.loopstate.engine.component.LiquidLine;
import io.loopstate.engine.component.SaturationMargin;
import io.loopstate.engine.cycle.FieldReadings.LineTemperatures;
import io.loopstate.engine.cycle.FieldReadings.Pressures;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.property.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;

/**
 * The states that pressures and line temperatures determine, with their distances from saturation.
 *
 * <p>A line that reads on the wrong side of saturation is taken as saturated, since pressure and temperature cannot tell
 * how much of the other phase is there; the margin keeps the sign, and the findings speak of it. A discharge line below the
 * dew point has no such nearest case and gives no state.
 *
 * @param superheat K, suction line over dew point
 * @param evaporatorSuperheat K, evaporator outlet over dew point
 * @param dischargeSuperheat K, discharge line over dew point; empty without the reading or above the critical pressure
 * @param subcooling K, bubble point over liquid line; empty without the reading or above the critical pressure
 * @param liquidPressure Pa where the liquid line is read, measured or assumed
 */
record ReadingStates(
        Equilibrium equilibrium,
        SaturationTemperatures evaporating,
        Optional<SaturationTemperatures> condensing,
        Optional<SaturationTemperatures> atLiquidLine,
        double liquidPressure,
        double superheat,
        OptionalDouble evaporatorSuperheat,
        OptionalDouble dischargeSuperheat,
        OptionalDouble subcooling,
        State compressorInlet,
        Optional<State> evaporatorOutlet,
        Optional<State> compressorOutlet,
        Optional<State> valveInlet,
        Optional<State> evaporatorInlet,
        Optional<Compressor.Compression> compression,
        Optional<LiquidLine.FlashMargin> flashMargin) {

    static ReadingStates of(FieldReadings.Spec spec) {
        Equilibrium equilibrium = new RememberingEquilibrium(spec.equilibrium());
        Pressures pressures = spec.pressures();
        LineTemperatures lines = spec.temperatures();
        double liquidPressure = pressures.liquidLine().orElse(pressures.discharge());
        requireRise("dischargePressure", pressures.discharge(), pressures.suction());
        requireRise("liquidLinePressure", liquidPressure, pressures.suction());

        Saturation low = Inputs.trace("suctionPressure", () -> equilibrium.saturationAtPressure(pressures.suction()));
        Optional<Saturation> high = saturation(equilibrium, "dischargePressure", pressures.discharge());
        Optional<Saturation> atLiquid = saturation(equilibrium, "liquidLinePressure", liquidPressure);
        double dew = low.dew().temperature();
        double superheat = lines.suctionLine() - dew;
        State suction = Inputs.trace("suctionLineTemperature", () -> vapor(equilibrium, low, lines.suctionLine()));
        Optional<State> outlet = map(
                lines.evaporatorOutlet(),
                value -> Inputs.trace("evaporatorOutletTemperature", () -> vapor(equilibrium, low, value)));

        OptionalDouble dischargeSuperheat = high.isEmpty()
                ? OptionalDouble.empty()
                : Optionals.map(
                        lines.dischargeLine(), value -> value - high.get().dew().temperature());
        Optional<State> discharge = dischargeSuperheat.orElse(1) <= SaturationMargin.SATURATED
                ? Optional.empty()
                : map(
                        lines.dischargeLine(),
                        value -> Inputs.trace(
                                "dischargeLineTemperature",
                                () -> equilibrium.atPressureTemperature(pressures.discharge(), value)));

        OptionalDouble subcooling = atLiquid.isEmpty()
                ? OptionalDouble.empty()
                : Optionals.map(
                        lines.liquidLine(), value -> atLiquid.get().bubble().temperature() - value);
        Optional<State> liquid = map(
                lines.liquidLine(),
                value -> Inputs.trace(
                        "liquidLineTemperature", () -> liquid(equilibrium, atLiquid, liquidPressure, value)));
        Optional<State> evaporatorInlet = liquid.map(state ->
                Inputs.trace("suctionPressure", () -> ExpansionValve.expand(equilibrium, state, pressures.suction())));
        return new ReadingStates(
                equilibrium,
                SaturationTemperatures.of(pressures.suction(), low),
                high.map(value -> SaturationTemperatures.of(pressures.discharge(), value)),
                atLiquid.map(value -> SaturationTemperatures.of(liquidPressure, value)),
                liquidPressure,
                superheat,
                Optionals.map(lines.evaporatorOutlet(), value -> value - dew),
                dischargeSuperheat,
                subcooling,
                suction,
                outlet,
                discharge,
                liquid,
                evaporatorInlet,
                discharge.map(state -> Inputs.trace(
                        "dischargePressure",
                        () -> Compressor.measure(
                                equilibrium, suction, state, spec.machine().heatLossFraction()))),
                atLiquid.isEmpty() ? Optional.empty() : flashMargin(equilibrium, liquid, spec.machine()));
    }

    /** The points in the direction of flow, then the isentropic compressor outlet. */
    List<Point> points() {
        List<Point> points = new ArrayList<>();
        points.add(Point.of(PointName.COMPRESSOR_INLET, equilibrium, compressorInlet));
        add(points, PointName.COMPRESSOR_OUTLET, compressorOutlet);
        add(points, PointName.VALVE_INLET, valveInlet);
        add(points, PointName.EVAPORATOR_INLET, evaporatorInlet);
        add(points, PointName.EVAPORATOR_OUTLET, evaporatorOutlet);
        add(points, PointName.ISENTROPIC_COMPRESSOR_OUTLET, compression.map(Compressor.Compression::isentropicOutlet));
        return points;
    }

    private void add(List<Point> points, PointName name, Optional<State> state) {
        state.ifPresent(value -> points.add(Point.of(name, equilibrium, value)));
    }

    private static State vapor(Equilibrium equilibrium, Saturation saturation, double temperature) {
        State dew = saturation.dew();
        return temperature - dew.temperature() <= SaturationMargin.SATURATED
                ? dew
                : equilibrium.atPressureTemperature(dew.pressure(), temperature);
    }

    private static State liquid(
            Equilibrium equilibrium, Optional<Saturation> saturation, double pressure, double temperature) {
        boolean boiling = saturation
                .map(value -> value.bubble().temperature() - temperature <= SaturationMargin.SATURATED)
                .orElse(false);
        return boiling ? saturation.get().bubble() : equilibrium.atPressureTemperature(pressure, temperature);
    }

    private static Optional<LiquidLine.FlashMargin> flashMargin(
            Equilibrium equilibrium, Optional<State> liquid, FieldReadings.Machine machine) {
        return liquid.map(state -> Inputs.trace(
                "liquidLift",
                () -> LiquidLine.flashMargin(equilibrium, state, machine.liquidLift(), machine.liquidLineLoss())));
    }

    private static Optional<Saturation> saturation(Equilibrium equilibrium, String input, double pressure) {
        if (Condenser.supercritical(equilibrium, pressure)) {
            return Optional.empty();
        }
        return Inputs.trace(input, () -> Optional.of(equilibrium.saturationAtPressure(pressure)));
    }

    private static Optional<State> map(OptionalDouble value, DoubleFunction<State> function) {
        return value.isPresent() ? Optional.of(function.apply(value.getAsDouble())) : Optional.empty();
    }

    private static void requireRise(String input, double high, double low) {
        if (!(high > low)) {
            throw EngineException.of(
                            ErrorCode.CONTRADICTORY_INPUTS,
                            "The high side of a running machine lies above the suction pressure. Check for swapped hoses, a"
                                    + " gauge reading taken for an absolute one, or a machine at rest.",
                            Variable.PRESSURE,
                            high,
                            low,
                            Double.NaN)
                    .about(input);
        }
    }
}
