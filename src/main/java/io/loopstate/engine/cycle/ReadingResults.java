package io.loopstate.engine.cycle;

import io.loopstate.engine.component.LiquidLine;
import io.loopstate.engine.cycle.FieldReadings.Compression;
import io.loopstate.engine.cycle.FieldReadings.PerMass;
import io.loopstate.engine.cycle.FieldReadings.Result;
import io.loopstate.engine.cycle.FieldReadings.Route;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Puts the result of a set of readings together. */
final class ReadingResults {
    private ReadingResults() {}

    static Result of(FieldReadings.Spec spec) {
        ReadingStates states = ReadingStates.of(spec);
        PerMass perMass = ReadingPerMass.of(states);
        List<Route> routes = new ReadingRoutes(spec, states, perMass).routes();
        double atmosphere = spec.pressures().atmosphere();
        Result withoutFindings = new Result(
                states.points(),
                states.evaporating(),
                states.condensing(),
                states.superheat(),
                states.evaporatorSuperheat(),
                states.subcooling(),
                spec.pressures().liquidLine().isEmpty()
                        && spec.temperatures().liquidLine().isPresent(),
                states.flashMargin()
                        .map(LiquidLine.FlashMargin::margin)
                        .map(OptionalDouble::of)
                        .orElseGet(OptionalDouble::empty),
                condensingOverAmbient(spec, states),
                Optionals.map(
                        spec.air().evaporator().entering(),
                        air -> air - states.evaporating().midpoint()),
                spec.pressures().discharge() / spec.pressures().suction(),
                compression(states),
                perMass,
                routes,
                ReadingRoutes.balances(routes),
                spec.air().condenser().density(atmosphere),
                spec.air().evaporator().density(atmosphere),
                List.of(),
                List.of());
        return withoutFindings.with(
                new ReadingFindings(spec, states, withoutFindings).toList(),
                spec.explain() ? new ReadingWorking(spec, states, withoutFindings).toList() : List.of());
    }

    private static OptionalDouble condensingOverAmbient(FieldReadings.Spec spec, ReadingStates states) {
        OptionalDouble ambient =
                Optionals.or(spec.air().outdoor(), spec.air().condenser().entering());
        return states.condensing()
                .map(condensing -> Optionals.map(ambient, air -> condensing.midpoint() - air))
                .orElseGet(OptionalDouble::empty);
    }

    private static Optional<Compression> compression(ReadingStates states) {
        return states.compression()
                .filter(compression -> compression.work() != 0)
                .map(compression -> new Compression(
                        compression.isentropicEfficiency(), compression.isentropicWork(), compression.work()));
    }
}
