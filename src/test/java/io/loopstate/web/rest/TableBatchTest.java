package io.loopstate.web.rest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.testing.Csv;
import io.loopstate.testing.Http;
import io.loopstate.testing.RawHttp;
import io.loopstate.testing.RowClient;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.math.BigDecimal;
import java.net.URI;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Tables of inputs in, the same tables with results out. */
@QuarkusTest
@Timeout(240)
class TableBatchTest {
    private static final String READINGS = "/v1/batch?operation=cycle-points/readings&units=IP&altitude=0+ft";
    private static final String SATURATION = "/v1/batch?operation=properties/saturation&pick=dew.pressure";

    @TestHTTPResource
    URI server;

    @Test
    void logbookGetsItsResultsBehindItsColumns() {
        String book = "Visit,refrigerant,suctionPressure_psig,Line,dischargePressure,liquidLineTemperature_degF\r\n"
                + "=1+1,R-290,18,10,160 psig,84\r\n"
                + "\"a, \"\"b\"\"\",R-290,oops,10,160 psig,84\r\n"
                + "late,R-290,18,-25 degC,160 psig,\r\n";
        List<List<String>> table = table(
                READINGS + "&columns=suctionLineTemperature_degF:Line&pass=Visit&pick=superheat,subcooling", book, ',');
        assertThat(table.get(0))
                .containsExactly(
                        "Visit",
                        "refrigerant",
                        "suctionPressure_psig",
                        "Line",
                        "dischargePressure",
                        "liquidLineTemperature_degF",
                        "superheat_delta_degF",
                        "subcooling_delta_degF",
                        "warnings",
                        "status",
                        "error");
        JsonNode single = Http.json(Http.get("/v1/cycle-points/readings?refrigerant=R-290&suctionPressure=18+psig"
                + "&suctionLineTemperature=10+degF&dischargePressure=160+psig&liquidLineTemperature=84+degF&units=IP"));
        List<String> first = table.get(1);
        assertThat(first.subList(0, 6)).containsExactly("'=1+1", "R-290", "18", "10", "160 psig", "84");
        assertThat(Double.parseDouble(first.get(6)))
                .isEqualTo(single.at("/superheat/value").doubleValue());
        assertThat(Double.parseDouble(first.get(7)))
                .isEqualTo(single.at("/subcooling/value").doubleValue());
        assertThat(first.get(8))
                .isEqualTo(String.join("; ", single.get("warnings").findValuesAsText("code")));
        assertThat(first.subList(9, 11)).containsExactly("200", "");
        assertThat(table.get(2).get(0)).isEqualTo("a, \"b\"");
        assertThat(table.get(2).subList(6, 10)).containsExactly("", "", "", "400");
        assertThat(table.get(2).get(10)).startsWith("#ERR NUMBER_MISSING: suctionPressure_psig: ");
        // Liquid at the compressor is a value, and its warning stands beside it.
        assertThat(Double.parseDouble(table.get(3).get(6))).isNegative();
        assertThat(table.get(3).subList(7, 11)).containsExactly("", "LIQUID_AT_COMPRESSOR", "200", "");
        assertThat(table).hasSize(4);
    }

    /** Saturation pressures of R-134a, kPa, four printed digits: see the source of each row in the table itself. */
    @Test
    void publishedTableIsAnsweredBesideItself() throws IOException {
        String published = Files.readString(Path.of("src/test/resources/reference/checks/saturation_tables_si.csv"));
        List<List<String>> table =
                table(SATURATION + "&columns=temperature_degC:T_C&pass=*&units=SI,pressure=kPa_a", published, ',');
        int calculated = table.get(0).indexOf("dewPressure_kPa_a");
        List<List<String>> rows = table.stream()
                .filter(row -> row.get(0).startsWith("R-134a-EP-"))
                .toList();
        assertThat(rows).hasSize(5);
        for (List<String> row : rows) {
            BigDecimal printed = new BigDecimal(row.get(table.get(0).indexOf("p_kPa")));
            assertThat(new BigDecimal(row.get(calculated)))
                    .as(row.get(0))
                    .isCloseTo(printed, within(printed.ulp().movePointLeft(1).multiply(BigDecimal.valueOf(5))));
        }
        assertThat(table).hasSize(Csv.read(published, ',').size());
    }

