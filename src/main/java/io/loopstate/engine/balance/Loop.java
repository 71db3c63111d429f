package io.loopstate.engine.balance;

import io.loopstate.engine.compression.CompressorUnit;
import io.loopstate.engine.cycle.RememberingEquilibrium;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.property.State;
import io.loopstate.engine.rejection.CondenserCoil;
import io.loopstate.engine.rejection.EvaporatorCoil;
import java.util.Objects;

/**
 * A machine between the two airs that its coils carry. Both coils hold the same refrigerant.
 *
 * @param compressor by displacement or map
 * @param condenser and the outdoor air
 * @param evaporator and the indoor air
 * @param settings what valve and charge keep
 */
record Loop(CompressorUnit compressor, CondenserCoil condenser, EvaporatorCoil evaporator, Settings settings) {
    /** Name of the compressor among the inputs. */
    static final String COMPRESSOR = "compressor";

    Loop {
        Objects.requireNonNull(compressor);
        Objects.requireNonNull(condenser);
        Objects.requireNonNull(evaporator);
        Objects.requireNonNull(settings);
    }

    /**
     * The machine at two pressures, in balance or not.
     *
     * @param evaporating Pa
     * @param condensing Pa
     * @param vapor leaves the evaporator
     * @param suction at the compressor
     * @param liquid leaves the condenser
     * @param running the compressor
     * @param evaporatorShare of the evaporator's area that the flow needs: 1 in balance
     * @param condenserShare likewise
     */
    record Trial(
            double evaporating,
            double condensing,
            State vapor,
            State suction,
            State liquid,
            CompressorUnit.Running running,
            double evaporatorShare,
            double condenserShare) {}

    Equilibrium equilibrium() {
        return condenser.equilibrium();
    }

    /** The same machine with every state computed once; for one calculation in one thread. */
    Loop remembering() {
        Equilibrium once = new RememberingEquilibrium(equilibrium());
        return new Loop(
                compressor,
                new CondenserCoil(once, condenser.conductance(), condenser.air(), condenser.arrangement()),
                new EvaporatorCoil(once, evaporator.boiling(), evaporator.superheating(), evaporator.air()),
                settings);
    }

    /** The machine at two pressures (Pa). */
    Trial at(double evaporating, double condensing) {
        Equilibrium equilibrium = equilibrium();
        Saturation cold = equilibrium.saturationAtPressure(evaporating);
        Saturation warm = equilibrium.saturationAtPressure(condensing);
        State vapor = above(equilibrium, evaporating, cold.dew(), settings.superheat());
        State suction = above(equilibrium, evaporating, vapor, settings.suctionLineTemperatureRise());
        State liquid = above(equilibrium, condensing, warm.bubble(), -settings.subcooling());
        CompressorUnit.Running running = compressor.run(equilibrium, suction, condensing);
        return new Trial(
                evaporating,
                condensing,
                vapor,
                suction,
                liquid,
                running,
                evaporator.share(evaporating, running.massFlow(), liquid.specificEnthalpy(), settings.vapor()),
                condenser.share(condensing, running.massFlow(), (e, p, s) -> running.discharge(), settings.liquid()));
    }

    private static State above(Equilibrium equilibrium, double pressure, State from, double kelvin) {
        return kelvin == 0 ? from : equilibrium.atPressureTemperature(pressure, from.temperature() + kelvin);
    }
}
