package io.loopstate.reference;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.Composition;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.Mixture;
import io.loopstate.web.dto.MissingPotential;
import io.loopstate.web.dto.OzonePotential;
import io.loopstate.web.dto.WarmingPotential;
import io.loopstate.web.mapping.OzonePotentials;
import io.loopstate.web.mapping.SafetyGroups;
import io.loopstate.web.mapping.WarmingPotentials;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Safety groups, warming and ozone potentials against what their sources print; each row of the tables names its source. */
class CatalogueFactsTest {
    private static final Catalog CATALOG = Catalog.bundled();
    private static final SafetyGroups GROUPS = SafetyGroups.bundled();
    private static final WarmingPotentials WARMING = WarmingPotentials.bundled();
    private static final OzonePotentials OZONE = OzonePotentials.bundled();
    private static final String REGULATION = "AR4 and EU 517/2014";
    private static final String MEMORY = "(from memory)";

    /** Source: the printed values of F-gas guidance, on the basis of the column: AR4 and, for olefins and hydrocarbons, EU 517/2014. */
    @Test
    void warmingPotentialOfBlendRoundsToThePrintedOne() {
        new PublishedTable("gwp_blends").compare(40, row -> {
            assertThat(row.text("basis")).isEqualTo("AR4 (100 yr); HFO and HC values of EU 517/2014");
            double value = ofBlend(row.text("designation"), REGULATION).value();
            row.check("GWP_printed", value);
            row.check("GWP_mass_weighted", value);
        });
    }

    /** Source: the table itself; compounds that the catalogue does not have are left out. */
    @Test
    void warmingPotentialOfCompoundIsThePrintedOne() {
        int known = 0;
        for (NamedCsvRecord row : PublishedTable.records("checks/gwp.csv")) {
            String designation = row.getField("designation");
            if (CATALOG.designations().contains(designation)) {
                known++;
                WarmingPotential potential = WARMING.of(designation).stream()
                        .filter(p -> p.assessment().equals(row.getField("assessment"))
                                && p.horizonYears() == Integer.parseInt(row.getField("horizon_years")))
                        .findFirst()
                        .orElseThrow(() -> new AssertionError(row.getField("id")));
                assertThat(potential.value()).as(row.getField("id")).isEqualTo(Double.parseDouble(row.getField("GWP")));
                assertThat(potential.source().contains(MEMORY))
                        .as(row.getField("id"))
                        .isEqualTo(row.getField("origin").equals("memory"));
            }
        }
        assertThat(known).isEqualTo(93);
    }

    /** Definition of a mean by mass: R-410A is 50 % R-32 and 50 % R-125; AR5 677 and 3170 (from memory). */
    @Test
    void valueOfBlendIsTheMeanByMassAndSaysSo() {
        WarmingPotential potential = ofBlend("R-410A", "AR5");
        assertThat(potential.value()).isEqualTo(1923.5);
        assertThat(potential.horizonYears()).isEqualTo(100);
        assertThat(potential.source()).startsWith("mass-weighted from the components' AR5 values");
    }

    @Test
    void valueIsRefusedWhereAComponentHasNone() {
        WarmingPotentials.Known potentials = WARMING.ofBlend(mixture("R-448A").components());
        assertThat(potentials.values()).extracting(WarmingPotential::assessment).doesNotContain("AR4");
        assertThat(potentials.missing()).contains(new MissingPotential("AR4", 100, List.of("R-1234yf", "R-1234ze(E)")));
    }

    @Test
    void ownCompositionHasAValueToo() {
        Mixture own = CATALOG.mixture(Composition.parse("R-32/134a (50/50)"));
        assertThat(WARMING.ofBlend(own.components()).values())
                .filteredOn(p -> p.assessment().equals("AR4"))
                .extracting(WarmingPotential::value)
                .containsExactly((675 + 1430) / 2.0);
    }

