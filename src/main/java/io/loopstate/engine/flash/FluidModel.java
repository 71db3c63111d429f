package io.loopstate.engine.flash;

import io.loopstate.engine.eos.HelmholtzModel;
import io.loopstate.engine.eos.Isotherm;
import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.fluid.Refrigerant;
import io.loopstate.engine.property.Phase;

/**
 * What every flash needs: the fluid, its equation with the datum wanted, its dome, and a bound of its density.
 *
 * @param coexistence states inside the dome
 * @param critical the critical state, which divides what is nearer to the liquid from what is nearer to the vapor
 * @param maxDensity mol/m3, above every density in the range of the equation
 * @param densityMaximum whether the cold liquid contracts on heating, as water does
 * @param starts where iterations above the critical pressure begin
 */
record FluidModel(
        Refrigerant fluid,
        HelmholtzModel model,
        Dome dome,
        Coexistence coexistence,
        MolarState critical,
        double maxDensity,
        boolean densityMaximum,
        IsobarStarts starts) {
    FluidModel(
            Refrigerant fluid,
            HelmholtzModel model,
            Dome dome,
            Coexistence coexistence,
            double maxDensity,
            boolean densityMaximum,
            IsobarStarts starts) {
        this(
                fluid,
                model,
                dome,
                coexistence,
                model.isotherm(fluid.criticalPoint().temperature()).state(fluid.criticalMolarDensity()),
                maxDensity,
                densityMaximum,
                starts);
    }

    /** Rounding allowed at the ends of the range. */
    private static final double EDGE = 1e-9;

    /** Pa, far below the vapor of any solid: the reciprocals of what is thinner leave the range of numbers. */
    private static final double LEAST_PRESSURE = 1e-100;

    /** More than p v itself grows over a factor e of pressure. */
    private static final double STEEPEST = 4;

    private static final double ROUNDED = 1e-10;
    private static final double SATURATED = 1e-12;
    private static final double NEAR_CRITICAL = 1e-4;

    /** The same with enthalpy (J/mol) and entropy (J/(mol K)) counted from another datum. */
    FluidModel shifted(double enthalpy, double entropy) {
        return new FluidModel(
                fluid,
                model.shifted(enthalpy, entropy),
                dome,
                coexistence.shifted(enthalpy, entropy),
                maxDensity,
                densityMaximum,
                new IsobarStarts());
    }

    double criticalTemperature() {
        return fluid.criticalPoint().temperature();
    }

    double criticalPressure() {
        return fluid.criticalPoint().pressure();
    }

    /** Highest temperature of the dome, K. */
    double topTemperature() {
        return dome.topTemperature();
    }

    /** Highest pressure of the dome, Pa. */
    double topPressure() {
        return dome.topPressure();
    }

    double minTemperature() {
        return fluid.limits().minTemperature();
    }

    double maxTemperature() {
        return fluid.limits().maxTemperature();
    }

    double maxPressure() {
        return fluid.limits().maxPressure();
    }

    Isotherm isotherm(double temperature) {
        return model.isotherm(temperature);
    }

    /** Phase outside the dome. */
    Phase phase(double temperature, double pressure, boolean denserThanDome) {
        if (temperature >= criticalTemperature()) {
            return pressure > criticalPressure() ? Phase.SUPERCRITICAL : Phase.VAPOR;
        }
        return denserThanDome ? Phase.LIQUID : Phase.VAPOR;
    }

    /** Whether there is a saturation line at a pressure (Pa). */
    boolean hasSaturation(double pressure) {
        return pressure < topPressure() && pressure >= dome.minPressure() * (1 - EDGE);
    }

    /** Edges of the dome at a pressure (Pa) that has them. */
    Dome.Edges edgesAtPressure(double pressure) {
        return dome.atPressure(Math.max(pressure, dome.minPressure()));
    }

    void requireTemperature(double temperature) {
        if (!(temperature >= minTemperature() * (1 - EDGE) && temperature <= maxTemperature() * (1 + EDGE))) {
            throw outOfRange(Variable.TEMPERATURE, temperature, minTemperature(), maxTemperature());
        }
    }

    void requirePressure(double pressure) {
        if (!(pressure >= LEAST_PRESSURE && pressure <= maxPressure() * (1 + EDGE))) {
            throw outOfRange(Variable.PRESSURE, pressure, LEAST_PRESSURE, maxPressure());
        }
    }

    /** Whether a caloric value beyond an end of its range is that end, rounded. */
    boolean negligible(Caloric caloric, double difference, MolarState end) {
        return Math.abs(difference) <= ROUNDED * caloric.scale(end, model.gasConstant());
    }

    /** Whether a caloric value is that of the saturated liquid, to the rounding of both. */
    boolean saturated(Caloric caloric, double difference, MolarState liquid) {
        return Math.abs(difference) <= SATURATED * caloric.scale(liquid, model.gasConstant());
    }

    /**
     * Most (J/mol) by which an energy changes along an isentrope, or h - u or T s along an energy, over a width in ln p below 1
     * (dh = v dp, du = -p dv): a few times p v, of a liquid about to boil that of its vapor.
     */
    double reach(Point point, double width) {
        double displacement = Math.max(point.pressure() / point.density(), model.gasConstant() * point.temperature());
        return STEEPEST * width * displacement;
    }

    /** No state in the range has both values. */
    EngineException noSuchState(Variable first, Variable second) {
        return EngineException.of(
                ErrorCode.NO_SUCH_STATE,
                "no state of " + fluid.designation() + " in the range of its equation has this " + first.words()
                        + " and " + second.words());
    }

    /**
     * Where an equation of state bends the wrong way, as some do in the region where the substance is long frozen and all
     * do between the phases, its numbers mean nothing.
     */
    MolarState requirePhysical(MolarState state) {
        boolean expands = state.pressureByTemperature() > 0 || densityMaximum;
        if (state.isochoricHeatCapacity() > 0 && state.pressureByDensity() > 0 && expands) {
            return state;
        }
        boolean critical = Math.abs(state.temperature() / criticalTemperature() - 1) < NEAR_CRITICAL;
        throw EngineException.notComputed(
                critical
                        ? "too close to the critical point of " + fluid.designation()
                                + " for liquid and vapor to be told apart"
                        : "the equation of state of " + fluid.designation()
                                + " is not physical here, where the substance is probably solid",
                Variable.PRESSURE,
                state.pressure(),
                Double.NaN,
                Double.NaN);
    }

    /** A state found from other inputs must itself lie in the range. */
    MolarState requireInRange(MolarState state) {
        requireTemperature(state.temperature());
        requirePressure(state.pressure());
        return state;
    }

    /** As below, for a caloric input and limits on a molar basis. */
    EngineException outOfRange(Caloric caloric, double got, double lower, double upper) {
        double m = fluid.molarMass();
        return outOfRange(caloric.variable(), got / m, lower / m, upper / m);
    }

    EngineException outOfRange(Variable variable, double got, double lower, double upper) {
        return EngineException.of(
                ErrorCode.OUT_OF_RANGE,
                "outside the range of the equation of state of " + fluid.designation(),
                variable,
                got,
                lower,
                upper);
    }
}
