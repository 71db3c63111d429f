package io.loopstate.engine.rejection;

import io.loopstate.engine.cycle.Inputs;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.property.State;

/** The liquid on the other side of a coil: water by its equation of state, or a brine of constant properties. */
interface SideLiquid {
    /**
     * A state of it.
     *
     * @param temperature K
     * @param specificEnthalpy J/kg, from any datum
     * @param density kg/m3
     */
    record At(double temperature, double specificEnthalpy, double density) {}

    /** The state at a temperature (K) that an input states. */
    At at(String input, double temperature);

    /** The state of an enthalpy (J/kg) that follows from the heat. */
    At withHeat(double specificEnthalpy);

    static SideLiquid of(WaterSide.Spec spec) {
        return spec.brine().isPresent() ? new OfBrine(spec.brine().get()) : new OfWater(spec.water(), spec.pressure());
    }

    /** A brine: density and heat capacity stay as given. */
    record OfBrine(Brine brine) implements SideLiquid {
        private static final double DATUM = 273.15;

        @Override
        public At at(String input, double temperature) {
            return new At(temperature, brine.heatCapacity() * (temperature - DATUM), brine.density());
        }

        @Override
        public At withHeat(double specificEnthalpy) {
            double temperature = DATUM + specificEnthalpy / brine.heatCapacity();
            if (!(temperature > 0)) {
                throw EngineException.of(
                                ErrorCode.CONTRADICTORY_INPUTS,
                                "So much heat would cool so little brine below zero kelvin.")
                        .about("heat");
            }
            return new At(temperature, specificEnthalpy, brine.density());
        }
    }

    /** Water at a pressure, Pa. */
    record OfWater(Equilibrium water, double pressure) implements SideLiquid {
        @Override
        public At at(String input, double temperature) {
            State state = Inputs.trace(input, () -> water.atPressureTemperature(pressure, temperature));
            if (state.phase() != Phase.LIQUID) {
                throw EngineException.of(
                                ErrorCode.CONTRADICTORY_INPUTS,
                                "Water boils below this temperature at its pressure.",
                                Variable.TEMPERATURE,
                                temperature,
                                Double.NaN,
                                water.saturationAtPressure(pressure).bubble().temperature())
                        .about(input);
            }
            return of(state);
        }

        @Override
        public At withHeat(double specificEnthalpy) {
            try {
                State state = water.atPressureEnthalpy(pressure, specificEnthalpy);
                if (state.phase() == Phase.LIQUID) {
                    return of(state);
                }
            } catch (EngineException frozen) {
                if (frozen.code() == ErrorCode.NOT_CONVERGED) {
                    throw frozen;
                }
            }
            throw EngineException.of(
                            ErrorCode.CONTRADICTORY_INPUTS, "So much heat would make so little water boil or freeze.")
                    .about("heat");
        }

        private static At of(State state) {
            return new At(state.temperature(), state.specificEnthalpy(), state.density());
        }
    }
}
