package io.loopstate.web.mapping;

import io.loopstate.engine.fluid.Refrigerant;
import io.loopstate.web.dto.BlendModel;
import io.loopstate.web.dto.EquationOfState;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** What every reply about a refrigerant says alike; made once for those on file. */
final class Backgrounds {
    private final Cautions cautions;
    private final Map<String, Background> onFile = new ConcurrentHashMap<>();

    Backgrounds(SafetyGroups groups) {
        cautions = new Cautions(groups);
    }

    /**
     * The same in every reply about a refrigerant.
     *
     * @param blend {@code null} for what is no blend
     */
    record Background(EquationOfState equation, BlendModel blend, List<String> cautions) {}

    Background of(Refrigerant refrigerant) {
        return cautions.onFile(refrigerant)
                ? onFile.computeIfAbsent(refrigerant.designation(), designation -> made(refrigerant))
                : made(refrigerant);
    }

    private Background made(Refrigerant refrigerant) {
        return new Background(
                Trust.equationOfState(refrigerant.sources()), BlendModels.of(refrigerant), cautions.of(refrigerant));
    }
}
