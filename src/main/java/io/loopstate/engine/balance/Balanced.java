package io.loopstate.engine.balance;

import io.loopstate.engine.air.MoistAir;
import io.loopstate.engine.compression.EnergyBalance;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.Point;
import io.loopstate.engine.cycle.SaturationTemperatures;
import io.loopstate.engine.rejection.CoilZone;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A machine in balance.
 *
 * @param points around the loop
 * @param evaporating temperatures
 * @param condensing temperatures
 * @param massFlow of refrigerant, kg/s
 * @param energy where heat comes from and goes to
 * @param compressor the compressor
 * @param condenser the condensing coil
 * @param evaporator the evaporating coil
 * @param system with its fans, where their power is given
 * @param findings what is unwise, implausible or assumed
 */
public record Balanced(
        List<Point> points,
        SaturationTemperatures evaporating,
        SaturationTemperatures condensing,
        double massFlow,
        EnergyBalance energy,
        CompressorFigures compressor,
        CondenserFigures condenser,
        EvaporatorFigures evaporator,
        Optional<SystemFigures> system,
        List<Finding> findings) {
    public Balanced {
        points = List.copyOf(points);
        findings = List.copyOf(findings);
    }

    Balanced with(List<Finding> found) {
        return new Balanced(
                points, evaporating, condensing, massFlow, energy, compressor, condenser, evaporator, system, found);
    }

    /** Heat rejected over heat taken up. */
    public double heatRejectionFactor() {
        return energy.heatRejected() / energy.refrigeratingCapacity();
    }

    /**
     * The compressor at the balance.
     *
     * @param pressureRatio absolute
     * @param shaftPower W; of a map as the power
     * @param volumetricEfficiency suction vapor drawn in over displacement; empty for a map
     * @param overallEfficiency isentropic over electrical power
     * @param dischargeTemperature K
     * @param current A, where a map tells it
     */
    public record CompressorFigures(
            double pressureRatio,
            double shaftPower,
            OptionalDouble volumetricEfficiency,
            double overallEfficiency,
            double dischargeTemperature,
            OptionalDouble current) {}

    /**
     * The condensing coil.
     *
     * @param zones in the direction of the refrigerant
     * @param areaLeftOver share that nothing needs, above zero where the outlet asked for sets the pressure
     * @param conductance W/K as it works, if all of it condensed
     * @param airMassFlow of dry air, kg/s
     * @param entering air
     * @param leaving mean of all air
     * @param condensingOverAmbient K, midpoint over entering air
     * @param approach K, midpoint over leaving air
     * @param pinch zone in which refrigerant and air come closest
     */
    public record CondenserFigures(
            List<CoilZone> zones,
            double areaLeftOver,
            double conductance,
            double airMassFlow,
            MoistAir entering,
            MoistAir leaving,
            double condensingOverAmbient,
            double approach,
            CoilZone pinch) {
        public CondenserFigures {
            zones = List.copyOf(zones);
        }
    }

    /**
     * The evaporating coil.
     *
     * @param boilingShare of the area
     * @param areaLeftOver share that nothing needs, above zero where the superheat asked for sets the pressure
     * @param conductance W/K as it works, if all of it boiled
     * @param airMassFlow of dry air, kg/s
     * @param entering air
     * @param leaving mean of all air
     * @param sensibleHeat W
     * @param latentHeat W
     * @param condensate kg/s
     * @param temperatureDifference K, entering air over midpoint
     * @param airflowPerTon m3/s as the air enters for each ton of refrigeration
     */
    public record EvaporatorFigures(
            double boilingShare,
            double areaLeftOver,
            double conductance,
            double airMassFlow,
            MoistAir entering,
            MoistAir leaving,
            double sensibleHeat,
            double latentHeat,
            double condensate,
            double temperatureDifference,
            double airflowPerTon) {
        /** Sensible over total heat. */
        public double sensibleHeatRatio() {
            return sensibleHeat / (sensibleHeat + latentHeat);
        }
    }
}
