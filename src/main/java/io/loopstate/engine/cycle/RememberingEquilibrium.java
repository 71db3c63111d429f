package io.loopstate.engine.cycle;

import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.fluid.ReferenceState;
import io.loopstate.engine.fluid.Refrigerant;
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.property.State;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An equilibrium that computes the saturation and every state at a pressure once: a calculation asks for the same few many
 * times, and for a blend each costs a whole iteration. Lives for one calculation in one thread.
 */
public final class RememberingEquilibrium implements Equilibrium {
    private record Key(Variable variable, double pressure, double value) {}

    private final Equilibrium equilibrium;
    private final Map<Double, Saturation> saturations = new HashMap<>();
    private final Map<Key, State> states = new HashMap<>();

    /** In front of an equilibrium. */
    public RememberingEquilibrium(Equilibrium equilibrium) {
        this.equilibrium = equilibrium;
    }

    @Override
    public Saturation saturationAtPressure(double pressure) {
        return saturations.computeIfAbsent(pressure, equilibrium::saturationAtPressure);
    }

    @Override
    public Refrigerant refrigerant() {
        return equilibrium.refrigerant();
    }

    @Override
    public ReferenceState referenceState() {
        return equilibrium.referenceState();
    }

    @Override
    public State state(Variable first, double firstValue, Variable second, double secondValue, Optional<Phase> phase) {
        return equilibrium.state(first, firstValue, second, secondValue, phase);
    }

    @Override
    public State atPressureTemperature(double pressure, double temperature) {
        return states.computeIfAbsent(
                new Key(Variable.TEMPERATURE, pressure, temperature),
                key -> equilibrium.atPressureTemperature(pressure, temperature));
    }

    @Override
    public State atPressureEnthalpy(double pressure, double specificEnthalpy) {
        return states.computeIfAbsent(
                new Key(Variable.SPECIFIC_ENTHALPY, pressure, specificEnthalpy),
                key -> equilibrium.atPressureEnthalpy(pressure, specificEnthalpy));
    }

    @Override
    public State atPressureEntropy(double pressure, double specificEntropy) {
        return states.computeIfAbsent(
                new Key(Variable.SPECIFIC_ENTROPY, pressure, specificEntropy),
                key -> equilibrium.atPressureEntropy(pressure, specificEntropy));
    }

    @Override
    public List<Double> incipientPhase(Variable given, double value, boolean bubble) {
        return equilibrium.incipientPhase(given, value, bubble);
    }

    @Override
    public Saturation saturationAtTemperature(double temperature) {
        Saturation saturation = equilibrium.saturationAtTemperature(temperature);
        if (saturation.pressureGlide() == 0) {
            // without glide it is the saturation at its pressure too
            saturations.putIfAbsent(saturation.dew().pressure(), saturation);
        }
        return saturation;
    }
}
