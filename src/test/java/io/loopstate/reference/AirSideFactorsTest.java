package io.loopstate.reference;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.air.AirState;
import io.loopstate.engine.fluid.ReferenceState;
import io.loopstate.engine.property.State;
import io.loopstate.engine.rejection.AirFactors;
import io.loopstate.units.Atmosphere;
import org.junit.jupiter.api.Test;

/**
 * Every row of {@code air_side_factors.csv}: trade practice and ASHRAE Fundamentals 2017 from memory, one row read from the page
 * named there. Sanity checks, met to the printed digits or, for the altitude column that its source rounds from relative
 * density, to 0.01.
 */
class AirSideFactorsTest {
    private static final double CFM = 0.028316846592 / 60;
    private static final double BTU_PER_HOUR = 1055.05585262 / 3600;
    private static final double POUND_PER_HOUR = 0.45359237 / 3600;
    private static final double GPM = 3.785411784e-3 / 60;
    /** 70 degF: where dry standard air has 0.075 lb/ft3 at sea level and evaporating water takes 1054 Btu/lb. */
    private static final double SEVENTY = (70 + 459.67) / 1.8;
    /** 0.075 lb/ft3. */
    private static final double STANDARD_DENSITY = 0.075 * 0.45359237 / 0.028316846592;

    private static final double ALTITUDE_COLUMN = 0.012;

    @Test
    void everyRow() {
        new PublishedTable("air_side_factors").compare(13, AirSideFactorsTest::row);
    }

    private static void row(PublishedTable.Row row) {
        AirFactors standard = AirFactors.of(dry(0), STANDARD_DENSITY, SEVENTY);
        switch (row.text("id")) {
            case "shf" -> row.check("value", standard.sensible() * CFM / BTU_PER_HOUR / 1.8);
            case "latgr" -> row.check("value", standard.latent() * CFM / BTU_PER_HOUR / 7000);
            case "tot" -> row.check("value", standard.total() * CFM / POUND_PER_HOUR);
            // Vapor of 24 degC in, condensate of 10 degC out; printed to three digits and a zero.
            case "latSI" ->
                row.checkWithin(
                        "value",
                        3010,
                        AirFactors.of(new AirState(101325, 297.15, 0), STANDARD_DENSITY, 283.15)
                                        .latent()
                                / 1000,
                        5.0 / 3010);
            case "totSI" -> row.check("value", standard.total());
            case "tower ton" -> row.checkWithin("value", 15000, 12000 * 1.25, 1e-12);
            case "500" -> row.checkWithin("value", 500, waterFactor() * GPM / BTU_PER_HOUR / 1.8, 0.005);
            case "chw" -> row.check("value", 12000 / (waterFactor() * GPM / BTU_PER_HOUR / 1.8 * 10));
            default -> {
                double factor =
                        AirFactors.of(dry(row.given("altitude_ft")), SEVENTY).sensible()
                                / AirFactors.of(dry(0), SEVENTY).sensible();
                double printed = Double.parseDouble(row.text("value"));
                row.checkWithin("value", printed, factor, ALTITUDE_COLUMN);
            }
        }
        if (row.has("altitude_ft")) {
            row.given("altitude_ft");
        }
    }

    private static AirState dry(double feet) {
        return new AirState(Atmosphere.atAltitude(feet * 0.3048).pressure(), SEVENTY, 0);
    }

    /** J/(m3 K) of water at 60 degF, by its equation of state. */
    private static double waterFactor() {
        State water = TestFluids.of("R-718", ReferenceState.NORMAL_BOILING_POINT)
                .atPressureTemperature(3e5, (60 + 459.67) / 1.8);
        return water.density() * water.isobaricHeatCapacity();
    }
}
