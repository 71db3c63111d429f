package io.loopstate.engine.compression;

import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.cycle.Basis;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.FindingCode;
import io.loopstate.engine.cycle.Findings;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.cycle.Guideline;
import io.loopstate.engine.cycle.PropertyTable.Range;
import io.loopstate.engine.cycle.QuantityKind;
import io.loopstate.engine.cycle.Severity;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.cycle.Working;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** A rating map against a displacement model over a grid of dew temperatures, and where they are farthest apart. */
public final class ComparisonGrid {
    /** Most points of a grid. */
    public static final int MAX_POINTS = 400;

    private ComparisonGrid() {}

    /**
     * Every point of the grid.
     *
     * @throws EngineException where no point can be compared: the reason of the first
     */
    public static Result calculate(Spec spec) {
        List<Row> rows = new ArrayList<>();
        Optional<EngineException> first = Optional.empty();
        for (double evaporating : spec.evaporating().values()) {
            for (double condensing : spec.condensing().values()) {
                try {
                    rows.add(new Row(evaporating, condensing, Optional.of(point(spec, evaporating, condensing)), ""));
                } catch (EngineException e) {
                    first = first.or(() -> Optional.of(e));
                    rows.add(new Row(evaporating, condensing, Optional.empty(), e.getMessage()));
                }
            }
        }
        if (rows.stream().noneMatch(row -> row.figures().isPresent())) {
            throw first.orElseThrow();
        }
        Summary summary = summary(rows);
        return new Result(rows, summary, findings(spec, summary), spec.explain() ? steps(spec, summary) : List.of());
    }

    private static ModelComparison.Figures point(Spec spec, double evaporating, double condensing) {
        return ModelComparison.calculate(new ModelComparison.Spec(
                        spec.equilibrium(),
                        new SuctionCondition(
                                SaturationLevel.temperature(evaporating), spec.suctionGiven(), spec.suctionValue()),
                        DischargeLevel.of(SaturationLevel.temperature(condensing)),
                        spec.map(),
                        spec.machine(),
                        spec.guidance(),
                        false))
                .figures();
    }

    /**
     * Two models and a grid.
     *
     * @param equilibrium the refrigerant
     * @param evaporating dew temperatures at the suction, K
     * @param condensing dew temperatures at the discharge, K
     * @param suctionGiven {@code SUPERHEAT} or {@code TEMPERATURE} of the vapor drawn in
     * @param suctionValue of that, K
     * @param map by its rating
     * @param machine by its displacement
     * @param guidance limits for the findings
     * @param explain whether the result shows its working
     */
    public record Spec(
            Equilibrium equilibrium,
            Range evaporating,
            Range condensing,
            Variable suctionGiven,
            double suctionValue,
            MapCompressor map,
            Machine machine,
            Guidance guidance,
            boolean explain) {
        public Spec {
            Objects.requireNonNull(equilibrium);
            Objects.requireNonNull(suctionGiven);
            Objects.requireNonNull(map);
            Objects.requireNonNull(machine);
            Objects.requireNonNull(guidance);
            int points = evaporating.values().size() * condensing.values().size();
            if (points > MAX_POINTS) {
                throw EngineException.of(
                                ErrorCode.CONTRADICTORY_INPUTS,
                                "A grid has at most " + MAX_POINTS + " points, this one has " + points
                                        + ": take larger steps or shorter ranges.")
                        .about("condensing.step");
            }
        }
    }

    /**
     * A point of the grid.
     *
     * @param evaporating dew temperature, K
     * @param condensing dew temperature, K
     * @param figures of both models; empty where one of them does not run there
     * @param reason why not
     */
    public record Row(double evaporating, double condensing, Optional<ModelComparison.Figures> figures, String reason) {
        /** Absolute discharge over suction pressure, where both models run. */
        public Optional<Double> pressureRatio(Equilibrium equilibrium) {
            return figures.map(both -> both.map().discharge().pressure()
                    / equilibrium.saturationAtTemperature(evaporating).dew().pressure());
        }
    }

