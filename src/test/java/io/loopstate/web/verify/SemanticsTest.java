package io.loopstate.web.verify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.web.dto.VerifyCaseReport;
import io.loopstate.web.dto.VerifyReport;
import io.loopstate.web.dto.VerifyValueReport;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What passes, what fails and what cannot be read. */
class SemanticsTest {
    private static final String PLAIN = "/dew/vaporQuality";

    /** The quality at the dew point is exactly 1, so that the rule itself is seen: |a - e| <= max(absolute, relative |e|). */
    @ParameterizedTest
    @CsvSource({
        "1, 0, 0, true",
        "0.9, 0.1, 0, true",
        "1.1, 0.1, 0, true",
        "1.1, 0.0999999999999, 0, false",
        "0.9, 0.0999999999999, 0, false",
        "0.8, 0, 0.25, true",
        "0.8, 0, 0.2499999999999, false",
        "1.25, 0, 0.2, true",
        "-1, 2, 0, true",
        "-1, 0, 2, true",
        "-1, 1.9, 1.9, false",
        "0, 0, 1000, false",
        "0, 1, 0, true",
        "0.8, 0.3, 0.1, true",
        "0.8, 0.1, 0.3, true",
        "0.8, 0.1, 0.1, false"
    })
    void numberPassesWithinTheLargerTolerance(double expected, double absolute, double relative, boolean passes) {
        VerifyValueReport report = Files.expect(
                "{\"pointer\": \"%s\", \"value\": %s, \"absoluteTolerance\": %s, ".formatted(PLAIN, expected, absolute)
                        + "\"relativeTolerance\": %s}".formatted(relative));
        assertThat(report.passed()).isEqualTo(passes);
        assertThat(report.actual().value()).isEqualTo(1);
        assertThat(report.tolerance().value())
                .isCloseTo(Math.max(absolute, relative * Math.abs(expected)), within(1e-15));
        assertThat(report.difference().value()).isCloseTo(1 - expected, within(1e-15));
    }

    /** 40 degC is 104 degF, 313.15 K and 563.67 degR, by the definitions of the scales. */
    @ParameterizedTest
    @CsvSource({
        "104, degF, 1e-9, delta_degF",
        "40, degC, 1e-9, K",
        "313.15, K, 1e-9, ",
        "563.67, degR, 1e-9, delta_degF",
        "40, °C, 1e-9, delta K"
    })
    void temperatureInAnyScale(double value, String unit, String tolerance, String toleranceUnit) {
        String step = toleranceUnit == null ? "" : ", \"toleranceUnit\": \"" + toleranceUnit + '"';
        VerifyValueReport report = Files.expect(
                "{\"pointer\": \"/dew/temperature\", \"value\": %s, \"unit\": \"%s\", \"absoluteTolerance\": %s%s}"
                        .formatted(value, unit, tolerance, step));
        assertThat(report.passed()).as(report.toString()).isTrue();
    }

