package io.loopstate.engine.flash;

import io.loopstate.engine.coexistence.SplitVariable;
import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.error.Variable;

/** Enthalpy, entropy or internal energy as an input, with its derivatives. */
enum Caloric {
    ENTHALPY(Variable.SPECIFIC_ENTHALPY, SplitVariable.ENTHALPY) {
        @Override
        double of(MolarState s) {
            return s.enthalpy();
        }

        @Override
        double byTemperature(MolarState s) {
            return s.isochoricHeatCapacity() + s.pressureByTemperature() / s.density();
        }

        @Override
        double byDensity(MolarState s) {
            return (s.pressureByDensity() - s.temperature() * s.pressureByTemperature() / s.density()) / s.density();
        }
    },
    ENTROPY(Variable.SPECIFIC_ENTROPY, SplitVariable.ENTROPY) {
        @Override
        double of(MolarState s) {
            return s.entropy();
        }

        @Override
        double byTemperature(MolarState s) {
            return s.isochoricHeatCapacity() / s.temperature();
        }

        @Override
        double byDensity(MolarState s) {
            return -s.pressureByTemperature() / (s.density() * s.density());
        }
    },
    INTERNAL_ENERGY(Variable.SPECIFIC_INTERNAL_ENERGY, SplitVariable.INTERNAL_ENERGY) {
        @Override
        double of(MolarState s) {
            return s.internalEnergy();
        }

        @Override
        double byTemperature(MolarState s) {
            return s.isochoricHeatCapacity();
        }

        @Override
        double byDensity(MolarState s) {
            return (s.pressure() - s.temperature() * s.pressureByTemperature()) / (s.density() * s.density());
        }
    };

    private final Variable variable;

    private final SplitVariable splitVariable;

    Caloric(Variable variable, SplitVariable splitVariable) {
        this.variable = variable;
        this.splitVariable = splitVariable;
    }

    SplitVariable splitVariable() {
        return splitVariable;
    }

    Variable variable() {
        return variable;
    }

    /** J/mol, or J/(mol K) for the entropy. */
    abstract double of(MolarState state);

    /** Derivative with temperature at constant density. */
    abstract double byTemperature(MolarState state);

    /** Derivative with density at constant temperature. */
    abstract double byDensity(MolarState state);

    /** Derivative with temperature at constant pressure. */
    double byTemperatureAtPressure(MolarState s) {
        return byTemperature(s) - byDensity(s) * s.pressureByTemperature() / s.pressureByDensity();
    }

    /** Size against which a residual is small: R T, or R for the entropy. */
    double scale(MolarState s, double gasConstant) {
        return this == ENTROPY ? gasConstant : gasConstant * s.temperature();
    }

    double of(Point point) {
        if (point instanceof Point.TwoPhase both) {
            return both.mix(of(both.liquid()), of(both.vapor()));
        }
        return of(((Point.OnePhase) point).state());
    }
}
