package io.loopstate.engine.rejection;

import io.loopstate.engine.component.CompressorKind;
import io.loopstate.engine.component.CompressorModel;
import io.loopstate.engine.component.HeatRejection;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.Require;
import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.cycle.Point;
import io.loopstate.engine.cycle.SaturationTemperatures;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.flash.Equilibrium;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The heat that a condenser or gas cooler has to give off: from the states of the refrigerant, from the balance of the machine,
 * or from both, which then check each other.
 */
public final class CondenserDuty {
    private CondenserDuty() {}

    /**
     * The duty of the condenser.
     *
     * @throws io.loopstate.engine.error.EngineException where inputs contradict each other or leave the range of the equation of
     *     state; it names the input: {@code condensing}, {@code condenserInletTemperature}, {@code condenserOutlet}, {@code
     *     evaporating}, {@code superheat}, or a figure of the machine by its component's name
     */
    public static Result calculate(Spec spec) {
        DutyStates states = DutyStates.of(spec);
        DutyFigures figures = DutyFigures.of(spec, states);
        return new Result(
                states.inlet(),
                states.outlet(),
                states.condensing(),
                states.parts(),
                figures.perMass(),
                figures.totals(),
                DutyFindings.of(spec, states, figures),
                spec.explain() ? DutyWorking.of(spec, states, figures) : List.of());
    }

    /**
     * What is known. Either the condensing side or capacity with compressor power is needed.
     *
     * @param equilibrium the refrigerant
     * @param condensing the condensing side, where known
     * @param machine flow, capacity and power, as far as known
     * @param guidance limits for the findings
     * @param explain whether the result shows its working
     */
    public record Spec(
            Equilibrium equilibrium,
            Optional<CondensingSide> condensing,
            Machine machine,
            Guidance guidance,
            boolean explain) {
        public Spec {
            Objects.requireNonNull(equilibrium);
            Objects.requireNonNull(condensing);
            Objects.requireNonNull(machine);
            Objects.requireNonNull(guidance);
        }
    }

    /**
     * What is known of the refrigerant in the condenser.
     *
     * @param level at the inlet; above the critical pressure the pressure of the gas cooler
     * @param inletTemperature K, where it was measured
     * @param compression that leads to the inlet, where it was not
     * @param outlet subcooling, temperature or quality; above the critical pressure the temperature
     */
    public record CondensingSide(
            SaturationLevel level,
            OptionalDouble inletTemperature,
            Optional<Compression> compression,
            OutletCondition outlet) {
        public CondensingSide {
            Objects.requireNonNull(level);
            Objects.requireNonNull(outlet);
            if (inletTemperature.isPresent() == compression.isPresent()) {
                throw new IllegalArgumentException("the inlet is known by its temperature or by a compression");
            }
        }
    }

    /**
     * How the vapor comes to the condenser.
     *
     * @param evaporating level of the evaporator
     * @param suction superheat, temperature or quality of the vapor drawn in, which is taken as that leaving the evaporator
     * @param model of the compressor
     */
    public record Compression(SaturationLevel evaporating, OutletCondition suction, CompressorModel model) {
        public Compression {
            Objects.requireNonNull(evaporating);
            Objects.requireNonNull(suction);
            Objects.requireNonNull(model);
        }
    }

    /**
     * Flow, capacity and power.
     *
     * @param kind where the motor gives off its heat
     * @param massFlow of refrigerant, kg/s
     * @param refrigeratingCapacity W
     * @param compressorPower W: electrical of a hermetic compressor; at the shaft of an open one, electrical if a motor
     *     efficiency is given
     * @param motorEfficiency shaft over electrical power
     * @param shellHeatLoss W given off by the compressor's shell
     * @param oilCoolerHeat W given off by an oil cooler
     */
    public record Machine(
            CompressorKind kind,
            OptionalDouble massFlow,
            OptionalDouble refrigeratingCapacity,
            OptionalDouble compressorPower,
            OptionalDouble motorEfficiency,
            double shellHeatLoss,
            double oilCoolerHeat) {
        public Machine {
            Objects.requireNonNull(kind);
            Require.positive("massFlow", massFlow);
            Require.positive("refrigeratingCapacity", refrigeratingCapacity);
            Require.positive("compressorPower", compressorPower);
            Require.efficiency("motorEfficiency", motorEfficiency);
            Require.notNegative("shellHeatLoss", shellHeatLoss);
            Require.notNegative("oilCoolerHeat", oilCoolerHeat);
        }
    }

    /**
     * Per kilogram of refrigerant, J/kg.
     *
     * @param heatRejection given off in the condenser
     * @param refrigeratingEffect taken up in the evaporator, where the compression is known
     * @param compressorWork put into the refrigerant, likewise
     */
    public record PerMass(double heatRejection, OptionalDouble refrigeratingEffect, OptionalDouble compressorWork) {}

    /**
     * In all. Where states and flow are known the heat follows from them, else from the balance of the machine.
     *
     * @param massFlow of refrigerant, kg/s
     * @param refrigeratingCapacity W
     * @param refrigerantPower W that the compressor puts into the refrigerant before shell and oil cooler take from it
     * @param heatRejected W given off in the condenser
     * @param parts the same by what the refrigerant does
     * @param oilCoolerHeat W
     * @param shellHeatLoss W
     * @param heatRejectionFactor condenser over evaporator
     * @param machineFactor condenser and oil cooler over evaporator
     * @param balanceHeat W in the condenser by the balance of the machine, where capacity and power were both given
     * @param balanceDifference between the two ways to the heat, as a share of the first
     */
    public record Totals(
            OptionalDouble massFlow,
            OptionalDouble refrigeratingCapacity,
            OptionalDouble refrigerantPower,
            OptionalDouble heatRejected,
            Optional<HeatRejection> parts,
            double oilCoolerHeat,
            double shellHeatLoss,
            OptionalDouble heatRejectionFactor,
            OptionalDouble machineFactor,
            OptionalDouble balanceHeat,
            OptionalDouble balanceDifference) {}

    /**
     * The duty.
     *
     * @param inlet of the condenser, where its side is known
     * @param outlet likewise
     * @param condensing temperatures; empty above the critical pressure
     * @param parts heat per kilogram by what the refrigerant does, J/kg
     * @param perMass per kilogram, where states are known
     * @param totals in all
     * @param findings what is unwise or worth knowing
     * @param steps the working; empty unless asked for
     */
    public record Result(
            Optional<Point> inlet,
            Optional<Point> outlet,
            Optional<SaturationTemperatures> condensing,
            Optional<HeatRejection> parts,
            Optional<PerMass> perMass,
            Totals totals,
            List<Finding> findings,
            List<Step> steps) {
        public Result {
            findings = List.copyOf(findings);
            steps = List.copyOf(steps);
        }
    }
}
