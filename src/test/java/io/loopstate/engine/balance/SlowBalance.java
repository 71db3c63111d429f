package io.loopstate.engine.balance;

import io.loopstate.engine.balance.Loop.Trial;
import io.loopstate.engine.error.EngineException;
import java.util.Optional;

/**
 * A balance by bisection within bisection over the pressures themselves: slow, and with nothing in common with the search of
 * the engine but the equations.
 *
 * @param evaporating Pa
 * @param condensing Pa
 */
record SlowBalance(double evaporating, double condensing) {
    private static final int HALVINGS = 52;

    static SlowBalance of(Plant plant) {
        Loop loop = plant.loop();
        double low = loop.equilibrium()
                .saturationAtTemperature(plant.indoor() + 273.15 - plant.superheat() - 60)
                .dew()
                .pressure();
        double high = loop.equilibrium()
                .saturationAtTemperature(plant.indoor() + 273.15 - plant.superheat())
                .dew()
                .pressure();
        for (int k = 0; k < HALVINGS; k++) {
            double middle = (low + high) / 2;
            boolean tooHigh = condensing(loop, middle)
                    .map(trial -> trial.evaporatorShare() > 1)
                    .orElse(false);
            if (tooHigh) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return new SlowBalance(low, condensing(loop, low).orElseThrow().condensing());
    }

    /** The condenser in balance at one evaporating pressure; empty where the compressor cannot run. */
    private static Optional<Trial> condensing(Loop loop, double evaporating) {
        double low = Math.max(
                evaporating * (1 + 1e-9),
                loop.equilibrium()
                        .saturationAtTemperature(loop.condenser().air().state().dryBulb()
                                + loop.settings().subcooling())
                        .bubble()
                        .pressure());
        double high = 0.998 * loop.equilibrium().refrigerant().criticalPoint().pressure();
        for (int k = 0; k < HALVINGS; k++) {
            double middle = (low + high) / 2;
            boolean tooLow = at(loop, evaporating, middle)
                    .map(trial -> trial.condenserShare() > 1)
                    .orElse(false);
            if (tooLow) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return at(loop, evaporating, high);
    }

    private static Optional<Trial> at(Loop loop, double evaporating, double condensing) {
        try {
            return Optional.of(loop.at(evaporating, condensing));
        } catch (EngineException e) {
            return Optional.empty();
        }
    }
}
