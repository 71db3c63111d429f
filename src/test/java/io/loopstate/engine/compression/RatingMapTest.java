package io.loopstate.engine.compression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import io.loopstate.engine.TestFluids;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.FindingCode;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.cycle.PropertyTable;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Rating maps. Published maps and points: EnergyPlus data set RefrigerationCompressorCurves.idf (compressor_polynomials.csv,
 * compressor_points.csv); form and correction: AHRI 540, Dabiri and Rice (compressor_rating_facts.csv, from memory).
 */
class RatingMapTest {
    private static final double KELVIN = 273.15;
    private static final String[] TERMS = {"c_1", "c_x", "c_x2", "c_y", "c_y2", "c_xy", "c_x3", "c_y3", "c_x2y", "c_xy2"
    };

    static Stream<NamedCsvRecord> points() {
        return records("compressor_points.csv").stream();
    }

    private static List<NamedCsvRecord> records(String file) {
        try (Reader reader = new InputStreamReader(
                        Objects.requireNonNull(RatingMapTest.class.getResourceAsStream("/reference/checks/" + file)),
                        StandardCharsets.UTF_8);
                CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(reader)) {
            return csv.stream().toList();
        } catch (IOException exception) {
            throw new IllegalStateException(exception);
        }
    }

    private static NamedCsvRecord map(String model, String quantity) {
        return records("compressor_polynomials.csv").stream()
                .filter(row -> row.getField("model").equals(model)
                        && row.getField("quantity").equals(quantity))
                .findFirst()
                .orElseThrow();
    }

    private static RatingPolynomial polynomial(String model, String quantity) {
        NamedCsvRecord row = map(model, quantity);
        List<Double> coefficients = new ArrayList<>();
        for (String term : TERMS) {
            coefficients.add(Double.parseDouble(row.getField(term)));
        }
        return new RatingPolynomial(coefficients, CoefficientOrder.POWERS_FIRST, 1, KELVIN, 1);
    }

    /** Every row: the nominal figures within 0.2 % and 0.05 kW, as the collection says, the others to their printed digits. */
    @ParameterizedTest
    @MethodSource("points")
    void publishedMapGivesItsPoints(NamedCsvRecord point) {
        double s = Double.parseDouble(point.getField("saturated_suction_T_C")) + KELVIN;
        double d = Double.parseDouble(point.getField("saturated_discharge_T_C")) + KELVIN;
        double capacity =
                polynomial(point.getField("model"), "refrigerating capacity").at(s, d);
        double power = polynomial(point.getField("model"), "power input").at(s, d);
        assertThat(capacity)
                .isCloseTo(Double.parseDouble(point.getField("capacity_W_from_polynomial")), Offset.offset(0.06));
        assertThat(power).isCloseTo(Double.parseDouble(point.getField("power_W_from_polynomial")), Offset.offset(0.06));
        if (!point.getField("capacity_Btu_per_h_nominal").isEmpty()) {
            assertThat(capacity * 3.412141633)
                    .isCloseTo(
                            Double.parseDouble(point.getField("capacity_Btu_per_h_nominal")),
                            Percentage.withPercentage(0.2));
            assertThat(power / 1e3)
                    .isCloseTo(Double.parseDouble(point.getField("power_kW_nominal")), Offset.offset(0.05));
        }
    }

    /** The form of the fact table: C1 + C2 S + C3 D + C4 S2 + C5 SD + C6 D2 + C7 S3 + C8 DS2 + C9 SD2 + C10 D3. */
    @Test
    void orderIsThatOfTheStandard() {
        double s = 3;
        double d = 7;
        double[] terms = {1, s, d, s * s, s * d, d * d, s * s * s, d * s * s, s * d * d, d * d * d};
        for (int k = 0; k < terms.length; k++) {
            List<Double> coefficients = new ArrayList<>(List.of(0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0));
            coefficients.set(k, 1.0);
            RatingPolynomial unit = new RatingPolynomial(coefficients, CoefficientOrder.AHRI_540, 1, 0, 1);
            RatingPolynomial swapped = new RatingPolynomial(coefficients, CoefficientOrder.DISCHARGE_FIRST, 1, 0, 1);
            assertThat(unit.at(s, d)).isEqualTo(terms[k]);
            assertThat(swapped.at(d, s)).isEqualTo(terms[k]);
        }
    }

    private static MapCompressor compressor(double factor, boolean extrapolate) {
        String model = "06CC016 low temperature";
        NamedCsvRecord row = map(model, "power input");
        return new MapCompressor(
                Optional.empty(),
                Optional.of(polynomial(model, "refrigerating capacity")),
                polynomial(model, "power input"),
                Optional.empty(),
                OutletCondition.temperature(Double.parseDouble(row.getField("return_gas_T_C")) + KELVIN),
                OutletCondition.temperature(Double.parseDouble(row.getField("liquid_T_C")) + KELVIN),
                factor,
                0.05,
                new Envelope(
                        Double.parseDouble(row.getField("x_min_C")) + KELVIN,
                        Double.parseDouble(row.getField("x_max_C")) + KELVIN,
                        Double.parseDouble(row.getField("y_min_C")) + KELVIN,
                        Double.parseDouble(row.getField("y_max_C")) + KELVIN),
                extrapolate);
    }

