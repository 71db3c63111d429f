package io.loopstate.engine.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Laws of compositions, whatever the components. */
class CompositionPropertiesTest {
    private static final Catalog CATALOG = Catalog.bundled();
    private static final List<String> PURE = CATALOG.all().stream()
            .filter(fluid -> fluid.kind() == Refrigerant.Kind.PURE)
            .map(Fluid::designation)
            .toList();

    private static Mixture mixture(String notation) {
        return CATALOG.mixture(Composition.parse(notation));
    }

    @Provide
    Arbitrary<Composition> compositions() {
        Arbitrary<List<String>> names =
                Arbitraries.of(PURE).list().uniqueElements().ofMinSize(2).ofMaxSize(10);
        Arbitrary<List<Double>> weights =
                Arbitraries.doubles().between(0.01, 1).ofScale(6).list().ofSize(10);
        return names.flatMap(list -> weights.map(all -> normalized(list, all)));
    }

    private static Composition normalized(List<String> names, List<Double> weights) {
        double sum = weights.subList(0, names.size()).stream()
                .mapToDouble(Double::doubleValue)
                .sum();
        return new Composition(
                names,
                weights.subList(0, names.size()).stream().map(w -> w / sum).toList());
    }

    @Property(tries = 200)
    void theCanonicalNotationReadsBackToTheLastBit(@ForAll("compositions") Composition composition) {
        Mixture mixture = CATALOG.mixture(composition);
        Mixture again = mixture(mixture.notation());
        assertThat(again.designation()).isEqualTo(mixture.designation());
        assertThat(again.components()).isEqualTo(mixture.components());
    }

    @Property(tries = 200)
    void moleFractionsAreAWhole(@ForAll("compositions") Composition composition) {
        double sum = 0;
        for (double x : CATALOG.mixture(composition).moleFractions()) {
            assertThat(x).isPositive();
            sum += x;
        }
        assertThat(sum).isCloseTo(1, within(1e-14));
    }

    @Property(tries = 100)
    void theOrderChangesNoShareAndNoAccuracy(@ForAll("compositions") Composition composition) {
        List<String> names = new ArrayList<>(composition.designations());
        List<Double> shares = new ArrayList<>(composition.massFractions());
        Collections.reverse(names);
        Collections.reverse(shares);
        Mixture one = CATALOG.mixture(composition);
        Mixture other = CATALOG.mixture(new Composition(names, shares));
        assertThat(other.accuracy()).isEqualTo(one.accuracy());
        assertThat(other.molarMass() / one.molarMass()).isCloseTo(1, within(1e-14));
        assertThat(other.components().get(0).fluid().designation())
                .isEqualTo(one.components()
                        .get(one.components().size() - 1)
                        .fluid()
                        .designation());
    }

    @Property(tries = 300)
    void anyTextIsReadOrRefusedInWords(@ForAll String text) {
        CompositionException refusal = catchThrowableOfType(CompositionException.class, () -> mixture(text + "/"));
        assertThat(refusal.getMessage()).isNotBlank();
        assertThat(refusal.allowed()).isNotBlank();
    }
}
