package io.loopstate.engine.coexistence;

import io.loopstate.engine.eos.MixtureModel;
import io.loopstate.engine.eos.MixturePhase;
import io.loopstate.engine.eos.MolarState;

/** Molar volume, enthalpy, entropy and internal energy of one phase, with derivatives in ln T and ln of the amounts. */
final class PhaseProperty {
    private PhaseProperty() {}

    static double value(SplitVariable variable, MolarState s) {
        return switch (variable) {
            case VOLUME -> 1 / s.density();
            case ENTHALPY -> s.enthalpy();
            case ENTROPY -> s.entropy();
            case INTERNAL_ENERGY -> s.internalEnergy();
            default -> throw new IllegalArgumentException(variable + " is no property of a phase");
        };
    }

    /** A typical size, for the scale of an equation. */
    static double scale(SplitVariable variable, MolarState s) {
        return switch (variable) {
            case VOLUME -> 1 / s.density();
            case ENTROPY -> MixtureModel.GAS_CONSTANT;
            default -> MixtureModel.GAS_CONSTANT * s.temperature();
        };
    }

    static double byLogTemperature(SplitVariable variable, MolarState s) {
        return switch (variable) {
            case ENTHALPY -> s.temperature() * s.enthalpyByTemperature();
            case ENTROPY -> s.isochoricHeatCapacity();
            case INTERNAL_ENERGY -> s.temperature() * s.isochoricHeatCapacity();
            default -> 0;
        };
    }

    /** From c = C / rho, where C is the property per volume: dc / d ln rho_j = x_j (dC/drho_j - c). */
    static double byLogAmount(SplitVariable variable, MixturePhase phase, MolarState s, int j) {
        double partial = switch (variable) {
            case ENTHALPY ->
                phase.internalEnergyByAmount(j)
                        + MixtureModel.GAS_CONSTANT
                                * s.temperature()
                                * phase.reducedPressureByLogAmount(j)
                                / (s.density() * phase.moleFraction(j));
            case ENTROPY -> phase.entropyByAmount(j);
            case INTERNAL_ENERGY -> phase.internalEnergyByAmount(j);
            default -> 0;
        };
        return phase.moleFraction(j) * (partial - value(variable, s));
    }
}
