package io.loopstate.engine.component;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import org.junit.jupiter.api.Test;

/** Published examples of clearance volumetric efficiency, copied from the solved examples. */
class VolumetricEfficiencyTest {
    /**
     * Source: R. Joel, Basic Engineering Thermodynamics, 5th edition, example 14.1: clearance 5 %, 97 to 550 kPa, n = 1.3;
     * 80.9 % counted as free air at 101.325 kPa and 15 degC while the intake is at 97 kPa and 20 degC.
     */
    @Test
    void freeAirOfAReciprocatingCompressor() {
        double drawnIn = VolumetricEfficiency.ofClearance(0.05, 550.0 / 97, 1.3);
        double freeAir = drawnIn * 97 / 101.325 * 288 / 293;
        assertThat(100 * freeAir).isCloseTo(80.9, within(0.05));
    }

    /**
     * Source: P. K. Nag, Basic and Applied Thermodynamics, example 19.4: 1 to 6 bar, n = 1.3, no flow left at 15 bar; 55.47 %
     * counted as free air at 288 K while the intake is at 300 K.
     */
    @Test
    void clearanceFromThePressureAtWhichFlowEnds() {
        double clearance = 1 / (Math.pow(15, 1 / 1.3) - 1);
        double freeAir = VolumetricEfficiency.ofClearance(clearance, 6, 1.3) * 288 / 300;
        assertThat(100 * freeAir).isCloseTo(55.47, within(0.05));
    }

    @Test
    void withoutClearanceOrLiftTheWholeDisplacementIsDrawnIn() {
        assertThat(VolumetricEfficiency.ofClearance(0, 8, 1.2)).isEqualTo(1);
        assertThat(VolumetricEfficiency.ofClearance(0.04, 1, 1.2)).isEqualTo(1);
    }

    @Test
    void beyondTheLastRatioNothingIsDrawnIn() {
        assertThatThrownBy(() -> VolumetricEfficiency.ofClearance(0.1, 40, 1.2))
                .isInstanceOfSatisfying(EngineException.class, exception -> {
                    assertThat(exception.code()).isEqualTo(ErrorCode.CONTRADICTORY_INPUTS);
                    assertThat(exception.input()).contains("pressureRatio");
                    assertThat(VolumetricEfficiency.ofClearance(0.1, 0.999 * exception.upper(), 1.2))
                            .isCloseTo(0, within(1e-2));
                });
        assertThatThrownBy(() -> VolumetricEfficiency.ofClearance(0.1, 0.9, 1.2))
                .isInstanceOf(EngineException.class);
        assertThatThrownBy(() -> VolumetricEfficiency.ofClearance(-0.1, 3, 1.2)).isInstanceOf(EngineException.class);
    }
}