    /** A tolerance of 1 delta_degF is 5/9 K; the difference is told in the steps of the scale expected. */
    @Test
    void toleranceInAnotherUnitOfDifferences() {
        String expectation = "{\"pointer\": \"/dew/temperature\", \"value\": %s, \"unit\": \"degC\", "
                + "\"absoluteTolerance\": 1, \"toleranceUnit\": \"delta_degF\"}";
        assertThat(Files.expect(expectation.formatted("39.45")).passed()).isTrue();
        VerifyValueReport missed = Files.expect(expectation.formatted("39.44"));
        assertThat(missed.passed()).isFalse();
        assertThat(missed.difference().unit()).isEqualTo("K");
        assertThat(missed.difference().value()).isCloseTo(0.56, within(1e-12));
        assertThat(missed.tolerance().value()).isCloseTo(5.0 / 9, within(1e-15));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"1 delta_degF\"", "{\"value\": 1, \"unit\": \"delta_degF\"}"})
    void toleranceWithItsUnit(String tolerance) {
        VerifyValueReport report = Files.expect(
                "{\"pointer\": \"/dew/temperature\", \"value\": 103.5, \"unit\": \"degF\", \"absoluteTolerance\": %s}"
                        .formatted(tolerance));
        assertThat(report.passed()).isTrue();
        assertThat(report.tolerance().unit()).isEqualTo("delta_degF");
        assertThat(report.tolerance().value()).isEqualTo(1);
    }

    /**
     * The gauge at 700 m counts from the standard atmosphere there, 93.194 kPa (U.S. Standard Atmosphere 1976), not from
     * 101.325 kPa: 8.13 kPa apart. The saturation pressure of R-134a at 40 degC is 1016.6 kPa (Tillner-Roth and Baehr 1994).
     */
    @Test
    void gaugePressureCountsFromTheAtmosphereOfTheCase() {
        VerifyValueReport report = Files.expect(
                "{\"pointer\": \"/dew/pressure\", \"value\": 923.4, \"unit\": \"kPa_g\", \"absoluteTolerance\": 0.05}");
        assertThat(report.passed()).as(report.toString()).isTrue();
        assertThat(report.difference().unit()).isEqualTo("kPa_diff");
        VerifyValueReport inchPound = Files.expect(
                "{\"pointer\": \"/dew/pressure\", \"value\": 133.93, \"unit\": \"psig\", \"absoluteTolerance\": \"0.01 psi_diff\"}");
        assertThat(inchPound.passed()).as(inchPound.toString()).isTrue();
    }

    @Test
    void quantityIsMeantByItsNumberToo() {
        assertThat(Files.expect("{\"pointer\": \"/dew/pressure/value\", \"value\": 1016.6, \"unit\": \"kPa_a\", "
                                + "\"relativeTolerance\": 1e-4}")
                        .passed())
                .isTrue();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/dew/phase | \"text\": \"vapor\" | true",
                "/dew/phase | \"value\": \"vapor\" | true",
                "/dew/phase | \"text\": \"Vapor\" | false",
                "/dew/phase | \"flag\": true | false",
                "/dew/pressure/unit | \"text\": \"kPa_a\" | true",
                "/dew/pressure | \"text\": \"kPa_a\" | false",
                "/dew/vaporQuality | \"text\": \"1.0\" | false",
                "/warnings | \"text\": \"\" | false"
            })
    void wordsPassIfEqual(String pointer, String value, boolean passes) {
        assertThat(Files.expect("{\"pointer\": \"" + pointer + "\", " + value + "}")
                        .passed())
                .isEqualTo(passes);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/dew/presure | Nothing is at /dew/presure. Did you mean /dew/pressure?",
                "/dow/pressure | Nothing is at /dow/pressure. Did you mean /dew/pressure?",
                "/latentheat | Nothing is at /latentheat. Did you mean /latentHeat?",
                "/engineVersion | Nothing is at /engineVersion. Did you mean /basis/engineVersion?",
                "/dew/pressure/value/deeper | Nothing is at /dew/pressure/value/deeper. /dew/pressure/value has nothing below it.",
                "/cautions/99 | elements 0 to",
                "/xyz | The reply has bubble, dew,",
            })
    void pointerThatLeadsNowhereFailsAndSaysWhatIsThere(String pointer, String message) {
        VerifyValueReport report =
                Files.expect("{\"pointer\": \"" + pointer + "\", \"value\": 1, \"absoluteTolerance\": 1}");
        assertThat(report.passed()).isFalse();
        assertThat(report.message()).contains(message);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/dew/pressure | \"value\": 1016.6, \"absoluteTolerance\": 1 | needs a unit",
                "/dew/pressure | \"value\": 1016.6, \"unit\": \"K\", \"absoluteTolerance\": 1 | a pressure in kPa_a",
                "/dew/pressure | \"value\": 140, \"unit\": \"psi\", \"absoluteTolerance\": 1 | gauge or absolute",
                "/dew/vaporQuality | \"value\": 1, \"unit\": \"kPa_a\", \"absoluteTolerance\": 1 | a dimensionless ratio",
                "/dew/temperature | \"value\": 40, \"unit\": \"delta_degF\", \"absoluteTolerance\": 1 | a temperature in degC",
                "/pressureGlide | \"value\": 0, \"unit\": \"psig\", \"absoluteTolerance\": 1 | a pressure difference in kPa_diff",
                "/dew/temperature | \"value\": 313.15, \"unit\": \"K\", \"relativeTolerance\": 0.1 | no relative tolerance",
                "/dew | \"value\": 1, \"absoluteTolerance\": 1 | no number here",
                "/dew/phase | \"value\": 1, \"absoluteTolerance\": 1 | no number here"
            })
    void whatCannotBeComparedFailsWithTheReason(String pointer, String value, String message) {
        VerifyValueReport report = Files.expect("{\"pointer\": \"" + pointer + "\", " + value + "}");
        assertThat(report.passed()).isFalse();
        assertThat(report.message()).contains(message);
    }

    /** A plain number is understood in percent. */
    @Test
    void ratioInPercent() {
        assertThat(Files.expect("{\"pointer\": \"/dew/vaporQuality\", \"value\": 100, \"unit\": \"pct\", "
                                + "\"absoluteTolerance\": 0}")
                        .passed())
                .isTrue();
    }

    private static final String BAD = "\"operation\": \"properties/saturation\", \"request\": "
            + "{\"refrigerant\": \"R-134a\", \"temperature\": \"200 degC\"}";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"expectProblem\": \"out-of-range\" | true",
                "\"expectProblem\": \"urn:loopstate:problem:out-of-range\" | true",
                "\"expectedStatus\": 422 | true",
                "\"expectProblem\": \"out-of-range\", \"expectedStatus\": 422 | true",
                "\"expectProblem\": \"invalid-request\" | false",
                "\"expectProblem\": \"out-of-range\", \"expectedStatus\": 400 | false",
                "\"expectedStatus\": 200 | false",
                "\"expectedStatus\": 422, \"expect\": [{\"pointer\": \"/errors/0/code\", \"text\": \"above-critical\"}] | true",
                "\"expectedStatus\": 422, \"expect\": [{\"pointer\": \"/errors/0/code\", \"text\": \"another\"}] | false",
                "\"expect\": [{\"pointer\": \"/status\", \"value\": 422, \"absoluteTolerance\": 0}] | false"
            })
    void refusalIsWhatWasExpected(String expected, boolean passes) {
        VerifyCaseReport report = Files.verify("{\"id\": \"hot\", " + BAD + ", " + expected + "}")
                .cases()
                .get(0);
        assertThat(report.passed()).as(report.toString()).isEqualTo(passes);
        assertThat(report.status()).isEqualTo(422);
        assertThat(report.problem().faults()).containsExactly("above-critical at #/temperature");
    }

    @Test
    void answerWhereARefusalIsExpectedFails() {
        VerifyReport report = Files.verify(
                "{\"id\": \"a\", " + Files.REQUEST + ", \"expectProblem\": \"out-of-range\"}",
                "{\"id\": \"b\", " + Files.REQUEST + ", \"expectedStatus\": 200}");
        assertThat(report.passed()).isFalse();
        assertThat(report.cases().get(0).message())
                .contains("out-of-range is expected")
                .contains("answered with 200");
        assertThat(report.cases().get(1).passed()).isTrue();
        assertThat(report.totals().casesPassed()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"value\": 1, \"absoluteTolerance\": 1} | missing@pointer",
                "{\"pointer\": \"dew\", \"value\": 1, \"absoluteTolerance\": 1} | pointer-malformed@pointer",
                "{\"pointer\": \"/dew\"} | value-missing@",
                "{\"pointer\": \"/dew\", \"value\": 1, \"text\": \"a\"} | value-missing@",
                "{\"pointer\": \"/dew\", \"value\": 1} | tolerance-missing@",
                "{\"pointer\": \"/dew\", \"value\": [1], \"absoluteTolerance\": 1} | wrong-type@value",
                "{\"pointer\": \"/dew\", \"value\": 1e999, \"absoluteTolerance\": 1} | number-not-finite@value",
                "{\"pointer\": \"/dew\", \"value\": 1, \"unit\": \"pisg\", \"absoluteTolerance\": 1} | unknown-unit@unit",
                "{\"pointer\": \"/dew\", \"value\": 1, \"unit\": \"degF\", \"absoluteTolerance\": 1} | tolerance-unit-missing@absoluteTolerance",
                "{\"pointer\": \"/dew\", \"value\": 1, \"unit\": \"degF\", \"absoluteTolerance\": 1, \"toleranceUnit\": \"degF\"} | unit-of-another-kind@toleranceUnit",
                "{\"pointer\": \"/dew\", \"value\": 1, \"unit\": \"degF\", \"relativeTolerance\": 0.1} | relative-temperature@relativeTolerance",
                "{\"pointer\": \"/dew\", \"value\": 1, \"absoluteTolerance\": -1} | tolerance-negative@absoluteTolerance",
                "{\"pointer\": \"/dew\", \"value\": 1, \"relativeTolerance\": -0.1} | tolerance-negative@relativeTolerance",
                "{\"pointer\": \"/dew\", \"value\": 1, \"relativeTolerance\": 0.1, \"toleranceUnit\": \"K\"} | not-applicable@toleranceUnit",
                "{\"pointer\": \"/dew\", \"text\": \"vapor\", \"absoluteTolerance\": 1} | not-applicable@absoluteTolerance",
                "{\"pointer\": \"/dew\", \"flag\": \"true\"} | wrong-type@flag",
                "{\"pointer\": \"/dew\", \"value\": 1, \"absoluteTolerance\": 1, \"tolerance\": 1} | unknown-name@tolerance"
            })
    void expectationThatCannotBeRead(String expectation, String fault) {
        assertThat(Files.faultsOf(expectation)).containsExactly(fault);
    }

    @Test
    void fileThatCannotBeRead() {
        Map<String, List<String>> files = Map.of(
                "[]",
                List.of("wrong-type@#"),
                "{}",
                List.of("missing@#/cases"),
                "{\"cases\": []}",
                List.of("wrong-length@#/cases"),
                "{\"cases\": [1]}",
                List.of("wrong-type@#/cases/0"),
                "{\"cases\": [{\"id\": \"a\", \"operation\": \"cycle-points/desing\", \"request\": {}, \"expectedStatus\": 400}]}",
                List.of("unknown-operation@#/cases/0/operation"),
                "{\"cases\": [{\"id\": \"a\", " + Files.REQUEST + "}]}",
                List.of("missing@#/cases/0"),
                "{\"cases\": [{" + Files.REQUEST + ", \"expectedStatus\": 500}]}",
                List.of("missing@#/cases/0/id", "wrong-value@#/cases/0/expectedStatus"),
                "{\"cases\": [{\"id\": \"a\\nb\", " + Files.REQUEST + ", \"expectProblem\": \"nonsense\"}]}",
                List.of("unprintable-character@#/cases/0/id", "unknown-problem@#/cases/0/expectProblem"));
        files.forEach((file, faults) -> assertThat(Files.faults(file)).as(file).isEqualTo(faults));
    }

    @Test
    void emptyListOfValuesIsNone() {
        String one = "{\"id\": \"one\", " + Files.REQUEST + ", \"expect\": [], \"expectedStatus\": 200}";
        assertThat(Files.verify(one).passed()).isTrue();
        assertThat(Files.faults("{\"cases\": [{\"id\": \"one\", " + Files.REQUEST + ", \"expect\": []}]}"))
                .containsExactly("wrong-length@#/cases/0/expect");
    }

    @Test
    void idsAreUniqueInAFile() {
        String one = "{\"id\": \"same\", " + Files.REQUEST + ", \"expectedStatus\": 200}";
        assertThat(Files.faults("{\"cases\": [" + one + "," + one + "]}")).containsExactly("duplicate-id@#/cases/1/id");
    }

    @Test
    void tooManyCases() {
        String cases = "{},".repeat(1000) + "{}";
        assertThat(Files.faults("{\"cases\": [" + cases + "]}")).containsExactly("wrong-length@#/cases");
    }

    @Test
    void sameFileSameBytes() {
        String one = "{\"id\": \"one\", " + Files.REQUEST
                + ", \"expect\": [{\"pointer\": \"/dew/pressure\", \"value\": 10, \"unit\": \"bar_a\", \"relativeTolerance\": 0.1}]}";
        JsonNode first = Files.MAPPER.valueToTree(Files.verify(one));
        assertThat(Files.MAPPER.<JsonNode>valueToTree(Files.verify(one)).toString())
                .isEqualTo(first.toString());
        assertThat(first.at("/cases/0/referenceState").textValue()).isEqualTo("IIR");
        assertThat(first.at("/cases/0/atmosphericPressure/unit").textValue()).isEqualTo("kPa_a");
    }
}
