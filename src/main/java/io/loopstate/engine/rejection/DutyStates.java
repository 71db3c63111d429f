package io.loopstate.engine.rejection;

import io.loopstate.engine.component.Compressor;
import io.loopstate.engine.component.Condenser;
import io.loopstate.engine.component.Evaporator;
import io.loopstate.engine.component.HeatRejection;
import io.loopstate.engine.component.SaturationMargin;
import io.loopstate.engine.cycle.Inputs;
import io.loopstate.engine.cycle.Point;
import io.loopstate.engine.cycle.PointName;
import io.loopstate.engine.cycle.RememberingEquilibrium;
import io.loopstate.engine.cycle.SaturationTemperatures;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import io.loopstate.engine.rejection.CondenserDuty.Compression;
import io.loopstate.engine.rejection.CondenserDuty.CondensingSide;
import io.loopstate.engine.rejection.CondenserDuty.Machine;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The states of a duty.
 *
 * @param suction vapor drawn in, where the compression is known
 * @param compression likewise
 * @param flow kg/s, where it is given or follows from the capacity
 * @param inlet of the condenser
 * @param outlet of the condenser
 * @param condensing temperatures; empty above the critical pressure
 * @param parts heat by what the refrigerant does, J/kg
 */
record DutyStates(
        Optional<State> suction,
        Optional<Compressor.Compression> compression,
        OptionalDouble flow,
        Optional<Point> inlet,
        Optional<Point> outlet,
        Optional<SaturationTemperatures> condensing,
        Optional<HeatRejection> parts) {

    static DutyStates of(CondenserDuty.Spec spec) {
        if (spec.condensing().isEmpty()) {
            return new DutyStates(
                    Optional.empty(),
                    Optional.empty(),
                    spec.machine().massFlow(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty());
        }
        Equilibrium equilibrium = new RememberingEquilibrium(spec.equilibrium());
        CondensingSide side = spec.condensing().get();
        double pressure = Inputs.trace("condensing", () -> side.level().pressure(equilibrium));
        State outlet = Inputs.trace("condenserOutlet", () -> Condenser.outlet(equilibrium, pressure, side.outlet()));
        return side.inletTemperature().isPresent()
                ? measured(equilibrium, spec, pressure, outlet)
                : compressed(equilibrium, spec, pressure, outlet);
    }

    private static DutyStates measured(
            Equilibrium equilibrium, CondenserDuty.Spec spec, double pressure, State outlet) {
        double temperature = spec.condensing().get().inletTemperature().getAsDouble();
        State inlet = Inputs.trace("condenserInletTemperature", () -> vapor(equilibrium, pressure, temperature));
        return of(
                equilibrium, Optional.empty(), Optional.empty(), spec.machine().massFlow(), inlet, outlet);
    }

    private static DutyStates compressed(
            Equilibrium equilibrium, CondenserDuty.Spec spec, double pressure, State outlet) {
        Compression given = spec.condensing().get().compression().orElseThrow();
        double low = Inputs.trace("evaporating", () -> given.evaporating().pressure(equilibrium));
        State suction = Inputs.trace("suction", () -> Evaporator.outlet(equilibrium, low, given.suction()));
        Compressor.Compression compression = Inputs.trace(
                "condensing",
                () -> Compressor.compress(
                        equilibrium,
                        suction,
                        Compressor.isentropicOutlet(equilibrium, suction, pressure),
                        given.model()));
        double effect = suction.specificEnthalpy() - outlet.specificEnthalpy();
        Machine machine = spec.machine();
        OptionalDouble flow = machine.massFlow().isPresent()
                        || machine.refrigeratingCapacity().isEmpty()
                ? machine.massFlow()
                : OptionalDouble.of(machine.refrigeratingCapacity().getAsDouble() / requireEffect(effect));
        double taken = machine.shellHeatLoss() + machine.oilCoolerHeat();
        State inlet = taken == 0
                ? compression.outlet()
                : Inputs.trace(
                        "oilCoolerHeat",
                        () -> equilibrium.atPressureEnthalpy(
                                pressure, compression.outlet().specificEnthalpy() - taken / requireFlow(flow)));
        return of(equilibrium, Optional.of(suction), Optional.of(compression), flow, inlet, outlet);
    }

    private static DutyStates of(
            Equilibrium equilibrium,
            Optional<State> suction,
            Optional<Compressor.Compression> compression,
            OptionalDouble flow,
            State inlet,
            State outlet) {
        if (!(inlet.specificEnthalpy() > outlet.specificEnthalpy())) {
            throw EngineException.of(
                            ErrorCode.CONTRADICTORY_INPUTS,
                            "The refrigerant reaches the condenser with no more enthalpy than it leaves with: it gives off"
                                    + " no heat.")
                    .about("condenserInletTemperature");
        }
        boolean gasCooler = Condenser.supercritical(equilibrium, inlet.pressure());
        return new DutyStates(
                suction,
                compression,
                flow,
                Optional.of(Point.of(
                        gasCooler ? PointName.GAS_COOLER_INLET : PointName.CONDENSER_INLET, equilibrium, inlet)),
                Optional.of(Point.of(
                        gasCooler ? PointName.GAS_COOLER_OUTLET : PointName.CONDENSER_OUTLET, equilibrium, outlet)),
                SaturationMargin.saturation(equilibrium, inlet.pressure())
                        .map(saturation -> SaturationTemperatures.of(inlet.pressure(), saturation)),
                Optional.of(Condenser.heatRejection(equilibrium, inlet, outlet)));
    }

    /** Vapor of a measured temperature; at the dew point itself saturated. */
    private static State vapor(Equilibrium equilibrium, double pressure, double temperature) {
        if (Condenser.supercritical(equilibrium, pressure)) {
            return equilibrium.atPressureTemperature(pressure, temperature);
        }
        State dew = equilibrium.saturationAtPressure(pressure).dew();
        double superheat = temperature - dew.temperature();
        if (superheat < -SaturationMargin.SATURATED) {
            throw EngineException.of(
                    ErrorCode.CONTRADICTORY_INPUTS,
                    "The vapor cannot arrive colder than it condenses: below the dew point it holds liquid, and the"
                            + " temperature does not tell how much.",
                    Variable.TEMPERATURE,
                    temperature,
                    dew.temperature(),
                    Double.NaN);
        }
        return superheat <= SaturationMargin.SATURATED ? dew : equilibrium.atPressureTemperature(pressure, temperature);
    }

    private static double requireEffect(double effect) {
        if (!(effect > 0)) {
            throw EngineException.of(
                            ErrorCode.CONTRADICTORY_INPUTS,
                            "The refrigerant reaches the evaporator with as much enthalpy as it leaves with: it cools"
                                    + " nothing.")
                    .about("condenserOutlet");
        }
        return effect;
    }

    private static double requireFlow(OptionalDouble flow) {
        return flow.orElseThrow(() -> EngineException.of(
                        ErrorCode.CONTRADICTORY_INPUTS,
                        "Heat taken by the oil cooler or the shell needs a size: a mass flow or a refrigerating capacity.")
                .about("massFlow"));
    }
}
