package io.loopstate.web.mapping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.ProblemException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values that an input takes one after the other. */
class VariedInputTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Operation<?, ?, ?, ?> DESIGN =
            Operations.named("cycle-points/design").orElseThrow();

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            30 degC     | 50 degC     | step  | 5 K            | 30 35 40 45 50      | degC
            50 degC     | 30 degC     | step  | 8 K            | 50 42 34            | degC
            30 degC     | 50 degC     | step  | 9 delta_degF   | 30 35 40 45 50      | degC
            86 degF     | 50 degC     | step  | 10 K           | 86 104 122          | degF
            0.1 degC    | 0.5 degC    | step  | 0.1 K          | 0.1 0.2 0.3 0.4 0.5 | degC
            30 degC     | 31 degC     | count | 4              | 30 30.3333333333 30.6666666667 31 | degC
            50 degC     | 30 degC     | count | 3              | 50 40 30            | degC
            30 degC     | 30 degC     | step  | 1 K            | 30                  | degC
            """)
    void rangeGoesInEqualSteps(String from, String to, String how, String size, String values, String unit) {
        List<JsonNode> read = read(range("condensing.temperature", from, to, how, size));
        assertThat(read.stream().map(value -> value.get("value").doubleValue()))
                .containsExactlyElementsOf(
                        List.of(values.split(" ")).stream().map(Double::valueOf).toList());
        assertThat(read)
                .allSatisfy(value -> assertThat(value.get("unit").textValue()).isEqualTo(unit));
    }

    /** A deeper vacuum is a lower pressure: its reading grows as the pressure falls. */
    @Test
    void vacuumIsReadBackward() {
        List<JsonNode> read = read(range("evaporating.pressure", "10 inHg_vac", "0 inHg_vac", "step", "5 inHg"));
        assertThat(read.stream().map(value -> value.get("value").doubleValue())).containsExactly(10.0, 5.0, 0.0);
    }

    @Test
    void plainNumbersStayPlain() {
        assertThat(read(range("isentropicEfficiency", "60 pct", "0.8", "step", "0.1")))
                .containsExactly(number(0.6), number(0.7), number(0.8));
        assertThat(read("{'input':'isentropicEfficiency','values':['70 pct','0.8',0.9]}"))
                .containsExactly(number(0.7), number(0.8), number(0.9));
    }

    @Test
    void listsAreTakenAsTheyAre() {
        List<JsonNode> read =
                read("{'input':'condensingTemperature','values':['30 degC','oops',{'value':1,'unit':'K'},7]}");
        assertThat(read.get(0).toString()).isEqualTo("{\"value\":30.0,\"unit\":\"degC\"}");
        assertThat(read.get(1).textValue()).isEqualTo("oops");
        assertThat(read.get(2).get("unit").textValue()).isEqualTo("K");
        assertThat(read.get(3).intValue()).isEqualTo(7);
        assertThat(read("{'input':'refrigerant','values':['R-134a','R-290']}")).hasSize(2);
    }

    @Test
    void emptyListBesideARangeIsNone() {
        assertThat(read("{'input':'condensing.temperature','values':[],'from':'30 degC','to':'31 degC','count':2}"))
                .hasSize(2);
    }

    @Test
    void decimalCommaIsReadWhereItIsDeclared() {
        JsonNode variable = tree(range("condensing.temperature", "30,5 degC", "31,5 degC", "step", "0,5 K"));
        assertThat(VariedInput.of(DESIGN, variable, "#/vary/0", true, 10).values())
                .hasSize(3);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {'input':'condensing.temperture','values':['1 degC']}                               | unknown-input@#/vary/0/input
            {'input':'condensing.temperature'}                                                  | missing@#/vary/0
            {'input':'condensing.temperature','values':['1 degC'],'from':'1 degC'}              | too-many-inputs@#/vary/0
            {'input':'condensing.temperature','values':[]}                                      | wrong-type@#/vary/0/values
            {'input':'condensing.temperature','values':'1 degC'}                                | wrong-type@#/vary/0/values
            {'input':'condensing.temperature','values':[1,2,3,4,5,6,7,8,9,10,11]}               | too-many-rows@#/vary/0/values
            {'input':'condensing.temperature','from':'1 degC','to':'2 degC'}                    | missing@#/vary/0
            {'input':'condensing.temperature','from':'1 degC','to':'2 degC','step':'1 K','count':2} | too-many-inputs@#/vary/0
            {'input':'condensing.temperature','from':'-300 degC','to':'20 degC','step':'50 K'}  | temperature-below-absolute-zero@#/vary/0/from
            {'input':'condensing.temperature','from':'20 degC','to':'-300 degC','count':3}      | temperature-below-absolute-zero@#/vary/0/to
            {'input':'condensing.pressure','from':'-30 psig','to':'2 psig','step':'1 psi_diff'} | pressure-below-absolute-zero@#/vary/0/from
            {'input':'refrigeratingCapacity','from':'-1e308 W','to':'1e308 W','count':2}        | wrong-value@#/vary/0/to
            {'input':'condensing.temperature','from':'1 degF','to':'2 degF','step':'1.7e308 K'} | wrong-value@#/vary/0/step
            {'input':'condensing.temperature','from':'1 degC','to':'2 degC','step':'1 degC'}    | unit-of-another-kind@#/vary/0/step
            {'input':'condensing.temperature','from':'1 degC','to':'2 degC','step':'0 K'}       | wrong-value@#/vary/0/step
            {'input':'condensing.temperature','from':'1 degC','to':'2 degC','step':'-1 K'}      | wrong-value@#/vary/0/step
            {'input':'condensing.temperature','from':'1 degC','to':'2 degC','step':'0.1 K'}     | too-many-rows@#/vary/0/step
            {'input':'condensing.temperature','from':'1 degC','to':'2 degC','step':'1e-300 K'}  | wrong-value@#/vary/0/step
            {'input':'condensing.temperature','from':'1 degC','to':'2 degC','count':1}          | wrong-value@#/vary/0/count
            {'input':'condensing.temperature','from':'1 degC','to':'2 degC','count':11}         | wrong-value@#/vary/0/count
            {'input':'condensing.temperature','from':1,'to':'2 degC','count':2}                 | unit-missing@#/vary/0/from
            {'input':'condensing.temperature','from':true,'to':'2 degC','count':2}              | wrong-type@#/vary/0/from
            {'input':'condensing.temperature','to':'2 degC','count':2}                          | missing@#/vary/0/from
            {'input':'condensing.pressure','from':'1 bar_g','to':'2 bar_a','count':2}           | unit-of-another-kind@#/vary/0/to
            {'input':'refrigerant','from':'R-32','to':'R-290','count':2}                        | not-applicable@#/vary/0/from
            {'input':'refrigerant','valuse':[]}                                                 | unknown-name@#/vary/0/valuse
            []                                                                                  | wrong-type@#/vary/0
            """)
    void whatIsNoRangeIsRefused(String variable, String fault) {
        ProblemException refusal = catchThrowableOfType(() -> read(variable), ProblemException.class);
        Fault first = refusal.problem().errors().get(0);
        assertThat(first.code() + '@' + first.pointer()).isEqualTo(fault);
    }

    @Test
    void whatIsNullIsAbsent() {
        assertThat(
                        read(
                                "{'input':'condensing.temperature','values':null,'from':'1 degC','to':'2 degC','step':null,'count':2}"))
                .hasSize(2);
    }

    @Test
    void valueIsPutWhereItBelongs() {
        VariedInput input = VariedInput.of(
                DESIGN, tree("{'input':'condensingTemperature','values':['30 degC']}"), "#/vary/0", false, 10);
        assertThat(input.name()).isEqualTo("condensingTemperature");
        ObjectNode request = (ObjectNode) tree("{'condensing':{'basis':'dew'}}");
        assertThat(input.isIn(request)).isFalse();
        input.put(request, input.values().get(0));
        assertThat(input.isIn(request)).isTrue();
        assertThat(request.at("/condensing/temperature/value").intValue()).isEqualTo(30);
        assertThat(request.at("/condensing/basis").textValue()).isEqualTo("dew");
        ObjectNode wrong = (ObjectNode) tree("{'condensing':'30 degC'}");
        input.put(wrong, input.values().get(0));
        assertThat(wrong.get("condensing").textValue()).isEqualTo("30 degC");
    }

    private static List<JsonNode> read(String variable) {
        return VariedInput.of(DESIGN, tree(variable), "#/vary/0", false, 10).values();
    }

    private static String range(String input, String from, String to, String how, String size) {
        return "{'input':'" + input + "','from':'" + from + "','to':'" + to + "','" + how + "':"
                + (how.equals("count") ? size : '\'' + size + '\'') + '}';
    }

    private static JsonNode number(double value) {
        return MAPPER.getNodeFactory().numberNode(value);
    }

    private static JsonNode tree(String text) {
        try {
            return MAPPER.readTree(text.replace('\'', '"'));
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(e);
        }
    }
}
