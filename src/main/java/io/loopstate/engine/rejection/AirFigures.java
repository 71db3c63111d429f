package io.loopstate.engine.rejection;

import io.loopstate.engine.air.AirState;
import io.loopstate.engine.cycle.Constants;
import io.loopstate.engine.rejection.AirSide.Coil;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The flows and heats of the air of a coil.
 *
 * @param massFlow of dry air, kg/s
 * @param enteringVolumeFlow m3/s as the air enters
 * @param leavingVolumeFlow m3/s as the air leaves
 * @param standardVolumeFlow m3/s of standard air of the same mass, 0.075 lb/ft3
 * @param heat W that the coil exchanges with the air
 * @param sensibleHeat W of the air between the readings, fan included
 * @param latentHeat W of the water that leaves the air, less what the condensate carries away
 * @param sensibleHeatRatio sensible over both
 * @param condensate kg/s
 * @param fanHeat W
 * @param temperatureChange K between the readings, without sign: the split of the air
 * @param enteringFactors for the flow as it enters
 * @param standardFactors for a flow of standard air
 * @param airflowPerTon m3/s as the air enters for each ton of refrigeration of heat
 * @param refrigerant against the refrigerant, where its temperature is known
 */
public record AirFigures(
        double massFlow,
        double enteringVolumeFlow,
        double leavingVolumeFlow,
        double standardVolumeFlow,
        double heat,
        double sensibleHeat,
        double latentHeat,
        double sensibleHeatRatio,
        double condensate,
        double fanHeat,
        double temperatureChange,
        AirFactors enteringFactors,
        AirFactors standardFactors,
        double airflowPerTon,
        Optional<Refrigerant> refrigerant) {
    /**
     * Against the temperature of the refrigerant.
     *
     * @param temperature K
     * @param enteringDifference K to the entering air: condensing over ambient, or the evaporator's temperature difference
     * @param approach K to the leaving air, negative where the temperatures cross
     * @param effectiveness share of the way to the refrigerant's temperature that the air goes
     * @param meanDifference logarithmic mean, K; empty where the temperatures cross
     * @param conductance W/K; empty likewise
     */
    public record Refrigerant(
            double temperature,
            double enteringDifference,
            double approach,
            double effectiveness,
            OptionalDouble meanDifference,
            OptionalDouble conductance) {
        /** From the differences at both ends, K, and the heat, W. */
        static Refrigerant of(double temperature, double entering, double leaving, double heat) {
            OptionalDouble mean = LogMean.of(entering, leaving);
            return new Refrigerant(
                    temperature,
                    entering,
                    leaving,
                    (entering - leaving) / entering,
                    mean,
                    mean.isPresent() ? OptionalDouble.of(heat / mean.getAsDouble()) : mean);
        }
    }

    static AirFigures of(AirSide.Spec spec, AirBalance balance) {
        AirState entering = balance.entering();
        AirState leaving = balance.leaving();
        double flow = balance.massFlow();
        boolean heating = spec.coil() == Coil.CONDENSER;
        double change = Math.abs(leaving.dryBulb() - entering.dryBulb());
        // The water that stays has its share in the sensible heat, so that both parts add up exactly.
        double sensible = flow * leaving.heatCapacity() * change;
        double latent = heating ? 0 : flow * AirBalance.heatPerMass(spec.coil(), entering, leaving) - sensible;
        return new AirFigures(
                flow,
                flow * entering.specificVolume(),
                flow * leaving.specificVolume(),
                flow / AirBalance.STANDARD_DENSITY,
                balance.heat(),
                sensible,
                latent,
                sensible / (sensible + latent),
                heating ? 0 : flow * (entering.humidityRatio() - leaving.humidityRatio()),
                spec.fanPower(),
                change,
                AirFactors.of(entering, leaving.dryBulb()),
                AirFactors.of(entering, AirBalance.STANDARD_DENSITY, leaving.dryBulb()),
                flow * entering.specificVolume() / balance.heat() * Constants.WATT_PER_TON,
                spec.saturationTemperature().isPresent() ? Optional.of(refrigerant(spec, balance)) : Optional.empty());
    }

    private static Refrigerant refrigerant(AirSide.Spec spec, AirBalance balance) {
        double temperature = spec.saturationTemperature().orElseThrow();
        int sign = spec.coil() == Coil.CONDENSER ? 1 : -1;
        double entering = sign * (temperature - balance.entering().dryBulb());
        double leaving = sign * (temperature - balance.leaving().dryBulb());
        return Refrigerant.of(temperature, entering, leaving, balance.heat());
    }
}
