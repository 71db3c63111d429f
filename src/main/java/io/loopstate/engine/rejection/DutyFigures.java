package io.loopstate.engine.rejection;

import io.loopstate.engine.component.Compressor;
import io.loopstate.engine.component.CompressorKind;
import io.loopstate.engine.component.HeatRejection;
import io.loopstate.engine.cycle.Optionals;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.rejection.CondenserDuty.Machine;
import io.loopstate.engine.rejection.CondenserDuty.PerMass;
import io.loopstate.engine.rejection.CondenserDuty.Totals;
import java.util.Optional;
import java.util.OptionalDouble;

/** The figures of a duty: per kilogram, then in all. */
record DutyFigures(Optional<PerMass> perMass, Totals totals) {
    static DutyFigures of(CondenserDuty.Spec spec, DutyStates states) {
        Optional<PerMass> perMass = states.parts().map(parts -> perMass(states, parts));
        return new DutyFigures(perMass, totals(spec.machine(), states, perMass));
    }

    private static PerMass perMass(DutyStates states, HeatRejection parts) {
        OptionalDouble effect = states.suction().isPresent()
                ? OptionalDouble.of(states.suction().get().specificEnthalpy()
                        - states.outlet().orElseThrow().state().specificEnthalpy())
                : OptionalDouble.empty();
        OptionalDouble work = states.compression()
                .map(Compressor.Compression::work)
                .map(OptionalDouble::of)
                .orElseGet(OptionalDouble::empty);
        return new PerMass(parts.total(), effect, work);
    }

    private static Totals totals(Machine machine, DutyStates states, Optional<PerMass> perMass) {
        OptionalDouble balance = balance(machine);
        OptionalDouble byStates = perMass.isPresent()
                ? Optionals.map(states.flow(), flow -> flow * perMass.get().heatRejection())
                : OptionalDouble.empty();
        OptionalDouble heat = Optionals.or(byStates, balance);
        OptionalDouble flow = states.flow().isPresent() || perMass.isEmpty()
                ? states.flow()
                : Optionals.map(heat, watt -> watt / perMass.get().heatRejection());
        OptionalDouble capacity = Optionals.or(
                machine.refrigeratingCapacity(),
                Optionals.both(
                        flow,
                        perMass.map(PerMass::refrigeratingEffect).orElse(OptionalDouble.empty()),
                        (m, q) -> m * q));
        OptionalDouble power = Optionals.or(
                Optionals.both(
                        flow, perMass.map(PerMass::compressorWork).orElse(OptionalDouble.empty()), (m, w) -> m * w),
                refrigerantPower(machine));
        OptionalDouble perMassFactor = perMass.map(figures ->
                        Optionals.map(figures.refrigeratingEffect(), effect -> figures.heatRejection() / effect))
                .orElse(OptionalDouble.empty());
        double oil = machine.oilCoolerHeat();
        return new Totals(
                flow,
                capacity,
                power,
                heat,
                parts(states, flow),
                oil,
                machine.shellHeatLoss(),
                Optionals.or(Optionals.both(heat, capacity, (q, cold) -> q / cold), perMassFactor),
                Optionals.or(Optionals.both(heat, capacity, (q, cold) -> (q + oil) / cold), perMassFactor),
                balance,
                Optionals.both(byStates, balance, (q, other) -> (other - q) / q));
    }

    private static Optional<HeatRejection> parts(DutyStates states, OptionalDouble flow) {
        if (flow.isEmpty()) {
            return Optional.empty();
        }
        double kilograms = flow.getAsDouble();
        return states.parts()
                .map(parts -> new HeatRejection(
                        kilograms * parts.desuperheating(),
                        kilograms * parts.condensing(),
                        kilograms * parts.subcooling(),
                        kilograms * parts.gasCooling()));
    }

    /** W that the compressor puts into the refrigerant: of a hermetic one all it draws, of an open one what its shaft brings. */
    static OptionalDouble refrigerantPower(Machine machine) {
        return machine.kind() == CompressorKind.HERMETIC
                ? machine.compressorPower()
                : Optionals.map(
                        machine.compressorPower(),
                        watt -> watt * machine.motorEfficiency().orElse(1));
    }

    /** W in the condenser: what the evaporator takes up and the compressor puts in, less what leaves on the way. */
    private static OptionalDouble balance(Machine machine) {
        OptionalDouble heat = Optionals.both(
                machine.refrigeratingCapacity(),
                refrigerantPower(machine),
                (cold, power) -> cold + power - machine.shellHeatLoss() - machine.oilCoolerHeat());
        if (heat.isPresent() && !(heat.getAsDouble() > 0)) {
            throw EngineException.of(
                    ErrorCode.CONTRADICTORY_INPUTS,
                    "Shell and oil cooler would give off all the heat: nothing is left for the condenser.",
                    machine.oilCoolerHeat() > 0 ? "oilCoolerHeat" : "shellHeatLoss",
                    machine.oilCoolerHeat() > 0 ? machine.oilCoolerHeat() : machine.shellHeatLoss(),
                    0,
                    Double.NaN);
        }
        return heat;
    }
}
