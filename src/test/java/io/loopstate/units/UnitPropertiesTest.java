package io.loopstate.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** Laws that hold for every unit, every number and every text. */
class UnitPropertiesTest {
    private static final Atmosphere HERE = Atmosphere.ofPressure(98_765.4);
    private static final MathContext EXACT = new MathContext(60);
    private static final Map<String, String> FACTORS = UnitTable.load().rows().stream()
            .flatMap(row -> row.tokens().stream().map(token -> Map.entry(token, row.factor())))
            .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));

    @Provide
    Arbitrary<UnitToken> units() {
        return Arbitraries.of(UnitCatalog.all());
    }

    @Provide
    Arbitrary<Double> numbers() {
        return Arbitraries.oneOf(
                Arbitraries.doubles().between(-1000.0, 1000.0),
                Arbitraries.doubles().between(-1e12, 1e12),
                Arbitraries.of(0.0, -0.0, 1.0, -1.0, 1e-12, 1e200, Double.MIN_NORMAL, 118.0, 41.5));
    }

    @Property(tries = 20_000)
    void aConversionIsWithinOneUnitInTheLastPlaceOfTheExactOne(
            @ForAll("units") UnitToken unit, @ForAll("numbers") double number) {
        BigDecimal exact = exactSi(unit, number);
        double si;
        try {
            si = unit.toSi(number, HERE);
        } catch (UnitFault impossible) {
            boolean belowZero = exact.signum() < 0;
            boolean negativeVacuum = unit.reference() == PressureReference.VACUUM && number < 0.0;
            assertThat(belowZero || negativeVacuum).as(number + " " + unit).isTrue();
            return;
        }
        double ulp = Math.ulp(exact.doubleValue());
        assertThat(new BigDecimal(si).subtract(exact).abs().doubleValue()).isLessThanOrEqualTo(ulp);
    }

    private static BigDecimal exactSi(UnitToken unit, double number) {
        String[] terms = FACTORS.get(unit.name()).split("\\+");
        BigDecimal linear = new BigDecimal(number).multiply(fraction(terms[0]), EXACT);
        BigDecimal atmosphere = new BigDecimal(HERE.pressure());
        return switch (unit.reference()) {
            case GAUGE -> atmosphere.add(linear);
            case VACUUM -> atmosphere.subtract(linear);
            case ABSOLUTE, DIFFERENCE, NONE -> terms.length == 1 ? linear : linear.add(fraction(terms[1]));
        };
    }

    private static BigDecimal fraction(String text) {
        String[] parts = text.split("/");
        return parts.length == 1
                ? new BigDecimal(text)
                : new BigDecimal(parts[0]).divide(new BigDecimal(parts[1]), EXACT);
    }

    /** Relative to the distance from the SI zero, where a gauge or a temperature scale has its own zero elsewhere. */
    @Property(tries = 20_000)
    void thereAndBackIsTheSameNumber(
            @ForAll("units") UnitToken unit, @ForAll @DoubleRange(min = 0.0, max = 25.0) double number) {
        double si = unit.toSi(number, HERE);
        double zero = unit.toSi(0.0, HERE);
        double size = Math.abs(number) + Math.abs(zero) / unit.factor();
        assertThat(unit.fromSi(si, HERE)).isCloseTo(number, within(1e-15 * size));
    }

    @Property
    void theOtherWayRoundToo(@ForAll("units") UnitToken unit, @ForAll @DoubleRange(min = 0.0, max = 9e4) double si) {
        double zero = Math.abs(unit.toSi(0.0, HERE));
        assertThat(unit.toSi(unit.fromSi(si, HERE), HERE)).isCloseTo(si, within(1e-15 * (si + zero)));
    }

    @Property
    void nothingIsNothingButOnScalesWithTheirOwnZero(@ForAll("units") UnitToken unit) {
        double expected = switch (unit.reference()) {
            case GAUGE, VACUUM -> HERE.pressure();
            case ABSOLUTE, DIFFERENCE, NONE -> unit.offset();
        };
        assertThat(unit.toSi(0.0, HERE)).isEqualTo(expected);
        assertThat(unit.fromSi(expected, HERE)).isEqualTo(0.0);
    }

    /** 10 delta_degF are the distance of any two temperatures 10 degF apart, and so for pressures. */
    @Property
    void aDifferenceIsTheDistanceOfTwoPoints(
            @ForAll @DoubleRange(min = 0.0, max = 500.0) double start,
            @ForAll @DoubleRange(min = 0.0, max = 500.0) double step) {
        String[][] pairs = {{"degF", "delta_degF"}, {"degC", "delta_degC"}, {"psig", "psi_diff"}, {"bar_a", "bar_diff"}
        };
        for (String[] pair : pairs) {
            UnitToken point = UnitToken.of(pair[0]);
            double upper = point.toSi(start + step, HERE);
            double distance = upper - point.toSi(start, HERE);
            assertThat(UnitToken.of(pair[1]).toSi(step, HERE)).isCloseTo(distance, within(2 * Math.ulp(upper) + 1e-9));
        }
    }

    @Property(tries = 3000)
    void whatAReadingPrintsIsReadBack(@ForAll("units") UnitToken unit, @ForAll("numbers") double number) {
        Reading reading = new Reading(unit.kind(), number, unit);
        assertThat(QuantityParser.parse(unit.kind(), reading.toString())).isEqualTo(reading);
    }

    @Provide
    Arbitrary<String> texts() {
        String letters = UnitCatalog.all().stream().map(UnitToken::name).collect(Collectors.joining());
        Arbitrary<String> nearUnits = Arbitraries.strings()
                .withChars(letters + " .,+-/()°µΔ0123456789eE'_%")
                .ofMaxLength(70);
        Arbitrary<String> mangledUnits = Combinators.combine(
                        Arbitraries.of("1", "-1.5", "1e3", "1,5", "0x", "+", ""),
                        Arbitraries.of(" ", "", "\u00A0", "/", "."),
                        Arbitraries.of(UnitCatalog.all()).map(UnitToken::symbol),
                        Arbitraries.strings().all().ofMaxLength(3))
                .as((number, gap, unit, tail) -> number + gap + unit + tail);
        return Arbitraries.oneOf(Arbitraries.strings().all().ofMaxLength(80), nearUnits, mangledUnits);
    }

    @Property(tries = 5000)
    void anyTextIsReadOrRefusedWithReason(
            @ForAll QuantityKind kind, @ForAll DecimalMark mark, @ForAll("texts") String text) {
        long start = System.nanoTime();
        try {
            Reading reading = QuantityParser.parse(kind, text, mark);
            assertThat(reading.value()).isFinite();
            assertThat(reading.unit().measures(kind)).isTrue();
        } catch (UnitFault fault) {
            assertThat(fault.getMessage()).isNotBlank();
            assertThat(fault.got().length()).isLessThanOrEqualTo(42);
        }
        assertThat(System.nanoTime() - start).as("nanoseconds").isLessThan(1_000_000_000L);
    }

    @Property
    void anySelectionIsReadOrRefusedWithReason(@ForAll("texts") String text) {
        try {
            UnitSelection selection = UnitSelection.parse(text);
            assertThat(UnitSelection.parse(selection.toString())).isEqualTo(selection);
        } catch (UnitFault fault) {
            assertThat(fault.getMessage()).isNotBlank();
        }
    }
}
