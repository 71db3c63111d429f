package io.loopstate.engine.rejection;

import io.loopstate.engine.air.AirSolver;
import io.loopstate.engine.air.AirState;
import io.loopstate.engine.air.AirVariable;
import io.loopstate.engine.air.EnthalpyDatum;
import io.loopstate.engine.air.MoistAir;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.FindingCode;
import io.loopstate.engine.cycle.Findings;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.cycle.QuantityKind;
import io.loopstate.engine.cycle.Severity;
import io.loopstate.engine.cycle.Step;
import java.util.List;
import java.util.Objects;

/** Moist air from any two of its variables. */
public final class MoistAirQuery {
    /** Range of the fit behind the enhancement factor, K. */
    private static final double FIT_LOWEST = 233.15;

    private static final double FIT_HIGHEST = 323.15;
    private static final double FREEZING = 273.15;

    private MoistAirQuery() {}

    /** A variable and its value, SI. */
    public record Known(AirVariable variable, double value) {
        public Known {
            Objects.requireNonNull(variable);
        }
    }

    /**
     * What is known.
     *
     * @param pressure of the air, Pa
     * @param first one variable
     * @param second another
     * @param datum of enthalpies given and found
     * @param explain whether the result shows its working
     */
    public record Spec(double pressure, Known first, Known second, EnthalpyDatum datum, boolean explain) {
        public Spec {
            Objects.requireNonNull(first);
            Objects.requireNonNull(second);
            Objects.requireNonNull(datum);
        }
    }

    /**
     * The air.
     *
     * @param air every number; its enthalpy is counted from 0 degC
     * @param specificEnthalpy J per kg of dry air, from the datum asked for
     * @param factors for a flow of this air, water leaving it at the dry bulb
     * @param findings what is worth knowing
     * @param steps the working; empty unless asked for
     */
    public record Result(
            MoistAir air, double specificEnthalpy, AirFactors factors, List<Finding> findings, List<Step> steps) {
        public Result {
            findings = List.copyOf(findings);
            steps = List.copyOf(steps);
        }
    }

    /**
     * The air on which both variables agree.
     *
     * @throws io.loopstate.engine.error.EngineException as {@link AirSolver#state}
     */
    public static Result calculate(Spec spec) {
        Known first = spec.first();
        Known second = spec.second();
        AirState state = new AirSolver(spec.pressure())
                .state(
                        first.variable(), counted(first, spec.datum()),
                        second.variable(), counted(second, spec.datum()));
        MoistAir air = MoistAir.of(state);
        return new Result(
                air,
                state.specificEnthalpy() + spec.datum().offset(),
                AirFactors.of(state, state.dryBulb()),
                findings(air),
                spec.explain() ? MoistAirWorking.of(air, spec.datum()) : List.of());
    }

    private static double counted(Known known, EnthalpyDatum datum) {
        return known.variable() == AirVariable.SPECIFIC_ENTHALPY ? known.value() - datum.offset() : known.value();
    }

    private static List<Finding> findings(MoistAir air) {
        Findings findings = new Findings(Guidance.common());
        AirState state = air.state();
        if (air.wetBulb() < FREEZING) {
            findings.add(
                    FindingCode.APPROXIMATION,
                    Severity.NOTE,
                    "wetBulb",
                    "The wet bulb lies below freezing: it is that of an iced wick. A wick that is still wet reads higher.",
                    QuantityKind.TEMPERATURE,
                    air.wetBulb(),
                    FREEZING,
                    "freezing point of water");
        }
        if (state.dryBulb() < FIT_LOWEST || state.dryBulb() > FIT_HIGHEST) {
            findings.add(
                    FindingCode.APPROXIMATION,
                    Severity.NOTE,
                    "dryBulb",
                    "The dry bulb lies outside the range of the factor by which air holds more vapor than empty space; the"
                            + " factor at the end of its range is used.",
                    QuantityKind.TEMPERATURE,
                    state.dryBulb(),
                    state.dryBulb() < FIT_LOWEST ? FIT_LOWEST : FIT_HIGHEST,
                    "A. L. Buck, J. Appl. Meteorol. 20 (1981) 1527 (from memory)");
        }
        if (state.relativeHumidity() >= 1 - 1e-9) {
            findings.add(
                    FindingCode.CONDENSATION,
                    Severity.NOTE,
                    "relativeHumidity",
                    "The air is saturated: cooled any further it sheds water.",
                    QuantityKind.RATIO,
                    state.relativeHumidity(),
                    1,
                    "definition");
        }
        return findings.toList();
    }
}
