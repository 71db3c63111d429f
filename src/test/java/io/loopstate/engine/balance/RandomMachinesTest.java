package io.loopstate.engine.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.balance.Levels.Attempt;
import io.loopstate.engine.compression.CompressorUnit;
import io.loopstate.engine.compression.Drive;
import io.loopstate.engine.compression.Envelope;
import io.loopstate.engine.compression.Machine;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.rejection.Arrangement;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Machines drawn at random, always the same ones: each has a balance that holds, or names the component that has none. */
class RandomMachinesTest {
    private static final int COUNT = 600;
    private static final List<String> REFRIGERANTS = List.of(
            "R-134a",
            "R-290",
            "R-717",
            "R-1234yf",
            "R-600a",
            "R-32",
            "R-22",
            "R-744",
            "R-454B",
            "R-448A",
            "R-410A",
            "R-407C");

    static IntStream numbers() {
        return IntStream.range(0, COUNT);
    }

    /** The machine of a number: sizes around what suits each other, from a fifth to five times of it. */
    private static Plant plant(int number) {
        Random random = new Random(20261125L * 1009 + number);
        String refrigerant = REFRIGERANTS.get(random.nextInt(REFRIGERANTS.size()));
        double size = Math.exp(random.nextDouble() * 5) * 5e-4;
        double outdoor = -15 + random.nextDouble() * 65;
        double indoor = -30 + random.nextDouble() * 65;
        Optional<Double> humidity = random.nextInt(4) == 0 ? Optional.empty() : Optional.of(random.nextDouble());
        double capacity = 4e6 * size;
        double condenser = capacity / 8 * spread(random);
        double evaporator = capacity / 8 * spread(random);
        return new Plant(
                refrigerant,
                unit(random, refrigerant, size),
                outdoor,
                indoor,
                humidity,
                condenser,
                condenser / 1200 * spread(random),
                evaporator,
                evaporator / 1200 * spread(random),
                random.nextInt(8) == 0 ? 0 : random.nextDouble() * 15,
                random.nextInt(8) == 0 ? 0 : random.nextDouble() * 15,
                random.nextBoolean() ? Arrangement.CROSS_FLOW : Arrangement.SERIES);
    }

    private static double spread(Random random) {
        return Math.exp((random.nextDouble() - 0.5) * 2 * Math.log(5));
    }

    private static CompressorUnit unit(Random random, String refrigerant, double size) {
        List<Drive> drives = List.of(Plant.hermetic(), Plant.dischargeCooled(), Plant.open());
        Drive drive = drives.get(random.nextInt(drives.size()));
        return switch (random.nextInt(refrigerant.equals("R-134a") ? 6 : 5)) {
            case 0, 1 -> new Machine(Plant.pistons(size, 0.1 * random.nextDouble()), drive);
            case 2 -> new Machine(Plant.rotor(size, OptionalDouble.empty()), drive);
            case 3 -> new Machine(Plant.rotor(size, OptionalDouble.of(1.5 + 3 * random.nextDouble())), drive);
            case 4 -> new Machine(Plant.impeller(size, OptionalDouble.empty()), drive);
            default -> Plant.map(Envelope.unlimited(), true);
        };
    }

    @ParameterizedTest
    @MethodSource("numbers")
    void everyMachineHasABalanceOrANamedReason(int number) {
        Plant plant = plant(number);
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
            Levels levels = LevelSearch.of(plant(number).loop());
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
                .filter(number -> LevelSearch.of(plant(number).loop()).balance().isPresent());
    }

    /** The same equations by plain bisection within bisection. */
    @ParameterizedTest
    @MethodSource("sample")
    void slowBisectionFindsTheSame(int number) {
        Plant plant = plant(number);
        SlowBalance slow = SlowBalance.of(plant);
        Balanced balanced = plant.balance().base();
        assertThat(balanced.evaporating().pressure()).isCloseTo(slow.evaporating(), within(1e-7 * slow.evaporating()));
        assertThat(balanced.condensing().pressure()).isCloseTo(slow.condensing(), within(1e-7 * slow.condensing()));
    }

    /** No search goes on without end. */
    @Test
    void searchesEnd() {
        for (int number = 0; number < COUNT; number += 10) {
            List<Attempt> tried = LevelSearch.of(plant(number).loop()).tried();
            assertThat(tried.size()).isLessThan(1000);
        }
    }
}
