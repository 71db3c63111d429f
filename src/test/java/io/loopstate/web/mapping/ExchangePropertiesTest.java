package io.loopstate.web.mapping;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.testing.Requests;
import io.loopstate.testing.Service;
import io.loopstate.units.Atmosphere;
import io.loopstate.units.QuantityKind;
import io.loopstate.units.UnitToken;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.statistics.Statistics;
import net.jqwik.api.statistics.StatisticsReport;

/** Laws that hold for every request, sound or not. */
class ExchangePropertiesTest {
    private static final List<Operation<?, ?, ?, ?>> OPERATIONS = List.of(
            StateMapping.OPERATION,
            SaturationMapping.OPERATION,
            TableMapping.OPERATION,
            MoistAirMapping.OPERATION,
            DesignMapping.OPERATION,
            ReadingsMapping.OPERATION,
            ProcessMapping.OPERATION,
            DutyMapping.OPERATION,
            AirSideMapping.OPERATION,
            DisplacementMapping.OPERATION,
            NameplateMapping.OPERATION,
            WaterSideMapping.OPERATION,
            CoilMapping.OPERATION,
            CylinderMapping.OPERATION,
            RatingMapMapping.OPERATION,
            FitMapping.OPERATION,
            CompareMapping.OPERATION,
            StagingMapping.OPERATION);

    /** Numbers of a reply that have no dimension, or count something. */
    private static final Set<String> PLAIN = Set.of(
            "vaporQuality",
            "compressibilityFactor",
            "isentropicExponent",
            "pressureRatio",
            "heatRejectionFactor",
            "coefficientOfPerformance",
            "heatingCoefficientOfPerformance",
            "energyEfficiencyRatio",
            "carnotCoefficientOfPerformance",
            "carnotShare",
            "valveInletQuality",
            "evaporatorInletQuality",
            "isentropicEfficiency",
            "difference",
            "volumeRatio",
            "polytropicEfficiency",
            "isentropicIndex",
            "polytropicIndex",
            "efficiency",
            "heatCapacityRatio",
            "index",
            "massShare",
            "volumeShare",
            "outletQuality",
            "relativeHumidity",
            "sensibleHeatRatio",
            "areaShare",
            "cleanliness",
            "nominalTons",
            "effectiveness",
            "machineHeatRejectionFactor",
            "balanceDifference",
            "degreeOfSaturation",
            "volumetricEfficiency",
            "shaftEfficiency",
            "overallEfficiency",
            "clearanceEfficiency",
            "reexpansionRatio",
            "neededHeadCoefficient",
            "machNumber",
            "residual",
            "gaugeRatio",
            "massFlowDifference",
            "powerDifference",
            "savedShare",
            "coefficients",
            "residuals",
            "rootMeanSquare",
            "maxResidual",
            "maxRelativeResidual",
            "determination",
            "conditionNumber",
            "degreesOfFreedom",
            "status");

    private static final List<String> REFRIGERANTS =
            List.of("R-134a", "R-290", "R-744", "R-717", "R-32", "R-600a", "R-718", "R-1234yf", "Air");

    @Provide
    Arbitrary<Operation<?, ?, ?, ?>> operations() {
        return Arbitraries.of(OPERATIONS);
    }

    /** Any members with values that fit, nearly fit, or do not fit at all. */
    @Provide
    Arbitrary<Map<String, String>> anything() {
        Arbitrary<String> value = Arbitraries.frequencyOf(
                Tuple.of(6, quantities(List.of(QuantityKind.values()))),
                Tuple.of(1, Arbitraries.of(REFRIGERANTS)),
                Tuple.of(
                        1,
                        Arbitraries.of(
                                "vapor",
                                "liquid",
                                "dew",
                                "open",
                                "true",
                                "IP",
                                "IP,pressure=psig",
                                "ASHRAE",
                                ",",
                                "3",
                                "0.7")),
                Tuple.of(1, Arbitraries.strings().ofMaxLength(20)));
        return Arbitraries.of(OPERATIONS)
                .flatMap(operation -> Arbitraries.maps(Arbitraries.of(paths(operation)), value)
                        .ofMaxSize(8));
    }

