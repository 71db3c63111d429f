package io.loopstate.engine.flash;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.Refrigerant;
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.property.State;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A state goes in through every pair of its own properties and comes back.
 *
 * <p>Bounds: 1e-8 in temperature and 1e-7 in density, or, where a pair does not fix the state so well, what the rounding of
 * the inputs and of the equation allows (enthalpy with internal energy in a thin gas, entropy with internal energy in a cold
 * liquid).
 */
class RoundTripTest {
    private static final double TEMPERATURE_BOUND = 1e-8;
    private static final double DENSITY_BOUND = 1e-7;
    private static final double STEP = 1e-6;
    private static final int DEAR_EVERY = 3;
    /** Rounding of a sum of terms that cancel to a thousandth: relative to R T, R or the value itself. */
    private static final double ROUNDING = 2e-13;
    /** The terms of R-22 add up to 5.7e4 in magnitude at its triple point and cancel to 1: 1e-16 of the former. */
    private static final Map<String, Double> CANCELING = Map.of("R-22", 6e-12);

    /** Along an isentrope the energy of an unloaded liquid has its minimum, (w^2/2) (d rho/rho)^2: the root of rounding. */
    private static final double UNLOADED_LIQUID = 1e-5;

    static Stream<Fluid> fluids() {
        return Catalog.bundled().all().stream().filter(f -> f.kind() == Refrigerant.Kind.PURE);
    }

    @ParameterizedTest
    @MethodSource("fluids")
    void everyPairReturnsTheState(Fluid published) {
        Fluid fluid = StateGrid.widened(published);
        Equilibrium equilibrium = new Equilibria().of(fluid, Equilibria.defaultReference(fluid));
        StateGrid grid = StateGrid.of(equilibrium);
        assertTrue(grid.states().size() >= 200, "states: " + grid.states().size());
        List<String> failures = grid.states().parallelStream()
                .flatMap(state -> failures(equilibrium, state, grid.states().indexOf(state) % DEAR_EVERY == 0).stream())
                .toList();
        assertEquals(List.of(), failures);
    }

    private static List<String> failures(Equilibrium equilibrium, State state, boolean alsoDear) {
        List<String> failures = new ArrayList<>();
        for (int i = 0; i < StateInputs.VARIABLES.size(); i++) {
            for (int j = i + 1; j < StateInputs.VARIABLES.size(); j++) {
                Variable a = StateInputs.VARIABLES.get(i);
                Variable b = StateInputs.VARIABLES.get(j);
                if (StateInputs.fixed(state, a, b) && (alsoDear || !StateInputs.dear(a, b))) {
                    check(equilibrium, state, a, b).ifPresent(failures::add);
                }
            }
        }
        return failures;
    }

    private static Optional<String> check(Equilibrium equilibrium, State state, Variable a, Variable b) {
        String where = state.phase() + " T=" + state.temperature() + " p=" + state.pressure() + " x="
                + state.vaporQuality() + " by " + a + " and " + b + ": ";
        double[][] found;
        try {
            found = found(equilibrium, state, a, b);
        } catch (EngineException e) {
            double[] bounds = bounds(equilibrium, state, a, b);
            boolean hardlyFixed = bounds[0] > 1e-3 || bounds[1] > 1e-3;
            return e.code() == ErrorCode.NO_SUCH_STATE && hardlyFixed
                    ? Optional.empty()
                    : Optional.of(where + e.code() + " " + e.getMessage());
        }
        if (anyWithin(found, state, TEMPERATURE_BOUND, DENSITY_BOUND)) {
            return Optional.empty();
        }
        double[] bounds = bounds(equilibrium, state, a, b);
        return anyWithin(found, state, bounds[0], bounds[1])
                ? Optional.empty()
                : Optional.of(where + Arrays.deepToString(found) + ", bounds " + Arrays.toString(bounds));
    }

