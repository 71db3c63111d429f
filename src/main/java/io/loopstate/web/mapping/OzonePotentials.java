package io.loopstate.web.mapping;

import com.fasterxml.jackson.core.type.TypeReference;
import io.loopstate.engine.fluid.Blend;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.Mixture;
import io.loopstate.engine.fluid.Refrigerant;
import io.loopstate.web.dto.OzonePotential;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Ozone depletion potentials: those of single compounds from the resource {@code ozone-depletion-potentials.json}, zero for
 * one without chlorine, bromine and iodine, and those of blends as the mean of the components' values by mass.
 */
public final class OzonePotentials {
    private static final String PROTOCOL = "Montreal Protocol / 40 CFR 82";
    /** Chlorine, bromine or iodine in a formula; nitrous oxide depletes ozone as well and is no controlled substance. */
    private static final Pattern HARMFUL = Pattern.compile("Cl|Br|I|N2O");

    private static final OzonePotential ZERO = new OzonePotential(
            0, PROTOCOL, "no chlorine, bromine or iodine in the molecule: no controlled substance (common knowledge)");

    private record Entry(String designation, double value, String basis, String source) {}

    private final Map<String, List<OzonePotential>> potentials;

    private OzonePotentials(List<Entry> entries) {
        potentials = entries.stream()
                .collect(Collectors.groupingBy(
                        Entry::designation,
                        Collectors.mapping(
                                entry -> new OzonePotential(entry.value(), entry.basis(), entry.source()),
                                Collectors.toUnmodifiableList())));
    }

    /** The potentials on the class path. */
    public static OzonePotentials bundled() {
        return new OzonePotentials(
                CatalogueResource.read("ozone-depletion-potentials.json", new TypeReference<List<Entry>>() {}));
    }

    /** What is known of a refrigerant; empty where nothing is on file and nothing follows. */
    public List<OzonePotential> of(Refrigerant refrigerant) {
        if (refrigerant instanceof Blend blend) {
            return ofBlend(blend.mixture().components()).stream().toList();
        }
        return refrigerant instanceof Fluid fluid ? of(fluid) : List.of();
    }

    /** What is known of one compound; empty for one with chlorine, bromine or iodine of which nothing is on file. */
    public List<OzonePotential> of(Fluid fluid) {
        List<OzonePotential> filed = potentials.getOrDefault(fluid.designation(), List.of());
        boolean harmless =
                fluid.formula().map(formula -> !HARMFUL.matcher(formula).find()).orElse(false);
        return filed.isEmpty() && harmless ? List.of(ZERO) : filed;
    }

    /** By the values of the Montreal Protocol; empty where a component has none. */
    public Optional<OzonePotential> ofBlend(List<Mixture.Component> components) {
        double sum = 0;
        for (Mixture.Component component : components) {
            Optional<OzonePotential> value = of(component.fluid()).stream()
                    .filter(potential -> potential.basis().equals(PROTOCOL))
                    .findFirst();
            if (value.isEmpty()) {
                return Optional.empty();
            }
            sum += component.massFraction() * value.get().value();
        }
        return Optional.of(new OzonePotential(sum, PROTOCOL, "mass-weighted from the components' values of 40 CFR 82"));
    }
}
