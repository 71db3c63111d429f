package io.loopstate.engine.flash;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.Refrigerant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Two caloric inputs that fit no state are refused for the right reason, and those that fit one are not. */
class RefusedPairsTest {
    private static final Catalog CATALOG = Catalog.bundled();

    static Stream<Refrigerant> refrigerants() {
        return Stream.concat(CATALOG.all().stream(), CATALOG.blends().stream());
    }

    /** The bound by which enthalpy with internal energy is refused at once: p v of no state exceeds it. */
    @ParameterizedTest
    @MethodSource("refrigerants")
    void noStateHasMoreThanTheHighestProduct(Refrigerant refrigerant) {
        double highest = CaloricLine.highestProduct(FluidModels.of(refrigerant)) / refrigerant.molarMass();
        var equilibrium = equilibrium(refrigerant.designation());
        var limits = refrigerant.limits();
        double largest = 0;
        for (int i = 0; i <= 20; i++) {
            double t = limits.minTemperature() + (limits.maxTemperature() - limits.minTemperature()) * i / 20;
            for (int k = 0; k <= 30; k++) {
                largest = Math.max(largest, product(equilibrium, limits.maxPressure() * Math.pow(10, -0.2 * k), t));
            }
        }
        assertThat(largest).isBetween(0.999 * highest, highest * (1 + 1e-12));
    }

    private static double product(Equilibrium equilibrium, double pressure, double temperature) {
        try {
            return pressure
                    / equilibrium.atPressureTemperature(pressure, temperature).density();
        } catch (EngineException e) {
            assertThat(e.code()).isIn(ErrorCode.OUT_OF_RANGE, ErrorCode.TWO_PHASE_UNDEFINED);
            return 0;
        }
    }

    @Test
    void moreThanTheHighestProductIsNoState() {
        refused("R-443A", Variable.SPECIFIC_ENTHALPY, 236.4e3, -410.9e3, ErrorCode.NO_SUCH_STATE, "no state");
    }

    /** Beyond the ends of an isentrope, and where its cold end has two liquids, which hides what lies below. */
    @ParameterizedTest
    @CsvSource({
        "R-448A, 2000, 150e3, NO_SUCH_STATE, no state",
        "R-448A, 500, 465e3, NO_SUCH_STATE, no state",
        "R-134a, 2300, 195e3, NO_SUCH_STATE, no state",
        "R-718, 9951, 415e3, NO_SUCH_STATE, no state",
        "R-514A, 1683.6, 450.5e3, OUT_OF_RANGE, false phase",
        "R-443A, -964, 261e3, NO_SUCH_STATE, no state",
    })
    void energiesOffTheIsentrope(String designation, double entropy, double energy, ErrorCode code, String reason) {
        refused(designation, Variable.SPECIFIC_ENTROPY, entropy, energy, code, reason);
    }

    /** Its enthalpy is also that of two liquids at the lowest temperature; that is no reason to refuse it. */
    @Test
    void aStateFarFromTwoLiquidsIsFound() {
        var equilibrium = equilibrium("R-443A");
        var state = equilibrium.state(Variable.TEMPERATURE, 246.605, Variable.DENSITY, 586.18);
        var found = equilibrium.state(
                Variable.SPECIFIC_ENTHALPY,
                state.specificEnthalpy(),
                Variable.SPECIFIC_INTERNAL_ENERGY,
                state.specificInternalEnergy());
        assertThat(List.of(found.temperature() / 246.605 - 1, found.density() / 586.18 - 1))
                .allSatisfy(difference -> assertThat(Math.abs(difference)).isLessThan(1e-9));
    }

    private static void refused(
            String designation, Variable with, double value, double energy, ErrorCode code, String reason) {
        assertThatThrownBy(() -> equilibrium(designation).state(with, value, Variable.SPECIFIC_INTERNAL_ENERGY, energy))
                .isInstanceOfSatisfying(
                        EngineException.class, e -> assertThat(e.code()).isEqualTo(code))
                .hasMessageContaining(reason);
    }

    private static Equilibrium equilibrium(String designation) {
        Refrigerant refrigerant = CATALOG.refrigerant(designation).orElseThrow();
        return new Equilibria().of(refrigerant, Equilibria.defaultReference(refrigerant));
    }
}
