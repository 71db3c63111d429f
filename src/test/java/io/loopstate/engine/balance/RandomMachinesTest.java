package io.loopstate.engine.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.balance.Levels.Attempt;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Machines drawn at random, always the same ones: each has a balance that holds, or names the component that has none. */
class RandomMachinesTest {
    private static final int COUNT = RandomPlants.COUNT;

    static IntStream numbers() {
        return IntStream.range(0, COUNT);
    }

    @ParameterizedTest
    @MethodSource("numbers")
    void everyMachineHasABalanceOrANamedReason(int number) {
        Plant plant = RandomPlants.plant(number);
        try {
            Balanced balanced = plant.balance().base();
            assertThat(balanced.energy().residual()).isCloseTo(0, within(1e-9));
            Levels levels = LevelSearch.of(plant.loop());
            Loop.Trial trial = levels.balance().orElseThrow();
            assertThat(Math.min(trial.condenserShare(), 1)
                            + balanced.condenser().areaLeftOver())
                    .isCloseTo(1, within(1e-6));
            assertThat(Math.min(trial.evaporatorShare(), 1)
                            + balanced.evaporator().areaLeftOver())
                    .isCloseTo(1, within(1e-6));
            assertThat(trial.condenserShare()).isLessThan(1 + 1e-6);
            assertThat(trial.evaporatorShare()).isLessThan(1 + 1e-6);
            assertThat(balanced.condensing().pressure())
                    .isGreaterThan(balanced.evaporating().pressure());
        } catch (EngineException e) {
            assertThat(e.code()).as(e.getMessage() + plant).isEqualTo(ErrorCode.NO_BALANCE);
            assertThat(e.getMessage()).matches("(Compressor|Condenser|Evaporator): .*");
        }
    }

    /** Most of them have one, so that the test above tests something. */
    @Test
    void mostMachinesHaveABalance() {
        Set<Component> none = EnumSet.noneOf(Component.class);
        int fast = 0;
        int balanced = 0;
        for (int number = 0; number < COUNT; number++) {
            Levels levels = LevelSearch.of(RandomPlants.plant(number).loop());
            levels.none().ifPresent(reason -> none.add(reason.component()));
            balanced += levels.balance().isPresent() ? 1 : 0;
            fast += levels.balance().isPresent() && !levels.bracketed() ? 1 : 0;
        }
        assertThat(balanced).isGreaterThan(COUNT * 3 / 4);
        // The fast way is there to be taken.
        assertThat(fast).isGreaterThan(balanced * 19 / 20);
        assertThat(none).containsExactly(Component.values());
    }

    static IntStream sample() {
        return IntStream.range(0, COUNT)
                .filter(number -> number % 37 == 0)
                .filter(number -> LevelSearch.of(RandomPlants.plant(number).loop())
                        .balance()
                        .isPresent());
    }

    /** The same equations by plain bisection within bisection. */
    @ParameterizedTest
    @MethodSource("sample")
    void slowBisectionFindsTheSame(int number) {
        Plant plant = RandomPlants.plant(number);
        SlowBalance slow = SlowBalance.of(plant);
        Balanced balanced = plant.balance().base();
        assertThat(balanced.evaporating().pressure()).isCloseTo(slow.evaporating(), within(1e-7 * slow.evaporating()));
        assertThat(balanced.condensing().pressure()).isCloseTo(slow.condensing(), within(1e-7 * slow.condensing()));
    }

    /** No search goes on without end. */
    @Test
    void searchesEnd() {
        for (int number = 0; number < COUNT; number += 10) {
            List<Attempt> tried =
                    LevelSearch.of(RandomPlants.plant(number).loop()).tried();
            assertThat(tried.size()).isLessThan(1000);
        }
    }
}
