package io.loopstate.engine.compression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.loopstate.engine.compression.ClosedCylinder.Path;
import io.loopstate.engine.compression.ClosedCylinder.Result;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.error.EngineException;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The closed cylinder: laws, and thin air against the formulas of the ideal gas. */
class ClosedCylinderTest {
    private static Result air(double pressure, Path path, double ratio) {
        return ClosedCylinder.calculate(new ClosedCylinder.Spec(
                Processes.air(),
                pressure,
                294,
                1e-3,
                OptionalDouble.of(1e-3 / ratio),
                OptionalDouble.empty(),
                path,
                path == Path.POLYTROPIC ? OptionalDouble.of(1.2) : OptionalDouble.empty(),
                21,
                Processes.ATMOSPHERE,
                Guidance.common(),
                true));
    }

    /** work + heat = change of energy, and the trapezoids under the plotted points are the work. */
    @ParameterizedTest
    @EnumSource(
            value = Path.class,
            names = {"ISOTHERMAL", "ADIABATIC", "POLYTROPIC"})
    void workIsTheAreaUnderThePath(Path path) {
        Result result = air(101325, path, 4);
        ClosedCylinder.Figures figures = result.figures();
        assertThat(figures.work() + figures.heat())
                .isCloseTo(figures.energyChange(), Offset.offset(1e-9 * figures.work()));
        assertThat(figures.workOfAtmosphere() + figures.workOnRod())
                .isCloseTo(figures.work(), Offset.offset(1e-9 * figures.work()));
        double area = 0;
        for (int k = 1; k < result.points().size(); k++) {
            ClosedCylinder.PathPoint from = result.points().get(k - 1);
            ClosedCylinder.PathPoint to = result.points().get(k);
            area += (from.volume() - to.volume())
                    * (from.state().pressure() + to.state().pressure())
                    / 2;
        }
        assertThat(area).isCloseTo(figures.work(), Percentage.withPercentage(0.2));
        assertThat(result.steps()).hasSizeGreaterThan(6);
    }

    @ParameterizedTest
    @EnumSource(Path.class)
    void thinAirIsNearlyIdeal(Path path) {
        // Not far, so that the heat capacities of real air hardly change on the way.
        double ratio = path == Path.FREE_EXPANSION ? 0.5 : 1.5;
        Result result = air(1e4, path, ratio);
        assertThat(result.end().pressure()).isCloseTo(result.ideal().pressure(), Percentage.withPercentage(0.2));
        assertThat(result.end().temperature()).isCloseTo(result.ideal().temperature(), Offset.offset(0.5));
        assertThat(result.figures().work())
                .isCloseTo(
                        result.ideal().work(),
                        Offset.offset(2e-3 * (Math.abs(result.ideal().work()) + 1e-9)));
    }

    @Test
    void freeExpansionTakesNeitherWorkNorHeat() {
        Result result = air(6e5, Path.FREE_EXPANSION, 0.5);
        assertThat(result.figures().work()).isZero();
        assertThat(result.figures().heat()).isCloseTo(0, Offset.offset(1e-6));
        // Real air cools a little.
        assertThat(result.end().temperature()).isLessThan(294).isGreaterThan(292);
        assertThat(result.points()).hasSize(2);
    }

    @Test
    void gasDoesNotShrinkIntoAVacuum() {
        assertThatThrownBy(() -> air(6e5, Path.FREE_EXPANSION, 2)).isInstanceOf(EngineException.class);
    }

    @Test
    void pressureInsteadOfVolumeLeadsToTheSameEnd() {
        Result byVolume = air(101325, Path.ADIABATIC, 4);
        Result byPressure = ClosedCylinder.calculate(new ClosedCylinder.Spec(
                Processes.air(),
                101325,
                294,
                1e-3,
                OptionalDouble.empty(),
                OptionalDouble.of(byVolume.end().pressure()),
                Path.ADIABATIC,
                OptionalDouble.empty(),
                2,
                Processes.ATMOSPHERE,
                Guidance.common(),
                false));
        assertThat(byPressure.end().temperature())
                .isCloseTo(byVolume.end().temperature(), Percentage.withPercentage(1e-8));
    }
}
