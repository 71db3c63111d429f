package io.loopstate.engine.air;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.numerics.Roots;
import java.util.EnumSet;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;

/** Moist air at a pressure from any two independent variables. Errors name the variable by {@link AirVariable#input()}. */
public final class AirSolver {
    /** Lowest dry bulb, K. */
    public static final double LOWEST_DRY_BULB = 173.15;
    /** Highest dry bulb, K. */
    public static final double HIGHEST_DRY_BULB = 473.15;
    /** Highest humidity ratio, kg/kg: far beyond any coil. */
    public static final double HIGHEST_HUMIDITY_RATIO = 10;
    /** Lowest dew point, K: water freezes out of the air above it in any weather. */
    public static final double LOWEST_DEW_POINT = 153.15;

    /** By how much inputs that state saturated air may overshoot it, from rounding. */
    private static final double ROUNDING = 1e-9;

    private final double pressure;

    /** At a total pressure, Pa. */
    public AirSolver(double pressure) {
        this.pressure = pressure;
    }

    /**
     * The air on which two variables agree.
     *
     * @throws EngineException {@code IMPOSSIBLE_VALUE} or {@code OUT_OF_RANGE} for one value, {@code CONTRADICTORY_INPUTS} for
     *     two that no air has, {@code PAIR_NOT_INDEPENDENT} for dew point with humidity ratio and for wet bulb with enthalpy
     */
    public AirState state(AirVariable first, double firstValue, AirVariable second, double secondValue) {
        if (first.ordinal() > second.ordinal()) {
            return state(second, secondValue, first, firstValue);
        }
        check(first, firstValue);
        check(second, secondValue);
        requireIndependent(first, second);
        if (first == AirVariable.DRY_BULB) {
            return fromDryBulb(firstValue, second, secondValue);
        }
        if (isWater(first)) {
            return fromWater(water(first, firstValue), second, secondValue);
        }
        if (isWater(second)) {
            return fromWater(water(second, secondValue), first, firstValue);
        }
        return first == AirVariable.RELATIVE_HUMIDITY
                ? fromRelativeHumidityAndEnthalpy(firstValue, secondValue)
                : fromWetBulbAndRelativeHumidity(firstValue, secondValue);
    }

    /** Saturated air at a dry bulb, K. */
    public AirState saturated(double dryBulb) {
        return fromDryBulb(dryBulb, AirVariable.RELATIVE_HUMIDITY, 1);
    }

    private static boolean isWater(AirVariable variable) {
        return variable == AirVariable.DEW_POINT || variable == AirVariable.HUMIDITY_RATIO;
    }

    private static void requireIndependent(AirVariable first, AirVariable second) {
        Set<AirVariable> pair = EnumSet.of(first, second);
        if (pair.size() < 2
                || pair.equals(EnumSet.of(AirVariable.DEW_POINT, AirVariable.HUMIDITY_RATIO))
                || pair.equals(EnumSet.of(AirVariable.WET_BULB, AirVariable.SPECIFIC_ENTHALPY))) {
            throw EngineException.of(
                            ErrorCode.PAIR_NOT_INDEPENDENT,
                            "These two do not fix the air: " + first.input() + " and " + second.input()
                                    + " rise and fall together.")
                    .about(second.input());
        }
    }

    private void check(AirVariable variable, double value) {
        switch (variable) {
            case DRY_BULB -> range(variable, value, LOWEST_DRY_BULB, HIGHEST_DRY_BULB);
            case WET_BULB -> range(variable, value, LOWEST_DRY_BULB, boiling());
            case DEW_POINT -> range(variable, value, LOWEST_DEW_POINT, boiling());
            case HUMIDITY_RATIO -> range(variable, value, 0, HIGHEST_HUMIDITY_RATIO);
            case RELATIVE_HUMIDITY -> {
                if (!(value >= 0 && value <= 1)) {
                    throw EngineException.of(
                            ErrorCode.IMPOSSIBLE_VALUE,
                            "A relative humidity is 0 to 1: air holds no more vapor than saturates it.",
                            variable.input(),
                            value,
                            0,
                            1);
                }
            }
            case SPECIFIC_ENTHALPY -> {
                if (!Double.isFinite(value)) {
                    throw outOfRange(variable, value, Double.NaN, Double.NaN);
                }
            }
        }
    }