    @Test
    void queryHoldsWhereARowHasNoCell() {
        List<List<String>> table = table(
                SATURATION + "&refrigerant=R-134a&temperature=20+degC&units=SI,pressure=bar_g&altitude=700+m",
                "refrigerant,temperature_degF,atmosphericPressure\n,,\nR-290,,\nR-290,50,\n,50,\nR-290,50,1 bar_a\n",
                ',');
        assertThat(table.get(1)).containsOnly("");
        assertThat(bar(table.get(2))).isEqualTo(single("R-290", "20+degC&altitude=700+m"));
        assertThat(bar(table.get(3))).isEqualTo(single("R-290", "50+degF&altitude=700+m"));
        assertThat(bar(table.get(4))).isEqualTo(single("R-134a", "50+degF&altitude=700+m"));
        assertThat(bar(table.get(5))).isEqualTo(single("R-290", "50+degF&atmosphericPressure=1+bar_a"));
    }

    @Test
    void commaCountriesAreServed() {
        String book = "\uFEFFrefrigerant;suctionPressure_bar_g;suctionLineTemperature_degC;dischargePressure_bar_g\r\n"
                + "R-290;1,25;-12,5;11\r\n";
        List<List<String>> table =
                table("/v1/batch?operation=cycle-points/readings&dec=,&pick=superheat&bom=1&digits=4", book, ';');
        assertThat(table.get(0).get(0)).isEqualTo("\uFEFFrefrigerant");
        assertThat(table.get(0).get(4)).isEqualTo("superheat_K");
        JsonNode single = Http.json(Http.get("/v1/cycle-points/readings?refrigerant=R-290&suctionPressure=1.25+bar_g"
                + "&suctionLineTemperature=-12.5+degC&dischargePressure=11+bar_g&digits=4"));
        assertThat(table.get(1).get(4).replace(',', '.'))
                .isEqualTo(single.at("/superheat/value").asText());
        assertThat(table.get(1).get(4)).contains(",");
        assertThat(table.get(1).get(2)).isEqualTo("-12,5");
        assertThat(table.get(1).get(6)).isEqualTo("200");
    }

    @Test
    void tabsAndOldCharsetsAreRead() {
        String tabs = Http.post(
                        SATURATION + "&pass=Note",
                        "text/tab-separated-values",
                        "refrigerant\ttemperature\tNote\nR-134a\t0 degC\ta,b\n")
                .statusCode(200)
                .contentType("text/tab-separated-values; charset=utf-8")
                .extract()
                .asString();
        assertThat(Csv.read(tabs, '\t').get(1)).contains("R-134a", "a,b", "200");
        byte[] old = "refrigerant,Ort,temperature\nR-134a,Kühlraum,4 °C\n".getBytes(Charset.forName("windows-1252"));
        String read = Http.post(SATURATION + "&pass=Ort", "text/csv; charset=windows-1252", old)
                .statusCode(200)
                .extract()
                .asString();
        assertThat(Csv.read(read, ',').get(1)).contains("Kühlraum", "4 °C", "200");
        String wrong =
                Http.post(SATURATION + "&pass=Ort", "text/csv", old).extract().asString();
        assertThat(Csv.read(wrong, ',').get(1))
                .contains("400")
                .last()
                .asString()
                .startsWith("#ERR UNREADABLE_ROW: ");
        Http.post(SATURATION, "text/csv; charset=utf-16", "refrigerant\n")
                .statusCode(415)
                .body("errors[0].code", equalTo("unsupported-charset"));
    }

    @Test
    void badRowSpoilsNoOther() {
        String good = "R-134a,20 degC,ok\n";
        String book = "refrigerant,temperature,Note\n" + good
                + "R-134a,20 degC,ok,more\n"
                + "R-134a\n"
                + "R-134a,20 degC," + "x".repeat(70_000) + '\n'
                + "R-134a,200 degC,hot\n"
                + "R-134a,20 degC,5\" pipe\n"
                + good
                + "R-134a,20 degC,\"never closed\n" + good.repeat(3);
        List<List<String>> table = table(SATURATION + "&pass=Note", book, ',');
        assertThat(table.stream().skip(1).map(row -> row.get(5)))
                .containsExactly("200", "400", "400", "413", "422", "200", "200", "400", "200", "200", "200");
        assertThat(table.get(2).get(6)).contains("more cells than the head");
        assertThat(table.get(3).get(6)).startsWith("#ERR MISSING: temperature: ");
        assertThat(table.get(4).get(0)).isEmpty();
        assertThat(table.get(5).get(6)).startsWith("#ERR ABOVE_CRITICAL: temperature: ");
        assertThat(table.get(6).get(2)).isEqualTo("5\" pipe");
        assertThat(table.get(8).get(6)).contains("A quote is not closed");
    }

