package io.loopstate.reference;

import io.loopstate.engine.air.AirSolver;
import io.loopstate.engine.air.AirState;
import io.loopstate.engine.air.AirVariable;
import io.loopstate.engine.air.MoistAir;
import io.loopstate.engine.air.WaterVapor;
import org.junit.jupiter.api.Test;

/**
 * Every value of {@code psychrometrics.csv}: ASHRAE Handbook - Fundamentals 2017, chapter 1, tables 2 and 3 and example 1, as
 * read from a repository named there. Saturation pressures, dry air and the chart readings of the example are met to the
 * printed digits or listed with the evidence; tables of saturated air come from a real-gas model, so that the rows grant the
 * formulas 2 % of the humidity ratio and 1 % of the enthalpy, 3 % near zero. Held here: 0.15 % and 0.4 %.
 */
class PsychrometricsTest {
    private static final double HUMIDITY_RATIO = 0.0015;
    private static final double ENTHALPY = 0.004;
    private static final double BTU_PER_POUND = 2326;
    private static final double PSI = 6894.757293168;
    private static final double CUBIC_FOOT_PER_POUND = 0.028316846592 / 0.45359237;
    /** Dry air at 0 degF and liquid water at 32 degF have no enthalpy in inch-pound tables. */
    private static final double ZERO_FAHRENHEIT = AirState.DRY_AIR_HEAT_CAPACITY * (32 / 1.8);

    @Test
    void everyRow() {
        new PublishedTable("psychrometrics").compare(30, PsychrometricsTest::row);
    }

    private static void row(PublishedTable.Row row) {
        boolean fahrenheit = row.text("temperature_unit").equals("F");
        double dryBulb = kelvin(row.given("dry_bulb"), fahrenheit);
        double pressure = row.has("pressure")
                ? row.given("pressure") * (row.text("pressure_unit").equals("psia") ? PSI : 1)
                : 101325;
        AirSolver solver = new AirSolver(pressure);
        String quantity = row.text("quantity");
        if (row.has("wet_bulb")) {
            double wetBulb = kelvin(row.given("wet_bulb"), fahrenheit);
            example(row, quantity, solver.state(AirVariable.DRY_BULB, dryBulb, AirVariable.WET_BULB, wetBulb));
            return;
        }
        switch (quantity) {
            case "saturation vapour pressure" ->
                row.check("value", WaterVapor.saturationPressure(dryBulb) / (fahrenheit ? PSI : 1));
            case "saturation humidity ratio" ->
                row.checkWithin(
                        "value",
                        Double.parseDouble(row.text("value")),
                        AirState.saturatedHumidityRatio(pressure, dryBulb),
                        HUMIDITY_RATIO);
            case "enthalpy of saturated moist air" ->
                row.checkWithin(
                        "value",
                        Double.parseDouble(row.text("value")),
                        enthalpy(solver.saturated(dryBulb), fahrenheit),
                        ENTHALPY);
            case "enthalpy of dry air" -> row.check("value", enthalpy(new AirState(pressure, dryBulb, 0), fahrenheit));
            case "specific volume of dry air" ->
                row.check(
                        "value",
                        new AirState(pressure, dryBulb, 0).specificVolume() / (fahrenheit ? CUBIC_FOOT_PER_POUND : 1));
            default -> throw new IllegalStateException(quantity);
        }
    }

    private static void example(PublishedTable.Row row, String quantity, AirState air) {
        row.check(
                "value",
                switch (quantity) {
                    case "humidity ratio" -> air.humidityRatio();
                    case "dew point" -> MoistAir.of(air).dewPoint().orElseThrow() - 273.15;
                    case "specific volume" -> air.specificVolume();
                    default -> throw new IllegalStateException(quantity);
                });
    }

    private static double enthalpy(AirState air, boolean inchPound) {
        return inchPound ? (air.specificEnthalpy() + ZERO_FAHRENHEIT) / BTU_PER_POUND : air.specificEnthalpy() / 1000;
    }

    private static double kelvin(double value, boolean fahrenheit) {
        return fahrenheit ? (value + 459.67) / 1.8 : value + 273.15;
    }
}
