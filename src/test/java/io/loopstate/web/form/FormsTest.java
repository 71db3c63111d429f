package io.loopstate.web.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.web.dto.UnitsReply;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.ProblemException;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Forms of a reply, without a server. */
class FormsTest {
    private static final String REPLY = """
            {"points": [
               {"name": "inlet", "phase": "vapor", "temperature": {"value": -12.5, "unit": "degC"}},
               {"name": "outlet", "phase": "vapor", "temperature": {"value": 61.25, "unit": "degC"},
                "superheat": {"value": 20, "unit": "K"}}],
             "performance": {"pressureRatio": 4.5, "work": {"value": 1.0E-5, "unit": "kJ_per_kg"}},
             "note": "=1+1",
             "warnings": [{"code": "LOW_SUPERHEAT", "message": "a <b> & c"}, {"code": "OTHER"}],
             "basis": {"engineVersion": "1", "atmosphere": {"pressure": {"value": 101.325, "unit": "kPa_a"}}}}
            """;

    private static JsonNode reply() throws Exception {
        return new ObjectMapper().readTree(REPLY);
    }

    private static Layout layout(String query) {
        return LayoutReader.read(parameters(query), Form.JSON).layout();
    }

    private static Map<String, List<String>> parameters(String query) {
        return query.isEmpty()
                ? Map.of()
                : List.of(query.split("&")).stream()
                        .map(pair -> pair.split("=", 2))
                        .collect(Collectors.toMap(pair -> pair[0], pair -> List.of(pair[1])));
    }

    private static String write(String query) throws Exception {
        return Renderer.reply(layout(query), "title", reply(), Object.class);
    }

    @ParameterizedTest
    @CsvSource({
        "1.0E-5, 0.00001",
        "1.0E23, 1E+23",
        "-0.0, 0",
        "25.0, 25",
        "1e2, 100",
        "0.1, 0.1",
        "3.2562464760289322, 3.2562464760289322",
        "12345678901, 12345678901",
        "2.2250738585072014E-308, 2.2250738585072014E-308"
    })
    void numbersReadBackToTheSameNumber(String json, String text) throws Exception {
        JsonNode number = new ObjectMapper().readTree(json);
        String written = NumberText.of(number, OptionalInt.empty(), '.');
        assertThat(written).isEqualTo(text);
        assertThat(Double.parseDouble(written)).isEqualTo(number.doubleValue());
    }

    @ParameterizedTest
    @CsvSource({"3.25624, 3, 3.26", "2.5, 1, 2", "3.5, 1, 4", "1234567, 2, 1200000", "0.00123456, 4, 0.001235"})
    void digitsRoundHalfToEven(String json, int digits, String text) throws Exception {
        assertThat(NumberText.of(new ObjectMapper().readTree(json), OptionalInt.of(digits), '.'))
                .isEqualTo(text);
    }

    @Test
    void rowHoldsEveryValueWithItsUnitInTheHead() throws Exception {
        assertThat(write("format=csv"))
                .isEqualTo("pointsInletName,pointsInletPhase,pointsInletTemperature_degC,pointsOutletName,"
                        + "pointsOutletPhase,pointsOutletTemperature_degC,pointsOutletSuperheat_K,"
                        + "performancePressureRatio,performanceWork_kJ_per_kg,note,warnings,engineVersion\r\n"
                        + "inlet,vapor,-12.5,outlet,vapor,61.25,20,4.5,0.00001,'=1+1,LOW_SUPERHEAT; OTHER,1\r\n");
    }

    @Test
    void arrayBecomesRows() throws Exception {
        assertThat(write("format=tsv&pick=points"))
                .isEqualTo("name\tphase\ttemperature_degC\tsuperheat_K\r\n"
                        + "inlet\tvapor\t-12.5\t\r\n"
                        + "outlet\tvapor\t61.25\t20\r\n");
    }

    @Test
    void decimalCommaParts() throws Exception {
        assertThat(write("format=csv&pick=pressureRatio,points.inlet.temperature&dec=,&bom=1"))
                .isEqualTo("\uFEFFperformancePressureRatio;pointsInletTemperature_degC\r\n4,5;-12,5\r\n");
    }

