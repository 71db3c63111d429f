package io.loopstate.web.verify;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import io.loopstate.web.dto.VerifyReport;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Reports are well-formed whatever a file holds. */
class ReportsTest {
    private static final List<String> HOSTILE = List.of(
            "quotes \" ' and <tags> & entities &amp; ]]> end",
            "# not a directive # SKIP",
            "back\\slash \\# and # TODO",
            "1..5",
            "not ok 7 - forged",
            "---",
            "=1+1",
            "snow ☃ emoji 😀 combining e\u0301 right-to-left \u202e");

    /** A case that passes and one that fails for each id, and one with a warning. */
    private static VerifyReport report() {
        List<String> cases = new ArrayList<>();
        for (String id : HOSTILE) {
            cases.add(hostile(id, "\"pointer\": \"/dew/phase\", \"text\": \"vapor\""));
            cases.add(hostile("failing " + id, "\"pointer\": \"/dew/phase\", \"text\": " + quoted(id)));
        }
        cases.add("{\"id\": \"near the critical point\", \"operation\": \"properties/saturation\", \"request\": "
                + "{\"refrigerant\": \"R-744\", \"temperature\": \"30.9 degC\"}, \"expectedStatus\": 200}");
        cases.add(hostile(
                "control characters", "\"pointer\": \"/dew/phase\", \"text\": \"\\u0000\\u001b\\n]]>\\ud800\""));
        return Files.verify(cases.toArray(String[]::new));
    }

    private static String hostile(String id, String expectation) {
        return "{\"id\": " + quoted(id) + ", " + Files.REQUEST + ", \"expect\": [{" + expectation + "}]}";
    }

    private static String quoted(String text) {
        try {
            return Files.MAPPER.writeValueAsString(text);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void xmlHoldsEveryCaseUnderItsName() throws Exception {
        VerifyReport report = report();
        Document xml = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(JUnitXml.of(report))));
        Element suite = (Element) xml.getElementsByTagName("testsuite").item(0);
        assertThat(suite.getAttribute("name")).isEqualTo("suite");
        assertThat(suite.getAttribute("tests")).isEqualTo("18");
        assertThat(suite.getAttribute("failures")).isEqualTo("9");
        NodeList tests = xml.getElementsByTagName("testcase");
        List<String> names = new ArrayList<>();
        for (int i = 0; i < tests.getLength(); i++) {
            Element test = (Element) tests.item(i);
            names.add(test.getAttribute("name"));
            assertThat(test.getAttribute("classname")).isEqualTo("suite");
            boolean failed = test.getElementsByTagName("failure").getLength() == 1;
            assertThat(failed).isEqualTo(!report.cases().get(i).passed());
        }
        assertThat(names).doesNotHaveDuplicates();
        assertThat(names).isEqualTo(report.cases().stream().map(one -> one.id()).toList());
        assertThat(xml.getElementsByTagName("system-out").getLength()).isEqualTo(1);
        assertThat(xml.getElementsByTagName("system-out").item(0).getTextContent())
                .contains("NEAR_CRITICAL");
        assertThat(xml.getElementsByTagName("failure").item(0).getTextContent()).contains(HOSTILE.get(0));
    }

    /** The grammar of version 14, as far as it is used: version, plan, comments, test points with YAML below them. */
    @Test
    void tapKeepsItsGrammar() throws Exception {
        VerifyReport report = report();
        String tap = Tap.of(report);
        assertThat(tap).startsWith("TAP version 14\n1..18\n# suite\n").endsWith("\n");
        Pattern point = Pattern.compile("(not )?ok ([0-9]+) - ((?:[^#\\\\]|\\\\#|\\\\\\\\)*)");
        List<String> names = new ArrayList<>();
        StringBuilder yaml = null;
        int documents = 0;
        for (String line : tap.lines().skip(3).toList()) {
            if (line.equals("  ---")) {
                yaml = new StringBuilder();
            } else if (line.equals("  ...")) {
                JsonNode block = new ObjectMapper(new YAMLFactory()).readTree(yaml.toString());
                assertThat(block.has("failures") || block.has("warnings")).isTrue();
                yaml = null;
                documents++;
            } else if (yaml != null) {
                assertThat(line).startsWith("  ");
                yaml.append(line).append('\n');
            } else {
                Matcher matcher = point.matcher(line);
                assertThat(matcher.matches()).as(line).isTrue();
                assertThat(matcher.group(1) == null)
                        .isEqualTo(report.cases().get(names.size()).passed());
                names.add(matcher.group(3).replaceAll("\\\\([#\\\\])", "$1"));
                assertThat(matcher.group(2)).isEqualTo(Integer.toString(names.size()));
            }
        }
        assertThat(names).isEqualTo(report.cases().stream().map(one -> one.id()).toList());
        assertThat(documents).isEqualTo(10);
    }

    @Test
    void reportsAreTheSameEachTime() {
        VerifyReport report = report();
        assertThat(JUnitXml.of(report())).isEqualTo(JUnitXml.of(report));
        assertThat(Tap.of(report())).isEqualTo(Tap.of(report));
    }

    /** Mismatches as a problem stand at their places in the file. */
    @Test
    void mismatchesHaveTheirPlaces() {
        assertThat(Mismatch.of(report()).errors()).hasSize(9).first().satisfies(fault -> {
            assertThat(fault.pointer()).isEqualTo("#/cases/1/expect/0");
            assertThat(fault.code()).isEqualTo("mismatch");
        });
        assertThat(Mismatch.of(report()).type()).isEqualTo("urn:loopstate:problem:expectations-not-met");
    }
}
