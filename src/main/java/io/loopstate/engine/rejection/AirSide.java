package io.loopstate.engine.rejection;

import io.loopstate.engine.air.AirState;
import io.loopstate.engine.air.AirVariable;
import io.loopstate.engine.air.MoistAir;
import io.loopstate.engine.component.Require;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The air of a coil: of airflow, entering air, leaving air and heat any three give the fourth. The air is moist; what an
 * evaporator takes from it is split into sensible and latent heat.
 */
public final class AirSide {
    private AirSide() {}

    /** Which coil the air passes. */
    public enum Coil {
        /** Heats the air and leaves its water alone; gas coolers too. */
        CONDENSER,
        /** Cools the air and may dry it. */
        EVAPORATOR
    }

    /** In which air a volume flow is counted. */
    public enum FlowCondition {
        /** As it enters the coil. */
        ENTERING,
        /** As it leaves the coil. */
        LEAVING,
        /** Standard air of 0.075 lb/ft3: a mass flow in disguise. */
        STANDARD
    }

    /**
     * The fourth from three, and what follows.
     *
     * @throws EngineException for air that cannot be, {@code CONTRADICTORY_INPUTS} where air and heat point different ways; it
     *     names the input, e.g. {@code leaving.dryBulb}
     */
    public static Result calculate(Spec spec) {
        AirBalance balance = AirBalance.of(spec);
        AirFigures figures = AirFigures.of(spec, balance);
        return new Result(
                MoistAir.of(balance.entering()),
                MoistAir.of(balance.leaving()),
                figures,
                AirSideFindings.of(spec, balance, figures),
                spec.explain() ? AirSideWorking.of(spec, balance, figures) : List.of());
    }

    /**
     * One side of the air. What is unknown has no dry bulb; a humidity then says on which line to look for it.
     *
     * @param dryBulb K
     * @param humidity any variable but dry bulb and enthalpy
     */
    public record Air(OptionalDouble dryBulb, Optional<MoistAirQuery.Known> humidity) {
        public Air {
            Objects.requireNonNull(dryBulb);
            humidity.map(MoistAirQuery.Known::variable).ifPresent(variable -> {
                if (variable == AirVariable.DRY_BULB || variable == AirVariable.SPECIFIC_ENTHALPY) {
                    throw new IllegalArgumentException(variable + " is no humidity");
                }
            });
        }
    }

    /**
     * An airflow.
     *
     * @param massFlow of dry air, kg/s; give this or the volume flow
     * @param volumeFlow m3/s
     * @param condition of the air in which the volume flow is counted
     */
    public record Airflow(OptionalDouble massFlow, OptionalDouble volumeFlow, FlowCondition condition) {
        public Airflow {
            Objects.requireNonNull(condition);
            Require.positive("airflow.massFlow", massFlow);
            Require.positive("airflow.volumeFlow", volumeFlow);
            if (massFlow.isPresent() == volumeFlow.isPresent()) {
                throw EngineException.of(
                                ErrorCode.CONTRADICTORY_INPUTS, "Give the air as a volume flow or a mass flow.")
                        .about("airflow.massFlow");
            }
        }

        /**
         * Dry air, kg/s.
         *
         * @param entering the air that enters
         * @throws EngineException {@code CONTRADICTORY_INPUTS} where the flow is counted in leaving air
         */
        public double dryAir(AirState entering) {
            if (condition == FlowCondition.LEAVING) {
                throw EngineException.of(
                                ErrorCode.CONTRADICTORY_INPUTS,
                                "The leaving air is sought: give the flow as the air enters, as standard air or as a mass flow.")
                        .about("airflow.condition");
            }
            double density =
                    condition == FlowCondition.STANDARD ? AirBalance.STANDARD_DENSITY : 1 / entering.specificVolume();
            return massFlow.orElseGet(() -> volumeFlow.orElseThrow() * density);
        }
    }

    /**
     * Three of airflow, entering, leaving and heat.
     *
     * @param coil which coil
     * @param pressure of the air, Pa
     * @param entering the air before the coil, and before the fan if that stands between the readings
     * @param leaving the air behind both
     * @param airflow empty where it is sought
     * @param heat W that the coil exchanges with the air, above zero; empty where it is sought
     * @param fanPower W of a fan between the two readings, all of which heats the air
     * @param saturationTemperature K at which the refrigerant condenses or evaporates, midpoint of a blend
     * @param guidance limits for the findings
     * @param explain whether the result shows its working
     */
    public record Spec(
            Coil coil,
            double pressure,
            Air entering,
            Air leaving,
            Optional<Airflow> airflow,
            OptionalDouble heat,
            double fanPower,
            OptionalDouble saturationTemperature,
            Guidance guidance,
            boolean explain) {
        public Spec {
            Objects.requireNonNull(coil);
            Objects.requireNonNull(entering);
            Objects.requireNonNull(leaving);
            Objects.requireNonNull(airflow);
            Objects.requireNonNull(guidance);
            Require.positive("heat", heat);
            Require.notNegative("fanPower", fanPower);
            Require.positive("saturationTemperature", saturationTemperature);
        }
    }

    /**
     * The air of the coil.
     *
     * @param entering before
     * @param leaving behind
     * @param figures flows and heats
     * @param findings what is unwise, implausible or assumed
     * @param steps the working; empty unless asked for
     */
    public record Result(
            MoistAir entering, MoistAir leaving, AirFigures figures, List<Finding> findings, List<Step> steps) {
        public Result {
            findings = List.copyOf(findings);
            steps = List.copyOf(steps);
        }
    }
}
