package io.loopstate.engine.flash;

import io.loopstate.engine.coexistence.SplitVariable;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.EngineException.Candidate;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.fluid.ReferenceState;
import io.loopstate.engine.fluid.Refrigerant;
import io.loopstate.engine.numerics.Deadline;
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.property.State;
import java.util.List;
import java.util.Optional;

/** Equilibrium of a pure or pseudo-pure fluid. */
final class FluidEquilibrium implements Equilibrium {
    private final FluidModel fluid;
    private final ReferenceState reference;
    private final PairFlash pairs;

    FluidEquilibrium(FluidModel fluid, ReferenceState reference) {
        this.fluid = fluid;
        this.reference = reference;
        this.pairs = new PairFlash(fluid);
    }

    @Override
    public Refrigerant refrigerant() {
        return fluid.fluid();
    }

    @Override
    public ReferenceState referenceState() {
        return reference;
    }

    @Override
    public State state(Variable first, double firstValue, Variable second, double secondValue, Optional<Phase> phase) {
        Deadline.check();
        List<Point> points = pairs.solve(first, firstValue, second, secondValue);
        List<Point> wanted = phase.isEmpty()
                ? points
                : points.stream().filter(p -> p.phase() == phase.get()).toList();
        if (wanted.size() == 1) {
            return StateAssembler.state(fluid, wanted.get(0));
        }
        throw refusal(first, second, points, wanted, phase);
    }

    private EngineException refusal(
            Variable first, Variable second, List<Point> points, List<Point> wanted, Optional<Phase> phase) {
        String pair = first.words() + " and " + second.words();
        if (points.isEmpty()) {
            return fluid.noSuchState(first, second);
        }
        List<Candidate> candidates = points.stream().map(this::candidate).toList();
        if (wanted.isEmpty()) {
            return EngineException.of(
                    ErrorCode.NOT_IN_PHASE, "this " + pair + " has no state in the phase " + phase.get(), candidates);
        }
        return EngineException.of(
                ErrorCode.AMBIGUOUS_STATE, "this " + pair + " has " + wanted.size() + " states", candidates);
    }

    private Candidate candidate(Point p) {
        return new Candidate(
                p.phase().name(),
                p.temperature(),
                p.pressure(),
                p.density() * fluid.fluid().molarMass());
    }

    @Override
    public State atPressureTemperature(double pressure, double temperature) {
        Deadline.check();
        return StateAssembler.state(fluid, PressureTemperature.solve(fluid, pressure, temperature));
    }

    @Override
    public State atPressureEnthalpy(double pressure, double specificEnthalpy) {
        return atPressure(pressure, Caloric.ENTHALPY, specificEnthalpy);
    }

    @Override
    public State atPressureEntropy(double pressure, double specificEntropy) {
        return atPressure(pressure, Caloric.ENTROPY, specificEntropy);
    }

    private State atPressure(double pressure, Caloric caloric, double value) {
        Deadline.check();
        return StateAssembler.state(
                fluid,
                PressureCaloric.solve(
                        fluid, pressure, caloric, value * fluid.fluid().molarMass()));
    }

    @Override
    public Saturation saturationAtTemperature(double temperature) {
        return saturation(pairs.edgesAtTemperature(temperature));
    }

    @Override
    public Saturation saturationAtPressure(double pressure) {
        return saturation(pairs.edgesAtPressure(pressure));
    }

    @Override
    public List<Double> incipientPhase(Variable given, double value, boolean bubble) {
        boolean isotherm = given == Variable.TEMPERATURE;
        // refuses what has no saturation
        Dome.Edges edges = isotherm ? pairs.edgesAtTemperature(value) : pairs.edgesAtPressure(value);
        return isotherm
                ? fluid.dome().incipient(SplitVariable.TEMPERATURE, edges.bubbleTemperature(), bubble)
                : fluid.dome().incipient(SplitVariable.PRESSURE, edges.bubblePressure(), bubble);
    }

    private Saturation saturation(Dome.Edges edges) {
        Deadline.check();
        return new Saturation(
                StateAssembler.state(fluid, Saturated.bubble(fluid, edges)),
                StateAssembler.state(fluid, Saturated.dew(fluid, edges)));
    }
}
