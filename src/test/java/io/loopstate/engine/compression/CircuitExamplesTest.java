package io.loopstate.engine.compression;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import io.loopstate.engine.TestFluids;
import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * What textbooks work out from a compression beyond the compression itself, and that no result of the collection's examples on
 * compression is left unchecked. Sources: column {@code source} of the collection with the number of the example. Tolerances are
 * those of the collection: about 1 %, where older property tables were used 2 to 3 %.
 */
class CircuitExamplesTest {
    private static final double SHARE = 0.01;
    private static final double OLD_TABLES = 0.03;
    /** Topics of the collection that are about compressors. */
    private static final Set<String> TOPICS = Set.of(
            "displacement",
            "displacement, ice making",
            "liquid-suction heat exchanger, displacement",
            "two-stage compression",
            "two-stage flash intercooling",
            "three-stage compression",
            "volumetric efficiency, free air, power",
            "rating correction",
            "mass flow",
            "heat pump, isentropic efficiency",
            "actual cycle, exergy",
            "per-ton quantities");

    private static final List<Class<?>> CHECKS = List.of(
            ProcessExamplesTest.class,
            DisplacementExamplesTest.class,
            StagingTest.class,
            RatingMapTest.class,
            CircuitExamplesTest.class);

    /**
     * M. J. Moran, H. N. Shapiro, example 10.3: destroyed exergy is T0 times the entropy made, in the compressor and in the
     * valve; differences of entropies, hence the tolerance of older tables.
     */
    @Test
    void moranShapiroOfDestroyedExergy() {
        PublishedExample example = PublishedExample.of("MS-10-3");
        Equilibrium refrigerant = TestFluids.of("R-134a");
        CompressionProcess.Result result = CompressionProcess.calculate(Processes.spec(
                refrigerant,
                new SuctionCondition(
                        SaturationLevel.temperature(example.given("evaporating temperature")), Variable.SUPERHEAT, 0),
                DischargeLevel.pressure(example.given("condensing pressure")),
                ProcessMeasure.Kind.ISENTROPIC_EFFICIENCY,
                example.given("isentropic efficiency"),
                0));
        State inlet = result.points().get(0).state();
        State outlet = result.points().get(1).state();
        State liquid = refrigerant.atPressureTemperature(
                example.given("condensing pressure"), example.given("liquid temperature"));
        State wet = refrigerant.atPressureEnthalpy(inlet.pressure(), liquid.specificEnthalpy());
        double flow = example.given("mass flow rate") * example.given("dead-state temperature");
        double compressor = flow * (outlet.specificEntropy() - inlet.specificEntropy());
        double valve = flow * (wet.specificEntropy() - liquid.specificEntropy());
        example.check("exergy destruction compressor", compressor, OLD_TABLES);
        example.check("exergy destruction valve", valve, OLD_TABLES);
        example.check(
                "refrigerating capacity",
                example.given("mass flow rate") * (inlet.specificEnthalpy() - liquid.specificEnthalpy()),
                SHARE);
    }

    /** P. K. Nag, example 14.4, from the book's own properties. */
    @Test
    void nagOfTheCoefficientOfPerformance() {
        PublishedExample example = PublishedExample.of("NAG-14-4");
        double effect = example.table("enthalpy", "6") - example.result("enthalpy after heat exchanger");
        example.check("COP", effect / (example.table("enthalpy", "2") - example.table("enthalpy", "1")), SHARE);
        // The heat exchanger gives the liquid what the vapor takes up.
        double exchanged = example.table("enthalpy", "1") - example.table("enthalpy", "6");
        example.check("enthalpy after heat exchanger", example.table("enthalpy", "3") - exchanged, SHARE);
    }

    /** P. K. Nag, example 14.5: ammonia in two stages with flash intercooling against one stage. */
    @Test
    void nagOfFlashIntercooling() {
        PublishedExample example = PublishedExample.of("NAG-14-5");
        Equilibrium ammonia = TestFluids.of("R-717");
        double low = example.given("low pressure");
        double high = example.given("high pressure");
        double middle = Math.sqrt(low * high);
        example.check("intermediate pressure", middle, 1e-4);
        State vapor = ammonia.saturationAtPressure(low).dew();
        State secondVapor = ammonia.saturationAtPressure(middle).dew();
        State liquid = ammonia.saturationAtPressure(high).bubble();
        State middleLiquid = ammonia.saturationAtPressure(middle).bubble();
        double first = work(ammonia, vapor, middle);
        double second = work(ammonia, secondVapor, high);
        // The flash vessel balances: what the first stage brings and its liquid becomes leaves with the second.
        double share = (vapor.specificEnthalpy() + first - middleLiquid.specificEnthalpy())
                / (secondVapor.specificEnthalpy() - liquid.specificEnthalpy());
        double effect = vapor.specificEnthalpy() - middleLiquid.specificEnthalpy();
        double two = (first + share * second) / effect;
        double one = work(ammonia, vapor, high) / (vapor.specificEnthalpy() - liquid.specificEnthalpy());
        // A difference of two works: each may be off by the tables' 0.5 %, hence a point of a percent of 15.72.
        example.check("increase of work for single stage", one / two - 1, 0.07);
        example.check("increase of COP for two stage", one / two - 1, 0.07);
    }

