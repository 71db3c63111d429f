package io.loopstate.engine.compression;

import io.loopstate.engine.compression.CompressorUnit.Running;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;

/**
 * Where the heat of a circuit comes from and goes to, W: refrigeratingCapacity + suctionLineHeatGain + electricalPower - heatLoss
 * = heatRejected, the left side summed, the right side from the states before and after the condenser.
 *
 * @param refrigeratingCapacity taken up in the evaporator
 * @param suctionLineHeatGain taken up between evaporator and compressor
 * @param electricalPower at the terminals
 * @param heatLoss of motor, drive and shell to the surroundings
 * @param heatRejected from discharge to liquid
 * @param residual left less right side, over the right
 * @param coefficientOfPerformance refrigerating capacity over electrical power
 */
public record EnergyBalance(
        double refrigeratingCapacity,
        double suctionLineHeatGain,
        double electricalPower,
        double heatLoss,
        double heatRejected,
        double residual,
        double coefficientOfPerformance) {

    static EnergyBalance of(Equilibrium equilibrium, Circuit circuit, State suction, Running running) {
        State liquid = circuit.liquidState(equilibrium, running.discharge().pressure());
        State outlet = circuit.evaporatorOutlet(equilibrium, suction);
        double flow = running.massFlow();
        double capacity = flow * (outlet.specificEnthalpy() - liquid.specificEnthalpy());
        double line = flow * (suction.specificEnthalpy() - outlet.specificEnthalpy());
        double rejected = flow * (running.discharge().specificEnthalpy() - liquid.specificEnthalpy());
        double power = running.electricalPower();
        return new EnergyBalance(
                capacity,
                line,
                power,
                running.heatLoss(),
                rejected,
                (capacity + line + power - running.heatLoss() - rejected) / rejected,
                capacity / power);
    }
}