    /** Two variables of a state, in the ranges where refrigerants live and beyond. */
    @Provide
    Arbitrary<Map<String, String>> states() {
        List<String> variables = List.of(
                "temperature",
                "pressure",
                "density",
                "specificVolume",
                "specificEnthalpy",
                "specificEntropy",
                "vaporQuality");
        return Arbitraries.of(variables)
                .list()
                .uniqueElements()
                .ofSize(2)
                .flatMap(pair -> Combinators.combine(
                                Arbitraries.of(REFRIGERANTS), usual(pair.get(0)), usual(pair.get(1)))
                        .as((refrigerant, first, second) -> {
                            Map<String, String> request = new LinkedHashMap<>();
                            request.put("refrigerant", refrigerant);
                            request.put(pair.get(0), first);
                            request.put(pair.get(1), second);
                            return request;
                        }));
    }

    private static Arbitrary<String> usual(String variable) {
        return switch (variable) {
            case "temperature" -> numbers(150, 700, "K");
            case "pressure" -> numbers(1, 20_000, "kPa_a");
            case "density" -> numbers(0.01, 1500, "kg_per_m3");
            case "specificVolume" -> numbers(0.0005, 5, "m3_per_kg");
            case "specificEnthalpy" -> numbers(-200, 3000, "kJ_per_kg");
            case "specificEntropy" -> numbers(-1, 8, "kJ_per_kg_K");
            default -> Arbitraries.doubles().between(0, 1).ofScale(4).map(String::valueOf);
        };
    }

    /** Design conditions of machines that exist, and of some that cannot. */
    @Provide
    Arbitrary<Map<String, String>> designs() {
        return Combinators.combine(
                        Arbitraries.of(REFRIGERANTS),
                        numbers(-50, 20, "degC"),
                        numbers(10, 80, "degC"),
                        numbers(0, 30, "K"),
                        numbers(0, 20, "K"),
                        Arbitraries.doubles().between(0.2, 1).ofScale(3),
                        numbers(0.1, 50, "kW"))
                .as((refrigerant, low, high, superheat, subcooling, efficiency, size) -> {
                    Map<String, String> request = new LinkedHashMap<>();
                    request.put("refrigerant", refrigerant);
                    request.put("evaporating.temperature", low);
                    request.put("condensing.temperature", high);
                    request.put("superheat", superheat);
                    request.put("subcooling", subcooling);
                    request.put("isentropicEfficiency", efficiency.toString());
                    request.put("refrigeratingCapacity", size);
                    return request;
                });
    }

    /** Gauges and probes of a machine, in any order of high and low. */
    @Provide
    Arbitrary<Map<String, String>> readings() {
        return Combinators.combine(
                        Arbitraries.of(REFRIGERANTS),
                        numbers(-10, 150, "psig"),
                        numbers(-30, 80, "degF"),
                        numbers(50, 500, "psig"),
                        numbers(80, 250, "degF"),
                        numbers(40, 130, "degF"),
                        numbers(100, 3000, "cfm"))
                .as((refrigerant, suction, line, discharge, hot, liquid, air) -> {
                    Map<String, String> request = new LinkedHashMap<>();
                    request.put("refrigerant", refrigerant);
                    request.put("suctionPressure", suction);
                    request.put("suctionLineTemperature", line);
                    request.put("dischargePressure", discharge);
                    request.put("dischargeLineTemperature", hot);
                    request.put("liquidLineTemperature", liquid);
                    request.put("condenserAir.volumeFlow", air);
                    request.put("condenserAir.enteringTemperature", "80.0 degF");
                    request.put("condenserAir.leavingTemperature", "95.0 degF");
                    request.put("explain", "true");
                    return request;
                });
    }

