package io.loopstate.engine.balance;

import io.loopstate.engine.cycle.RememberingEquilibrium;
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
import java.util.function.Supplier;

/**
 * An equilibrium that computes each state once: compressor, coils and checks of a balance ask for the same ones. Lives for one
 * calculation in one thread.
 */
final class LoopEquilibrium implements Equilibrium {
    private enum Pair {
        TEMPERATURE,
        ENTHALPY,
        ENTROPY
    }

    private record Key(Pair pair, double pressure, double value) {}

    private final Equilibrium equilibrium;
    private final Map<Key, State> states = new HashMap<>();

    LoopEquilibrium(Equilibrium equilibrium) {
        this.equilibrium = new RememberingEquilibrium(equilibrium);
    }

    private State remember(Pair pair, double pressure, double value, Supplier<State> state) {
        return states.computeIfAbsent(new Key(pair, pressure, value), key -> state.get());
    }

    @Override
    public State atPressureTemperature(double pressure, double temperature) {
        return remember(
                Pair.TEMPERATURE,
                pressure,
                temperature,
                () -> equilibrium.atPressureTemperature(pressure, temperature));
    }

    @Override
    public State atPressureEnthalpy(double pressure, double specificEnthalpy) {
        return remember(
                Pair.ENTHALPY,
                pressure,
                specificEnthalpy,
                () -> equilibrium.atPressureEnthalpy(pressure, specificEnthalpy));
    }

    @Override
    public State atPressureEntropy(double pressure, double specificEntropy) {
        return remember(
                Pair.ENTROPY,
                pressure,
                specificEntropy,
                () -> equilibrium.atPressureEntropy(pressure, specificEntropy));
    }

    @Override
    public Saturation saturationAtPressure(double pressure) {
        return equilibrium.saturationAtPressure(pressure);
    }

    @Override
    public Saturation saturationAtTemperature(double temperature) {
        return equilibrium.saturationAtTemperature(temperature);
    }

    @Override
    public State state(Variable first, double firstValue, Variable second, double secondValue, Optional<Phase> phase) {
        return equilibrium.state(first, firstValue, second, secondValue, phase);
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
    public List<Double> incipientPhase(Variable given, double value, boolean bubble) {
        return equilibrium.incipientPhase(given, value, bubble);
    }
}
