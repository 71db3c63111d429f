package io.loopstate.web.mapping;

import com.fasterxml.jackson.core.type.TypeReference;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Safety groups of ASHRAE 34 and ISO 817, from the resource {@code safety-groups.json}. */
public final class SafetyGroups {
    /**
     * The safety group of one refrigerant.
     *
     * @param designation as the catalogue writes it
     * @param safetyGroup A1, A2L, A2, A3, B1, B2L, B2 or B3
     * @param source where it stands, and whether it was read or remembered
     */
    public record Entry(String designation, String safetyGroup, String source) {}

    private final Map<String, Entry> entries;

    private SafetyGroups(List<Entry> entries) {
        this.entries = entries.stream().collect(Collectors.toUnmodifiableMap(Entry::designation, Function.identity()));
    }

    /** The groups on the class path. */
    public static SafetyGroups bundled() {
        return new SafetyGroups(CatalogueResource.read("safety-groups.json", new TypeReference<List<Entry>>() {}));
    }

    /** The group of a refrigerant; empty where none is on file. */
    public Optional<Entry> of(String designation) {
        return Optional.ofNullable(entries.get(designation));
    }
}
