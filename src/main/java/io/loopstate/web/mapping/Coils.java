package io.loopstate.web.mapping;

import io.loopstate.engine.rejection.Dirt;
import io.loopstate.engine.rejection.Fan;
import io.loopstate.engine.rejection.Load;
import io.loopstate.web.dto.FanAndDirt;
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

    static Fan fan(FanAndDirt given) {
        return fan(given.fanSpeed(), given.airflowExponent(), given.naturalDraft());
    }

    /** The fan; {@code null} for what is as usual. */
    static Fan fan(Double speed, Double exponent, Double naturalDraft) {
        Fan usual = Fan.full();
        return new Fan(
                speed == null ? usual.speed() : speed,
                exponent == null ? usual.exponent() : exponent,
                exponent == null,
                naturalDraft == null ? usual.naturalDraft() : naturalDraft);
    }

    static Dirt dirt(FanAndDirt given) {
        return new Dirt(Si.orZero(given.foulingResistance()), Si.optional(given.area()));
    }
}
