package io.loopstate.engine.balance;

import java.util.Objects;
import java.util.Optional;

/**
 * One what-if beside the base case.
 *
 * @param whatIf what is different
 * @param balanced the machine then, where it has a balance
 * @param differences from the base case, where it has one
 * @param none why it has none
 */
public record Row(
        WhatIf whatIf, Optional<Balanced> balanced, Optional<Differences> differences, Optional<NoBalance> none) {
    public Row {
        Objects.requireNonNull(whatIf);
        if (balanced.isPresent() == none.isPresent() || balanced.isPresent() != differences.isPresent()) {
            throw new IllegalArgumentException("a balance with its differences, or why there is none");
        }
    }

    static Row of(WhatIf whatIf, Balanced base, Balanced balanced) {
        return new Row(whatIf, Optional.of(balanced), Optional.of(Differences.of(base, balanced)), Optional.empty());
    }

    static Row of(WhatIf whatIf, NoBalance none) {
        return new Row(whatIf, Optional.empty(), Optional.empty(), Optional.of(none));
    }

    /**
     * What-if less base case.
     *
     * @param evaporating K of the midpoint
     * @param condensing K of the midpoint
     * @param evaporatingPressure Pa
     * @param condensingPressure Pa
     * @param dischargeTemperature K
     * @param capacity W
     * @param power W, electrical
     * @param relativeCapacity over that of the base case, less 1
     * @param relativePower likewise
     * @param relativeMassFlow likewise
     * @param relativeCoefficientOfPerformance likewise
     */
    public record Differences(
            double evaporating,
            double condensing,
            double evaporatingPressure,
            double condensingPressure,
            double dischargeTemperature,
            double capacity,
            double power,
            double relativeCapacity,
            double relativePower,
            double relativeMassFlow,
            double relativeCoefficientOfPerformance) {
        static Differences of(Balanced base, Balanced other) {
            double capacity = base.energy().refrigeratingCapacity();
            double power = base.energy().electricalPower();
            return new Differences(
                    other.evaporating().midpoint() - base.evaporating().midpoint(),
                    other.condensing().midpoint() - base.condensing().midpoint(),
                    other.evaporating().pressure() - base.evaporating().pressure(),
                    other.condensing().pressure() - base.condensing().pressure(),
                    other.compressor().dischargeTemperature()
                            - base.compressor().dischargeTemperature(),
                    other.energy().refrigeratingCapacity() - capacity,
                    other.energy().electricalPower() - power,
                    other.energy().refrigeratingCapacity() / capacity - 1,
                    other.energy().electricalPower() / power - 1,
                    other.massFlow() / base.massFlow() - 1,
                    other.energy().coefficientOfPerformance() / base.energy().coefficientOfPerformance() - 1);
        }
    }
}
