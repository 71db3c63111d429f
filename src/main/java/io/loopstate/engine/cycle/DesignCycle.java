package io.loopstate.engine.cycle;

import io.loopstate.engine.component.CompressorModel;
import io.loopstate.engine.component.HeatRejection;
import io.loopstate.engine.component.LineLosses;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.flash.Equilibrium;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/** The single-stage vapor-compression cycle from design conditions, below or across the critical point. */
public final class DesignCycle {
    private DesignCycle() {}

    /**
     * The cycle of the design conditions.
     *
     * @throws io.loopstate.engine.error.EngineException where the conditions contradict each other or leave the range of
     *     the equation of state; it names the input: {@code evaporating}, {@code condensing}, {@code evaporatorOutlet},
     *     {@code condenserOutlet}, {@code gasCoolerOutletTemperature}, {@code isentropicEfficiency}, a loss by its
     *     component's name, or the way the suction line's gain is given
     */
    public static Result calculate(Spec spec) {
        DesignStates states = DesignStates.of(spec);
        Performance performance = DesignPerformance.of(states);
        Optional<Sizing> sizing =
                spec.size().map(size -> DesignPerformance.sizing(states, performance, spec.compressor(), size));
        return new Result(
                states.points(),
                states.evaporating(),
                states.condensing(),
                performance,
                sizing,
                DesignFindings.of(spec, states, performance),
                spec.explain() ? DesignWorking.of(spec, states, performance, sizing) : List.of());
    }

    /**
     * Design conditions.
     *
     * @param equilibrium the refrigerant
     * @param evaporating level at the outlet of the evaporator
     * @param condensing level at the inlet of the condenser; above the critical pressure the pressure of the gas cooler
     * @param evaporatorOutlet superheat, temperature or vapor quality at the outlet of the evaporator; what lies above
     *     the dew point here is useful superheat
     * @param condenserOutlet subcooling, temperature or vapor quality at the outlet of the condenser; above the critical
     *     pressure the temperature
     * @param compressor what is known of the compressor
     * @param losses pressure drops and line heat
     * @param size what fixes the size of the machine
     * @param atmosphericPressure Pa, to tell a vacuum
     * @param guidance limits for the findings
     * @param explain whether the result shows its working
     */
    public record Spec(
            Equilibrium equilibrium,
            SaturationLevel evaporating,
            SaturationLevel condensing,
            OutletCondition evaporatorOutlet,
            OutletCondition condenserOutlet,
            CompressorModel compressor,
            LineLosses losses,
            Optional<Size> size,
            double atmosphericPressure,
            Guidance guidance,
            boolean explain) {
        public Spec {
            Objects.requireNonNull(equilibrium);
            Objects.requireNonNull(evaporating);
            Objects.requireNonNull(condensing);
            Objects.requireNonNull(evaporatorOutlet);
            Objects.requireNonNull(condenserOutlet);
            Objects.requireNonNull(compressor);
            Objects.requireNonNull(losses);
            Objects.requireNonNull(size);
            Objects.requireNonNull(guidance);
        }
    }

    /**
     * Everything that follows from the design conditions.
     *
     * @param points the states around the loop in the direction of flow, then the isentropic compressor outlet
     * @param evaporating temperatures at the pressure of the evaporator's outlet
     * @param condensing temperatures at the pressure of the condenser's inlet; empty above the critical pressure
     * @param performance per kilogram and without dimension
     * @param sizing the flows and powers, where a size was given
     * @param findings what is unwise or worth knowing
     * @param steps the working, in order; empty unless asked for
     */
    public record Result(
            List<Point> points,
            SaturationTemperatures evaporating,
            Optional<SaturationTemperatures> condensing,
            Performance performance,
            Optional<Sizing> sizing,
            List<Finding> findings,
            List<Step> steps) {
        public Result {
            points = List.copyOf(points);
            findings = List.copyOf(findings);
            steps = List.copyOf(steps);
        }

        /** The point of a name; throws if the cycle has none of it. */
        public Point point(PointName name) {
            return points.stream()
                    .filter(point -> point.name() == name)
                    .findFirst()
                    .orElseThrow();
        }
    }

    /**
     * The cycle per kilogram of refrigerant.
     *
     * @param pressureRatio absolute discharge over suction pressure at the compressor
     * @param isentropicWork J/kg
     * @param compressorWork J/kg put into the refrigerant; of a hermetic compressor with a known motor the electrical input
     * @param compressorHeatLoss J/kg given off by the compressor's shell
     * @param refrigeratingEffect J/kg taken up in the evaporator
     * @param suctionLineHeatGain J/kg
     * @param dischargeLineHeatLoss J/kg
     * @param liquidLineHeatGain J/kg
     * @param heatRejectionPerMass J/kg given off in the condenser or gas cooler
     * @param heatRejection the same by what the refrigerant does there
     * @param heatRejectionFactor heat rejected over heat taken up
     * @param coefficientOfPerformance refrigerating effect over compressor work
     * @param heatingCoefficientOfPerformance heat rejected over compressor work
     * @param energyEfficiencyRatio the coefficient of performance in Btu/h per W
     * @param powerPerTon W per ton of refrigeration
     * @param carnotCoefficientOfPerformance Te / (Tc - Te) between the midpoint temperatures; above the critical pressure
     *     with the temperature at the outlet of the gas cooler for Tc; empty where that is not above Te
     * @param carnotShare coefficient of performance over that of Carnot
     * @param dischargeTemperature K at the compressor's outlet
     * @param volumetricCapacity J per m3 of vapor drawn in by the compressor
     * @param valveInletQuality kg/kg, where vapor reaches the valve
     * @param evaporatorInletQuality kg/kg, where the valve ends inside the dome
     */
    public record Performance(
            double pressureRatio,
            double isentropicWork,
            double compressorWork,
            double compressorHeatLoss,
            double refrigeratingEffect,
            double suctionLineHeatGain,
            double dischargeLineHeatLoss,
            double liquidLineHeatGain,
            double heatRejectionPerMass,
            HeatRejection heatRejection,
            double heatRejectionFactor,
            double coefficientOfPerformance,
            double heatingCoefficientOfPerformance,
            double energyEfficiencyRatio,
            double powerPerTon,
            OptionalDouble carnotCoefficientOfPerformance,
            OptionalDouble carnotShare,
            double dischargeTemperature,
            double volumetricCapacity,
            OptionalDouble valveInletQuality,
            OptionalDouble evaporatorInletQuality) {}

    /**
     * The cycle of a machine of given size.
     *
     * @param massFlow kg/s
     * @param refrigeratingCapacity W taken up in the evaporator
     * @param compressorPower W put into the refrigerant
     * @param electricalPower W, where the motor is known or cooled by the refrigerant
     * @param heatRejected W given off in the condenser or gas cooler
     * @param suctionVolumeFlow m3/s drawn in
     * @param displacement m3/s swept, where the volumetric efficiency or the displacement was given
     */
    public record Sizing(
            double massFlow,
            double refrigeratingCapacity,
            double compressorPower,
            OptionalDouble electricalPower,
            double heatRejected,
            double suctionVolumeFlow,
            OptionalDouble displacement) {}
}
