package io.loopstate.engine.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatNoException;

import io.loopstate.engine.error.DeadlineException;
import io.loopstate.engine.flash.Equilibria;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.Composition;
import io.loopstate.engine.fluid.Mixture;
import io.loopstate.engine.fluid.ReferenceState;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

class DeadlineTest {
    private static final long MILLISECOND = 1_000_000;

    @Test
    @Timeout(value = 10, unit = TimeUnit.SECONDS)
    void calculationWithoutEndIsCancelled() {
        assertThatExceptionOfType(DeadlineException.class)
                .isThrownBy(() -> Deadline.within(System.nanoTime() + 20 * MILLISECOND, () -> {
                    while (true) {
                        Deadline.check();
                    }
                }));
    }

    @Test
    void calculationThatIsLateAlreadyDoesNotBegin() {
        AtomicInteger begun = new AtomicInteger();
        assertThatExceptionOfType(DeadlineException.class)
                .isThrownBy(() -> Deadline.within(System.nanoTime() - 1, begun::incrementAndGet));
        assertThat(begun).hasValue(0);
    }

    @Test
    void afterwardsTheOuterDeadlineCounts() {
        long far = System.nanoTime() + 60_000 * MILLISECOND;
        String result = Deadline.within(far, () -> {
            assertThatExceptionOfType(DeadlineException.class).isThrownBy(() -> Deadline.within(0, () -> ""));
            for (int i = 0; i < 100; i++) {
                Deadline.check();
            }
            return "done";
        });
        assertThat(result).isEqualTo("done");
        assertThatNoException().isThrownBy(Deadline::check);
    }

    /** The lines of a mixture take tens of milliseconds; half made they must not be kept. */
    @Test
    void linesOfAMixtureAreCancelledAndMadeAnew() {
        Mixture mixture =
                Catalog.bundled().mixture(Composition.parse("R-32/125/134a/1234yf/1234ze(E) (20/20/20/20/20)"));
        Equilibria equilibria = new Equilibria();
        assertThatExceptionOfType(DeadlineException.class)
                .isThrownBy(() -> Deadline.within(System.nanoTime() + MILLISECOND, () -> equilibria.blend(mixture)));
        double after = equilibria
                .of(mixture, ReferenceState.IIR)
                .saturationAtTemperature(280)
                .bubble()
                .pressure();
        double undisturbed = new Equilibria()
                .of(mixture, ReferenceState.IIR)
                .saturationAtTemperature(280)
                .bubble()
                .pressure();
        assertThat(after).isEqualTo(undisturbed);
    }
}