    private static boolean anyWithin(double[][] found, State state, double temperatureBound, double densityBound) {
        return Arrays.stream(found)
                .anyMatch(s -> Math.abs(s[0] / state.temperature() - 1) <= temperatureBound
                        && Math.abs(s[1] / state.density() - 1) <= densityBound);
    }

    /** The one state, or all of them where the engine says that there are several. */
    private static double[][] found(Equilibrium equilibrium, State state, Variable a, Variable b) {
        try {
            State found = equilibrium.state(a, StateInputs.value(state, a), b, StateInputs.value(state, b));
            return new double[][] {{found.temperature(), found.density()}};
        } catch (EngineException e) {
            if (e.code() != ErrorCode.AMBIGUOUS_STATE) {
                throw e;
            }
            return e.candidates().stream()
                    .map(c -> new double[] {c.temperature(), c.density()})
                    .toArray(double[][]::new);
        }
    }

    /** Largest error of temperature and density that rounding explains, by the differences of the inputs around the state. */
    private static double[] bounds(Equilibrium equilibrium, State state, Variable a, Variable b) {
        double[] bounds = {TEMPERATURE_BOUND, DENSITY_BOUND};
        if (a == Variable.VAPOR_QUALITY || b == Variable.VAPOR_QUALITY) {
            return bounds;
        }
        double ea = rounding(equilibrium, state, a);
        double eb = rounding(equilibrium, state, b);
        if (a == Variable.SPECIFIC_ENTROPY && b == Variable.SPECIFIC_INTERNAL_ENERGY && state.phase() == Phase.LIQUID) {
            bounds[0] = Math.max(bounds[0], UNLOADED_LIQUID);
            bounds[1] = Math.max(bounds[1], UNLOADED_LIQUID);
        }
        // in a cold liquid on the edge of the dome 1e-6 of the density is 1e-14 of quality, less than rounding
        double densityStep = state.phase() == Phase.VAPOR ? 1000 * STEP : 100 * STEP;
        for (double step : new double[] {STEP, -STEP}) {
            for (double rise : new double[] {densityStep, -densityStep}) {
                State warmer = near(equilibrium, state.temperature() * (1 + step), state.density());
                State denser = near(equilibrium, state.temperature(), state.density() * (1 + rise));
                if (warmer == null || denser == null) {
                    continue;
                }
                double at = (StateInputs.value(warmer, a) - StateInputs.value(state, a)) / step;
                double ar = (StateInputs.value(denser, a) - StateInputs.value(state, a)) / rise;
                double bt = (StateInputs.value(warmer, b) - StateInputs.value(state, b)) / step;
                double br = (StateInputs.value(denser, b) - StateInputs.value(state, b)) / rise;
                double determinant = Math.max(Math.abs(at * br - ar * bt), Double.MIN_NORMAL);
                bounds[0] = Math.max(bounds[0], (Math.abs(br) * ea + Math.abs(ar) * eb) / determinant);
                bounds[1] = Math.max(bounds[1], (Math.abs(bt) * ea + Math.abs(at) * eb) / determinant);
            }
        }
        return bounds;
    }

    private static State near(Equilibrium equilibrium, double temperature, double density) {
        try {
            return equilibrium.state(Variable.TEMPERATURE, temperature, Variable.DENSITY, density);
        } catch (EngineException e) {
            if (e.code() != ErrorCode.OUT_OF_RANGE) {
                throw e;
            }
            return null;
        }
    }

    private static double rounding(Equilibrium equilibrium, State state, Variable variable) {
        double r = 8.314462618 / equilibrium.refrigerant().molarMass();
        return CANCELING.getOrDefault(equilibrium.refrigerant().designation(), ROUNDING)
                * switch (variable) {
                    case SPECIFIC_ENTHALPY, SPECIFIC_INTERNAL_ENERGY -> r * state.temperature();
                    case SPECIFIC_ENTROPY -> r;
                    case PRESSURE -> Math.max(state.pressure(), state.density() * r * state.temperature());
                    default -> StateInputs.value(state, variable);
                };
    }
}
