package io.loopstate.engine.balance;

import io.loopstate.engine.air.AirSolver;
import io.loopstate.engine.air.AirState;
import io.loopstate.engine.air.AirVariable;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.rejection.AirSide;
import io.loopstate.engine.rejection.CoilAir;
import io.loopstate.engine.rejection.CondenserCoil;
import io.loopstate.engine.rejection.EvaporatorCoil;
import io.loopstate.engine.rejection.MoistAirQuery;

/** Puts a machine between its two airs. */
final class Surroundings {
    private Surroundings() {}

    /** The machine with one thing different; every state of its refrigerant is computed once. */
    static Loop loop(SystemBalance.Spec spec, WhatIf change) {
        Equilibrium equilibrium = change.refrigerant().orElse(spec.equilibrium());
        return new Loop(
                        spec.compressor().iterated(),
                        condenser(spec, change, equilibrium),
                        evaporator(spec, change, equilibrium),
                        spec.settings())
                .remembering();
    }

    private static CondenserCoil condenser(SystemBalance.Spec spec, WhatIf change, Equilibrium equilibrium) {
        CondenserSide side = spec.condenser();
        CoilAir rated = rated(side.air(), side.airflow(), spec.atmosphere(), "outdoorAir", "condenser.airflow");
        double share = side.fan().airflow(change.fanSpeed().orElse(side.fan().speed())) * change.condenserAirflow();
        CoilAir air = same(rated, side.air(), spec, change, "outdoorAir", change.outdoorRise())
                .times(share);
        double factor = Math.pow(air.massFlow() / rated.massFlow(), side.fan().exponent());
        return new CondenserCoil(
                equilibrium, side.conductance().times(factor * change.condenserConductance()), air, side.arrangement());
    }

    private static EvaporatorCoil evaporator(SystemBalance.Spec spec, WhatIf change, Equilibrium equilibrium) {
        EvaporatorSide side = spec.evaporator();
        CoilAir rated = rated(side.air(), side.airflow(), spec.atmosphere(), "indoorAir", "evaporator.airflow");
        CoilAir air = same(rated, side.air(), spec, change, "indoorAir", 0).times(change.indoorAirflow());
        double factor = Math.pow(air.massFlow() / rated.massFlow(), side.airflowExponent());
        return new EvaporatorCoil(equilibrium, factor * side.boiling(), factor * side.superheating(), air);
    }

    /** The same volume of air in other surroundings. */
    private static CoilAir same(
            CoilAir rated, AirSide.Air air, SystemBalance.Spec spec, WhatIf change, String input, double rise) {
        AirState there = change.atmosphere().isPresent()
                ? entering(air, change.atmosphere().getAsDouble(), input)
                : rated.state();
        AirState state = rise == 0 ? there : there.at(there.dryBulb() + rise);
        return new CoilAir(state, rated.massFlow() * rated.state().specificVolume() / state.specificVolume());
    }

    private static CoilAir rated(
            AirSide.Air air, AirSide.Airflow airflow, double atmosphere, String input, String flowInput) {
        AirState state = entering(air, atmosphere, input);
        try {
            return new CoilAir(state, airflow.dryAir(state));
        } catch (EngineException e) {
            throw e.about(flowInput + ".condition");
        }
    }

    /** Air as it is given, dry where it has no humidity. */
    static AirState entering(AirSide.Air air, double atmosphere, String input) {
        MoistAirQuery.Known humidity = air.humidity().orElse(new MoistAirQuery.Known(AirVariable.HUMIDITY_RATIO, 0));
        try {
            return new AirSolver(atmosphere)
                    .state(AirVariable.DRY_BULB, air.dryBulb().orElseThrow(), humidity.variable(), humidity.value());
        } catch (EngineException e) {
            throw e.about(input + '.' + e.input().orElseThrow());
        }
    }
}