    private static MapRating.Result rate(MapCompressor map, double evaporating, double gas, double condensing) {
        return MapRating.calculate(new MapRating.Spec(
                TestFluids.of("R-22"),
                new SuctionCondition(
                        SaturationLevel.temperature(evaporating + KELVIN), Variable.TEMPERATURE, gas + KELVIN),
                DischargeLevel.of(SaturationLevel.temperature(condensing + KELVIN)),
                map,
                Optional.of(new Circuit(OutletCondition.subcooling(5), OptionalDouble.empty())),
                Processes.ATMOSPHERE,
                Guidance.common(),
                true));
    }

    @Test
    void atTheRatingTheMapIsAsPrinted() {
        MapRating.Result result = rate(compressor(0.75, false), -30, 18.3, 40);
        assertThat(result.figures().power()).isCloseTo(3306.2, Offset.offset(0.1));
        assertThat(result.figures().ratedCapacity()).isCloseTo(5882.2, Offset.offset(0.1));
        assertThat(result.figures().massFlow())
                .isCloseTo(result.figures().ratedMassFlow(), Percentage.withPercentage(1e-9));
        assertThat(Math.abs(result.balance().orElseThrow().residual())).isLessThan(1e-9);
        assertThat(result.figures().overallEfficiency()).isBetween(0.3, 0.9);
    }

    /** m = m_r (1 + F (v_r/v - 1)), P = P_r (m/m_r) (dh_s/dh_s,r). */
    @Test
    void colderSuctionCarriesMore() {
        MapRating.Result corrected = rate(compressor(0.75, false), -30, -10, 40);
        MapRating.Result plain = rate(compressor(0, false), -30, -10, 40);
        MapRating.Result byDensity = rate(compressor(1, false), -30, -10, 40);
        double rated = plain.figures().massFlow();
        assertThat(corrected.figures().massFlow() - rated)
                .isCloseTo(0.75 * (byDensity.figures().massFlow() - rated), Percentage.withPercentage(1e-7));
        assertThat(byDensity.figures().massFlow()).isGreaterThan(rated);
        assertThat(codes(corrected)).contains(FindingCode.SUPERHEAT_CORRECTED);
    }

    /**
     * Hundy, Trott, Welch, example 10.3, from the book's own properties: the flow goes with the density of the suction (F = 1),
     * the capacity with flow and effect.
     */
    @Test
    void hundyOfAColderSuction() {
        PublishedExample example = PublishedExample.of("HTW-10-3");
        double ratio = example.table("specific volume at 20 C", "") / example.table("specific volume at 0 C", "");
        example.check("flow rate ratio", 1 + 1 * (ratio - 1), 0.001);
        double rated = example.table("enthalpy suction 20 C", "") - example.table("enthalpy liquid 40 C", "");
        double cold = example.table("enthalpy suction 0 C", "") - example.table("enthalpy liquid 40 C", "");
        double flow = example.given("rated capacity") / rated * ratio;
        example.check("capacity corrected for suction", flow * cold, 0.001);
        double subcooled = example.table("enthalpy suction 0 C", "") - example.table("enthalpy liquid 35 C", "");
        example.check("actual compressor capacity", flow * subcooled, 0.001);
        double useful =
                example.table("enthalpy evaporator outlet -30 C", "") - example.table("enthalpy liquid 35 C", "");
        example.check("actual evaporator capacity", flow * useful, 0.001);
    }

    @Test
    void outsideTheEnvelopeItRefusesUnlessAsked() {
        assertThatThrownBy(() -> rate(compressor(0.75, false), -10, 18.3, 40))
                .isInstanceOfSatisfying(EngineException.class, e -> {
                    assertThat(e.code()).isEqualTo(ErrorCode.OUT_OF_RANGE);
                    assertThat(e.input()).contains("suction");
                });
        assertThat(codes(rate(compressor(0.75, true), -10, 18.3, 40))).contains(FindingCode.OUTSIDE_ENVELOPE);
    }

    private static ModelComparison.Result compare(double displacement) {
        Machine machine = new Machine(
                new Rotor(displacement, 0.6, OptionalDouble.empty(), 0.6),
                new Drive(Housing.SEMI_HERMETIC, MotorCooling.SUCTION_GAS, 0.85, 1, 1, 0.05));
        return ModelComparison.calculate(new ModelComparison.Spec(
                TestFluids.of("R-22"),
                new SuctionCondition(SaturationLevel.temperature(-30 + KELVIN), Variable.TEMPERATURE, 18.3 + KELVIN),
                DischargeLevel.of(SaturationLevel.temperature(40 + KELVIN)),
                compressor(0.75, false),
                machine,
                Guidance.common(),
                true));
    }