    /** Compressions of machines that exist, and of some that cannot. */
    @Provide
    Arbitrary<Map<String, String>> compressions() {
        Arbitrary<String> measure = Arbitraries.of(
                "isentropicEfficiency", "polytropicEfficiency", "polytropicIndex", "discharge.temperature");
        return Combinators.combine(
                        Arbitraries.of(REFRIGERANTS),
                        numbers(-10, 150, "psig"),
                        numbers(0, 60, "delta_degF"),
                        Arbitraries.doubles().between(1.1, 12).ofScale(3),
                        measure,
                        Arbitraries.doubles().between(0.4, 1.2).ofScale(3),
                        numbers(80, 300, "degF"))
                .as((refrigerant, suction, superheat, ratio, kind, number, hot) -> {
                    Map<String, String> request = new LinkedHashMap<>();
                    request.put("refrigerant", refrigerant);
                    request.put("suction.pressure", suction);
                    request.put("suction.superheat", superheat);
                    request.put("pressureRatio", ratio.toString());
                    request.put(kind, kind.startsWith("discharge") ? hot : number.toString());
                    request.put("massFlow", "60.0 lb_per_h");
                    request.put("explain", "true");
                    return request;
                });
    }

    private static Arbitrary<String> numbers(double low, double high, String unit) {
        return Arbitraries.doubles().between(low, high).ofScale(4).map(number -> number + " " + unit);
    }

    private static Arbitrary<String> quantities(List<QuantityKind> kinds) {
        Arbitrary<Double> number = Arbitraries.oneOf(
                Arbitraries.doubles().between(-500, 2000).ofScale(3),
                Arbitraries.of(0.0, 1.0, -1.0, 1e-12, 1e12, 1e300, 118.0));
        return Arbitraries.of(kinds)
                .flatMap(kind -> Arbitraries.of(kind.units()))
                .flatMap(unit -> number.map(value -> value + " " + unit));
    }

    private static List<String> paths(Operation<?, ?, ?, ?> operation) {
        return List.copyOf(Shape.of(operation.request()).leaves().keySet());
    }

    @Property(tries = 3000)
    void anyRequestIsAnsweredOrRefused(
            @ForAll("operations") Operation<?, ?, ?, ?> operation, @ForAll("anything") Map<String, String> values) {
        Requests request = new Requests(values);
        expectAnswerOrRefusal(Service.get(operation, request.query()));
        expectAnswerOrRefusal(Service.post(operation, request.body()));
    }

    @Property(tries = 3000)
    @StatisticsReport(StatisticsReport.StatisticsReportMode.OFF)
    void anyStateIsAnsweredOrRefused(@ForAll("states") Map<String, String> values) {
        expectMostlyAnswers(Service.get(StateMapping.OPERATION, new Requests(values).query()), 30);
    }

    @Property(tries = 1000)
    @StatisticsReport(StatisticsReport.StatisticsReportMode.OFF)
    void anyDesignIsAnsweredOrRefused(@ForAll("designs") Map<String, String> values) {
        expectMostlyAnswers(Service.get(DesignMapping.OPERATION, new Requests(values).query()), 50);
    }

    @Property(tries = 1000)
    @StatisticsReport(StatisticsReport.StatisticsReportMode.OFF)
    void anyReadingsAreAnsweredOrRefused(@ForAll("readings") Map<String, String> values) {
        expectMostlyAnswers(Service.get(ReadingsMapping.OPERATION, new Requests(values).query()), 50);
    }

    @Property(tries = 500)
    @StatisticsReport(StatisticsReport.StatisticsReportMode.OFF)
    void anyCompressionIsAnsweredOrRefused(@ForAll("compressions") Map<String, String> values) {
        expectMostlyAnswers(Service.get(ProcessMapping.OPERATION, new Requests(values).query()), 50);
    }

    @Property(tries = 200)
    void queryAndBodyOfACompressionGiveTheSameBytes(@ForAll("compressions") Map<String, String> values) {
        sameBytes(ProcessMapping.OPERATION, values);
    }

    @Property(tries = 200)
    void unitSystemsAgreeOnCompressions(@ForAll("compressions") Map<String, String> values) {
        unitSystemsAgree(ProcessMapping.OPERATION, values);
    }

    @Property(tries = 500)
    void queryAndBodyGiveTheSameBytes(@ForAll("designs") Map<String, String> values) {
        sameBytes(DesignMapping.OPERATION, values);
    }

    @Property(tries = 500)
    void queryAndBodyOfAStateGiveTheSameBytes(@ForAll("states") Map<String, String> values) {
        sameBytes(StateMapping.OPERATION, values);
    }

    @Property(tries = 300)
    void unitSystemsAgreeOnReadings(@ForAll("readings") Map<String, String> values) {
        unitSystemsAgree(ReadingsMapping.OPERATION, values);
    }