    @Test
    void thousandsOfRowsKeepTheirOrder() {
        StringBuilder book = new StringBuilder("n,refrigerant,temperature_degC\n");
        for (int i = 0; i < 3000; i++) {
            book.append(i)
                    .append(",R-134a,")
                    .append(i % 50 == 7 ? "x" : i % 80 - 20)
                    .append('\n');
        }
        List<List<String>> table = table(SATURATION + "&pass=n", book.toString(), ',');
        assertThat(table).hasSize(3001);
        String[] pressures = new String[80];
        for (int i = 0; i < 3000; i++) {
            List<String> row = table.get(i + 1);
            assertThat(row.get(0)).isEqualTo(Integer.toString(i));
            assertThat(row.get(5)).isEqualTo(i % 50 == 7 ? "400" : "200");
            if (i % 50 != 7) {
                pressures[i % 80] = pressures[i % 80] == null ? row.get(3) : pressures[i % 80];
                assertThat(row.get(3)).isEqualTo(pressures[i % 80]);
            }
        }
    }

    /** After the leading rows each row is answered before the next is sent. */
    @Test
    void rowIsAnsweredBeforeTheNextIsSent() throws IOException {
        try (RowClient client = new RowClient(server, SATURATION + "&refrigerant=R-134a", "text/csv")) {
            client.send("temperature_degC\n" + "20\n".repeat(64));
            for (int i = 0; i < 65; i++) {
                assertThat(client.line()).startsWith(i == 0 ? "temperature_degC,dewPressure_" : "20,");
            }
            for (int i = 0; i < 20; i++) {
                client.send(i + "\n");
                assertThat(client.line()).startsWith(i + ",").endsWith(",200,\r");
            }
            client.end();
            assertThat(client.line()).isEmpty();
        }
    }

    @Test
    void summaryFollowsAsTrailerOrAsRow() {
        String target = SATURATION + "&refrigerant=R-134a";
        String reply = RawHttp.sendInChunks(server, target, "text/csv", "temperature_degC\n20\nx\n\n,\n21\n", 1)
                .body();
        assertThat(reply)
                .endsWith("\r\n0\r\nBatch-Summary: {\"count\":3,\"succeeded\":2,\"refused\":1,"
                        + "\"statuses\":[{\"status\":200,\"count\":2},{\"status\":400,\"count\":1}]}\r\n\r\n");
        List<List<String>> table = table(target + "&summary=row", "temperature_degC\n20\nx\n", ',');
        assertThat(table.get(3)).containsExactly("summary", "", "", "", "2 rows: 1 with 200, 1 with 400");
        assertThat(table(target + "&summary=row", "temperature_degC\n", ',').get(1))
                .contains("0 rows");
    }

    /** What no leading row had has no column, and is named; picked values always have one. */
    @Test
    void valueThatComesLateIsNotDroppedInSilence() {
        String few = "R-290,18,10,160,\n".repeat(64) + "R-290,18,10,160,84\n";
        String book = "refrigerant,suctionPressure_psig,suctionLineTemperature_degF,dischargePressure_psig,"
                + "liquidLineTemperature_degF\n" + few;
        List<List<String>> all = table(READINGS, book, ',');
        assertThat(all.get(64)).last().isEqualTo("");
        assertThat(all.get(65).get(all.get(0).size() - 2)).isEqualTo("200");
        assertThat(all.get(65)).last().asString().startsWith("No column for ").contains("subcooling", "use pick");
        List<List<String>> picked = table(READINGS + "&pick=superheat,subcooling", book, ',');
        assertThat(picked.get(65)).last().asString().contains("subcooling");
    }

    @Test
    void textThatASpreadsheetWouldRunIsHarmless() {
        List<List<String>> table = table(
                SATURATION + "&pass=*",
                "=cmd(),refrigerant,temperature,-x\n@a,R-134a,20 degC,\"+1,2\"\n\"\ttab\",=1+1,20 degC,-1.5e3\n",
                ',');
        assertThat(table.get(0)).contains("'=cmd()", "'-x");
        assertThat(table.get(1)).contains("'@a", "'+1,2");
        assertThat(table.get(2)).contains("'\ttab", "'=1+1", "-1.5e3");
        assertThat(table.get(2)).last().asString().startsWith("#ERR ");
    }

