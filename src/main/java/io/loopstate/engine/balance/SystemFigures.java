package io.loopstate.engine.balance;

import java.util.OptionalDouble;

/**
 * A machine with its fans, where their power is given.
 *
 * @param condenserFanPower W at the speed and in the air of the case
 * @param evaporatorFanPower W in the air of the case
 * @param electricalPower W of compressor and the fans given
 * @param coefficientOfPerformance refrigerating capacity over that
 * @param netCapacity W, the capacity less the heat that the evaporator fan gives to the air; where its power is given
 */
public record SystemFigures(
        OptionalDouble condenserFanPower,
        OptionalDouble evaporatorFanPower,
        double electricalPower,
        double coefficientOfPerformance,
        OptionalDouble netCapacity) {
    static SystemFigures of(double capacity, double compressor, OptionalDouble condenser, OptionalDouble evaporator) {
        double power = compressor + condenser.orElse(0) + evaporator.orElse(0);
        return new SystemFigures(
                condenser,
                evaporator,
                power,
                capacity / power,
                evaporator.isPresent() ? OptionalDouble.of(capacity - evaporator.getAsDouble()) : evaporator);
    }

    /** Net capacity over the power of compressor and fans. */
    public OptionalDouble netCoefficientOfPerformance() {
        return netCapacity.isPresent() ? OptionalDouble.of(netCapacity.getAsDouble() / electricalPower) : netCapacity;
    }
}
