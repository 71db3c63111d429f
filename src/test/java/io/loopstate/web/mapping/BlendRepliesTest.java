package io.loopstate.web.mapping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.testing.Service;
import java.util.Map;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;

/** What replies about blends carry beside their numbers. */
class BlendRepliesTest {
    private static final String OWN = "R-32/1234yf (72/28)";

    private static Service.Answer saturation(String refrigerant, String... rest) {
        Map<String, String> query = new java.util.HashMap<>(Map.of("refrigerant", refrigerant));
        for (int i = 0; i < rest.length; i += 2) {
            query.put(rest[i], rest[i + 1]);
        }
        return Service.get(SaturationMapping.OPERATION, query);
    }

    /** Definition of fractions; and R-32 boils more easily than R-1234yf, so the vapor is richer in it, the liquid poorer. */
    @Test
    void saturationNamesThePhasesThatFormFirst() {
        JsonNode reply = saturation("R-454B", "temperature", "5 degC").json();
        for (String phase : new String[] {"firstVapor", "firstLiquid"}) {
            assertThat(sum(reply.get(phase), "massFraction")).isCloseTo(1, within(1e-12));
            assertThat(sum(reply.get(phase), "moleFraction")).isCloseTo(1, within(1e-12));
        }
        assertThat(reply.at("/firstVapor/0/refrigerant").textValue()).isEqualTo("R-32");
        assertThat(reply.at("/firstVapor/0/massFraction").doubleValue()).isGreaterThan(0.689);
        assertThat(reply.at("/firstLiquid/0/massFraction").doubleValue()).isLessThan(0.689);
    }

    @Test
    void pureRefrigerantHasNoOtherPhase() {
        JsonNode reply = saturation("R-134a", "temperature", "5 degC").json();
        assertThat(reply.has("firstVapor")).isFalse();
        assertThat(reply.at("/basis").has("blend")).isFalse();
    }

    @Test
    void glideIsThatOfWhatWasGiven() {
        JsonNode byTemperature = saturation("R-448A", "temperature", "5 degC").json();
        assertThat(byTemperature.has("pressureGlide")).isTrue();
        assertThat(byTemperature.has("temperatureGlide")).isFalse();
        JsonNode byPressure = saturation("R-448A", "pressure", "500 kPa_a").json();
        assertThat(byPressure.at("/temperatureGlide/value").doubleValue())
                .isCloseTo(
                        byPressure.at("/dew/temperature/value").doubleValue()
                                - byPressure.at("/bubble/temperature/value").doubleValue(),
                        within(1e-9));
        assertThat(byPressure.has("pressureGlide")).isFalse();
        assertThat(byPressure.findValuesAsText("code")).contains("HIGH_GLIDE");
    }

    @Test
    void aListOfComponentsIsTheNotation() throws JsonProcessingException {
        String components =
                "[{\"refrigerant\": \"R-32\", \"massFraction\": 0.72}, {\"refrigerant\": \"1234yf\", \"massFraction\": 0.28}]";
        JsonNode list = new ObjectMapper()
                .readTree(
                        "{\"refrigerant\": " + components + ", \"temperature\": \"5 degC\", \"requireFitted\": true}");
        Service.Answer answer = Service.post(SaturationMapping.OPERATION, list);
        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.body())
                .isEqualTo(saturation(OWN, "temperature", "5 degC", "requireFitted", "true")
                        .body());
        assertThat(answer.json().at("/basis/refrigerant").textValue()).isEqualTo(OWN);
    }

    /** No transport properties are estimated for blends: neither in the states nor in the basis. */
    @Test
    void transportPropertiesAreAbsent() {
        JsonNode reply = saturation("R-410A", "temperature", "5 degC").json();
        assertThat(reply.at("/basis").has("transportProperties")).isFalse();
        assertThat(reply.at("/bubble").has("viscosity")).isFalse();
        assertThat(reply.at("/bubble").has("thermalConductivity")).isFalse();
        assertThat(reply.at("/bubble").has("surfaceTension")).isFalse();
    }

    @Test
    void cautionsTakeTheSafetyGroupOfTheBlend() {
        assertThat(caution("R-454B")).startsWith("R-454B is in safety group A2L");
        assertThat(caution("R-32/1234yf (68.9/31.1)")).startsWith("R-454B is in safety group A2L");
        assertThat(caution(OWN)).startsWith("No safety group of " + OWN).contains("R-32 A2L, R-1234yf A2L");
    }

    @Test
    void noteOfAWeakPairStandsInTheBasis() {
        JsonNode pairs = saturation("R-445A", "temperature", "5 degC").json().at("/basis/blend/pairs");
        assertThat(pairs.findValuesAsText("note"))
                .anySatisfy(note -> assertThat(note).contains("bubble pressure"));
    }

    @Test
    void workingOfABlendNamesTheModelOnce() {
        JsonNode reply =
                saturation("R-448A", "temperature", "5 degC", "explain", "true").json();
        assertThat(reply.at("/working/0/source").textValue()).contains("Kunz").hasSizeLessThan(200);
    }

    @Test
    void aboveTheCriticalPointItSaysHowFarPhasesCoexist() {
        Service.Answer answer = saturation("R-454B", "pressure", "6000 kPa_a");
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.json().at("/errors/0/code").textValue()).isEqualTo("above-critical");
        assertThat(answer.json().at("/errors/0/detail").textValue()).contains("pair of a bubble and a dew point");
        assertThat(answer.json().at("/errors/0/hint").textValue()).contains("coexist up to");
    }

    /** The order of the components is the client's business; the catalogued blend answers. */
    @Test
    void compositionOfACataloguedBlendIsThatBlend() {
        assertThat(saturation("R-1234yf/32 (31.1/68.9)", "temperature", "5 degC")
                        .body())
                .isEqualTo(saturation("R-454B", "temperature", "5 degC").body());
    }

    private static String caution(String refrigerant) {
        return saturation(refrigerant, "temperature", "5 degC")
                .json()
                .at("/cautions/0")
                .textValue();
    }

    private static double sum(JsonNode phase, String name) {
        return StreamSupport.stream(phase.spliterator(), false)
                .mapToDouble(component -> component.get(name).doubleValue())
                .sum();
    }
}
