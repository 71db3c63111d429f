package io.loopstate.web.mapping;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.flash.Equilibria;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.ReferenceState;
import io.loopstate.engine.transport.TransportLibrary;
import io.loopstate.engine.transport.TransportProperties;
import io.loopstate.web.dto.ReferencePoint;
import io.loopstate.web.problem.EngineProblems;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.ProblemKind;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** From the designation a client writes to the states of the refrigerant. */
public final class Refrigerants {
    private static final int SUGGESTIONS = 3;
    private static final int CANDIDATES = 20;
    /** No designation, name or alias is longer. */
    private static final int LONGEST = 60;

    private final Catalog catalog;
    private final Equilibria equilibria;
    private final TransportLibrary transport;

    /**
     * What is known of the refrigerant of a request.
     *
     * @param equilibrium its states
     * @param transport its transport properties
     */
    record Chosen(Equilibrium equilibrium, TransportProperties transport) {}

    /** The refrigerants of a catalog, their states and their transport properties. */
    public Refrigerants(Catalog catalog, Equilibria equilibria, TransportLibrary transport) {
        this.catalog = catalog;
        this.equilibria = equilibria;
        this.transport = transport;
    }

    /** Every refrigerant, in the order of the catalog. */
    List<Fluid> all() {
        return catalog.all();
    }

    Optional<Fluid> find(String designation) {
        return designation.length() > LONGEST ? Optional.empty() : catalog.find(designation);
    }

    TransportProperties transport(Fluid fluid) {
        return transport.of(fluid);
    }

    /** The fault for a designation that nobody knows. */
    Fault unknown(Place place, String designation) {
        List<String> similar = similar(designation);
        return place.fault("unknown-refrigerant", "No refrigerant of this designation or name is in the catalogue.")
                .withGot(designation)
                .withAllowed("a designation such as R-134a; all are listed at /v1/refrigerants")
                .withHint(similar.isEmpty() ? null : "Did you mean " + String.join(" or ", similar) + "?");
    }

    /** The nearest designations; one that only lacks an ending comes first. */
    private List<String> similar(String designation) {
        if (designation.length() > LONGEST) {
            return List.of();
        }
        return catalog.similar(designation, CANDIDATES).stream()
                .sorted(Comparator.comparing(
                        candidate -> !candidate.regionMatches(true, 0, designation, 0, designation.length())))
                .limit(SUGGESTIONS)
                .toList();
    }

    /**
     * The refrigerant asked for; {@code null} after a fault.
     *
     * @param designation {@code null} where it is missing
     * @param reference {@code null} for the refrigerant's default
     */
    Chosen choose(String designation, ReferencePoint reference, Source source, Faults faults) {
        if (designation == null) {
            return null;
        }
        Optional<Fluid> fluid = find(designation);
        if (fluid.isEmpty()) {
            faults.add("refrigerant", ProblemKind.INVALID_REQUEST, unknown(source.place("refrigerant"), designation));
            return null;
        }
        ReferenceState state =
                reference == null ? Equilibria.defaultReference(fluid.get()) : ReferenceState.valueOf(reference.name());
        try {
            return new Chosen(equilibria.of(fluid.get(), state), transport.of(fluid.get()));
        } catch (EngineException e) {
            Fault fault = source.value("referenceState")
                    .map(Given::place)
                    .orElseGet(() -> source.place("refrigerant"))
                    .fault(EngineProblems.faultCode(e.code()), Words.sentence(e.getMessage()));
            faults.add("referenceState", EngineProblems.kind(e.code()), fault);
            return null;
        }
    }
}
