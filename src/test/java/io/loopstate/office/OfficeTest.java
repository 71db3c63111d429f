package io.loopstate.office;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.testing.Http;
import io.loopstate.testing.Programs;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Spreadsheets recalculated by LibreOffice, and scripts run, against the service. */
@QuarkusTest
@Tag("office")
class OfficeTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Path PYTHON = Path.of("/usr/bin/python3");
    private static final Path SHEET = Path.of("examples", "spreadsheets", "walk-in-cooler.fods");
    private static final Path SCRIPT = Path.of("examples", "spreadsheets", "google", "loopstate.gs");
    private static final String SERVICE = "http://localhost:8080";
    private static final String READING = "office:value=\"42\"><text:p>42<";
    private static final String PROBE =
            "<table:table-cell office:value-type=\"string\"><text:p>Change the cells in the second column";

    @TestHTTPResource
    URI server;

    /** Another reading than the stored one, so that nothing stored passes for an answer; in a country of the decimal comma too. */
    @ParameterizedTest
    @CsvSource({"en-US, 1.5", "de-DE, '1,5'"})
    void sheetCalculatesWhatTheServiceAnswers(String country, String probe) throws Exception {
        assertThat(runs("soffice", "--version") && runs(PYTHON.toString(), "-c", "import uno"))
                .as("No LibreOffice: apt-get install libreoffice-calc-nogui python3-uno")
                .isTrue();
        String text = Files.readString(SHEET);
        assertThat(text).contains(READING, PROBE);
        Path copy = Path.of("target", "office-" + country + ".fods");
        String base = "http://" + server.getAuthority();
        Files.writeString(
                copy,
                text.replace(SERVICE, base)
                        .replace(READING, "office:value=\"42.5\"><text:p>42.5<")
                        .replace(
                                PROBE,
                                PROBE.replace(
                                        "office:value-type",
                                        "table:formula=\"of:=1.5&amp;&quot;&quot;\" office:value-type")));
        JsonNode sheets =
                MAPPER.readTree(Programs.run(PYTHON.toString(), "src/office/recalculate.py", copy.toString(), country));
        Map<String, JsonNode> cells = new HashMap<>();
        sheets.get("Readings").forEach(row -> cells.put(row.get(0).asText(), row.get(1)));
        assertThat(cells).containsKey(probe);
        String request = cells.get("Request").asText();
        assertThat(request).startsWith(base).contains("suctionPressure=42%2E5%20psig");
        JsonNode reply = Http.json(Http.get(request.substring(base.length())).statusCode(200));
        assertThat(cells.get("Superheat").doubleValue())
                .isEqualTo(reply.at("/superheat/value").doubleValue());
        assertThat(cells.get("Subcooling").doubleValue())
                .isEqualTo(reply.at("/subcooling/value").doubleValue());
        assertThat(cells.get("Pressure ratio").doubleValue())
                .isEqualTo(reply.get("pressureRatio").doubleValue());
        assertThat(cells.get("Evaporating, dew point").doubleValue())
                .isEqualTo(reply.at("/evaporating/dewTemperature/value").doubleValue());
        linkedTable(sheets.get("Chart"), text);
    }

    private static void linkedTable(JsonNode chart, String text) {
        String target = text.replaceAll("(?s).*xlink:href=\"" + SERVICE + "([^\"]*)\".*", "$1")
                .replace("&amp;", "&");
        List<String> lines =
                Http.get(target).statusCode(200).extract().asString().lines().toList();
        assertThat(chart.size()).isEqualTo(lines.size() + 2);
        for (int i = 0; i < lines.size(); i++) {
            String[] line = lines.get(i).split(",");
            for (int j = 0; j < line.length; j++) {
                JsonNode cell = chart.get(i + 2).get(j);
                if (i == 0) {
                    assertThat(cell.asText()).isEqualTo(line[j]);
                } else {
                    assertThat(cell.isNumber()).isTrue();
                    assertThat(cell.doubleValue()).isEqualTo(Double.parseDouble(line[j]), within(0.0));
                }
            }
        }
    }

    @Test
    void scriptGivesOneValueALogbookAndReasons() throws Exception {
        assertThat(runs("node", "--version") && runs("curl", "--version"))
                .as("No node or curl: apt-get install nodejs curl")
                .isTrue();
        JsonNode reply = Http.json(Http.get("/v1/cycle-points/readings?refrigerant=R-448A&suctionPressure=42+psig"
                        + "&suctionLineTemperature=35+degF&dischargePressure=260+psig&units=IP")
                .statusCode(200));
        double superheat = reply.at("/superheat/value").doubleValue();
        assertThat(script(
                                "LOOPSTATE",
                                "[\"cycle-points/readings\", \"superheat\", [[\"refrigerant\", \"R-448A\"],"
                                        + "[\"suctionPressure\", \"42 psig\"], [\"suctionLineTemperature\", \"35 degF\"],"
                                        + "[\"dischargePressure\", \"260 psig\"], [\"units\", \"IP\"], [\"\", \"\"]]]")
                        .doubleValue())
                .isEqualTo(superheat);
        JsonNode column = script(
                "LOOPSTATE_LOGBOOK",
                "[\"cycle-points/readings\", \"superheat\","
                        + "[[\"refrigerant\", \"suctionPressure\", \"suctionLineTemperature\", \"dischargePressure\"],"
                        + "[\"R-448A\", 42, \"35 degF\", \"260 psig\"], [\"\", \"\", \"\", \"\"],"
                        + "[\"R-448A\", \"42 psig\", \"35 degF\", \"260 psig\"], [\"\", \"\", \"\", \"\"]]]");
        assertThat(column).hasSize(4);
        assertThat(column.at("/0/0").asText()).contains("unit");
        assertThat(column.at("/1/0").textValue()).isEmpty();
        assertThat(column.at("/2/0").doubleValue()).isEqualTo(superheat);
        assertThat(column.at("/3/0").textValue()).isEmpty();
        assertThat(script("LOOPSTATE", "[\"cycle-points/readings\", \"superheat\", [[\"refrigerant\", \"R-999\"]]]")
                        .get("error")
                        .asText())
                .contains("refrigerant");
    }

    private JsonNode script(String function, String input) throws Exception {
        return MAPPER.readTree(Programs.run(
                "node",
                "src/office/apps-script.js",
                SCRIPT.toString(),
                "http://" + server.getAuthority(),
                function,
                input));
    }

    private static boolean runs(String... command) throws InterruptedException {
        try {
            Process process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return process.waitFor(2, TimeUnit.MINUTES) && process.exitValue() == 0;
        } catch (IOException e) {
            return false;
        }
    }
}