    @Property(tries = 300)
    void unitSystemsAgreeOnStates(@ForAll("states") Map<String, String> values) {
        unitSystemsAgree(StateMapping.OPERATION, values);
    }

    private static void sameBytes(Operation<?, ?, ?, ?> operation, Map<String, String> values) {
        Requests request = new Requests(values);
        Service.Answer query = Service.get(operation, request.query());
        Service.Answer body = Service.post(operation, request.body());
        assertThat(body.status()).isEqualTo(query.status());
        if (query.status() == 200) {
            assertThat(body.body()).isEqualTo(query.body());
        } else {
            assertThat(body.json().findValuesAsText("code"))
                    .isEqualTo(query.json().findValuesAsText("code"));
        }
    }

    /** As below; and enough of the requests make sense for the law to mean something. */
    private static void expectMostlyAnswers(Service.Answer answer, double percent) {
        Statistics.label("answered")
                .collect(answer.status() == 200)
                .coverage(share -> share.check(true).percentage(answered -> answered >= percent));
        expectAnswerOrRefusal(answer);
    }

    private static void expectAnswerOrRefusal(Service.Answer answer) {
        assertThat(answer.status()).as(answer.body()).isIn(200, 400, 422);
        assertThat(answer.body()).doesNotContain("NaN", "Infinity", "null");
        everyNumberHasAUnit("", "", answer.json());
        if (answer.status() != 200) {
            assertThat(answer.json().get("errors")).as(answer.body()).isNotEmpty();
        }
    }

    private static void everyNumberHasAUnit(String name, String place, JsonNode node) {
        if (node.isNumber()) {
            assertThat(PLAIN).as(place).contains(name);
        } else if (node.has("unit")) {
            assertThat(node.get("value").isNumber()).as(place).isTrue();
            UnitToken.of(node.get("unit").textValue());
        } else if (node.isObject()) {
            node.fields()
                    .forEachRemaining(field ->
                            everyNumberHasAUnit(field.getKey(), place + '/' + field.getKey(), field.getValue()));
        } else {
            node.forEach(element -> everyNumberHasAUnit(name, place, element));
        }
    }

    /** Every quantity of the one reply is that of the other, in another unit. */
    private static void unitSystemsAgree(Operation<?, ?, ?, ?> operation, Map<String, String> values) {
        Map<String, String> si = new LinkedHashMap<>(values);
        Map<String, String> ip = new LinkedHashMap<>(values);
        si.put("units", "SI");
        ip.put("units", "IP");
        Service.Answer metric = Service.get(operation, new Requests(si).query());
        Service.Answer inchPound = Service.get(operation, new Requests(ip).query());
        assertThat(inchPound.status()).isEqualTo(metric.status());
        if (metric.status() == 200) {
            List<JsonNode> left = new ArrayList<>();
            List<JsonNode> right = new ArrayList<>();
            quantities(metric.json(), left);
            quantities(inchPound.json(), right);
            assertThat(right).hasSameSizeAs(left);
            for (int i = 0; i < left.size(); i++) {
                double expected = si(left.get(i));
                // Two conversions there and back, each within one unit in the last place; near zero on the scale of the
                // offset.
                assertThat(Math.abs(si(right.get(i)) - expected))
                        .as(left.get(i) + " and " + right.get(i))
                        .isLessThanOrEqualTo(4 * Math.max(Math.ulp(expected), Math.ulp(offset(left.get(i)))));
            }
        }
    }

    private static void quantities(JsonNode node, List<JsonNode> found) {
        if (node.has("unit")) {
            found.add(node);
        } else {
            node.forEach(child -> quantities(child, found));
        }
    }

    private static double si(JsonNode quantity) {
        UnitToken unit = UnitToken.of(quantity.get("unit").textValue());
        double value = quantity.get("value").doubleValue();
        // Differences may be negative, which the scale of temperatures does not allow.
        return unit.offset() == 0 ? value * unit.factor() : unit.toSi(value, Atmosphere.standard());
    }

    private static double offset(JsonNode quantity) {
        return UnitToken.of(quantity.get("unit").textValue()).offset();
    }
}
