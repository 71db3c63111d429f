package io.loopstate.engine.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.eos.HelmholtzModel;
import io.loopstate.engine.fluid.PairOrigin.Basis;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The data of mixtures agree with those of the pure fluids and with themselves. */
class MixtureDataTest {
    private static final Catalog CATALOG = Catalog.bundled();
    /** Stored with nine digits. */
    private static final double MOLAR_MASS = 5e-9;
    /** Stored with fourteen digits. */
    private static final double GAMMA = 1e-13;

    private static List<JsonObject> read(String file, String list) {
        try (InputStream stream = MixtureDataTest.class.getResourceAsStream("/mixtures/" + file)) {
            return JsonObject.read(stream).objects(list);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static HelmholtzModel model(String designation) {
        return CATALOG.find(designation).orElseThrow().model();
    }

    /**
     * Published as T_r = sum x_i T_ri + sum x_i x_j deltaT and 1/rho_r = sum x_i/rho_ri + sum x_i x_j deltaV, Lemmon and
     * Jacobsen (2004), eqs. 3 and 4.
     */
    @Test
    void parametersOfAdditivePairsFollowFromThePublishedOnesAndOurReducingPoints() {
        List<JsonObject> additive = read("binary-pairs.json", "pairs").stream()
                .filter(pair -> pair.has("derivedFrom"))
                .toList();
        assertThat(additive).hasSize(6);
        assertThat(additive).allSatisfy(pair -> {
            HelmholtzModel a = model(pair.optionalTexts("components").get(0));
            HelmholtzModel b = model(pair.optionalTexts("components").get(1));
            JsonObject published = pair.object("derivedFrom");
            double ta = a.reducingTemperature();
            double tb = b.reducingTemperature();
            double va = 1 / a.reducingDensity();
            double vb = 1 / b.reducingDensity();
            double gammaT = (ta + tb + published.number("deltaT")) / (2 * Math.sqrt(ta * tb));
            double gammaV = 4 * (va + vb + published.number("deltaV")) / Math.pow(Math.cbrt(va) + Math.cbrt(vb), 3);
            assertThat(pair.number("gammaT")).isCloseTo(gammaT, within(GAMMA));
            assertThat(pair.number("gammaV")).isCloseTo(gammaV, within(GAMMA));
            assertThat(pair.number("betaT")).isEqualTo(1);
            assertThat(pair.number("betaV")).isEqualTo(1);
        });
    }

    @Test
    void noPairStandsTwiceAndItsComponentsAreKnown() {
        List<JsonObject> pairs = read("binary-pairs.json", "pairs");
        Set<Set<String>> seen = new HashSet<>();
        assertThat(pairs).hasSize(416).allSatisfy(pair -> {
            List<String> components = pair.optionalTexts("components");
            assertThat(components)
                    .hasSize(2)
                    .allMatch(name -> CATALOG.find(name)
                            .filter(fluid -> fluid.designation().equals(name))
                            .isPresent());
            assertThat(seen.add(Set.copyOf(components)))
                    .as("once: %s", components)
                    .isTrue();
            assertThat(pair.flag("estimated")).as("%s", components).isEqualTo(pair.has("rule"));
            assertThat(pair.number("F") == 0).as("%s", components).isNotEqualTo(pair.has("departure"));
        });
    }

    @Test
    void everyBlendHasItsStoredMolarMassAndPairs() {
        List<JsonObject> stored = read("blends.json", "blends");
        List<Mixture> mixtures = CATALOG.mixtures();
        assertThat(mixtures).hasSize(144).hasSameSizeAs(stored);
        for (int i = 0; i < stored.size(); i++) {
            Mixture mixture = mixtures.get(i);
            JsonObject blend = stored.get(i);
            assertThat(mixture.designation()).isEqualTo(blend.text("designation"));
            assertThat(mixture.molarMass() / blend.number("molarMass"))
                    .as(mixture.designation())
                    .isCloseTo(1, within(MOLAR_MASS));
            assertThat(mixture.pairs())
                    .hasSize(mixture.components().size() * (mixture.components().size() - 1) / 2);
            assertThat(unfitted(mixture, Basis.MISSING)).isEqualTo(pairs(blend, "pairsMissing"));
            assertThat(unfitted(mixture, Basis.ESTIMATED)).isEqualTo(pairs(blend, "pairsEstimated"));
        }
    }

    private static Set<Set<String>> unfitted(Mixture mixture, Basis basis) {
        return mixture.unfittedPairs().stream()
                .filter(pair -> pair.basis() == basis)
                .map(pair -> Set.of(pair.first(), pair.second()))
                .collect(Collectors.toSet());
    }

    private static Set<Set<String>> pairs(JsonObject blend, String name) {
        return blend.textLists(name).stream().map(Set::copyOf).collect(Collectors.toSet());
    }

    @Test
    void aHundredAndThirteenBlendsHaveEveryPairFitted() {
        assertThat(CATALOG.mixtures().stream().filter(m -> m.accuracy() == Accuracy.FITTED))
                .hasSize(113);
        assertThat(CATALOG.mixtures().stream()
                        .filter(m -> m.accuracy() == Accuracy.PREDICTED)
                        .map(Mixture::designation))
                .hasSize(31)
                .contains("R-402A", "R-424A", "R-473A")
                .doesNotContain("R-410A", "R-448A", "R-454B");
    }

    @Test
    void moleFractionsAddUpToOneAndHaveTheRatiosOfTheMasses() {
        assertThat(CATALOG.mixtures()).allSatisfy(mixture -> {
            double sum = 0;
            for (double x : mixture.moleFractions()) {
                sum += x;
            }
            assertThat(sum).isCloseTo(1, within(1e-15 * mixture.components().size()));
            assertThat(mixture.components())
                    .allSatisfy(c -> assertThat(c.moleFraction() * c.fluid().molarMass() / mixture.molarMass())
                            .isCloseTo(c.massFraction(), within(1e-14)));
        });
    }

    @Test
    void theOrderOfTheComponentsDoesNotChangeTheModel() {
        // The asymmetric betas of R-744/R-1234ze(E) and R-32/R-1234yf.
        Mixture one = CATALOG.mixture(Composition.parse("R-744/32/1234yf/1234ze(E) (10/30/20/40)"));
        Mixture other = CATALOG.mixture(Composition.parse("R-1234ze(E)/1234yf/32/744 (40/20/30/10)"));
        HelmholtzModel a = one.model().at(one.moleFractions());
        HelmholtzModel b = other.model().at(other.moleFractions());
        assertThat(a.reducingTemperature()).isCloseTo(b.reducingTemperature(), within(1e-11));
        assertThat(a.reducingDensity() / b.reducingDensity()).isCloseTo(1, within(1e-13));
        assertThat(a.isotherm(300).pressure(9000).value()
                        / b.isotherm(300).pressure(9000).value())
                .isCloseTo(1, within(1e-12));
    }

    /** Rule of the house, numbered in DEVELOPERS.md; the limits of the components stand in their files. */
    @Test
    void limitsAreMoleWeightedMeansAndTheLowestPressure() {
        Mixture mixture = CATALOG.mixture("R-455A").orElseThrow();
        Limits limits = mixture.limits();
        double lower = 0;
        for (Mixture.Component c : mixture.components()) {
            lower += c.moleFraction() * c.fluid().limits().minTemperature();
        }
        assertThat(limits.minTemperature()).isCloseTo(lower, within(1e-12));
        assertThat(limits.maxPressure())
                .isEqualTo(mixture.components().stream()
                        .mapToDouble(c -> c.fluid().limits().maxPressure())
                        .min()
                        .orElseThrow());
        // Carbon dioxide freezes at 216.592 K, above the lower end of this blend.
        assertThat(mixture.beyondOwnRange()).contains("R-744");
    }

    @Test
    void pairsOfDoubtCarryTheirNotes() {
        Set<String> noted = CATALOG.mixtures().stream()
                .filter(m -> m.pairs().stream().anyMatch(p -> p.note().isPresent()))
                .map(Mixture::designation)
                .collect(Collectors.toSet());
        assertThat(noted).contains("R-445A", "R-470A", "R-470B", "R-466A", "R-444A", "R-444B");
        assertThat(noted).doesNotContain("R-410A", "R-454B", "R-448A", "R-513A");
        assertThat(CATALOG.mixture("R-470A").orElseThrow().pairs().stream()
                        .filter(p -> p.note().isPresent())
                        .map(p -> p.first() + "/" + p.second()))
                .contains("R-744/R-1234ze(E)");
    }

    @Test
    void missingAndEstimatedPairsNameTheirRule() {
        assertThat(CATALOG.mixture("R-424A").orElseThrow().unfittedPairs())
                .extracting(
                        PairOrigin::first,
                        PairOrigin::second,
                        PairOrigin::basis,
                        p -> p.rule().orElseThrow())
                .containsExactlyInAnyOrder(
                        tuple("R-125", "R-601a", Basis.MISSING, "Lorentz-Berthelot"),
                        tuple("R-134a", "R-601a", Basis.MISSING, "Lorentz-Berthelot"),
                        tuple("R-600a", "R-601a", Basis.ESTIMATED, "linear"),
                        tuple("R-600", "R-601a", Basis.ESTIMATED, "linear"));
    }

    @Test
    void figuresBelongToCataloguedBlends() {
        List<String> named = read("figures.json", "blends").stream()
                .map(f -> f.text("designation"))
                .toList();
        assertThat(CATALOG.blendDesignations()).containsAll(named);
        assertThat(CATALOG.blends().stream().map(Blend::designation)).containsExactlyInAnyOrderElementsOf(named);
    }
}
