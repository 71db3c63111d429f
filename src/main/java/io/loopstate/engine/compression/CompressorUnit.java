package io.loopstate.engine.compression;

import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;

/**
 * A compressor of given size that can be asked what it does between a suction state and a discharge pressure. Immutable and
 * cheap: a few flashes, no working, no findings, so that a balance of a whole machine can ask it in an iteration.
 */
public interface CompressorUnit {
    /**
     * What it does, running steadily.
     *
     * @param equilibrium the refrigerant
     * @param suction state at the suction port
     * @param dischargePressure Pa, above that of the suction
     * @throws io.loopstate.engine.error.EngineException where it cannot run between the two; it names the input of the model
     */
    Running run(Equilibrium equilibrium, State suction, double dischargePressure);

    /**
     * A running compressor. Enthalpy flow out = enthalpy flow in + electricalPower - heatLoss.
     *
     * @param massFlow kg/s
     * @param shaftPower W at the compressor's shaft
     * @param electricalPower W at the terminals
     * @param discharge state at the discharge port
     * @param heatLoss W of the electrical power that does not end up in the refrigerant, wherever it is lost
     */
    record Running(double massFlow, double shaftPower, double electricalPower, State discharge, double heatLoss) {}
}