    /**
     * The largest of one deviation.
     *
     * @param value with its sign
     * @param evaporating where it is, dew temperature, K
     * @param condensing where it is, dew temperature, K
     * @param rootMeanSquare of all points
     */
    public record Worst(double value, double evaporating, double condensing, double rootMeanSquare) {}

    /**
     * What the grid says.
     *
     * @param compared points at which both models run
     * @param refused points at which one does not
     * @param massFlow model over map less 1
     * @param power likewise, electrical
     * @param dischargeTemperature model less map, K
     */
    public record Summary(int compared, int refused, Worst massFlow, Worst power, Worst dischargeTemperature) {}

    /**
     * The grid.
     *
     * @param rows evaporating slow, condensing fast
     * @param summary worst and mean deviations
     * @param findings what is worth knowing
     * @param steps the working; empty unless asked for
     */
    public record Result(List<Row> rows, Summary summary, List<Finding> findings, List<Step> steps) {
        public Result {
            rows = List.copyOf(rows);
            findings = List.copyOf(findings);
            steps = List.copyOf(steps);
        }
    }

    private static Summary summary(List<Row> rows) {
        List<Row> compared =
                rows.stream().filter(row -> row.figures().isPresent()).toList();
        return new Summary(
                compared.size(),
                rows.size() - compared.size(),
                worst(compared, ModelComparison.Figures::massFlowDifference),
                worst(compared, ModelComparison.Figures::powerDifference),
                worst(compared, ModelComparison.Figures::dischargeTemperatureDifference));
    }

    private static Worst worst(List<Row> compared, ToDoubleFunction<ModelComparison.Figures> deviation) {
        double squares = 0;
        Row worst = compared.get(0);
        double most = 0;
        for (Row row : compared) {
            double value = deviation.applyAsDouble(row.figures().orElseThrow());
            squares += value * value;
            if (Math.abs(value) > Math.abs(most)) {
                most = value;
                worst = row;
            }
        }
        return new Worst(most, worst.evaporating(), worst.condensing(), Math.sqrt(squares / compared.size()));
    }

    private static List<Finding> findings(Spec spec, Summary summary) {
        Findings findings = new Findings(spec.guidance());
        findings.above(
                Guideline.MAX_MODEL_DIFFERENCE,
                Math.max(
                        Math.abs(summary.massFlow().value()),
                        Math.abs(summary.power().value())),
                FindingCode.MODELS_DISAGREE,
                Severity.CAUTION,
                "machine",
                "Map and displacement model differ somewhere by more than the limit in flow or power, as a share.");
        if (summary.refused() > 0) {
            findings.add(
                    FindingCode.OUTSIDE_ENVELOPE,
                    Severity.NOTE,
                    "map.envelope",
                    "At some points of the grid one of the models does not run; their rows say why.",
                    QuantityKind.RATIO,
                    summary.refused(),
                    0,
                    Basis.DEFINITION);
        }
        return findings.toList();
    }

    private static List<Step> steps(Spec spec, Summary summary) {
        Working working = new Working(spec.equilibrium());
        deviation(working, "m", "mass flow", summary.massFlow(), summary.compared());
        deviation(working, "P", "electrical power", summary.power(), summary.compared());
        return working.toList();
    }

    private static void deviation(Working working, String symbol, String name, Worst worst, int points) {
        working.formula(
                name + ": root mean square of the deviations, and the largest with its place",
                "d_rms = sqrt(sum(d^2) / n), d = " + symbol + " / " + symbol + "_map - 1",
                Basis.DEFINITION,
                Working.ratio("d_rms", worst.rootMeanSquare()),
                Working.ratio("n", points),
                Working.ratio("d_most", worst.value()),
                Working.temperature("T_e", worst.evaporating()),
                Working.temperature("T_c", worst.condensing()));
    }
}
