package io.loopstate.engine.flash;

import static io.loopstate.engine.error.Variable.DENSITY;
import static io.loopstate.engine.error.Variable.PRESSURE;
import static io.loopstate.engine.error.Variable.SPECIFIC_ENTHALPY;
import static io.loopstate.engine.error.Variable.SPECIFIC_ENTROPY;
import static io.loopstate.engine.error.Variable.SPECIFIC_INTERNAL_ENERGY;
import static io.loopstate.engine.error.Variable.SPECIFIC_VOLUME;
import static io.loopstate.engine.error.Variable.SUBCOOLING;
import static io.loopstate.engine.error.Variable.SUPERHEAT;
import static io.loopstate.engine.error.Variable.TEMPERATURE;
import static io.loopstate.engine.error.Variable.VAPOR_QUALITY;

import io.loopstate.engine.coexistence.SplitVariable;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import java.util.List;

/** Finds the flash that goes with a pair of inputs, and turns inputs per kilogram into inputs per mole. */
final class PairFlash {
    private final FluidModel fluid;
    private final double molarMass;

    PairFlash(FluidModel fluid) {
        this.fluid = fluid;
        this.molarMass = fluid.fluid().molarMass();
    }

    /** Every state with the two values, in any order of inputs. */
    List<Point> solve(Variable first, double firstValue, Variable second, double secondValue) {
        requireMeaning(first, firstValue);
        requireMeaning(second, secondValue);
        Variable a = canonical(first);
        Variable b = canonical(second);
        if (a == b) {
            throw notIndependent(first, second);
        }
        double x = molar(first, firstValue);
        double y = molar(second, secondValue);
        // the earlier one in the order of the enumeration leads
        return a.compareTo(b) < 0 ? ordered(a, x, b, y) : ordered(b, y, a, x);
    }

    private List<Point> ordered(Variable a, double x, Variable b, double y) {
        return switch (a) {
            case TEMPERATURE -> atTemperature(x, b, y);
            case PRESSURE -> atPressure(x, b, y);
            case DENSITY ->
                b == VAPOR_QUALITY
                        ? QualityPair.solve(fluid, y, Point::density, x)
                        : List.of(DensityCaloric.solve(fluid, x, caloric(a, b), y));
            case SPECIFIC_ENTHALPY, SPECIFIC_ENTROPY, SPECIFIC_INTERNAL_ENERGY -> caloricPair(a, x, b, y);
            default -> throw notIndependent(a, b);
        };
    }

    private List<Point> atTemperature(double t, Variable b, double y) {
        return switch (b) {
            case PRESSURE -> List.of(PressureTemperature.solve(fluid, y, t));
            case DENSITY -> List.of(TemperatureDensity.solve(fluid, t, y));
            case VAPOR_QUALITY ->
                List.of(Saturated.atQuality(fluid, SplitVariable.TEMPERATURE, t, edgesAtTemperature(t), y));
            case SUPERHEAT -> {
                Dome.Edges edges = edgesAtTemperature(t - y);
                yield List.of(
                        y == 0
                                ? Saturated.dew(fluid, edges)
                                : PressureTemperature.solve(fluid, edges.dewPressure(), t));
            }
            case SUBCOOLING -> {
                Dome.Edges edges = edgesAtTemperature(t + y);
                yield List.of(
                        y == 0
                                ? Saturated.bubble(fluid, edges)
                                : PressureTemperature.solve(fluid, edges.bubblePressure(), t));
            }
            default -> TemperatureCaloric.solve(fluid, t, caloric(TEMPERATURE, b), y);
        };
    }

    private List<Point> atPressure(double p, Variable b, double y) {
        return switch (b) {
            case DENSITY -> PressureDensity.solve(fluid, p, y);
            case VAPOR_QUALITY -> List.of(Saturated.atQuality(fluid, SplitVariable.PRESSURE, p, edgesAtPressure(p), y));
            case SUPERHEAT -> {
                Dome.Edges edges = edgesAtPressure(p);
                yield List.of(
                        y == 0
                                ? Saturated.dew(fluid, edges)
                                : PressureTemperature.solve(fluid, p, edges.dewTemperature() + y));
            }
            case SUBCOOLING -> {
                Dome.Edges edges = edgesAtPressure(p);
                yield List.of(
                        y == 0
                                ? Saturated.bubble(fluid, edges)
                                : PressureTemperature.solve(fluid, p, edges.bubbleTemperature() - y));
            }
            default -> List.of(PressureCaloric.solve(fluid, p, caloric(PRESSURE, b), y));
        };
    }