    private static double work(Equilibrium equilibrium, State inlet, double pressure) {
        return equilibrium.atPressureEntropy(pressure, inlet.specificEntropy()).specificEnthalpy()
                - inlet.specificEnthalpy();
    }

    /** A. V. Arasu, example 6.6: the heat of 10 t of ice a day; the book's own heat capacities. */
    @Test
    void arasuOfIce() {
        PublishedExample example = PublishedExample.of("AR-6-6");
        double perDay = example.rows().stream()
                .filter(row -> row.getField("quantity").equals("ice"))
                .mapToDouble(row -> Double.parseDouble(row.getField("value")) * 1e3)
                .findFirst()
                .orElseThrow();
        double heat = example.given("specific heat of water") * (example.given("water temperature") - 273.15)
                + example.given("latent heat of ice")
                + example.given("specific heat of ice") * (273.15 - example.given("ice temperature"));
        example.check("refrigerating capacity", perDay * heat / 86_400, SHARE);
    }

    /** A. V. Arasu, example 6.16: how wet CO2 has to be to end just dry without loss. */
    @Test
    void arasuOfTheQuality() {
        PublishedExample example = PublishedExample.of("AR-6-16");
        Equilibrium carbonDioxide = TestFluids.of("R-744");
        double entropy = carbonDioxide
                .saturationAtPressure(example.given("pressure high"))
                .dew()
                .specificEntropy();
        State inlet = carbonDioxide.atPressureEntropy(example.given("pressure low"), entropy);
        example.check("quality", inlet.vaporQuality(), OLD_TABLES);
    }

    /** Hundy, Trott, Welch, example 25.3: the flow of a chiller. */
    @Test
    void hundyOfAChiller() {
        PublishedExample example = PublishedExample.of("HTW-25-3");
        Equilibrium refrigerant = TestFluids.of("R-134a");
        double pressure = refrigerant
                .saturationAtTemperature(example.given("evaporating temperature"))
                .dew()
                .pressure();
        double effect = refrigerant
                        .atPressureTemperature(pressure, example.given("vapour temperature"))
                        .specificEnthalpy()
                - refrigerant
                        .saturationAtTemperature(example.given("liquid temperature"))
                        .bubble()
                        .specificEnthalpy();
        example.check("refrigerating effect", effect, SHARE);
        example.check("mass flow rate", example.given("cooling load") / effect, SHARE);
    }

    /** Runs the checks on compressors and compares what they checked with what there is. */
    @Test
    void everyResultIsChecked() throws ReflectiveOperationException {
        for (Class<?> type : CHECKS) {
            Object instance = type.getDeclaredConstructor().newInstance();
            for (Method method : type.getDeclaredMethods()) {
                boolean itself = method.getName().equals("everyResultIsChecked");
                if (method.isAnnotationPresent(Test.class) && !itself) {
                    method.setAccessible(true);
                    method.invoke(instance);
                }
            }
        }
        Set<String> open = new TreeSet<>();
        for (NamedCsvRecord row : records("checks/worked_examples.csv")) {
            if (TOPICS.contains(row.getField("topic")) && row.getField("role").equals("result")) {
                open.add(row.getField("example_id") + ' ' + row.getField("quantity"));
            }
        }
        assertThat(open).hasSizeGreaterThan(50);
        open.removeAll(PublishedExample.checked());
        // Checked as whole cycles, row by row, each with its tolerance or the reason why it is not met.
        for (NamedCsvRecord row : records("examples/vapor-compression.csv")) {
            if (!row.getField("tolerance").isEmpty()) {
                open.remove(row.getField("example") + ' ' + row.getField("quantity"));
            }
        }
        assertThat(open).isEmpty();
    }

    private static List<NamedCsvRecord> records(String file) {
        try (Reader reader = new InputStreamReader(
                        Objects.requireNonNull(CircuitExamplesTest.class.getResourceAsStream("/reference/" + file)),
                        StandardCharsets.UTF_8);
                CsvReader<NamedCsvRecord> csv = CsvReader.builder().ofNamedCsvRecord(reader)) {
            return csv.stream().toList();
        } catch (IOException exception) {
            throw new UncheckedIOException(exception);
        }
    }
}
