package io.loopstate.engine.rejection;

import io.loopstate.engine.component.Require;
import io.loopstate.engine.cycle.Inputs;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.property.State;
import java.util.OptionalDouble;

/**
 * How the refrigerant arrives at an evaporating coil: by the quality behind the valve, or as liquid before it.
 *
 * @param quality kg/kg behind the valve
 * @param liquidTemperature K before the valve
 * @param liquidPressure Pa before the valve; without it the liquid is taken as saturated
 */
public record EvaporatorFeed(OptionalDouble quality, OptionalDouble liquidTemperature, OptionalDouble liquidPressure) {
    public EvaporatorFeed {
        Require.positive("liquidTemperature", liquidTemperature);
        Require.positive("liquidPressure", liquidPressure);
        if (quality.isPresent() == liquidTemperature.isPresent()) {
            throw new IllegalArgumentException("a quality or a liquid temperature");
        }
        quality.ifPresent(share -> Require.properShare("inletQuality", share));
    }

    EvaporatorInlet at(Equilibrium equilibrium) {
        return quality.isPresent()
                ? EvaporatorInlet.quality(quality.getAsDouble())
                : EvaporatorInlet.enthalpy(enthalpy(equilibrium));
    }

    private double enthalpy(Equilibrium equilibrium) {
        double temperature = liquidTemperature.orElseThrow();
        if (liquidPressure.isEmpty()) {
            return Inputs.trace(
                    "liquidTemperature",
                    () -> equilibrium
                            .saturationAtTemperature(temperature)
                            .bubble()
                            .specificEnthalpy());
        }
        State state = Inputs.trace(
                "liquidTemperature",
                () -> equilibrium.atPressureTemperature(liquidPressure.getAsDouble(), temperature));
        if (state.phase() == Phase.VAPOR || state.phase() == Phase.TWO_PHASE) {
            throw EngineException.of(
                            ErrorCode.CONTRADICTORY_INPUTS,
                            "At this pressure and temperature there is no liquid before the valve: check both readings.")
                    .about("liquidPressure");
        }
        return state.specificEnthalpy();
    }

    /**
     * A valve only lowers the pressure.
     *
     * @param evaporating Pa
     * @throws EngineException about {@code liquidPressure} or {@code liquidTemperature}
     */
    void requireExpansion(Equilibrium equilibrium, double evaporating) {
        if (liquidTemperature().isEmpty()) {
            return;
        }
        boolean measured = liquidPressure().isPresent();
        double liquid = measured
                ? liquidPressure().getAsDouble()
                : equilibrium
                        .saturationAtTemperature(liquidTemperature().getAsDouble())
                        .bubble()
                        .pressure();
        if (!(liquid > evaporating)) {
            throw EngineException.of(
                            ErrorCode.CONTRADICTORY_INPUTS,
                            "The liquid stands at no more than the evaporating pressure: nothing would flow through the valve.",
                            Variable.PRESSURE,
                            liquid,
                            evaporating,
                            Double.NaN)
                    .about(measured ? "liquidPressure" : "liquidTemperature");
        }
    }
}
