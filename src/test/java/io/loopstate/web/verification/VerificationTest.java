package io.loopstate.web.verification;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.loopstate.engine.flash.Equilibria;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.FluidReader;
import io.loopstate.engine.transport.TransportLibrary;
import io.loopstate.web.dto.VerificationReply;
import io.loopstate.web.dto.VerifiedOutcome;
import io.loopstate.web.dto.VerifiedValue;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.mapping.Refrigerants;
import io.loopstate.web.mapping.RequestReader;
import io.loopstate.web.mapping.SafetyGroups;
import io.loopstate.web.mapping.Trust;
import io.loopstate.web.verify.Answers;
import io.loopstate.wiring.Constraints;
import io.loopstate.wiring.JsonSettings;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.lang.reflect.Field;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The bundled published values against the engine, and what a report says where they are not met. */
class VerificationTest {
    private static final int VALUES = 2083;
    private static final int KNOWN = 348;
    /** A bound of a known deviation may not be more than this factor above the deviation. */
    private static final double TIGHT = 1.2;

    private static final Answers ANSWERS = answers(Catalog.bundled());
    private static final VerificationReply REPORT = new Verification(ANSWERS, "test").report(Optional.empty(), true);

    private static Answers answers(Catalog catalog) {
        ObjectMapper mapper = new ObjectMapper();
        new JsonSettings().customize(mapper);
        RequestReader reader = new RequestReader(
                new Refrigerants(catalog, new Equilibria(), new TransportLibrary(catalog)), Constraints.validator());
        return new Answers(new Exchange(reader, new Trust("test", SafetyGroups.bundled())), mapper);
    }

    private static List<VerifiedValue> values(VerificationReply report) {
        return report.sources().stream()
                .flatMap(source -> source.values().stream())
                .toList();
    }

    private static VerifiedValue value(VerificationReply report, String id, String quantity) {
        return values(report).stream()
                .filter(value -> value.id().equals(id) && value.quantity().equals(quantity))
                .findFirst()
                .orElseThrow();
    }

    private static ObjectNode row(JsonNode file, String id) {
        for (JsonNode row : file.get("rows")) {
            if (row.get("id").textValue().equals(id)) {
                return (ObjectNode) row;
            }
        }
        throw new IllegalArgumentException(id);
    }

    private static VerificationReply report(JsonNode file, String source) {
        return new Verification(ANSWERS, "test", new PublishedValues(file)).report(Optional.of(source), true);
    }

    @Test
    void everyValueIsMetOrKnown() {
        assertThat(values(REPORT).stream().filter(value -> value.outcome() == VerifiedOutcome.UNEXPECTED))
                .isEmpty();
        assertThat(REPORT.passed()).isTrue();
        assertThat(REPORT.totals().values()).isEqualTo(VALUES);
        assertThat(REPORT.totals().knownDeviations()).isEqualTo(KNOWN);
        assertThat(REPORT.totals().met()).isEqualTo(VALUES - KNOWN);
        assertThat(REPORT.totals().worstDeviation()).isLessThanOrEqualTo(1 + 1e-9);
        assertThat(REPORT.totals().read()
                        + REPORT.totals().fromMemory()
                        + REPORT.totals().derived())
                .isEqualTo(VALUES);
    }

    @Test
    void countsOfSourcesAddUp() {
        assertThat(REPORT.sources()).hasSize(60);
        assertThat(REPORT.sources()).allSatisfy(source -> {
            assertThat(source.totals().values()).isEqualTo(source.values().size());
            assertThat(source.totals().met() + source.totals().knownDeviations())
                    .isEqualTo(source.totals().values());
        });
        assertThat(REPORT.sources().stream()
                        .mapToInt(source -> source.totals().values())
                        .sum())
                .isEqualTo(VALUES);
    }

    /** Nothing hides behind a bound: it is that of the deviation itself, and where none is needed there is none. */
    @Test
    void boundsOfKnownDeviationsAreTight() {
        assertThat(values(REPORT)).allSatisfy(value -> {
            if (value.outcome() == VerifiedOutcome.MET) {
                assertThat(value.knownDifference()).as(value.id()).isNull();
            } else {
                assertThat(value.knownDifference())
                        .as(value.id() + ' ' + value.quantity())
                        .isBetween(Math.abs(value.difference()), TIGHT * Math.abs(value.difference()));
                assertThat(value.reason()).as(value.id()).isNotBlank();
            }
        });
    }

    @Test
    void aValueThatIsPrintedOtherwiseIsFound() {
        JsonNode file = PublishedValues.file();
        ObjectNode value = (ObjectNode) row(file, "R290-LMW-1").at("/values/0");
        assertThat(value.get("printed").textValue()).isEqualTo("2.3795138");
        value.put("printed", "2.3795139");
        VerificationReply report = report(file, "LMW2009");
        assertThat(report.passed()).isFalse();
        assertThat(report.totals().unexpected()).isEqualTo(1);
        VerifiedValue found = value(report, "R290-LMW-1", "p_MPa");
        assertThat(found.outcome()).isEqualTo(VerifiedOutcome.UNEXPECTED);
        assertThat(found.deviation()).isBetween(1.0, 3.0);
    }

    /** Known for one size, unexpected for another. */
    @Test
    void aKnownDeviationThatGrowsIsFound() {
        JsonNode file = PublishedValues.file();
        ObjectNode value = (ObjectNode) row(file, "pws-25").at("/values/0");
        value.put("printed", "3169.5");
        VerificationReply report = report(file, "ASHRAE_F17");
        assertThat(value(report, "pws-25", "value").outcome()).isEqualTo(VerifiedOutcome.UNEXPECTED);
        assertThat(value(report, "pws-25", "value").reason()).isNull();
    }

