package io.loopstate.web.mapping;

import io.loopstate.engine.rejection.Dirt;
import io.loopstate.engine.rejection.Fan;
import io.loopstate.engine.rejection.Load;
import io.loopstate.web.dto.DirtRequest;
import io.loopstate.web.dto.FanRequest;
import io.loopstate.web.dto.Quantity;
import java.util.List;
import java.util.Optional;

/** What the requests of every air-cooled coil have in common. */
final class Coils {
    private Coils() {}

    /** The air before the coil: a dry bulb, at most one humidity, one airflow. */
    static void checkAir(Input<?> input) {
        input.exactlyOne("entering.dryBulb");
        AirSideMapping.oneHumidity(input, "entering");
        input.exactlyOne("airflow.volumeFlow", "airflow.massFlow");
        input.needs("airflow.condition", "airflow.volumeFlow", "it says in which air that is counted.");
        input.needs("foulingResistance", "area", "the dirt covers it.");
    }

    /**
     * What belongs to a coil that is known, and not to one that is measured.
     *
     * @param conductance path of the conductance, which is not given
     */
    static void checkMeasured(Input<?> input, String conductance) {
        for (String path : List.of("fanSpeed", "airflowExponent", "naturalDraft", "foulingResistance")) {
            input.needs(path, conductance, "it changes a coil that is known.");
        }
    }

    /** The flow or the heat; empty where neither is given. */
    static Optional<Load> load(Quantity massFlow, Quantity heat) {
        return massFlow == null
                ? Optional.ofNullable(heat).map(watt -> Load.heat(watt.value()))
                : Optional.of(Load.massFlow(massFlow.value()));
    }

    static Fan fan(FanRequest given) {
        Fan usual = Fan.full();
        return new Fan(
                given.fanSpeed() == null ? usual.speed() : given.fanSpeed(),
                given.airflowExponent() == null ? usual.exponent() : given.airflowExponent(),
                given.airflowExponent() == null,
                given.naturalDraft() == null ? usual.naturalDraft() : given.naturalDraft());
    }

    static Dirt dirt(DirtRequest given) {
        return new Dirt(Si.orZero(given.foulingResistance()), Si.optional(given.area()));
    }
}
