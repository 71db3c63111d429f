package io.loopstate.engine.cycle;

import io.loopstate.engine.component.Evaporator;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.Require;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.property.State;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;

/** Tables of saturated and superheated states over a range. */
public final class PropertyTable {
    /** Most rows a table may have. */
    public static final int MAX_ROWS = 500;

    private PropertyTable() {}

    /**
     * A saturation table.
     *
     * @throws EngineException {@code IMPOSSIBLE_VALUE} for a range that is none or has too many rows; {@code OUT_OF_RANGE} or
     *     {@code ABOVE_CRITICAL} where an end lies off the saturation line, traced to {@code from} or {@code to}
     */
    public static SaturationResult saturation(SaturationSpec spec) {
        List<SaturationRow> rows =
                spec.range().map(value -> new SaturationRow(value, saturation(spec.equilibrium(), spec.over(), value)));
        Findings findings = new Findings(Guidance.common());
        Saturation last = rows.get(rows.size() - 1).saturation();
        nearCritical(findings, spec.equilibrium(), last.dew());
        if (spec.over() == Variable.PRESSURE) {
            SharedFindings.glide(
                    findings,
                    rows.stream()
                            .mapToDouble(row -> row.saturation().temperatureGlide())
                            .max()
                            .orElse(0));
        }
        return new SaturationResult(rows, findings.toList());
    }

    private static void nearCritical(Findings findings, Equilibrium equilibrium, State state) {
        SharedFindings.nearCritical(
                findings,
                "rows",
                state.pressure(),
                equilibrium.refrigerant().criticalPoint().pressure());
    }

    /**
     * A table of superheated vapor.
     *
     * @throws EngineException as for the saturation table; {@code ABOVE_CRITICAL} where the pressure has no dew point,
     *     traced to {@code pressure}; {@code CONTRADICTORY_INPUTS} for a temperature below the dew point
     */
    public static SuperheatResult superheat(SuperheatSpec spec) {
        Equilibrium equilibrium = new RememberingEquilibrium(spec.equilibrium());
        Saturation saturation = Inputs.trace("pressure", () -> equilibrium.saturationAtPressure(spec.pressure()));
        double dew = saturation.dew().temperature();
        List<SuperheatRow> rows = spec.range().map(value -> {
            State state = Evaporator.outlet(equilibrium, spec.pressure(), new OutletCondition(spec.over(), value));
            return new SuperheatRow(state.temperature() - dew, state);
        });
        Findings findings = new Findings(Guidance.common());
        nearCritical(findings, equilibrium, saturation.dew());
        return new SuperheatResult(saturation, rows, findings.toList());
    }

    private static Saturation saturation(Equilibrium equilibrium, Variable over, double value) {
        return over == Variable.TEMPERATURE
                ? equilibrium.saturationAtTemperature(value)
                : equilibrium.saturationAtPressure(value);
    }

    /**
     * An arithmetic range, ends included where the step meets them.
     *
     * @param from first value, SI
     * @param to last value, SI
     * @param step above 0
     */
    public record Range(double from, double to, double step) {
        /** Share of a step by which rounding may keep the last value from meeting the end. */
        private static final double ROUNDING = 1e-9;

        public Range {
            Require.notNegative("from", from);
            Require.positive("step", step);
            Require.finite("to", to);
            if (to < from) {
                throw EngineException.of(
                        ErrorCode.CONTRADICTORY_INPUTS,
                        "A range ends no lower than it starts.",
                        "to",
                        to,
                        from,
                        Double.NaN);
            }
            if ((to - from) / step > MAX_ROWS - 1 + ROUNDING) {
                throw EngineException.of(
                        ErrorCode.IMPOSSIBLE_VALUE,
                        "A table has at most " + MAX_ROWS + " rows: take a larger step or a shorter range.",
                        "step",
                        step,
                        (to - from) / (MAX_ROWS - 1),
                        Double.NaN);
            }
        }

        /** Every value, the last one no higher than the end. */
        public List<Double> values() {
            return IntStream.range(0, rows()).mapToObj(this::value).toList();
        }

        int rows() {
            return (int) Math.floor((to - from) / step + ROUNDING) + 1;
        }

        /** A row for each value; the ends come first, so that a range off the model is told before the work is done. */
        <T> List<T> map(DoubleFunction<T> row) {
            int rows = rows();
            T first = Inputs.trace("from", () -> row.apply(from));
            T last = rows == 1 ? first : Inputs.trace("to", () -> row.apply(value(rows - 1)));
            return IntStream.range(0, rows)
                    .mapToObj(i -> i == 0 ? first : i == rows - 1 ? last : row.apply(value(i)))
                    .toList();
        }

        private double value(int row) {
            return Math.min(to, from + row * step);
        }
    }

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
            require(over, Variable.TEMPERATURE, Variable.PRESSURE);
            Objects.requireNonNull(range);
        }
    }

    /** One row: what was stepped (K or Pa) and both sides of the dome there. */
    public record SaturationRow(double at, Saturation saturation) {}

    /** The rows, ascending, and what is worth knowing of them. */
    public record SaturationResult(List<SaturationRow> rows, List<Finding> findings) {
        public SaturationResult {
            rows = List.copyOf(rows);
            findings = List.copyOf(findings);
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
            Require.positive("pressure", pressure);
            require(over, Variable.TEMPERATURE, Variable.SUPERHEAT);
            Objects.requireNonNull(range);
        }
    }

    /** One row: superheat (K) and state. */
    public record SuperheatRow(double superheat, State state) {}

    /** The saturation at the pressure, the rows, ascending, and what is worth knowing of them. */
    public record SuperheatResult(Saturation saturation, List<SuperheatRow> rows, List<Finding> findings) {
        public SuperheatResult {
            rows = List.copyOf(rows);
            findings = List.copyOf(findings);
        }
    }

    private static void require(Variable over, Variable one, Variable other) {
        if (over != one && over != other) {
            throw new IllegalArgumentException("this table steps over " + one + " or " + other + ", not " + over);
        }
    }
}
