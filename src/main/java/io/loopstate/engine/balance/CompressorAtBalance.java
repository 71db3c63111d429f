package io.loopstate.engine.balance;

import io.loopstate.engine.balance.Balanced.CompressorFigures;
import io.loopstate.engine.balance.Loop.Trial;
import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.compression.DischargeLevel;
import io.loopstate.engine.compression.DisplacementRating;
import io.loopstate.engine.compression.Envelope;
import io.loopstate.engine.compression.Machine;
import io.loopstate.engine.compression.MapCompressor;
import io.loopstate.engine.compression.MapRating;
import io.loopstate.engine.compression.SuctionCondition;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The compressor rated by itself between the states of the balance.
 *
 * @param figures of it
 * @param findings about it
 * @param steps its working; empty unless asked for
 */
record CompressorAtBalance(CompressorFigures figures, List<Finding> findings, List<Step> steps) {
    static CompressorAtBalance of(SystemBalance.Spec spec, double atmosphere, Equilibrium equilibrium, Trial trial) {
        return spec.compressor()
                .machine()
                .map(machine -> displacement(spec, atmosphere, equilibrium, trial, machine))
                .orElseGet(() -> map(
                        spec,
                        atmosphere,
                        equilibrium,
                        trial,
                        spec.compressor().map().orElseThrow()));
    }

    private static SuctionCondition suction(State state) {
        return state.saturated()
                ? new SuctionCondition(
                        SaturationLevel.pressure(state.pressure()), Variable.VAPOR_QUALITY, state.vaporQuality())
                : new SuctionCondition(
                        SaturationLevel.pressure(state.pressure()), Variable.TEMPERATURE, state.temperature());
    }

    private static CompressorAtBalance displacement(
            SystemBalance.Spec spec, double atmosphere, Equilibrium equilibrium, Trial trial, Machine machine) {
        DisplacementRating.Result rating = DisplacementRating.calculate(new DisplacementRating.Spec(
                equilibrium,
                suction(trial.suction()),
                DischargeLevel.pressure(trial.condensing()),
                machine,
                spec.compressor().cylinders(),
                spec.compressor().speed(),
                Optional.empty(),
                Optional.empty(),
                spec.compressor().minimumVolumeFlow(),
                spec.compressor().assumptions(),
                atmosphere,
                spec.guidance(),
                spec.explain()));
        return new CompressorAtBalance(
                new CompressorFigures(
                        rating.figures().pressureRatio(),
                        rating.figures().shaftPower(),
                        OptionalDouble.of(rating.figures().volumetricEfficiency()),
                        rating.figures().overallEfficiency(),
                        rating.figures().dischargeTemperature(),
                        OptionalDouble.empty()),
                rating.findings(),
                rating.steps());
    }

    private static CompressorAtBalance map(
            SystemBalance.Spec spec, double atmosphere, Equilibrium equilibrium, Trial trial, MapCompressor map) {
        MapRating.Result rating = MapRating.calculate(new MapRating.Spec(
                equilibrium,
                suction(trial.suction()),
                DischargeLevel.pressure(trial.condensing()),
                map,
                Optional.empty(),
                atmosphere,
                spec.guidance(),
                spec.explain()));
        return new CompressorAtBalance(
                new CompressorFigures(
                        rating.figures().pressureRatio(),
                        rating.figures().power(),
                        OptionalDouble.empty(),
                        rating.figures().overallEfficiency(),
                        rating.figures().dischargeTemperature(),
                        rating.figures().current()),
                rating.findings(),
                rating.steps());
    }

    /** Why a map does not reach to a balance; empty where it does or may be extrapolated. */
    static Optional<NoBalance> outside(CompressorChoice choice, Equilibrium equilibrium, Trial trial) {
        return choice.map().filter(map -> !map.extrapolate()).flatMap(map -> {
            double suction =
                    equilibrium.saturationAtPressure(trial.evaporating()).dew().temperature();
            double discharge =
                    equilibrium.saturationAtPressure(trial.condensing()).dew().temperature();
            return map.envelope()
                    .breach(suction, discharge, trial.evaporating(), trial.condensing())
                    .map(CompressorAtBalance::outside);
        });
    }

    private static NoBalance outside(Envelope.Breach breach) {
        String message = breach.message();
        return NoBalance.envelope(
                "map.envelope." + breach.member(),
                breach.measure(),
                "Compressor: the coils would balance where " + Character.toLowerCase(message.charAt(0))
                        + message.substring(1) + "; extrapolate asks for an answer all the same.",
                breach.got(),
                finite(breach.lower()),
                finite(breach.upper()));
    }

    private static double finite(double limit) {
        return Double.isInfinite(limit) ? Double.NaN : limit;
    }
}