    @ParameterizedTest
    @CsvSource({
        "pressureRatio, 4.5",
        "performancePressureRatio, 4.5",
        "performance.pressureRatio, 4.5",
        "/performance/pressureRatio, 4.5",
        "superheat, 20",
        "/points/1/superheat, 20",
        "/points/1/superheat/value, 20",
        "/points/1/superheat/unit, K",
        "pointsInletPhase, vapor",
        "/warnings/0/code, LOW_SUPERHEAT",
        "basisAtmospherePressure, 101.325"
    })
    void pickMeansOneValue(String pick, String value) throws Exception {
        assertThat(write("format=txt&pick=" + pick)).isEqualTo(value);
    }

    @ParameterizedTest
    @CsvSource({
        "temperature, ambiguous-name",
        "presureRatio, unknown-value",
        "/performance/nothing, unknown-value",
        "performance, several-values",
        "/points, several-values",
        "/, unknown-value",
        "class, unknown-value"
    })
    void pickOfNothingOrOfSeveralIsRefused(String pick, String code) {
        assertThatThrownBy(() -> write("format=txt&pick=" + pick))
                .isInstanceOfSatisfying(
                        ProblemException.class,
                        refusal -> assertThat(refusal.problem().errors())
                                .singleElement()
                                .satisfies(fault -> assertThat(fault.code()).isEqualTo(code))
                                .satisfies(fault -> assertThat(fault.got()).isEqualTo(pick)));
    }

    @Test
    void hintKnowsTheEndsOfNames() {
        assertThatThrownBy(() -> write("format=txt&pick=presureRatio"))
                .isInstanceOfSatisfying(
                        ProblemException.class,
                        refusal -> assertThat(refusal.problem().errors().get(0).hint())
                                .isEqualTo("Did you mean pressureRatio?"));
    }

    @Test
    void listOfWordsIsOneCell() throws Exception {
        JsonNode units = new ObjectMapper()
                .readTree(
                        "{\"kinds\": [{\"kind\": \"length\", \"units\": [{\"unit\": \"m\", \"spellings\": [\"meter\", \"metre\"]},"
                                + " {\"unit\": \"ft\", \"spellings\": [\"foot\"]}]}]}");
        assertThat(Renderer.reply(layout("format=csv"), "title", units, UnitsReply.class))
                .isEqualTo("kind,unitsUnit,unitsSpellings\r\nlength,m,meter; metre\r\nlength,ft,foot\r\n");
    }

    @Test
    void xmlIsFlatAndEscaped() throws Exception {
        assertThat(write("format=xml&pick=performance,/warnings/0/message"))
                .isEqualTo("<?xml version=\"1.0\" encoding=\"UTF-8\"?><reply>"
                        + "<performancePressureRatio>4.5</performancePressureRatio>"
                        + "<performanceWork unit=\"kJ_per_kg\">0.00001</performanceWork>"
                        + "<warnings0Message>a &lt;b&gt; &amp; c</warnings0Message></reply>");
    }

    @ParameterizedTest
    @CsvSource({
        "format=foo, format, wrong-value",
        "format=txt, pick, missing",
        "'format=txt&pick=a,b', pick, wrong-value",
        "'format=csv&pick=a,,b', pick, wrong-value",
        "pick=a, pick, not-applicable",
        "digits=0, digits, wrong-value",
        "digits=18, digits, wrong-value",
        "format=csv&sep=x, sep, wrong-value",
        "'format=csv&dec=,&sep=comma', sep, wrong-value",
        "errors=all, errors, wrong-value",
        "bom=yes, bom, wrong-value"
    })
    void faultOfThePresentationIsTold(String query, String parameter, String code) {
        assertThat(LayoutReader.read(parameters(query), Form.JSON).faults())
                .singleElement()
                .extracting(Fault::parameter, Fault::code)
                .containsExactly(parameter, code);
    }

    @ParameterizedTest
    @CsvSource({"=1+1, '''=1+1'", "+a, '''+a'", "-a, '''-a'", "@a, '''@a'", "a=1, a=1", "'', ''"})
    void textThatASpreadsheetWouldRunIsHarmless(String text, String cell) {
        assertThat(SeparatedText.harmless(text)).isEqualTo(cell);
    }
}
