package io.loopstate.web.mapping;

import io.loopstate.engine.fluid.Blend;
import io.loopstate.engine.fluid.Refrigerant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Fixed text that goes with every calculation: what a calculation cannot take over. The laws named are pointers for the
 * reader and were not checked for later changes.
 */
final class Cautions {
    private static final List<String> ALWAYS = List.of(
            "A calculation is no safety approval. The manufacturer's data and instructions win over every number here.",
            "Work on refrigeration systems is for licensed technicians under the law of the place. Local codes and the safety "
                    + "standards for refrigerating systems apply, ASHRAE 15 or EN 378 among them.",
            "United States: Clean Air Act section 608 forbids venting and asks for certified technicians, and the AIM Act sets "
                    + "leak repair duties for systems with 15 lb or more of a refrigerant of a global warming potential above "
                    + "53 from 2026-01-01. European Union: Regulation (EU) 2024/573.");

    private final SafetyGroups groups;

    Cautions(SafetyGroups groups) {
        this.groups = groups;
    }

    static List<String> withoutRefrigerant() {
        return ALWAYS;
    }

    private static List<String> of(Optional<SafetyGroups.Entry> group) {
        List<String> cautions = new ArrayList<>();
        cautions.add(group.map(entry -> entry.designation() + " is in safety group " + entry.safetyGroup() + ": "
                        + meaning(entry.safetyGroup()) + ". Source: " + entry.source() + ".")
                .orElse(
                        "The safety group of this refrigerant is not on file here: look it up in ASHRAE 34 or ISO 817 before "
                                + "any work."));
        cautions.addAll(ALWAYS);
        return List.copyOf(cautions);
    }

    /** Whether a refrigerant has a safety group on file, which no composition of a client's own has. */
    boolean onFile(Refrigerant refrigerant) {
        return groups.of(refrigerant.designation()).isPresent();
    }

    /** The cautions for a refrigerant; of a client's own composition the groups of the components are all there is. */
    List<String> of(Refrigerant refrigerant) {
        Optional<SafetyGroups.Entry> group = groups.of(refrigerant.designation());
        if (group.isPresent() || !(refrigerant instanceof Blend blend)) {
            return of(group);
        }
        String components = blend.mixture().components().stream()
                .map(component -> component.fluid().designation())
                .map(name -> name
                        + groups.of(name)
                                .map(entry -> " " + entry.safetyGroup())
                                .orElse(" not on file"))
                .collect(Collectors.joining(", "));
        List<String> cautions = new ArrayList<>();
        cautions.add("No safety group of " + blend.designation()
                + " is on file here. A blend has the group of its worst case "
                + "of composition and leakage, which does not follow from its components (" + components
                + "): take the worst of them until ASHRAE 34 or ISO 817 says otherwise.");
        cautions.addAll(ALWAYS);
        return List.copyOf(cautions);
    }

    /** Classes of ASHRAE 34 and ISO 817: toxicity by the letter, flammability by what follows. */
    private static String meaning(String group) {
        String toxicity = group.startsWith("B") ? "higher toxicity" : "lower toxicity";
        String flammability = switch (group.substring(1)) {
            case "1" -> "no flame propagation";
            case "2L" -> "lower flammability, burns slowly";
            case "2" -> "flammable";
            case "3" -> "higher flammability";
            default -> throw new IllegalArgumentException("no safety group " + group);
        };
        return toxicity + ", " + flammability;
    }
}
