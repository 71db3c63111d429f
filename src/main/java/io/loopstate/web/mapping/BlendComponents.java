package io.loopstate.web.mapping;

import io.loopstate.engine.fluid.Mixture;
import io.loopstate.web.dto.BlendComponent;
import java.util.List;
import java.util.stream.IntStream;

/** Compositions, as replies show them. */
final class BlendComponents {
    private BlendComponents() {}

    /** The composition of the whole. */
    static List<BlendComponent> of(Mixture mixture) {
        return mixture.components().stream()
                .map(c -> new BlendComponent(c.fluid().designation(), c.massFraction(), c.moleFraction()))
                .toList();
    }

    /** The composition of a phase, from its mole fractions in the order of the mixture; {@code null} for none. */
    static List<BlendComponent> of(Mixture mixture, List<Double> moleFractions) {
        if (moleFractions.isEmpty()) {
            return null;
        }
        double[] masses = IntStream.range(0, moleFractions.size())
                .mapToDouble(i -> moleFractions.get(i)
                        * mixture.components().get(i).fluid().molarMass())
                .toArray();
        double whole =
                IntStream.range(0, masses.length).mapToDouble(i -> masses[i]).sum();
        return IntStream.range(0, masses.length)
                .mapToObj(i -> new BlendComponent(
                        mixture.components().get(i).fluid().designation(), masses[i] / whole, moleFractions.get(i)))
                .toList();
    }
}
