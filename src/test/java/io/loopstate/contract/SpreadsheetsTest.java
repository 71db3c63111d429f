package io.loopstate.contract;

import static org.assertj.core.api.Assertions.assertThat;

import io.loopstate.testing.Http;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.xml.XmlPath;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every request in the spreadsheets is answered with the value that stands beside it. */
@QuarkusTest
class SpreadsheetsTest {
    private static final Path FOLDER = Path.of("examples", "spreadsheets");
    private static final String SERVICE = "http://localhost:8080";

    /** A block of one formula and, after it, what it gives. */
    private static final Pattern SHOWN = Pattern.compile("```\\n(=[^\\n]*)\\n```\\n\\nGives `([^`]+)`");

    private static final Pattern ADDRESS = Pattern.compile("\"" + SERVICE + "(/[^\"]*)\"");
    private static final Pattern CELL = Pattern.compile("[,;](\\d+)[,;](\\d+)\\)$");
    private static final Pattern NODE = Pattern.compile("//(\\w+)");
    private static final Pattern PAIR = Pattern.compile("(\\w+) = \"([^\"]*)\"");
    private static final Pattern GIVEN = Pattern.compile("(\\w+) = (-?[\\d.]+)");

    /** A formula and its value. */
    record Shown(String formula, String value) {}

    static Stream<Shown> formulas() {
        return SHOWN.matcher(read("README.md")).results().map(match -> new Shown(match.group(1), match.group(2)));
    }

    @Test
    void everyFormulaOfTheTextHasAValue() {
        long formulas =
                read("README.md").lines().filter(line -> line.startsWith("=")).count();
        assertThat(formulas().count()).isEqualTo(formulas).isGreaterThan(5);
    }

    @ParameterizedTest
    @MethodSource("formulas")
    void formulaGivesItsValue(Shown shown) {
        assertThat(shown.formula().split("\""))
                .allSatisfy(text -> assertThat(text).hasSizeLessThan(256));
        MatchResult address = ADDRESS.matcher(shown.formula().replace("\"&\"", ""))
                .results()
                .findFirst()
                .orElseThrow();
        String reply = get(address.group(1));
        String value;
        if (shown.formula().contains("IMPORTDATA")) {
            MatchResult cell =
                    CELL.matcher(shown.formula()).results().findFirst().orElseThrow();
            String line = reply.split("\r\n")[Integer.parseInt(cell.group(1)) - 1];
            value = line.split(",")[Integer.parseInt(cell.group(2)) - 1];
        } else if (shown.formula().contains("XML")) {
            value = node(
                    reply,
                    NODE.matcher(shown.formula())
                            .results()
                            .reduce((a, b) -> b)
                            .orElseThrow()
                            .group(1));
        } else {
            value = reply;
        }
        assertThat(value).isEqualTo(shown.value());
    }

    @ParameterizedTest
    @ValueSource(strings = {"excel/readings.pq", "excel/pressure-temperature.pq"})
    void queryGivesItsValues(String file) {
        String text = read(file);
        String path = text.replaceAll("(?s).*RelativePath = \"([^\"]*)\".*", "$1");
        String query = PAIR.matcher(text.replaceAll("(?s).*Query = \\[(.*?)\\].*", "$1"))
                .results()
                .map(pair -> pair.group(1) + '=' + URLEncoder.encode(pair.group(2), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        List<String> lines = get('/' + path + '?' + query).lines().toList();
        Map<String, String> first = new LinkedHashMap<>();
        for (int i = 0; i < lines.get(0).split(",").length; i++) {
            first.put(lines.get(0).split(",")[i], lines.get(1).split(",")[i]);
        }
        Map<String, String> given = GIVEN.matcher(text.lines()
                        .filter(line -> line.startsWith("// Gives"))
                        .findFirst()
                        .orElseThrow())
                .results()
                .collect(Collectors.toMap(pair -> pair.group(1), pair -> pair.group(2)));
        assertThat(first).isEqualTo(given);
        assertThat(given.keySet()).allSatisfy(column -> assertThat(text).contains("{\"" + column + "\", type number}"));
    }

    /** Values as they were stored; that the formulas make this request of the cells is the matter of the profile office. */
    @Test
    void sheetHoldsWhatItsRequestsGive() {
        Document sheet = Jsoup.parse(read("walk-in-cooler.fods"), "", Parser.xmlParser());
        String request = sheet.select("table|table-cell[table:formula]").first().text();
        assertThat(request).startsWith(SERVICE + "/v1/");
        Pattern call = Pattern.compile("WEBSERVICE\\(\\[\\.\\$B\\$11]&\"([^\"]*)\"\\)");
        List<String> checked = new ArrayList<>();
        for (Element cell : sheet.select("table|table-cell[table:formula*=WEBSERVICE]")) {
            String formula = cell.attr("table:formula");
            String reply = get(request.substring(SERVICE.length())
                    + call.matcher(formula).results().findFirst().orElseThrow().group(1));
            String value = formula.contains("FILTERXML")
                    ? node(
                            reply,
                            NODE.matcher(formula)
                                    .results()
                                    .findFirst()
                                    .orElseThrow()
                                    .group(1))
                    : reply;
            assertThat(cell.text()).isEqualTo(value);
            if (cell.attr("office:value-type").equals("float")) {
                assertThat(cell.attr("office:value")).isEqualTo(value);
            }
            checked.add(formula);
        }
        assertThat(checked).hasSize(5);
    }

    @Test
    void linkedTableHoldsWhatItsRequestGives() {
        Document sheet = Jsoup.parse(read("walk-in-cooler.fods"), "", Parser.xmlParser());
        Element link = sheet.select("table|cell-range-source").first();
        List<List<String>> reply = get(link.attr("xlink:href").substring(SERVICE.length()))
                .lines()
                .map(line -> List.of(line.split(",")))
                .toList();
        Element row = link.parents().select("table|table-row").first();
        List<List<String>> stored = new ArrayList<>();
        for (Element each = row; each != null; each = each.nextElementSibling()) {
            stored.add(each.select("table|table-cell").eachText());
        }
        assertThat(stored).isEqualTo(reply);
        assertThat(link.attr("table:last-row-spanned")).isEqualTo(Integer.toString(reply.size()));
        // 1033 is English of the United States: the numbers are read alike in every country.
        assertThat(link.attr("table:filter-options")).isEqualTo("44,34,76,1,,1033,false,true");
    }

    private static String node(String xml, String name) {
        return new XmlPath(xml).getString("reply." + name);
    }

    /** A machine that has just started and is busy may ask to be asked again, which spreadsheets do. */
    private static String get(String target) {
        int tries = 1;
        while (Http.get(target).extract().statusCode() == 503 && tries < 4) {
            tries++;
        }
        return Http.get(target).statusCode(200).extract().asString();
    }

    private static String read(String file) {
        try {
            return Files.readString(FOLDER.resolve(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