    private static void range(AirVariable variable, double value, double lower, double upper) {
        if (!(value >= lower && value <= upper)) {
            throw outOfRange(variable, value, lower, upper);
        }
    }

    private static EngineException outOfRange(AirVariable variable, double value, double lower, double upper) {
        return EngineException.of(
                ErrorCode.OUT_OF_RANGE,
                "The value lies outside the range of the equations for moist air.",
                variable.input(),
                value,
                lower,
                upper);
    }

    /** K, just below where water boils in the open. */
    private double boiling() {
        return Math.min(HIGHEST_DRY_BULB, WaterVapor.dewPoint(0.999 * pressure, pressure));
    }

    private AirState fromDryBulb(double dryBulb, AirVariable other, double value) {
        double water = switch (other) {
            case WET_BULB -> fromWetBulb(dryBulb, value);
            case RELATIVE_HUMIDITY -> atRelativeHumidity(dryBulb, value);
            case SPECIFIC_ENTHALPY -> fromEnthalpy(dryBulb, value);
            default -> water(other, value);
        };
        return notSupersaturated(dryBulb, water, other, value);
    }

    private double fromWetBulb(double dryBulb, double wetBulb) {
        if (wetBulb > dryBulb) {
            throw contradiction(
                    "A wet bulb is never warmer than the dry bulb.",
                    AirVariable.WET_BULB,
                    wetBulb,
                    Double.NaN,
                    dryBulb);
        }
        double water = WetBulb.humidityRatio(pressure, dryBulb, wetBulb);
        if (water < 0) {
            double lowest = WetBulb.of(new AirState(pressure, dryBulb, 0));
            throw contradiction(
                    "No air is dry enough for so low a wet bulb.", AirVariable.WET_BULB, wetBulb, lowest, dryBulb);
        }
        return water;
    }

    private double atRelativeHumidity(double dryBulb, double humidity) {
        double water = AirState.humidityRatio(pressure, dryBulb, humidity);
        if (water > HIGHEST_HUMIDITY_RATIO) {
            double most = AirState.MASS_RATIO + HIGHEST_HUMIDITY_RATIO;
            double highest =
                    pressure * HIGHEST_HUMIDITY_RATIO / most / WaterVapor.saturatedPartialPressure(dryBulb, pressure);
            throw contradiction(
                    "At this dry bulb the vapor alone would have more than the pressure of the atmosphere.",
                    AirVariable.RELATIVE_HUMIDITY,
                    humidity,
                    0,
                    highest);
        }
        return water;
    }

    private double fromEnthalpy(double dryBulb, double enthalpy) {
        AirState dry = new AirState(pressure, dryBulb, 0);
        double water = (enthalpy - dry.specificEnthalpy()) / dry.vaporEnthalpy();
        if (water < 0 || water > HIGHEST_HUMIDITY_RATIO) {
            double saturated = AirState.saturatedHumidityRatio(pressure, dryBulb);
            double most = Math.min(saturated, HIGHEST_HUMIDITY_RATIO);
            throw contradiction(
                    "No air of this dry bulb has this enthalpy.",
                    AirVariable.SPECIFIC_ENTHALPY,
                    enthalpy,
                    dry.specificEnthalpy(),
                    new AirState(pressure, dryBulb, most).specificEnthalpy());
        }
        return water;
    }

    private double water(AirVariable variable, double value) {
        return variable == AirVariable.DEW_POINT ? AirState.saturatedHumidityRatio(pressure, value) : value;
    }

