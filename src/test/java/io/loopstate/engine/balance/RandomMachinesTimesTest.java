package io.loopstate.engine.balance;

import static org.assertj.core.api.Assertions.assertThat;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.fluid.Blend;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
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
 * thread, median of {@value #REPEATS}. It is time of a processor, which no other work lengthens by waiting; none is asserted, since
 * whoever shares caches and cores with it still does.
 */
@Tag("load")
class RandomMachinesTimesTest {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
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
        double[][] times = new double[specs.length][REPEATS];
        String[] outcomes = new String[specs.length];
        // In turns, so that whoever else is busy for a while spoils one of a machine's times and not all.
        for (int turn = 0; turn < REPEATS; turn++) {
            for (int number = 0; number < specs.length; number++) {
                long start = THREADS.getCurrentThreadCpuTime();
                outcomes[number] = outcome(specs[number]);
                times[number][turn] = (THREADS.getCurrentThreadCpuTime() - start) * 1e-6;
            }
        }
        List<Timed> all = IntStream.range(0, specs.length)
                .mapToObj(number -> timed(number, times[number], outcomes[number]))
                .toList();
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

    private static Timed timed(int number, double[] times, String outcome) {
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