    /** Source: the table itself; rows without a compound of the catalogue are left out, the rows of blends are worked out. */
    @Test
    void ozonePotentialIsThePrintedOne() {
        new PublishedTable("odp").compare(17, row -> {
            String designation = row.text("designation");
            if (row.text("origin").equals("derived")) {
                OzonePotential potential =
                        OZONE.ofBlend(mixture(designation).components()).orElseThrow();
                assertThat(potential.source()).startsWith("mass-weighted");
                row.check("ODP", potential.value());
            } else if (CATALOG.designations().contains(designation)) {
                row.check("ODP", filed(designation, row.text("basis")).value());
            } else {
                row.skip();
            }
        });
    }

    @ParameterizedTest
    @CsvSource({"R-410A, 0", "R-448A, 0", "R-290, 0"})
    void withoutChlorineThereIsNoOzonePotential(String designation, double value) {
        double found = CATALOG.find(designation).isPresent()
                ? filed(designation, "Montreal Protocol / 40 CFR 82").value()
                : OZONE.ofBlend(mixture(designation).components()).orElseThrow().value();
        assertThat(found).isEqualTo(value);
    }

    /** R-1130(E) holds chlorine and no value of it is on file. */
    @Test
    void ozonePotentialIsRefusedWhereAComponentHasNone() {
        assertThat(OZONE.ofBlend(mixture("R-514A").components())).isEmpty();
        assertThat(OZONE.of(CATALOG.find("R-744A").orElseThrow())).isEmpty();
    }

    /** Source: ASHRAE 34 by the tables; of two editions the one with the group 2L counts. */
    @Test
    void safetyGroupIsThatOfTheNewestEdition() {
        for (String file : List.of("checks/refrigerants_pure.csv", "checks/refrigerants_blends.csv")) {
            for (NamedCsvRecord row : PublishedTable.records(file)) {
                if (!row.getField("note").equals("edition without the 2L sub-class")) {
                    SafetyGroups.Entry entry =
                            GROUPS.of(row.getField("designation")).orElseThrow();
                    assertThat(entry.safetyGroup()).as(row.getField("id")).isEqualTo(row.getField("safety_group"));
                }
            }
        }
    }

    /** Values that were remembered say so: every blend's, since no row of the table was read. */
    @Test
    void originIsKept() {
        PublishedTable.records("checks/refrigerants_blends.csv")
                .forEach(row -> assertThat(GROUPS.of(row.getField("designation"))
                                .orElseThrow()
                                .source())
                        .contains(row.getField("origin").equals("memory") ? MEMORY : "ASHRAE"));
    }

    /** Source: the composition column of the table, ASHRAE 34. */
    @Test
    void compositionIsThePrintedOne() {
        for (NamedCsvRecord row : PublishedTable.records("checks/refrigerants_blends.csv")) {
            Mixture mixture = mixture(row.getField("designation"));
            List<String> printed = List.of(row.getField("components").split("/"));
            List<Double> percents = List.of(
                            row.getField("composition_mass_percent").split("/"))
                    .stream()
                    .map(Double::valueOf)
                    .toList();
            for (Mixture.Component component : mixture.components()) {
                int place = printed.indexOf(component.fluid().designation());
                assertThat(place).as(row.getField("id")).isNotNegative();
                assertThat(component.massFraction() * 100)
                        .as(row.getField("id"))
                        .isCloseTo(percents.get(place), org.assertj.core.api.Assertions.within(1e-9));
            }
            assertThat(mixture.components()).hasSameSizeAs(printed);
        }
    }

    private static OzonePotential filed(String designation, String basis) {
        Fluid fluid = CATALOG.find(designation).orElseThrow();
        return OZONE.of(fluid).stream()
                .filter(potential -> potential.basis().equals(basis))
                .findFirst()
                .orElseThrow();
    }

    private static WarmingPotential ofBlend(String designation, String assessment) {
        return WARMING.ofBlend(mixture(designation).components()).values().stream()
                .filter(potential -> potential.assessment().equals(assessment))
                .findFirst()
                .orElseThrow(() -> new AssertionError(designation + " has no value by " + assessment));
    }

    private static Mixture mixture(String designation) {
        return CATALOG.mixture(designation).orElseThrow();
    }
}