    private AirState fromWater(double water, AirVariable other, double value) {
        double dryBulb = switch (other) {
            case WET_BULB -> WetBulb.dryBulb(pressure, value, water);
            case SPECIFIC_ENTHALPY -> AirState.dryBulb(value, water);
            default -> {
                double target = water / (AirState.MASS_RATIO + water) * pressure;
                if (value == 0 || target / value > WaterVapor.saturatedPartialPressure(HIGHEST_DRY_BULB, pressure)) {
                    throw contradiction(
                            "Air of so much water is never so dry inside the range of these equations.",
                            other,
                            value,
                            target / WaterVapor.saturatedPartialPressure(HIGHEST_DRY_BULB, pressure),
                            1);
                }
                yield WaterVapor.dewPoint(target / value, pressure);
            }
        };
        if (!(dryBulb >= LOWEST_DRY_BULB && dryBulb <= HIGHEST_DRY_BULB)) {
            throw contradiction(
                    "The dry bulb that follows lies outside -100 to 200 degC.", other, value, Double.NaN, Double.NaN);
        }
        return notSupersaturated(dryBulb, water, other, value);
    }

    private AirState fromRelativeHumidityAndEnthalpy(double humidity, double enthalpy) {
        return byDryBulb(
                humidity,
                dryBulb -> new AirState(pressure, dryBulb, atRelativeHumidity(dryBulb, humidity)).specificEnthalpy()
                        - enthalpy,
                AirVariable.SPECIFIC_ENTHALPY,
                enthalpy);
    }

    private AirState fromWetBulbAndRelativeHumidity(double wetBulb, double humidity) {
        if (humidity == 1) {
            return saturated(wetBulb);
        }
        return byDryBulb(
                humidity,
                dryBulb -> atRelativeHumidity(dryBulb, humidity) - WetBulb.humidityRatio(pressure, dryBulb, wetBulb),
                AirVariable.WET_BULB,
                wetBulb);
    }

    /** The dry bulb at which a rising function of it is zero, at a relative humidity. */
    private AirState byDryBulb(double humidity, DoubleUnaryOperator function, AirVariable variable, double value) {
        double lower = LOWEST_DRY_BULB;
        double upper = hottest(humidity);
        if (function.applyAsDouble(lower) > 0 || function.applyAsDouble(upper) < 0) {
            throw contradiction(
                    "No air of this relative humidity fits inside -100 to 200 degC.",
                    variable,
                    value,
                    Double.NaN,
                    Double.NaN);
        }
        double dryBulb = Roots.brent(function, lower, upper, 1e-14, "dry bulb of moist air");
        return new AirState(pressure, dryBulb, atRelativeHumidity(dryBulb, humidity));
    }

    /** Highest dry bulb, K, at which air of a relative humidity stays inside the range of humidity ratios. */
    private double hottest(double humidity) {
        double most = pressure * HIGHEST_HUMIDITY_RATIO / (AirState.MASS_RATIO + HIGHEST_HUMIDITY_RATIO);
        return humidity * WaterVapor.saturatedPartialPressure(HIGHEST_DRY_BULB, pressure) <= most
                ? HIGHEST_DRY_BULB
                : WaterVapor.dewPoint(most / humidity, pressure) * (1 - 1e-12);
    }

    private AirState notSupersaturated(double dryBulb, double water, AirVariable variable, double value) {
        double saturated = AirState.saturatedHumidityRatio(pressure, dryBulb);
        if (water > saturated * (1 + ROUNDING)) {
            double limit = switch (variable) {
                case DEW_POINT -> dryBulb;
                case HUMIDITY_RATIO -> saturated;
                case SPECIFIC_ENTHALPY -> new AirState(pressure, dryBulb, saturated).specificEnthalpy();
                default -> Double.NaN;
            };
            throw contradiction(
                    "The air would hold more water vapor than saturates it at its dry bulb: it would be fog.",
                    variable,
                    value,
                    Double.NaN,
                    limit);
        }
        return new AirState(pressure, dryBulb, Math.min(water, saturated));
    }

    private static EngineException contradiction(
            String message, AirVariable variable, double value, double lower, double upper) {
        return EngineException.of(ErrorCode.CONTRADICTORY_INPUTS, message, variable.input(), value, lower, upper);
    }
}