    @Test
    void headingsOfTheClientStayItsOwn() {
        List<List<String>> table = table(
                "/v1/batch?operation=cycle-points/readings&pick=superheat&pass=*",
                "status,refrigerant,superheat_K,suctionPressure_bar_g,suctionLineTemperature_degC,dischargePressure_bar_g\n"
                        + "open,R-290,5,1,-10,11\n",
                ',');
        assertThat(table.get(0)).contains("status", "superheat_K", "replySuperheat_K", "replyStatus", "error");
        assertThat(table.get(0)).doesNotHaveDuplicates();
    }

    /** Files of another age, and texts that were converted twice. */
    @Test
    void carriageReturnsLoseNoCell() {
        String good = "R-134a,20 degC";
        refused(SATURATION, "refrigerant,temperature\r" + good + "\r", "unreadable-row");
        List<List<String>> table =
                table(SATURATION, "refrigerant,temperature\r\r\n" + good + "\r\n\r\r\n" + good + "\rR-290\n", ',');
        assertThat(table.stream().skip(1).filter(row -> row.size() > 1).map(row -> row.get(4)))
                .containsExactly("200", "400");
        assertThat(table.get(table.size() - 1).get(5)).contains("carriage return");
    }

    @Test
    void airIsRefusedWhereARowGivesItTwice() {
        List<List<String>> table = table(
                SATURATION + "&refrigerant=R-134a&altitude=700+m",
                "temperature,altitude,atmosphericPressure\n20 degC,100 m,1 bar_a\n20 degC,100 m,\n",
                ',');
        assertThat(table.get(1).get(6)).startsWith("#ERR TOO_MANY_INPUTS: ");
        assertThat(table.get(2).get(5)).isEqualTo("200");
    }

    @Test
    void headThatMeansNothingIsRefused() {
        JsonNode problem = Http.json(Http.post(
                        READINGS + "&columns=superheat&pass=Nobody",
                        "text/csv",
                        "refrigerant,suctonPressure_psig,suctionLineTemperature_psig,refrigerant\nR-290,1,2,3\n")
                .statusCode(400));
        assertThat(problem.findValuesAsText("code"))
                .contains("wrong-value", "unknown-column", "unknown-unit", "duplicate-column");
        assertThat(problem.findValuesAsText("hint")).contains("Did you mean suctionPressure?");
        Http.post("/v1/batch", "text/csv", "a\n1\n").statusCode(400).body("errors[0].parameter", equalTo("operation"));
        refused("/v1/batch?operation=cycle-points/reading", "a\n1\n", "unknown-operation");
        refused(READINGS + "&suctonPressure=1+psig", "refrigerant\n", "unknown-parameter");
        refused(READINGS + "&format=html", "refrigerant\n", "wrong-value");
        refused(READINGS + "&summary=yes", "refrigerant\n", "wrong-value");
        refused(READINGS + "&pick=superheet", head() + "R-290,18,10,160\n", "unknown-value");
        refused(READINGS, "\n\n", "missing-body");
        refused(READINGS + "&pass=*", "x,".repeat(500) + "x\n", "too-many-columns");
        Http.post(READINGS, "text/csv", "refrigerant;suctionPressure_psig\nR-290;18\n")
                .statusCode(400)
                .body("errors[0].hint", containsString("sep=semicolon"));
    }

    private static String head() {
        return "refrigerant,suctionPressure_psig,suctionLineTemperature_degF,dischargePressure_psig\n";
    }

    private static void refused(String target, String body, String code) {
        Http.post(target, "text/csv", body).statusCode(400).body("errors[0].code", equalTo(code));
    }

    private static double bar(List<String> row) {
        return Double.parseDouble(row.get(3));
    }

    private static double single(String refrigerant, String temperature) {
        return Http.json(Http.get("/v1/properties/saturation?units=SI,pressure=bar_g&refrigerant=" + refrigerant
                        + "&temperature=" + temperature))
                .at("/dew/pressure/value")
                .doubleValue();
    }

    private static List<List<String>> table(String target, String body, char separator) {
        return Csv.read(
                Http.post(target, "text/csv", body)
                        .statusCode(200)
                        .contentType("text/csv; charset=utf-8")
                        .extract()
                        .asString(),
                separator);
    }
}
