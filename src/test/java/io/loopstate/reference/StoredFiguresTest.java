package io.loopstate.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.engine.eos.Isotherm;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.Limits;
import io.loopstate.engine.fluid.Refrigerant;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Figures that the coefficient files store but the equation of state determines: both must tell the same. A stale one shows
 * that coefficients were changed without it.
 */
class StoredFiguresTest {
    private static final double NORMAL_PRESSURE = 101325;
    /** One unit in the last of ten digits. */
    private static final double TEN_DIGITS = 1e-9;
    /** Half a unit in the last of six digits. */
    private static final double SIX_DIGITS = 5e-6;
    /** dp/drho and d2p/drho2 at a critical point, made dimensionless: rounding of sums of some forty terms. */
    private static final double FLAT = 1e-10;
    /** Share of its lowest temperature to which a range is widened where a boiling point is extrapolated. */
    private static final double WIDENED = 0.85;

    static Stream<CoefficientFile> files() {
        return CoefficientFile.all();
    }

    static Stream<CoefficientFile> pure() {
        return files().filter(file -> file.fluid().kind() == Refrigerant.Kind.PURE);
    }

    @ParameterizedTest
    @MethodSource("pure")
    void criticalPoint(CoefficientFile file) {
        Fluid fluid = file.fluid();
        JsonNode stored = file.json().get("numericalCriticalPoint");
        double t = fluid.criticalPoint().temperature();
        double rho = fluid.criticalMolarDensity();
        agree("temperature", stored.get("T"), t);
        agree("pressure", stored.get("p"), fluid.criticalPoint().pressure());
        agree("density", stored.get("rho"), rho);
        if (!fluid.model().nonAnalytic()) {
            Isotherm.Pressure p = fluid.model().isotherm(t).pressure(rho);
            double rt = fluid.model().gasConstant() * t;
            assertEquals(0, p.slope() / rt, FLAT, "slope");
            assertEquals(0, p.curvature() * rho / rt, FLAT, "curvature");
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void normalBoilingPoint(CoefficientFile file) {
        Fluid fluid = file.fluid();
        JsonNode stored = file.json().get("normalBoilingPoint");
        if (stored.isNull()) {
            // no liquid at that pressure
            Saturation lowest = Fluids.equilibrium(fluid)
                    .saturationAtTemperature(fluid.limits().minTemperature());
            assertTrue(lowest.bubble().pressure() > NORMAL_PRESSURE);
            assertTrue(fluid.normalBoilingPoint().isEmpty());
            return;
        }
        boolean extrapolated = file.json().has("normalBoilingPointExtrapolated");
        assertEquals(extrapolated, stored.asDouble() < fluid.limits().minTemperature());
        assertEquals(extrapolated, fluid.normalBoilingPoint().isEmpty());
        Saturation saturation =
                Fluids.equilibrium(extrapolated ? colder(fluid) : fluid).saturationAtPressure(NORMAL_PRESSURE);
        agree("bubble point", stored, saturation.bubble().temperature());
        if (file.json().has("normalDewPoint")) {
            agree(
                    "dew point",
                    file.json().get("normalDewPoint"),
                    saturation.dew().temperature());
        }
    }

    private static Fluid colder(Fluid fluid) {
        Limits limits = fluid.limits();
        return fluid.withLimits(
                new Limits(limits.minTemperature() * WIDENED, limits.maxTemperature(), limits.maxPressure()));
    }

    static Stream<CoefficientFile> withTriplePoint() {
        return files().filter(file -> !file.json().get("triplePoint").isNull());
    }

    @ParameterizedTest
    @MethodSource("withTriplePoint")
    void triplePoint(CoefficientFile file) {
        Fluid fluid = file.fluid();
        JsonNode stored = file.json().get("triplePoint");
        double t = stored.get("T").asDouble();
        boolean outside = t < fluid.limits().minTemperature() || fluid.kind() == Refrigerant.Kind.PSEUDO_PURE;
        assertEquals(outside, stored.get("p").isNull(), "pressure is known inside the range of a pure fluid");
        if (!outside) {
            Equilibrium equilibrium = Fluids.equilibrium(fluid);
            agree(
                    "pressure",
                    stored.get("p"),
                    equilibrium.saturationAtTemperature(t).dew().pressure());
        }
    }

    static Stream<CoefficientFile> withLargestDensity() {
        return files().filter(file -> !file.json().get("validity").get("rhoMax").isNull());
    }

    /** The density at the lowest temperature and highest pressure. */
    @ParameterizedTest
    @MethodSource("withLargestDensity")
    void largestDensity(CoefficientFile file) {
        Fluid fluid = file.fluid();
        double rho = file.json().get("validity").get("rhoMax").asDouble();
        Isotherm.Pressure p =
                fluid.model().isotherm(fluid.limits().minTemperature()).pressure(rho);
        double missing = (fluid.limits().maxPressure() - p.value()) / p.slope();
        assertEquals(0, missing / rho, SIX_DIGITS);
    }

    private static void agree(String name, JsonNode stored, double calculated) {
        assertEquals(stored.asDouble(), calculated, TEN_DIGITS * calculated, name);
    }
}
