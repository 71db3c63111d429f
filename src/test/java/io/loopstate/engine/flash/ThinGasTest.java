package io.loopstate.engine.flash;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.Refrigerant;
import io.loopstate.engine.property.State;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Gas so thin that it is ideal, down to where states are refused. */
class ThinGasTest {
    private static final Catalog CATALOG = Catalog.bundled();
    /** Pa. */
    private static final double THIN = 0.01;

    static Stream<Refrigerant> refrigerants() {
        return Stream.concat(CATALOG.all().stream(), CATALOG.blends().stream());
    }

    /** Its Joule-Thomson coefficient has a limit, (T dB/dT - B)/cp, by the virial equation of textbooks. */
    @ParameterizedTest
    @MethodSource("refrigerants")
    void throttlingHasALimit(Refrigerant refrigerant) {
        var equilibrium = new Equilibria().of(refrigerant, Equilibria.defaultReference(refrigerant));
        double t = refrigerant.limits().maxTemperature();
        State thin = equilibrium.atPressureTemperature(THIN, t);
        for (double pressure : new double[] {1e-6, 1e-20, 1e-60, 1e-100}) {
            State thinner = equilibrium.atPressureTemperature(pressure, t);
            assertThat(thinner.jouleThomsonCoefficient() / thin.jouleThomsonCoefficient())
                    .as("at %s Pa", pressure)
                    .isEqualTo(1, within(1e-6));
            assertThat(thinner.isobaricHeatCapacity() - thinner.isochoricHeatCapacity())
                    .isEqualTo(8.314462618 / refrigerant.molarMass(), within(1e-5 * thin.isobaricHeatCapacity()));
        }
    }

    @Test
    void throttlingOfCarbonDioxide() {
        var equilibrium = equilibrium("R-744");
        // its second virial coefficient, cm3/mol: -132.2 at 290 K, -122.7 at 300 K, -114.2 at 310 K; from memory
        double limit = (300 * (-114.2 + 132.2) / 20 + 122.7) * 1e-6;
        State state = equilibrium.atPressureTemperature(1e-50, 300);
        assertThat(state.jouleThomsonCoefficient() * state.isobaricHeatCapacity() * 0.0440098)
                .isEqualTo(limit, within(0.02 * limit));
    }

    @ParameterizedTest
    @CsvSource({
        "PRESSURE, 5e-322, TEMPERATURE, 305.15",
        "PRESSURE, 9e-101, TEMPERATURE, 305.15",
        "PRESSURE, 5e-322, SPECIFIC_ENTHALPY, 5e5",
        "PRESSURE, 5e-322, DENSITY, 1e-320",
        "DENSITY, 5e-324, TEMPERATURE, 305.15",
        "DENSITY, 1e-310, SPECIFIC_ENTHALPY, 5e5",
    })
    void whatIsThinnerStillIsRefused(Variable first, double x, Variable second, double y) {
        var equilibrium = equilibrium("R-744");
        assertThatThrownBy(() -> equilibrium.state(first, x, second, y))
                .isInstanceOfSatisfying(
                        EngineException.class, e -> assertThat(e.code()).isEqualTo(ErrorCode.OUT_OF_RANGE));
    }

    private static Equilibrium equilibrium(String designation) {
        Refrigerant refrigerant = CATALOG.refrigerant(designation).orElseThrow();
        return new Equilibria().of(refrigerant, Equilibria.defaultReference(refrigerant));
    }
}
