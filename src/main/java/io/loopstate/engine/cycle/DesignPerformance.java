package io.loopstate.engine.cycle;

import io.loopstate.engine.component.Compressor;
import io.loopstate.engine.component.CompressorKind;
import io.loopstate.engine.component.CompressorModel;
import io.loopstate.engine.component.Condenser;
import io.loopstate.engine.component.HeatRejection;
import io.loopstate.engine.cycle.DesignCycle.Performance;
import io.loopstate.engine.cycle.DesignCycle.Sizing;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.property.State;
import java.util.OptionalDouble;

/** Works and heats of a design cycle from its states. */
final class DesignPerformance {
    /** Largest imbalance of energy around the loop, as a share of the work. */
    private static final double BALANCE_TOLERANCE = 1e-7;

    private DesignPerformance() {}

    static Performance of(DesignStates states) {
        Compressor.Compression compression = states.compression();
        double work = compression.work();
        double effect = difference(states.evaporatorOutlet(), states.evaporatorInlet());
        requireEffect(effect);
        HeatRejection rejection =
                Condenser.heatRejection(states.equilibrium(), states.condenserInlet(), states.condenserOutlet());
        double suctionGain = difference(states.compressorInlet(), states.evaporatorOutlet());
        double dischargeLoss = difference(compression.outlet(), states.condenserInlet());
        double liquidGain = difference(states.valveInlet(), states.condenserOutlet());
        requireBalance(
                effect + suctionGain + work + liquidGain,
                rejection.total() + dischargeLoss + compression.heatLoss(),
                work);

        double coefficient = effect / work;
        OptionalDouble carnot = Carnot.coefficient(states.evaporating().midpoint(), warmSide(states));
        return new Performance(
                compression.outlet().pressure() / compression.inlet().pressure(),
                compression.isentropicWork(),
                work,
                compression.heatLoss(),
                effect,
                suctionGain,
                dischargeLoss,
                liquidGain,
                rejection.total(),
                rejection,
                rejection.total() / effect,
                coefficient,
                rejection.total() / work,
                coefficient * Constants.BTU_PER_HOUR_PER_WATT,
                Constants.WATT_PER_TON / coefficient,
                carnot,
                Optionals.map(carnot, limit -> coefficient / limit),
                compression.outlet().temperature(),
                effect * compression.inlet().density(),
                twoPhaseQuality(states.valveInlet()),
                twoPhaseQuality(states.evaporatorInlet()));
    }

    static Sizing sizing(DesignStates states, Performance performance, CompressorModel compressor, Size size) {
        double density = states.compressorInlet().density();
        double volumetric = compressor.volumetricEfficiency().orElse(1);
        double massFlow = switch (size.given()) {
            case REFRIGERATING_CAPACITY -> size.value() / performance.refrigeratingEffect();
            case MASS_FLOW -> size.value();
            case DISPLACEMENT -> size.value() * volumetric * density;
        };
        double suctionVolumeFlow = massFlow / density;
        double power = massFlow * performance.compressorWork();
        OptionalDouble displacement = size.given() == Size.Given.DISPLACEMENT
                ? OptionalDouble.of(size.value())
                : Optionals.map(compressor.volumetricEfficiency(), efficiency -> suctionVolumeFlow / efficiency);
        return new Sizing(
                massFlow,
                massFlow * performance.refrigeratingEffect(),
                power,
                electricalPower(compressor, power),
                massFlow * performance.heatRejectionPerMass(),
                suctionVolumeFlow,
                displacement);
    }

    /** Of a hermetic compressor the power put into the refrigerant is the electrical one. */
    private static OptionalDouble electricalPower(CompressorModel compressor, double power) {
        return compressor.kind() == CompressorKind.HERMETIC
                ? OptionalDouble.of(power)
                : Optionals.map(compressor.motorEfficiency(), efficiency -> power / efficiency);
    }

    /** The temperature at which heat is rejected, K: condensing midpoint or gas cooler outlet. */
    private static double warmSide(DesignStates states) {
        return states.condensing()
                .map(SaturationTemperatures::midpoint)
                .orElseGet(() -> states.condenserOutlet().temperature());
    }

    private static OptionalDouble twoPhaseQuality(State state) {
        return Optionals.when(state.phase() == Phase.TWO_PHASE, state.vaporQuality());
    }

    private static double difference(State higher, State lower) {
        return higher.specificEnthalpy() - lower.specificEnthalpy();
    }

    private static void requireEffect(double effect) {
        if (!(effect > 0)) {
            throw EngineException.of(
                    ErrorCode.CONTRADICTORY_INPUTS,
                    "The refrigerant reaches the evaporator with as much enthalpy as it leaves with: it cools nothing.",
                    "condenserOutlet",
                    effect,
                    0,
                    Double.NaN);
        }
    }

    private static void requireBalance(double taken, double given, double work) {
        if (!(Math.abs(taken - given) <= BALANCE_TOLERANCE * work)) {
            throw EngineException.of(ErrorCode.NOT_CONVERGED, "The energy balance around the loop does not close.");
        }
    }
}
