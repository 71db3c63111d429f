package io.loopstate.engine.compression;

import io.loopstate.engine.compression.CompressionProcess.Liquid;
import io.loopstate.engine.cycle.Optionals;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.property.State;
import java.util.Optional;

/** The liquid that a compressor draws in, with the density of saturated liquid at the suction pressure. */
final class WetSuction {
    private WetSuction() {}

    static Optional<Liquid> of(Equilibrium equilibrium, State inlet, State outlet) {
        if (inlet.phase() != Phase.TWO_PHASE) {
            return Optional.empty();
        }
        double share = 1 - inlet.vaporQuality();
        double liquidDensity =
                equilibrium.saturationAtPressure(inlet.pressure()).bubble().density();
        return Optional.of(new Liquid(
                share,
                share * inlet.density() / liquidDensity,
                Optionals.when(outlet.phase() == Phase.TWO_PHASE, outlet.vaporQuality())));
    }
}