    /** A displacement that the comparison itself asks for makes the flows meet. */
    @Test
    void modelsMeetWhereTheComparisonSays() {
        ModelComparison.Figures first = compare(0.01).figures();
        ModelComparison.Result second =
                compare(0.01 * first.mapVolumetricEfficiency() / first.modelVolumetricEfficiency());
        assertThat(second.figures().massFlowDifference()).isCloseTo(0, Offset.offset(1e-9));
        assertThat(second.figures().mapEfficiency()).isCloseTo(first.mapEfficiency(), Percentage.withPercentage(1e-9));
        assertThat(second.steps()).hasSize(5);
        assertThat(compare(0.1).findings()).extracting(Finding::code).contains(FindingCode.MODELS_DISAGREE);
    }

    /** The grid holds the single comparison at each point; its worst point is the worst of its rows; what does not run is told. */
    @Test
    void theGridIsManyComparisons() {
        Machine machine = new Machine(
                new Rotor(0.01, 0.6, OptionalDouble.empty(), 0.6),
                new Drive(Housing.SEMI_HERMETIC, MotorCooling.SUCTION_GAS, 0.85, 1, 1, 0.05));
        ComparisonGrid.Result grid = ComparisonGrid.calculate(new ComparisonGrid.Spec(
                TestFluids.of("R-22"),
                new PropertyTable.Range(-30 + KELVIN, 0 + KELVIN, 10),
                new PropertyTable.Range(30 + KELVIN, 50 + KELVIN, 10),
                Variable.TEMPERATURE,
                18.3 + KELVIN,
                compressor(0.75, false),
                machine,
                Guidance.common(),
                true));
        assertThat(grid.rows()).hasSize(12);
        ModelComparison.Figures single = compare(0.01).figures();
        assertThat(grid.rows().get(1).figures()).contains(single);
        assertThat(grid.summary().compared() + grid.summary().refused()).isEqualTo(12);
        assertThat(grid.summary().refused()).isPositive();
        assertThat(grid.rows().stream().filter(row -> row.figures().isEmpty()))
                .allSatisfy(row -> assertThat(row.reason()).isNotBlank());
        double worst = grid.rows().stream()
                .flatMap(row -> row.figures().stream())
                .mapToDouble(figures -> Math.abs(figures.massFlowDifference()))
                .max()
                .orElseThrow();
        assertThat(Math.abs(grid.summary().massFlow().value())).isEqualTo(worst);
        assertThat(grid.summary().massFlow().rootMeanSquare()).isBetween(0.0, worst);
        assertThat(grid.steps()).hasSize(2);
    }

    /** Points made from a published polynomial give its coefficients back, in every order. */
    @ParameterizedTest
    @EnumSource(CoefficientOrder.class)
    void fitGivesThePolynomialBack(CoefficientOrder order) {
        RatingPolynomial published = polynomial("06CC016 low temperature", "refrigerating capacity");
        List<Double> suction = new ArrayList<>();
        List<Double> discharge = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        for (double s = -40; s <= -18; s += 5.5) {
            for (double d = 10; d <= 49; d += 9.75) {
                suction.add(s);
                discharge.add(d);
                values.add(published.at(s + KELVIN, d + KELVIN));
            }
        }
        RatingFit.Result fit =
                RatingFit.calculate(new RatingFit.Spec(suction, discharge, values, order, Guidance.common(), true));
        RatingPolynomial back = new RatingPolynomial(fit.coefficients(), order, 1, KELVIN, 1);
        assertThat(back.at(250, 300)).isCloseTo(published.at(250, 300), Percentage.withPercentage(1e-8));
        assertThat(fit.maxRelativeResidual()).isLessThan(1e-9);
        assertThat(fit.conditionNumber()).isBetween(1.0, 100.0);
        assertThat(fit.degreesOfFreedom()).isEqualTo(values.size() - 10);
    }

    @Test
    void pointsThatDoNotFixTheCoefficientsAreRefused() {
        List<Double> one = List.of(1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0);
        List<Double> many = List.of(1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0, 11.0, 12.0);
        assertThatThrownBy(() -> RatingFit.calculate(
                        new RatingFit.Spec(one, many, many, CoefficientOrder.AHRI_540, Guidance.common(), false)))
                .isInstanceOf(EngineException.class);
        assertThatThrownBy(() -> RatingFit.calculate(new RatingFit.Spec(
                        many.subList(0, 9),
                        many.subList(0, 9),
                        many.subList(0, 9),
                        CoefficientOrder.AHRI_540,
                        Guidance.common(),
                        false)))
                .isInstanceOf(EngineException.class);
    }

    private static List<FindingCode> codes(MapRating.Result result) {
        return result.findings().stream().map(Finding::code).toList();
    }
}
