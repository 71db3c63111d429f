package io.loopstate.engine.eos;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.fluid.Catalog;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Analytic derivatives in the amounts against difference quotients of the merged equation, which shares no formula with
 * them: {@code F / V = rho alphar(T, rho, x)}.
 */
class MixturePhaseTest {
    private static final double STEP = 1e-4;
    private static final double T = 290;
    private static final double[] AMOUNTS = {9000, 4100, 2900};

    private static final List<ResidualTerm> DEPARTURE = List.of(
            ResidualTerm.power(-0.0072955, 2, 4.5, 1, 1),
            ResidualTerm.power(0.61007, 1, 1.2, 1, 2),
            ResidualTerm.kunzWagner(0.1, 2, 0.9, 0.7, 0.5, 0.4, 0.3),
            ResidualTerm.gaussian(0.2, 1, 1.1, 0.6, 0.9, 0.5, 1.2));

    private final MixtureModel model = new MixtureModel(
            Stream.of("R-32", "R-125", "R-744")
                    .map(name -> Catalog.bundled().find(name).orElseThrow().model())
                    .toList(),
            List.of(
                    new BinaryPair(0, 1, 1.02, 0.97, 1.01, 1.03, 0.9, DEPARTURE),
                    new BinaryPair(0, 2, 0.98, 1.05, 0.99, 1.01, 0, List.of()),
                    new BinaryPair(2, 1, 1.04, 0.95, 1.02, 0.98, -0.3, DEPARTURE)));

    private double energy(double t, double[] amounts) {
        double rho = 0;
        for (double a : amounts) {
            rho += a;
        }
        double[] x = new double[amounts.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = amounts[i] / rho;
        }
        return rho * model.at(x).isotherm(t).residual(rho).value();
    }

    private static double[] moved(int i, double by) {
        double[] amounts = AMOUNTS.clone();
        amounts[i] += by * amounts[i];
        return amounts;
    }

    @Test
    void firstDerivativesAreThoseOfTheMergedEquation() {
        MixturePhase phase = model.phase(T, AMOUNTS);
        for (int i = 0; i < 3; i++) {
            double difference = (energy(T, moved(i, STEP)) - energy(T, moved(i, -STEP))) / (2 * STEP * AMOUNTS[i]);
            assertThat(phase.logFugacity(i) - Math.log(AMOUNTS[i]))
                    .as("component %d", i)
                    .isCloseTo(difference, within(1e-7));
        }
    }

    @Test
    void furtherDerivativesAreThoseOfTheFirst() {
        MixturePhase phase = model.phase(T, AMOUNTS);
        for (int j = 0; j < 3; j++) {
            MixturePhase more = model.phase(T, moved(j, STEP));
            MixturePhase less = model.phase(T, moved(j, -STEP));
            double step = Math.log((1 + STEP) / (1 - STEP));
            for (int i = 0; i < 3; i++) {
                assertThat(phase.logFugacityByLogAmount(i, j))
                        .as("d ln f_%d / d ln n_%d", i, j)
                        .isCloseTo((more.logFugacity(i) - less.logFugacity(i)) / step, within(1e-6));
            }
            assertThat(phase.reducedPressureByLogAmount(j) / phase.density())
                    .isCloseTo(
                            (more.reducedPressure() - less.reducedPressure()) / step / phase.density(), within(1e-6));
        }
    }

    @Test
    void temperatureDerivativesAreThoseOfTheFirst() {
        MixturePhase phase = model.phase(T, AMOUNTS);
        MixturePhase more = model.phase(T * (1 + STEP), AMOUNTS);
        MixturePhase less = model.phase(T * (1 - STEP), AMOUNTS);
        double step = Math.log((1 + STEP) / (1 - STEP));
        for (int i = 0; i < 3; i++) {
            assertThat(phase.logFugacityByLogTemperature(i))
                    .isCloseTo((more.logFugacity(i) - less.logFugacity(i)) / step, within(1e-6));
        }
        assertThat(phase.reducedPressureByLogTemperature() / phase.density())
                .isCloseTo((more.reducedPressure() - less.reducedPressure()) / step / phase.density(), within(1e-6));
    }

    @Test
    void molarPropertiesAreThoseOfTheMergedEquation() {
        MixturePhase phase = model.phase(T, AMOUNTS);
        double[] x = {phase.moleFraction(0), phase.moleFraction(1), phase.moleFraction(2)};
        MolarState merged = model.at(x).isotherm(T).state(phase.density());
        MolarState state = phase.state();
        assertThat(state.pressure()).isCloseTo(merged.pressure(), within(1e-6));
        assertThat(state.enthalpy()).isCloseTo(merged.enthalpy(), within(1e-8));
        assertThat(state.entropy()).isCloseTo(merged.entropy(), within(1e-10));
        assertThat(state.isochoricHeatCapacity()).isCloseTo(merged.isochoricHeatCapacity(), within(1e-10));
        assertThat(state.isobaricHeatCapacity()).isCloseTo(merged.isobaricHeatCapacity(), within(1e-8));
        assertThat(phase.reducedPressure() * MixtureModel.GAS_CONSTANT * T).isCloseTo(merged.pressure(), within(1e-6));
    }

    @Test
    void partialPropertiesAddUp() {
        MixturePhase phase = model.phase(T, AMOUNTS);
        for (int i = 0; i < 3; i++) {
            MolarState more = model.phase(T, moved(i, STEP)).state();
            MolarState less = model.phase(T, moved(i, -STEP)).state();
            double entropy =
                    (more.density() * more.entropy() - less.density() * less.entropy()) / (2 * STEP * AMOUNTS[i]);
            double energy = (more.density() * more.internalEnergy() - less.density() * less.internalEnergy())
                    / (2 * STEP * AMOUNTS[i]);
            assertThat(phase.entropyByAmount(i)).isCloseTo(entropy, within(1e-4));
            assertThat(phase.internalEnergyByAmount(i)).isCloseTo(energy, within(1e-2));
        }
    }

    /** By definition: where pressure falls as density rises a phase divides; a thin gas and the liquid do not. */
    @Test
    void phasesBetweenTheSpinodalsAreUnstable() {
        double sum = AMOUNTS[0] + AMOUNTS[1] + AMOUNTS[2];
        double[] x = {AMOUNTS[0] / sum, AMOUNTS[1] / sum, AMOUNTS[2] / sum};
        assertThat(model.phase(T, scaled(x, 10)).locallyStable()).isTrue();
        assertThat(model.phase(T, AMOUNTS).locallyStable()).isTrue();
        int falling = 0;
        for (double density = 500; density < sum; density += 250) {
            if (model.at(x).isotherm(T).pressure(density).slope() < 0) {
                assertThat(model.phase(T, scaled(x, density)).locallyStable())
                        .as("%s mol/m3", density)
                        .isFalse();
                falling++;
            }
        }
        assertThat(falling).isPositive();
    }

    private static double[] scaled(double[] x, double density) {
        return new double[] {x[0] * density, x[1] * density, x[2] * density};
    }
}
