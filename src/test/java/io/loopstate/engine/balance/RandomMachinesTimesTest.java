package io.loopstate.engine.balance;

import static org.assertj.core.api.Assertions.assertThat;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.fluid.Blend;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * How long a balance takes, figures and findings included, when the code is warm: prints the times of machines drawn at random, one
 * thread, median of {@value #REPEATS}. No time is asserted, since the machine that runs a build may be busy with others.
 */
@Tag("load")
class RandomMachinesTimesTest {
    private static final int WARM = 6;
    private static final int REPEATS = 11;
    private static final int SLOWEST = 12;

    /** A machine, the median of its times in ms, and what came of it. */
    private record Timed(int number, boolean blend, double time, String outcome, int trials, boolean bracketed) {
        boolean balanced() {
            return outcome.isEmpty();
        }
    }

    @Test
    void timesOfRandomMachines() {
        SystemBalance.Spec[] specs = IntStream.range(0, RandomPlants.COUNT)
                .mapToObj(number -> RandomPlants.plant(number).spec())
                .toArray(SystemBalance.Spec[]::new);
        for (int turn = 0; turn < WARM; turn++) {
            for (SystemBalance.Spec spec : specs) {
                outcome(spec);
            }
        }
        List<Timed> all = new ArrayList<>();
        for (int number = 0; number < specs.length; number++) {
            all.add(timed(number, specs[number]));
        }
        for (boolean blend : new boolean[] {false, true}) {
            String kind = blend ? "blends" : "pure refrigerants";
            List<Timed> ofKind =
                    all.stream().filter(timed -> timed.blend() == blend).toList();
            print(kind + ", balanced", ofKind.stream().filter(Timed::balanced).toList());
            print(
                    kind + ", without balance",
                    ofKind.stream().filter(timed -> !timed.balanced()).toList());
        }
    }

    private static Timed timed(int number, SystemBalance.Spec spec) {
        double[] times = new double[REPEATS];
        String outcome = "";
        for (int k = 0; k < REPEATS; k++) {
            long start = System.nanoTime();
            outcome = outcome(spec);
            times[k] = (System.nanoTime() - start) * 1e-6;
        }
        Arrays.sort(times);
        Plant plant = RandomPlants.plant(number);
        Levels levels = LevelSearch.of(plant.loop());
        boolean blend = TestFluids.of(plant.refrigerant()).refrigerant() instanceof Blend;
        return new Timed(
                number, blend, times[REPEATS / 2], outcome, levels.tried().size(), levels.bracketed());
    }

    /** Empty for a balance. */
    private static String outcome(SystemBalance.Spec spec) {
        try {
            assertThat(SystemBalance.calculate(spec).base().massFlow()).isPositive();
            return "";
        } catch (EngineException e) {
            assertThat(e.code()).isEqualTo(ErrorCode.NO_BALANCE);
            return e.getMessage();
        }
    }

    private static void print(String kind, List<Timed> timed) {
        double[] times = timed.stream().mapToDouble(Timed::time).sorted().toArray();
        DoubleUnaryOperator at = share -> times[(int) Math.min(times.length - 1, share * times.length)];
        System.out.printf(
                Locale.ROOT,
                "TIME %s: %d machines, ms: median %.2f, 90 %% %.2f, 99 %% %.2f, worst %.2f%n",
                kind,
                times.length,
                at.applyAsDouble(0.5),
                at.applyAsDouble(0.9),
                at.applyAsDouble(0.99),
                at.applyAsDouble(1));
        timed.stream()
                .sorted(Comparator.comparingDouble(Timed::time).reversed())
                .limit(SLOWEST)
                .forEach(machine -> System.out.printf(
                        Locale.ROOT,
                        "TIME   machine %d, %s: %.2f ms, %d trials%s %s%n",
                        machine.number(),
                        RandomPlants.plant(machine.number()).refrigerant(),
                        machine.time(),
                        machine.trials(),
                        machine.bracketed() ? ", brackets" : "",
                        machine.outcome()));
    }
}