    private List<Point> caloricPair(Variable a, double x, Variable b, double y) {
        Caloric leading = caloric(b, a);
        if (b == VAPOR_QUALITY) {
            return QualityPair.solve(fluid, y, leading::of, x);
        }
        if (a == SPECIFIC_ENTROPY) {
            return List.of(CaloricPair.solve(fluid, x, caloric(a, b), y));
        }
        return b == SPECIFIC_ENTROPY
                ? List.of(CaloricPair.solve(fluid, y, leading, x))
                : CaloricLine.atEnthalpy(fluid, x, energy(a, b, y));
    }

    private double energy(Variable a, Variable b, double y) {
        if (b != SPECIFIC_INTERNAL_ENERGY) {
            throw notIndependent(a, b);
        }
        return y;
    }

    /** Edges of the dome at a temperature (K) that has them. */
    Dome.Edges edgesAtTemperature(double t) {
        if (t >= fluid.criticalTemperature()) {
            throw aboveCritical(TEMPERATURE, t, fluid.minTemperature(), fluid.criticalTemperature());
        }
        fluid.requireTemperature(t);
        return fluid.dome().atTemperature(Math.max(t, fluid.minTemperature()));
    }

    /** Edges of the dome at a pressure (Pa) that has them. */
    Dome.Edges edgesAtPressure(double p) {
        double lowest = fluid.dome().minPressure();
        if (p >= fluid.criticalPressure()) {
            throw aboveCritical(PRESSURE, p, lowest, fluid.criticalPressure());
        }
        if (!fluid.hasSaturation(p)) {
            throw fluid.outOfRange(PRESSURE, p, lowest, fluid.criticalPressure());
        }
        return fluid.edgesAtPressure(p);
    }

    private EngineException aboveCritical(Variable variable, double got, double lower, double upper) {
        return EngineException.of(
                ErrorCode.ABOVE_CRITICAL,
                "there is no saturation at or above the critical point of "
                        + fluid.fluid().designation(),
                variable,
                got,
                lower,
                upper);
    }

    private static Variable canonical(Variable variable) {
        return variable == SPECIFIC_VOLUME ? DENSITY : variable;
    }

    private double molar(Variable variable, double value) {
        return switch (variable) {
            case DENSITY -> value / molarMass;
            case SPECIFIC_VOLUME -> 1 / (value * molarMass);
            case SPECIFIC_ENTHALPY, SPECIFIC_ENTROPY, SPECIFIC_INTERNAL_ENERGY -> value * molarMass;
            default -> value;
        };
    }

    private static Caloric caloric(Variable other, Variable variable) {
        return switch (variable) {
            case SPECIFIC_ENTHALPY -> Caloric.ENTHALPY;
            case SPECIFIC_ENTROPY -> Caloric.ENTROPY;
            case SPECIFIC_INTERNAL_ENERGY -> Caloric.INTERNAL_ENERGY;
            default -> throw notIndependent(other, variable);
        };
    }

    private static void requireMeaning(Variable variable, double value) {
        boolean meaningful = switch (variable) {
            case PRESSURE, TEMPERATURE, DENSITY, SPECIFIC_VOLUME -> value > 0 && value < Double.POSITIVE_INFINITY;
            case VAPOR_QUALITY -> value >= 0 && value <= 1;
            case SUPERHEAT, SUBCOOLING -> value >= 0 && value < Double.POSITIVE_INFINITY;
            default -> Math.abs(value) < Double.POSITIVE_INFINITY;
        };
        if (!meaningful) {
            throw EngineException.of(
                    ErrorCode.IMPOSSIBLE_VALUE,
                    "no state can have this value",
                    variable,
                    value,
                    0,
                    variable == VAPOR_QUALITY ? 1 : Double.NaN);
        }
    }

    private static EngineException notIndependent(Variable a, Variable b) {
        return EngineException.of(ErrorCode.PAIR_NOT_INDEPENDENT, a + " and " + b + " together do not fix a state");
    }
}
