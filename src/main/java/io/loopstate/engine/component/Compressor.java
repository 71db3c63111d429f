package io.loopstate.engine.component;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;

/**
 * Compression between two pressures, of dry or wet vapor.
 *
 * <p>Isentropic efficiency: work of the compression at constant entropy over the work put in. Source: definition, e.g. M. J.
 * Moran, H. N. Shapiro, Fundamentals of Engineering Thermodynamics, chapter 6 (from memory).
 */
public final class Compressor {
    private Compressor() {}

    /**
     * A compression, J/kg.
     *
     * @param inlet state at the inlet
     * @param isentropicOutlet at the outlet pressure with the entropy of the inlet
     * @param outlet state at the outlet
     * @param isentropicWork h2s - h1
     * @param work put into the refrigerant
     * @param heatLoss given off by the shell
     */
    public record Compression(
            State inlet, State isentropicOutlet, State outlet, double isentropicWork, double work, double heatLoss) {
        /** Isentropic over actual work: any number where readings are wrong, infinite without work. */
        public double isentropicEfficiency() {
            return isentropicWork / work;
        }
    }

    /**
     * Forward: the outlet from the efficiency.
     *
     * @param isentropicOutlet where the compression would end at constant entropy
     */
    public static Compression compress(
            Equilibrium equilibrium, State inlet, State isentropicOutlet, CompressorModel model) {
        double isentropicWork = isentropicOutlet.specificEnthalpy() - inlet.specificEnthalpy();
        double work = isentropicWork / model.effectiveEfficiency();
        double heatLoss = model.heatLossFraction() * work;
        // h2 = h1 + (h2s - h1) / eta - q_loss
        double enthalpy = inlet.specificEnthalpy() + work - heatLoss;
        State outlet = work == isentropicWork && heatLoss == 0
                ? isentropicOutlet
                : equilibrium.atPressureEnthalpy(isentropicOutlet.pressure(), enthalpy);
        return new Compression(inlet, isentropicOutlet, outlet, isentropicWork, work, heatLoss);
    }

    /**
     * Backward: work and efficiency from the measured outlet.
     *
     * @param heatLossFraction share of the work given off by the shell, 0 to below 1
     */
    public static Compression measure(Equilibrium equilibrium, State inlet, State outlet, double heatLossFraction) {
        State isentropic = isentropicOutlet(equilibrium, inlet, outlet.pressure());
        double isentropicWork = isentropic.specificEnthalpy() - inlet.specificEnthalpy();
        double work = (outlet.specificEnthalpy() - inlet.specificEnthalpy()) / (1 - heatLossFraction);
        return new Compression(inlet, isentropic, outlet, isentropicWork, work, heatLossFraction * work);
    }

    /**
     * The state at the outlet pressure with the entropy of the inlet.
     *
     * @param outletPressure Pa, above that of the inlet
     * @throws EngineException {@code CONTRADICTORY_INPUTS} if the pressure does not rise
     */
    public static State isentropicOutlet(Equilibrium equilibrium, State inlet, double outletPressure) {
        if (!(outletPressure > inlet.pressure())) {
            throw EngineException.of(
                    ErrorCode.CONTRADICTORY_INPUTS,
                    "A compressor raises the pressure: the discharge pressure is not above the suction pressure.",
                    Variable.PRESSURE,
                    outletPressure,
                    inlet.pressure(),
                    Double.NaN);
        }
        return equilibrium.atPressureEntropy(outletPressure, inlet.specificEntropy());
    }
}
