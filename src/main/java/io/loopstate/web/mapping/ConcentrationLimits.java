package io.loopstate.web.mapping;

import com.fasterxml.jackson.core.type.TypeReference;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.dto.ConcentrationLimit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Limits of concentration in a room, from the resource {@code concentration-limits.json}; single compounds only. */
public final class ConcentrationLimits {
    private static final double GRAM = 1e-3;
    private static final double PARTS_PER_MILLION = 1e-6;

    /** A row of the resource; what is not known is {@code null}. */
    private record Entry(
            String designation,
            Double concentrationLimitPpm,
            Double concentrationLimitGramPerCubicMeter,
            String concentrationLimitSource,
            Double lowerFlammabilityLimit,
            String lowerFlammabilityLimitSource) {}

    private final Map<String, Entry> entries;

    private ConcentrationLimits(List<Entry> entries) {
        this.entries = entries.stream().collect(Collectors.toUnmodifiableMap(Entry::designation, Function.identity()));
    }

    /** The limits on the class path. */
    public static ConcentrationLimits bundled() {
        return new ConcentrationLimits(
                CatalogueResource.read("concentration-limits.json", new TypeReference<List<Entry>>() {}));
    }

    /** The limit of refrigerant in the air of an occupied room; empty where none is on file. */
    Optional<ConcentrationLimit> ofRoom(Output out, String designation) {
        return Optional.ofNullable(entries.get(designation))
                .filter(entry -> entry.concentrationLimitPpm() != null)
                .map(entry -> new ConcentrationLimit(
                        out.of(QuantityKind.DENSITY, entry.concentrationLimitGramPerCubicMeter() * GRAM),
                        entry.concentrationLimitPpm() * PARTS_PER_MILLION,
                        entry.concentrationLimitSource()));
    }

    /** The least concentration that carries a flame; empty where none is on file. */
    Optional<ConcentrationLimit> ofFlame(Output out, String designation) {
        return Optional.ofNullable(entries.get(designation))
                .filter(entry -> entry.lowerFlammabilityLimit() != null)
                .map(entry -> new ConcentrationLimit(
                        out.of(QuantityKind.DENSITY, entry.lowerFlammabilityLimit()),
                        null,
                        entry.lowerFlammabilityLimitSource()));
    }
}
