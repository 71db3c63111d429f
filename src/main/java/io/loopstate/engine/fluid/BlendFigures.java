package io.loopstate.engine.fluid;

import java.util.OptionalDouble;

/**
 * What is computed once from the phase boundary of a blend.
 *
 * @param criticalPoint where bubble and dew line meet
 * @param cricondentherm K, the highest temperature at which liquid and vapor coexist
 * @param cricondenthermPressure Pa, the pressure there
 * @param cricondenbar Pa, the highest pressure at which liquid and vapor coexist
 * @param cricondenbarTemperature K, the temperature there
 * @param normalBubblePoint K, at 101.325 kPa; empty where that lies outside the lines
 * @param normalDewPoint K, at 101.325 kPa
 * @param minTemperature K, lower end of the lines
 */
public record BlendFigures(
        CriticalPoint criticalPoint,
        double cricondentherm,
        double cricondenthermPressure,
        double cricondenbar,
        double cricondenbarTemperature,
        OptionalDouble normalBubblePoint,
        OptionalDouble normalDewPoint,
        double minTemperature) {}
