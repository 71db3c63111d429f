package io.loopstate.engine.balance;

import io.loopstate.engine.compression.CompressorUnit;
import io.loopstate.engine.compression.CylinderSize;
import io.loopstate.engine.compression.DisplacementRating.Assumption;
import io.loopstate.engine.compression.Machine;
import io.loopstate.engine.compression.MapCompressor;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The compressor of a machine, and what is known of it beside what moves the vapor.
 *
 * @param unit by displacement ({@link Machine}) or by its rating map ({@link MapCompressor})
 * @param cylinders size of the cylinders that make its displacement, where given so
 * @param speed revolutions per second, where given
 * @param minimumVolumeFlow m3/s below which an impeller surges, where given
 * @param assumptions what was not given
 */
public record CompressorChoice(
        CompressorUnit unit,
        Optional<CylinderSize> cylinders,
        OptionalDouble speed,
        OptionalDouble minimumVolumeFlow,
        Set<Assumption> assumptions) {
    public CompressorChoice {
        Objects.requireNonNull(cylinders);
        Objects.requireNonNull(speed);
        Objects.requireNonNull(minimumVolumeFlow);
        assumptions = Set.copyOf(assumptions);
        if (!(unit instanceof Machine || unit instanceof MapCompressor)) {
            throw new IllegalArgumentException("a machine or a map");
        }
    }

    /** A compressor of which nothing else is known. */
    public static CompressorChoice of(CompressorUnit unit) {
        return new CompressorChoice(unit, Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Set.of());
    }

    Optional<MapCompressor> map() {
        return unit instanceof MapCompressor map ? Optional.of(map) : Optional.empty();
    }

    Optional<Machine> machine() {
        return unit instanceof Machine machine ? Optional.of(machine) : Optional.empty();
    }

    /** The compressor to iterate with: a map answers everywhere until the balance is found. */
    CompressorUnit iterated() {
        return map().<CompressorUnit>map(map -> map.extrapolate() ? map : everywhere(map))
                .orElse(unit);
    }

    private static MapCompressor everywhere(MapCompressor map) {
        return new MapCompressor(
                map.massFlow(),
                map.capacity(),
                map.power(),
                map.current(),
                map.ratedSuction(),
                map.ratedLiquid(),
                map.correctionFactor(),
                map.heatLossFraction(),
                map.envelope(),
                true);
    }
}
