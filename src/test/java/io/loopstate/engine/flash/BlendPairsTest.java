package io.loopstate.engine.flash;

import static org.assertj.core.api.Assertions.assertThat;

import io.loopstate.engine.coexistence.PhaseBoundary;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.fluid.Blend;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.property.State;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A state of a blend goes in through every pair of its own properties and comes back; the pairs of everyday work are looked at
 * more closely by {@link BlendRoundTripTest}. Where several states fit, one of those told has to be the one that went in.
 */
class BlendPairsTest {
    private static final int TEMPERATURES = 4;
    private static final double[] QUALITIES = {0, 0.1, 0.5, 0.9, 1};
    private static final double LOWEST = 200;
    private static final double CLOSEST = 0.99;
    private static final double SAME_TEMPERATURE = 1e-7;
    private static final double SAME_DENSITY = 1e-6;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "R-404A", "R-407C", "R-410A", "R-448A", "R-449A", "R-450A", "R-452B", "R-454A", "R-454B", "R-454C",
                "R-455A", "R-507A", "R-513A", "R-515B"
            })
    void everyPairReturnsTheState(String designation) {
        Blend blend = (Blend) Catalog.bundled().refrigerant(designation).orElseThrow();
        Equilibrium equilibrium = new Equilibria().of(blend, Equilibria.defaultReference(blend));
        List<State> states = states(blend, equilibrium);
        List<String> failures = new ArrayList<>();
        int refused = 0;
        for (int i = 0; i < StateInputs.VARIABLES.size(); i++) {
            for (int j = i + 1; j < StateInputs.VARIABLES.size(); j++) {
                Variable a = StateInputs.VARIABLES.get(i);
                Variable b = StateInputs.VARIABLES.get(j);
                for (int k = 0; k < states.size(); k++) {
                    if (StateInputs.fixed(states.get(k), a, b)) {
                        refused += check(equilibrium, states.get(k), a, b, failures) ? 0 : 1;
                    }
                }
            }
        }
        assertThat(states).hasSize(TEMPERATURES * (QUALITIES.length + 2));
        assertThat(failures).isEmpty();
        assertThat(refused)
                .as("refused, since another state that fits lies at the critical point")
                .isLessThanOrEqualTo(2);
    }

    private static List<State> states(Blend blend, Equilibrium equilibrium) {
        PhaseBoundary boundary = ((BlendDome) FluidModels.of(blend).dome()).boundary();
        double lowest = Math.max(LOWEST, blend.minSaturationTemperature());
        double highest = CLOSEST * blend.criticalPoint().temperature();
        List<State> states = new ArrayList<>();
        for (int i = 0; i < TEMPERATURES; i++) {
            double t = lowest + (highest - lowest) * i / (TEMPERATURES - 1);
            for (double quality : QUALITIES) {
                states.add(equilibrium.state(Variable.TEMPERATURE, t, Variable.VAPOR_QUALITY, quality));
            }
            double bubble = boundary.atTemperature(t, true).pressure();
            double dew = boundary.atTemperature(t, false).pressure();
            states.add(equilibrium.state(Variable.TEMPERATURE, t, Variable.PRESSURE, 1.5 * bubble));
            states.add(equilibrium.state(Variable.TEMPERATURE, t, Variable.PRESSURE, 0.5 * dew));
        }
        return states;
    }

    /** False where the pair was refused since one of its states lies too close to the critical point. */
    private static boolean check(Equilibrium equilibrium, State state, Variable a, Variable b, List<String> failures) {
        String what = a + " and " + b + " at " + state.temperature() + " K, " + state.pressure() + " Pa, quality "
                + state.vaporQuality() + ": ";
        try {
            State found = equilibrium.state(a, StateInputs.value(state, a), b, StateInputs.value(state, b));
            if (!same(state, found.temperature(), found.density())) {
                failures.add(what + found);
            }
        } catch (EngineException e) {
            if (e.code() == ErrorCode.TWO_PHASE_UNDEFINED && e.getMessage().contains("close to the critical point")) {
                return false;
            }
            boolean told = e.code() == ErrorCode.AMBIGUOUS_STATE
                    && e.candidates().stream().anyMatch(c -> same(state, c.temperature(), c.density()));
            if (!told) {
                failures.add(what + e.code() + " " + e.getMessage());
            }
        }
        return true;
    }

    private static boolean same(State state, double temperature, double density) {
        return Math.abs(temperature / state.temperature() - 1) <= SAME_TEMPERATURE
                && Math.abs(density / state.density() - 1) <= SAME_DENSITY;
    }
}
