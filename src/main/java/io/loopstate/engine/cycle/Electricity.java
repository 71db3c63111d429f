package io.loopstate.engine.cycle;

import io.loopstate.engine.component.Require;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import java.util.OptionalDouble;

/**
 * Electrical readings at the compressor: power, or what it follows from.
 *
 * @param power W; give this or the four others
 * @param voltage V between lines, or between line and neutral of a single phase
 * @param current A per line
 * @param phases 1 or 3
 * @param powerFactor above 0 to 1
 */
public record Electricity(
        OptionalDouble power, OptionalDouble voltage, OptionalDouble current, int phases, OptionalDouble powerFactor) {
    public Electricity {
        Require.positive("electricity.power", power);
        Require.positive("electricity.voltage", voltage);
        Require.positive("electricity.current", current);
        Require.efficiency("electricity.powerFactor", powerFactor);
        if (phases != 1 && phases != 3) {
            throw EngineException.of(
                    ErrorCode.IMPOSSIBLE_VALUE, "Phases are 1 or 3.", "electricity.phases", phases, 1, 3);
        }
        if (power.isPresent() == (voltage.isPresent() || current.isPresent() || powerFactor.isPresent())) {
            throw EngineException.of(
                            ErrorCode.CONTRADICTORY_INPUTS,
                            "Give the power, or voltage, current and power factor, not both.")
                    .about("electricity.power");
        }
        if (power.isEmpty() && (voltage.isEmpty() || current.isEmpty() || powerFactor.isEmpty())) {
            throw EngineException.of(
                            ErrorCode.CONTRADICTORY_INPUTS,
                            "Without the power, voltage, current and power factor are all needed.")
                    .about("electricity.powerFactor");
        }
    }

    /** Power, W. */
    public static Electricity ofPower(double watt) {
        OptionalDouble none = OptionalDouble.empty();
        return new Electricity(OptionalDouble.of(watt), none, none, 1, none);
    }

    /** Voltage (V), current (A), 1 or 3 phases, power factor. */
    public static Electricity ofCurrent(double voltage, double current, int phases, double powerFactor) {
        return new Electricity(
                OptionalDouble.empty(),
                OptionalDouble.of(voltage),
                OptionalDouble.of(current),
                phases,
                OptionalDouble.of(powerFactor));
    }

    /** Active power, W: sqrt(3) V I pf of three phases, V I pf of one. */
    public double watt() {
        if (power.isPresent()) {
            return power.getAsDouble();
        }
        double apparent = voltage.orElseThrow() * current.orElseThrow();
        return (phases == 3 ? Math.sqrt(3) : 1) * apparent * powerFactor.orElseThrow();
    }
}
