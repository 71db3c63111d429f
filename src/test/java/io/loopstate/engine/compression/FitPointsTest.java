package io.loopstate.engine.compression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A fit that is refused says which points are to blame. Linear algebra and counting; no published numbers. */
class FitPointsTest {
    private final List<Double> suction = new ArrayList<>();
    private final List<Double> discharge = new ArrayList<>();

    private void grid(double[] suctions, double[] discharges) {
        for (double s : suctions) {
            for (double d : discharges) {
                suction.add(s);
                discharge.add(d);
            }
        }
    }

    private EngineException refusal(List<Double> values) {
        EngineException refusal = catchThrowableOfType(
                EngineException.class,
                () -> RatingFit.calculate(new RatingFit.Spec(
                        suction, discharge, values, CoefficientOrder.AHRI_540, Guidance.common(), false)));
        assertThat(refusal).isNotNull();
        return refusal;
    }

    private List<Double> ones() {
        return Collections.nCopies(suction.size(), 1.0);
    }

    @Test
    void tooFewPointsAreCounted() {
        grid(new double[] {-30, -20, -10}, new double[] {30, 40, 50});
        EngineException refusal = refusal(ones());
        assertThat(refusal.code()).isEqualTo(ErrorCode.CONTRADICTORY_INPUTS);
        assertThat(refusal.input()).contains("values");
        assertThat(refusal.got()).isEqualTo(9);
        assertThat(refusal.lower()).isEqualTo(10);
        assertThat(refusal).hasMessageContaining("here are 9.");
    }

    @Test
    void repeatedPointsAreNamed() {
        grid(new double[] {-30, -20, -10}, new double[] {30, 40, 50});
        suction.addAll(List.of(-30.0, -10.0));
        discharge.addAll(List.of(30.0, 50.0));
        assertThat(refusal(ones()))
                .hasMessageContaining("here are 11, of which 9 differ")
                .hasMessageContaining("same two temperatures: 1, 10; 9, 11.");
    }

    /** Three values of a temperature cannot fix its cube: of ten terms one is lost, S cubed. */
    @Test
    void tooFewDifferentTemperaturesAreCounted() {
        grid(new double[] {-30, -20, -10}, new double[] {30, 40, 50, 60});
        EngineException refusal = refusal(ones());
        assertThat(refusal.input()).contains("suctionTemperatures");
        assertThat(refusal)
                .hasMessageContaining("fix 9 of ten coefficients")
                .hasMessageContaining("3 different suction temperatures, and a cubic needs 4")
                .hasMessageContaining("condition number")
                .hasMessageContaining("below 1e8 is needed");
    }

    @Test
    void theDischargeIsNamedWhereItIsToBlame() {
        grid(new double[] {-40, -30, -20, -10}, new double[] {30, 40, 50});
        EngineException refusal = refusal(ones());
        assertThat(refusal.input()).contains("dischargeTemperatures");
        assertThat(refusal).hasMessageContaining("3 different discharge temperatures");
    }

    /** All points on one line through the plane of temperatures: of a cubic only four terms are left. */
    @Test
    void pointsOnALineAreToldOf() {
        for (double s = -30; s <= 0; s += 2.5) {
            suction.add(s);
            discharge.add(s + 60);
        }
        assertThat(refusal(ones())).hasMessageContaining("fix 4 of ten").hasMessageContaining("lie on a curve");
    }

    @Test
    void aNumberThatIsNoneIsNamed() {
        grid(new double[] {-30, -20, -10, 0}, new double[] {30, 40, 50, 60});
        List<Double> values = new ArrayList<>(ones());
        values.set(6, Double.POSITIVE_INFINITY);
        EngineException refusal = refusal(values);
        assertThat(refusal.code()).isEqualTo(ErrorCode.IMPOSSIBLE_VALUE);
        assertThat(refusal.input()).contains("values");
        assertThat(refusal).hasMessageStartingWith("Point 7 ");
    }
}
