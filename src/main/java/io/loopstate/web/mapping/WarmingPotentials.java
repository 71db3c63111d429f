package io.loopstate.web.mapping;

import com.fasterxml.jackson.core.type.TypeReference;
import io.loopstate.engine.fluid.Blend;
import io.loopstate.engine.fluid.Mixture;
import io.loopstate.engine.fluid.Refrigerant;
import io.loopstate.web.dto.MissingPotential;
import io.loopstate.web.dto.WarmingPotential;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * Global warming potentials: those of single compounds from the resource {@code warming-potentials.json}, those of blends
 * as the mean of the components' values by mass.
 */
public final class WarmingPotentials {
    private static final int HORIZON = 100;
    /** The assessment reports of the climate panel; later ones sort later. */
    private static final String REPORT = "AR";

    /** How the values of the components are chosen for a blend's; the first assessment that has one counts. */
    private enum Basis {
        AR4("AR4", "AR4 values", "AR4"),
        /**
         * Regulation (EU) No 517/2014, Annex IV: a mixture's value is the mean by mass, from values of AR4 and, for olefins
         * and hydrocarbons, of its own annexes. R-13I1 has neither.
         */
        REGULATION(
                "AR4 and EU 517/2014",
                "AR4 values, with those of Regulation (EU) No 517/2014 for olefins and hydrocarbons and of EN 378-1 for R-13I1",
                "EU 517/2014",
                "AR4",
                "EN 378-1"),
        AR5("AR5", "AR5 values", "AR5"),
        AR6("AR6", "AR6 values", "AR6");

        private final String assessment;
        private final String values;
        private final List<String> order;

        Basis(String assessment, String values, String... order) {
            this.assessment = assessment;
            this.values = values;
            this.order = List.of(order);
        }
    }

    private record Entry(String designation, double value, String assessment, int horizonYears, String source) {}

    /**
     * The potentials of a refrigerant.
     *
     * @param values those on file, or for a blend those over 100 years that follow from its components
     * @param missing of a blend: the bases on which a component has no value
     */
    public record Known(List<WarmingPotential> values, List<MissingPotential> missing) {}

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
        return new WarmingPotentials(
                CatalogueResource.read("warming-potentials.json", new TypeReference<List<Entry>>() {}));
    }

    /** What is on file, or what follows from the components. */
    public Known of(Refrigerant refrigerant) {
        return refrigerant instanceof Blend blend
                ? ofBlend(blend.mixture().components())
                : new Known(of(refrigerant.designation()), List.of());
    }

    /** What is on file of one compound, empty for an unknown one. */
    public List<WarmingPotential> of(String designation) {
        return potentials.getOrDefault(designation, List.of());
    }

    /** What follows for a mixture; a basis on which a component has no value gives none. */
    public Known ofBlend(List<Mixture.Component> components) {
        List<WarmingPotential> known = new ArrayList<>();
        List<MissingPotential> missing = new ArrayList<>();
        for (Basis basis : Basis.values()) {
            List<String> without = components.stream()
                    .map(component -> component.fluid().designation())
                    .filter(designation -> value(designation, basis).isEmpty())
                    .toList();
            if (without.isEmpty()) {
                known.add(weighted(components, basis));
            } else {
                missing.add(new MissingPotential(basis.assessment, HORIZON, without));
            }
        }
        return new Known(List.copyOf(known), List.copyOf(missing));
    }

    private WarmingPotential weighted(List<Mixture.Component> components, Basis basis) {
        double sum = components.stream()
                .mapToDouble(component -> component.massFraction()
                        * value(component.fluid().designation(), basis)
                                .orElseThrow()
                                .value())
                .sum();
        boolean remembered = components.stream()
                .map(component -> value(component.fluid().designation(), basis).orElseThrow())
                .anyMatch(potential -> potential.source().contains("(from memory)"));
        return new WarmingPotential(
                sum,
                basis.assessment,
                HORIZON,
                "mass-weighted from the components' " + basis.values + (remembered ? " (some from memory)" : ""));
    }

    private Optional<WarmingPotential> value(String designation, Basis basis) {
        return basis.order.stream()
                .flatMap(assessment -> of(designation).stream()
                        .filter(potential -> potential.horizonYears() == HORIZON
                                && potential.assessment().equals(assessment)))
                .findFirst();
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
