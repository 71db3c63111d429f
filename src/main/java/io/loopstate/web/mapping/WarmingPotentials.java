package io.loopstate.web.mapping;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.web.dto.WarmingPotential;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Global warming potentials, from the resource {@code warming-potentials.json}. */
public final class WarmingPotentials {
    private static final String RESOURCE = "/refrigerants/warming-potentials.json";
    private static final int HORIZON = 100;
    /** The assessment reports of the climate panel; later ones sort later. */
    private static final String REPORT = "AR";

    private record Entry(String designation, double value, String assessment, int horizonYears, String source) {}

    private final Map<String, List<WarmingPotential>> potentials;

    private WarmingPotentials(List<Entry> entries) {
        potentials = entries.stream()
                .collect(Collectors.groupingBy(
                        Entry::designation,
                        Collectors.mapping(
                                entry -> new WarmingPotential(
                                        entry.value(), entry.assessment(), entry.horizonYears(), entry.source()),
                                Collectors.toUnmodifiableList())));
    }

    /** The potentials on the class path. */
    public static WarmingPotentials bundled() {
        try (InputStream in = WarmingPotentials.class.getResourceAsStream(RESOURCE)) {
            return new WarmingPotentials(new ObjectMapper().readValue(in, new TypeReference<List<Entry>>() {}));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What is on file, empty for an unknown refrigerant. */
    List<WarmingPotential> of(String designation) {
        return potentials.getOrDefault(designation, List.of());
    }

    /** The value of the newest assessment report over 100 years; empty for {@code null}. */
    static OptionalDouble newest(List<WarmingPotential> known) {
        return (known == null ? List.<WarmingPotential>of() : known)
                .stream()
                        .filter(potential -> potential.horizonYears() == HORIZON
                                && potential.assessment().startsWith(REPORT))
                        .max(Comparator.comparing(WarmingPotential::assessment))
                        .map(potential -> OptionalDouble.of(potential.value()))
                        .orElseGet(OptionalDouble::empty);
    }
}
