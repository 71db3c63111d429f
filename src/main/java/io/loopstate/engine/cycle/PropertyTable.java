package io.loopstate.engine.cycle;

import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.property.State;
import java.util.List;
import java.util.Objects;

/** Tables of saturated and superheated states over a range. */
public final class PropertyTable {
    /** Most rows a table may have. */
    public static final int MAX_ROWS = 500;

    private PropertyTable() {}

    /**
     * An arithmetic range, ends included where the step meets them.
     *
     * @param from first value, SI
     * @param to last value, SI
     * @param step above 0
     */
    public record Range(double from, double to, double step) {}

    /**
     * A saturation table.
     *
     * @param equilibrium the refrigerant
     * @param over {@code TEMPERATURE} or {@code PRESSURE}
     * @param range K or Pa
     */
    public record SaturationSpec(Equilibrium equilibrium, Variable over, Range range) {
        public SaturationSpec {
            Objects.requireNonNull(equilibrium);
            Objects.requireNonNull(over);
            Objects.requireNonNull(range);
        }
    }

    /** One row: what was stepped (K or Pa) and both sides of the dome there. */
    public record SaturationRow(double at, Saturation saturation) {}

    /** The rows, ascending. */
    public record SaturationResult(List<SaturationRow> rows) {
        public SaturationResult {
            rows = List.copyOf(rows);
        }
    }

    /**
     * A table of superheated vapor at one pressure.
     *
     * @param equilibrium the refrigerant
     * @param pressure Pa, below the critical one
     * @param over {@code TEMPERATURE} or {@code SUPERHEAT}
     * @param range K
     */
    public record SuperheatSpec(Equilibrium equilibrium, double pressure, Variable over, Range range) {
        public SuperheatSpec {
            Objects.requireNonNull(equilibrium);
            Objects.requireNonNull(over);
            Objects.requireNonNull(range);
        }
    }

    /** One row: superheat (K) and state. */
    public record SuperheatRow(double superheat, State state) {}

    /** The saturation at the pressure and the rows, ascending. */
    public record SuperheatResult(Saturation saturation, List<SuperheatRow> rows) {
        public SuperheatResult {
            rows = List.copyOf(rows);
        }
    }
}