    @Test
    void aRequestThatIsRefusedIsFound() {
        JsonNode file = PublishedValues.file();
        row(file, "R290-LMW-1")
                .put("request", "properties/state?refrigerant=R-290&temperature=2000+K&density=1+kg_per_m3");
        VerifiedValue found = value(report(file, "LMW2009"), "R290-LMW-1", "p_MPa");
        assertThat(found.outcome()).isEqualTo(VerifiedOutcome.UNEXPECTED);
        assertThat(found.calculated()).isNull();
        assertThat(found.reason()).contains("Outside the range");
    }

    /** One digit of one coefficient of propane; the last that the paper prints of it. */
    @Test
    void aWrongCoefficientIsFound() throws Exception {
        Catalog catalog = Catalog.bundled();
        Verification verification = new Verification(answers(with(catalog, "0.042910051", "0.042910052")), "test");
        VerificationReply report = verification.report(Optional.of("LMW2009"), true);
        assertThat(report.passed()).isFalse();
        assertThat(value(report, "R290-LMW-1", "p_MPa").outcome()).isEqualTo(VerifiedOutcome.UNEXPECTED);
        Verification same = new Verification(answers(with(Catalog.bundled(), "0.042910051", "0.042910051")), "test");
        assertThat(same.report(Optional.of("LMW2009"), false).passed()).isTrue();
    }

    /** A catalog whose propane has another number in its file; there is no way to this but into its memory. */
    @SuppressWarnings("unchecked")
    private static Catalog with(Catalog catalog, String number, String other)
            throws ReflectiveOperationException, IOException {
        try (InputStream in = VerificationTest.class.getResourceAsStream("/fluids/r-290.json")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            assertThat(text).containsOnlyOnce(number);
            byte[] altered = text.replace(number, other).getBytes(StandardCharsets.UTF_8);
            Field loaded = Catalog.class.getDeclaredField("loaded");
            loaded.setAccessible(true);
            ((Map<String, Fluid>) loaded.get(catalog))
                    .put("R-290", FluidReader.read(new ByteArrayInputStream(altered)));
            return catalog;
        }
    }

    private static Document xml(VerificationReply report) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(VerificationXml.of(report))));
    }

    @Test
    void xmlHoldsEveryValueUnderItsName() throws Exception {
        Document xml = xml(REPORT);
        NodeList suites = xml.getElementsByTagName("testsuite");
        assertThat(suites.getLength()).isEqualTo(60);
        assertThat(xml.getDocumentElement().getAttribute("failures")).isEqualTo("0");
        assertThat(xml.getElementsByTagName("testcase").getLength()).isEqualTo(VALUES);
        assertThat(xml.getElementsByTagName("system-out").getLength()).isEqualTo(KNOWN);
        for (int i = 0; i < suites.getLength(); i++) {
            NodeList tests = ((Element) suites.item(i)).getElementsByTagName("testcase");
            Set<String> names = new HashSet<>();
            for (int j = 0; j < tests.getLength(); j++) {
                assertThat(names.add(((Element) tests.item(j)).getAttribute("name")))
                        .isTrue();
            }
        }
    }

    @Test
    void xmlAndPageTellOfAFailureAndEscapeIt() throws Exception {
        JsonNode file = PublishedValues.file();
        ObjectNode row = row(file, "R290-LMW-1");
        row.put("place", "<script>alert(1)</script> & ]]> \"table\"");
        ((ObjectNode) row.at("/values/0")).put("printed", "9.3795139");
        for (JsonNode source : file.get("sources")) {
            if (source.get("source").textValue().equals("LMW2009")) {
                ((ObjectNode) source).put("citation", "<img src=x onerror=alert(2)>");
            }
        }
        VerificationReply report = report(file, "LMW2009");
        Document xml = xml(report);
        assertThat(xml.getElementsByTagName("failure").getLength()).isEqualTo(1);
        assertThat(xml.getElementsByTagName("failure").item(0).getTextContent())
                .contains("printed 9.3795139 MPa_a", "/v1/properties/state?refrigerant=R-290");
        String page = VerificationPage.of(report, true);
        assertThat(page)
                .contains(
                        "1 of 87 values",
                        "Not as published",
                        "&lt;script&gt;alert(1)&lt;/script&gt; &amp; ]]&gt;",
                        "&lt;img src=x onerror=alert(2)&gt;")
                .doesNotContain("<script", "<img");
    }

    @Test
    void pageShowsSourcesReasonsAndGaps() {
        String page = VerificationPage.of(REPORT, false);
        assertThat(page)
                .contains(
                        VALUES + " values, asked of this service for this page",
                        "<table id=\"sources\">",
                        "<table id=\"reasons\">",
                        "IAPWS-IF97, another formulation of water",
                        "/v1/verification?format=html&amp;source=TRB1994")
                .doesNotContain("Not as published", "<table class=\"values\">", "{#", "{report", "{totals", "NaN")
                .satisfies(text -> assertThat(text.split("<tr>").length - 1)
                        .isEqualTo(2
                                + 60
                                + (int) values(REPORT).stream()
                                        .map(VerifiedValue::reason)
                                        .filter(reason -> reason != null)
                                        .distinct()
                                        .count()));
    }

    @Test
    void onlyOneSourceIsAskedForWhereOneIsNamed() {
        VerificationReply report = new Verification(ANSWERS, "test").report(Optional.of("L2003"), true);
        assertThat(report.sources()).isEmpty();
        assertThat(report.leftOut()).hasSize(1);
        VerificationReply borg = new Verification(ANSWERS, "test").report(Optional.of("BORG"), false);
        assertThat(borg.sources()).hasSize(1);
        assertThat(borg.sources().get(0).values()).isNull();
        assertThat(borg.totals().values()).isEqualTo(10);
    }
}
