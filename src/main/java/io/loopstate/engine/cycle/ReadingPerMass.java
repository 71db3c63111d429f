package io.loopstate.engine.cycle;

import io.loopstate.engine.component.Compressor;
import io.loopstate.engine.cycle.FieldReadings.PerMass;
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.property.State;
import java.util.Optional;
import java.util.OptionalDouble;

/** The measured cycle per kilogram. Works and heats that come out negative are wrong readings and are left out. */
final class ReadingPerMass {
    private ReadingPerMass() {}

    static PerMass of(ReadingStates states) {
        State afterEvaporator = states.evaporatorOutlet().orElse(states.compressorInlet());
        OptionalDouble effect = positive(
                states.evaporatorInlet().map(inlet -> afterEvaporator.specificEnthalpy() - inlet.specificEnthalpy()));
        OptionalDouble work = positive(states.compression().map(Compressor.Compression::work));
        OptionalDouble rejection = positive(states.compressorOutlet()
                .flatMap(outlet ->
                        states.valveInlet().map(liquid -> outlet.specificEnthalpy() - liquid.specificEnthalpy())));
        OptionalDouble coefficient = Optionals.both(effect, work, (q, w) -> q / w);
        return new PerMass(
                effect,
                work,
                rejection,
                coefficient,
                Optionals.map(coefficient, value -> value * Constants.BTU_PER_HOUR_PER_WATT),
                carnot(states),
                quality(states.evaporatorInlet()));
    }

    private static OptionalDouble carnot(ReadingStates states) {
        return states.condensing()
                .map(high -> Carnot.coefficient(states.evaporating().midpoint(), high.midpoint()))
                .orElseGet(OptionalDouble::empty);
    }

    private static OptionalDouble quality(Optional<State> state) {
        return state.filter(value -> value.phase() == Phase.TWO_PHASE)
                .map(value -> OptionalDouble.of(value.vaporQuality()))
                .orElseGet(OptionalDouble::empty);
    }

    private static OptionalDouble positive(Optional<Double> value) {
        return value.filter(number -> number > 0).map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }
}
