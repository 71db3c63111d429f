package io.loopstate.engine.balance;

import io.loopstate.engine.compression.CompressorUnit;
import io.loopstate.engine.compression.Drive;
import io.loopstate.engine.compression.Envelope;
import io.loopstate.engine.compression.Machine;
import io.loopstate.engine.rejection.Arrangement;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/** Machines drawn at random, always the same ones. */
final class RandomPlants {
    static final int COUNT = 600;
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

    private RandomPlants() {}

    /** The machine of a number: sizes around what suits each other, from a fifth to five times of it. */
    static Plant plant(int number) {
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
}
