package io.loopstate.web.verify;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.units.Atmosphere;
import io.loopstate.units.QuantityKind;
import io.loopstate.units.Reading;
import io.loopstate.units.UnitToken;
import io.loopstate.web.mapping.ReplyKinds;
import io.loopstate.web.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a request was answered.
 *
 * @param tree the reply, or the problem
 * @param reply the reply, or the problem
 */
public record Answer(JsonNode tree, Object reply) {

    /** The problem; empty where the request was answered. */
    public Optional<Problem> problem() {
        return reply instanceof Problem problem ? Optional.of(problem) : Optional.empty();
    }

    /** The status of the answer. */
    int status() {
        return problem().map(Problem::status).orElse(200);
    }

    /** The air from which gauge pressures count: that of the reply, or the standard atmosphere. */
    Atmosphere atmosphere() {
        JsonNode pressure = tree.at("/basis/atmosphere/pressure");
        return pressure.isMissingNode()
                ? Atmosphere.standard()
                : Atmosphere.ofPressure(UnitToken.of(pressure.get("unit").textValue())
                        .toSi(pressure.get("value").doubleValue(), Atmosphere.standard()));
    }

    /**
     * The quantity at a place in a unit; empty where there is none.
     *
     * @param unit a unit of its kind; empty for a plain number
     */
    public OptionalDouble number(JsonPointer pointer, Optional<UnitToken> unit) {
        JsonNode node = tree.at(pointer);
        if (unit.isEmpty()) {
            return node.isNumber() ? OptionalDouble.of(node.doubleValue()) : OptionalDouble.empty();
        }
        return kind(pointer)
                .filter(kind -> node.path("value").isNumber())
                .map(kind -> new Reading(
                        kind,
                        node.get("value").doubleValue(),
                        UnitToken.of(node.get("unit").textValue())))
                .map(reading -> reading.in(unit.get(), atmosphere()).value())
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    /** The kind of the quantity at a place, as far as the contract tells. */
    Optional<QuantityKind> kind(JsonPointer pointer) {
        List<String> names = new ArrayList<>();
        for (JsonPointer at = pointer; !at.matches(); at = at.tail()) {
            names.add(at.getMatchingProperty());
        }
        return ReplyKinds.at(reply, names);
    }
}
