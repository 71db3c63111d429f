package io.loopstate.engine.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.loopstate.engine.fluid.CompositionException.Reason;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CompositionTest {
    private static final Catalog CATALOG = Catalog.bundled();
    private static final List<String> PURE = CATALOG.all().stream()
            .filter(fluid -> fluid.kind() == Refrigerant.Kind.PURE)
            .map(Fluid::designation)
            .toList();

    private static Mixture mixture(String notation) {
        return CATALOG.mixture(Composition.parse(notation));
    }

    private static CompositionException refusal(String notation) {
        return catchThrowableOfType(CompositionException.class, () -> mixture(notation));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "R-32/1234yf (70/30)",
                "R-32/R-1234yf (70/30)",
                "32/1234yf(70/30)",
                "  r32 / R1234YF ( 70.0 / 30 ) ",
                "difluoromethane/R-1234yf (70/30)"
            })
    void spellingsOfOneComposition(String notation) {
        assertThat(mixture(notation).designation()).isEqualTo("R-32/1234yf (70/30)");
        assertThat(mixture(notation).components().get(0).massFraction()).isEqualTo(0.7);
    }

    @ParameterizedTest
    @CsvSource({
        "R-32/125 (50/50), R-410A",
        "R-125/32 (50/50), R-410A",
        "R-1234yf/32 (31.1/68.9), R-454B",
        "R-600a/290 (44/56), R-436A"
    })
    void aCataloguedCompositionIsTheCataloguedBlend(String notation, String designation) {
        assertThat(mixture(notation).designation()).isEqualTo(designation);
    }

    @Test
    void designationsWithParenthesesAreComponents() {
        Mixture mixture = mixture("R-1234ze(E)/1336mzz(Z) (25/75)");
        assertThat(mixture.designation()).isEqualTo("R-1234ze(E)/1336mzz(Z) (25/75)");
    }

    @Test
    void everyBlendIsFoundByDesignationAndByItsNotation() {
        assertThat(CATALOG.mixtures()).allSatisfy(mixture -> {
            String bare = mixture.designation().substring(2).toLowerCase(java.util.Locale.ROOT);
            assertThat(CATALOG.mixture(bare)).contains(mixture);
            assertThat(mixture(mixture.notation())).isEqualTo(mixture);
        });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "R-32/1234yf",
                "R-32/1234yf 70/30",
                "R-32/1234ze(E)",
                "R-32/1234yf (70)",
                "R-32/1234yf (70/20/10)",
                "R-32/1234yf (70/)",
                "R-32/1234yf (70/3O)",
                "R-32/1234yf (70,5/29,5)",
                "R-32/1234yf (NaN/30)",
                "R-32/1234yf (1e2/0)",
                "R-32//1234yf (50/25/25)",
                "(70/30)",
                "/",
                ""
            })
    void whatIsNoNotation(String notation) {
        assertThat(refusal(notation).reason()).isEqualTo(Reason.NOT_READABLE);
        assertThat(refusal(notation).got()).isEqualTo(notation);
        assertThat(refusal(notation).allowed()).contains("R-32/1234yf (68.9/31.1)");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "R-32/1234xx (70/30); UNKNOWN_COMPONENT; 1234xx; designations or names of pure refrigerants",
                "R-32/410A (70/30); NOT_PURE; 410A; pure components: give those of the blend",
                "R-32/air (70/30); NOT_PURE; air; pure components: give those of the blend",
                "R-32/r32 (70/30); REPEATED_COMPONENT; r32; each component once",
                "R-32 (100); NUMBER_OF_COMPONENTS; 1; 2 to 10 components",
                "R-32/1234yf (100/0); SHARE_NOT_POSITIVE; 0 %; more than 0 and less than 100 % of the mass",
                "R-32/1234yf (110/-10); SHARE_NOT_POSITIVE; 110 %; more than 0 and less than 100 % of the mass",
                "R-32/1234yf (-10/110); SHARE_NOT_POSITIVE; -10 %; more than 0 and less than 100 % of the mass",
                "R-32/1234yf (70/29); SUM_OF_SHARES; 99 % in all; 100 % in all, to 0.0001 %",
                "R-32/1234yf (68.9/31.2); SUM_OF_SHARES; 100.1 % in all; 100 % in all, to 0.0001 %",
                "R-32/1234yf (99.99999999/0.00000001); SHARE_TOO_SMALL; 0.00000001 %; 'at least 0.0001 %, or leave it out'"
            })
    void whatIsNoMixture(String notation, Reason reason, String got, String allowed) {
        CompositionException refusal = refusal(notation);
        assertThat(refusal.reason()).isEqualTo(reason);
        assertThat(refusal.got()).isEqualTo(got);
        assertThat(refusal.allowed()).isEqualTo(allowed);
    }

    @Test
    void elevenComponentsAreTooMany() {
        String names = String.join("/", PURE.subList(0, 11));
        String notation = names + " (" + "9/".repeat(10) + "10)";
        assertThat(refusal(notation).reason()).isEqualTo(Reason.NUMBER_OF_COMPONENTS);
        assertThat(refusal(notation).got()).isEqualTo("11");
    }

    @Test
    void anUnknownComponentHasSuggestionsThatAreComponents() {
        assertThat(refusal("R-32/1234y (70/30)").suggestions())
                .contains("R-1234yf")
                .hasSizeLessThanOrEqualTo(3);
        assertThat(refusal("R-32/404 (70/30)").suggestions()).doesNotContain("R-404A");
    }

    @Test
    void aPercentForEachComponentOfAList() {
        CompositionException refusal = catchThrowableOfType(
                CompositionException.class,
                () -> CATALOG.mixture(new Composition(List.of("R-32", "R-125"), List.of(1.0))));
        assertThat(refusal.reason()).isEqualTo(Reason.NUMBER_OF_COMPONENTS);
        assertThat(refusal.allowed()).isEqualTo("one share for each component");
    }

    @Test
    void noNumberIsNoShare() {
        CompositionException refusal = catchThrowableOfType(
                CompositionException.class,
                () -> CATALOG.mixture(new Composition(List.of("R-32", "R-125"), List.of(Double.NaN, 0.5))));
        assertThat(refusal.reason()).isEqualTo(Reason.SHARE_NOT_POSITIVE);
        assertThat(refusal.got()).isEqualTo("NaN");
    }

    @Test
    void onlyFittedPairsWhereSoAsked() {
        Mixture fitted = CATALOG.mixture("R-448A").orElseThrow();
        assertThat(fitted.requireFitted()).isSameAs(fitted);
        CompositionException refusal = catchThrowableOfType(
                CompositionException.class,
                () -> CATALOG.mixture("R-402A").orElseThrow().requireFitted());
        assertThat(refusal.reason()).isEqualTo(Reason.PAIR_NOT_FITTED);
        assertThat(refusal.got()).isEqualTo("R-125/R-22 (not published)");
    }
}
