package io.loopstate.engine.cycle;

import io.loopstate.engine.component.Compressor;
import io.loopstate.engine.component.Condenser;
import io.loopstate.engine.component.Evaporator;
import io.loopstate.engine.component.EvaporatorMean;
import io.loopstate.engine.component.ExpansionValve;
import io.loopstate.engine.component.Line;
import io.loopstate.engine.component.LineLosses;
import io.loopstate.engine.component.SaturationBasis;
import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.component.SaturationMargin;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import java.util.List;
import java.util.Optional;

/** The states around the loop of a design cycle. */
record DesignStates(
        Equilibrium equilibrium,
        State evaporatorOutlet,
        State compressorInlet,
        Compressor.Compression compression,
        State condenserInlet,
        State condenserOutlet,
        State valveInlet,
        State evaporatorInlet) {

    static DesignStates of(DesignCycle.Spec spec) {
        Equilibrium equilibrium = new RememberingEquilibrium(spec.equilibrium());
        LineLosses losses = spec.losses();
        double evaporating = Inputs.trace("evaporating", () -> evaporatingPressure(equilibrium, spec));
        double condensing = Inputs.trace("condensing", () -> spec.condensing().pressure(equilibrium));
        requireLift(spec, evaporating, condensing);
        requirePressureLeft(losses, evaporating, condensing);

        State evaporatorOutlet = Inputs.trace("evaporating", () -> evaporatorOutlet(equilibrium, evaporating, spec));
        State compressorInlet = Inputs.trace(
                losses.suctionLineGain().given().input(),
                () -> Line.suctionOutlet(
                        equilibrium, evaporatorOutlet, losses.suctionLinePressureDrop(), losses.suctionLineGain()));
        State isentropicOutlet = Inputs.trace(
                "condensing",
                () -> Compressor.isentropicOutlet(
                        equilibrium, compressorInlet, condensing + losses.dischargeLinePressureDrop()));
        Compressor.Compression compression = Inputs.trace(
                "isentropicEfficiency",
                () -> Compressor.compress(equilibrium, compressorInlet, isentropicOutlet, spec.compressor()));
        State condenserInlet = Inputs.trace(
                "dischargeLineHeatLoss",
                () -> Line.outlet(
                        equilibrium,
                        compression.outlet(),
                        losses.dischargeLinePressureDrop(),
                        -losses.dischargeLineHeatLoss()));
        State condenserOutlet = condenserOutlet(equilibrium, condensing, spec);
        State valveInlet = valveInlet(equilibrium, condenserOutlet, spec);
        State evaporatorInlet = Inputs.trace(
                "evaporating",
                () -> ExpansionValve.expand(equilibrium, valveInlet, evaporating + losses.evaporatorPressureDrop()));
        return new DesignStates(
                equilibrium,
                evaporatorOutlet,
                compressorInlet,
                compression,
                condenserInlet,
                condenserOutlet,
                valveInlet,
                evaporatorInlet);
    }

    private static double evaporatingPressure(Equilibrium equilibrium, DesignCycle.Spec spec) {
        SaturationLevel level = spec.evaporating();
        if (level.given() != Variable.TEMPERATURE || level.basis() != SaturationBasis.INLET_TO_DEW) {
            return level.pressure(equilibrium);
        }
        double condensing = Inputs.trace("condensing", () -> spec.condensing().pressure(equilibrium));
        State valveInlet = valveInlet(equilibrium, condenserOutlet(equilibrium, condensing, spec), spec);
        double drop = spec.losses().evaporatorPressureDrop();
        return new EvaporatorMean(equilibrium, valveInlet.specificEnthalpy(), drop).pressure(level.value());
    }

    private static State condenserOutlet(Equilibrium equilibrium, double condensing, DesignCycle.Spec spec) {
        double pressure = condensing - spec.losses().condenserPressureDrop();
        return Inputs.trace("condenserOutlet", () -> Condenser.outlet(equilibrium, pressure, spec.condenserOutlet()));
    }

    private static State valveInlet(Equilibrium equilibrium, State condenserOutlet, DesignCycle.Spec spec) {
        LineLosses losses = spec.losses();
        return Inputs.trace(
                "liquidLineHeatGain",
                () -> Line.outlet(
                        equilibrium, condenserOutlet, losses.liquidLinePressureDrop(), losses.liquidLineHeatGain()));
    }

    /** Whether the high side lies above the critical pressure. */
    boolean transcritical() {
        return Condenser.supercritical(equilibrium, condenserInlet.pressure());
    }

    List<Point> points() {
        boolean gasCooler = transcritical();
        return List.of(
                point(PointName.COMPRESSOR_INLET, compressorInlet),
                point(PointName.COMPRESSOR_OUTLET, compression.outlet()),
                point(gasCooler ? PointName.GAS_COOLER_INLET : PointName.CONDENSER_INLET, condenserInlet),
                point(gasCooler ? PointName.GAS_COOLER_OUTLET : PointName.CONDENSER_OUTLET, condenserOutlet),
                point(PointName.VALVE_INLET, valveInlet),
                point(PointName.EVAPORATOR_INLET, evaporatorInlet),
                point(PointName.EVAPORATOR_OUTLET, evaporatorOutlet),
                point(PointName.ISENTROPIC_COMPRESSOR_OUTLET, compression.isentropicOutlet()));
    }

    SaturationTemperatures evaporating() {
        double pressure = evaporatorOutlet.pressure();
        return SaturationTemperatures.of(pressure, equilibrium.saturationAtPressure(pressure));
    }

    Optional<SaturationTemperatures> condensing() {
        double pressure = condenserInlet.pressure();
        return SaturationMargin.saturation(equilibrium, pressure)
                .map(saturation -> SaturationTemperatures.of(pressure, saturation));
    }

    private Point point(PointName name, State state) {
        return Point.of(name, equilibrium, state);
    }

    private static State evaporatorOutlet(Equilibrium equilibrium, double pressure, DesignCycle.Spec spec) {
        // The level first, so that a pressure without a dew point is reported as such and not as a fault of the
        // superheat.
        equilibrium.saturationAtPressure(pressure);
        return Inputs.trace(
                "evaporatorOutlet", () -> Evaporator.outlet(equilibrium, pressure, spec.evaporatorOutlet()));
    }

    private static void requirePressureLeft(LineLosses losses, double evaporating, double condensing) {
        if (losses.suctionLinePressureDrop() >= evaporating) {
            throw noPressureLeft("suctionLinePressureDrop", losses.suctionLinePressureDrop(), evaporating);
        }
        double available = condensing - evaporating;
        double condenser = losses.condenserPressureDrop();
        double liquidLine = losses.liquidLinePressureDrop();
        double evaporator = losses.evaporatorPressureDrop();
        if (condenser + liquidLine + evaporator >= available) {
            boolean mostInLiquidLine = liquidLine >= Math.max(condenser, evaporator);
            String largest = mostInLiquidLine
                    ? "liquidLinePressureDrop"
                    : condenser >= evaporator ? "condenserPressureDrop" : "evaporatorPressureDrop";
            throw noPressureLeft(largest, condenser + liquidLine + evaporator, available);
        }
    }

    private static EngineException noPressureLeft(String input, double drop, double available) {
        return EngineException.of(
                        ErrorCode.CONTRADICTORY_INPUTS,
                        "The pressure drops leave no pressure for the rest of the loop.",
                        Variable.PRESSURE,
                        drop,
                        0,
                        available)
                .about(input);
    }

    private static void requireLift(DesignCycle.Spec spec, double evaporating, double condensing) {
        if (condensing > evaporating) {
            return;
        }
        SaturationLevel low = spec.evaporating();
        SaturationLevel high = spec.condensing();
        boolean temperatures = low.given() == Variable.TEMPERATURE && high.given() == Variable.TEMPERATURE;
        throw EngineException.of(
                        ErrorCode.CONTRADICTORY_INPUTS,
                        "The refrigerant must condense at a higher level than it evaporates.",
                        temperatures ? Variable.TEMPERATURE : Variable.PRESSURE,
                        temperatures ? high.value() : condensing,
                        temperatures ? low.value() : evaporating,
                        Double.NaN)
                .about("condensing");
    }
}
