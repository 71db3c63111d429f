package io.loopstate.web.mapping;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.flash.Equilibria;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.fluid.Blend;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.Composition;
import io.loopstate.engine.fluid.CompositionException;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.Mixture;
import io.loopstate.engine.fluid.ReferenceState;
import io.loopstate.engine.fluid.Refrigerant;
import io.loopstate.engine.transport.TransportLibrary;
import io.loopstate.engine.transport.TransportProperties;
import io.loopstate.web.dto.ReferencePoint;
import io.loopstate.web.problem.EngineProblems;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.ProblemKind;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Stream;

/** From the designation a client writes to the states of the refrigerant. */
public final class Refrigerants {
    private static final String MEMBER = "refrigerant";
    private static final int SUGGESTIONS = 3;
    private static final int CANDIDATES = 20;
    /** No designation, name or alias is longer. */
    private static final int LONGEST = 60;

    private final Catalog catalog;
    private final Equilibria equilibria;
    private final TransportLibrary transport;
    /** Catalogued designations whose lines are made; as many as the catalog has at most. */
    private final Set<String> made = ConcurrentHashMap.newKeySet();

    /**
     * What is known of the refrigerant of a request.
     *
     * @param equilibrium its states
     * @param transport its transport properties, empty for a blend
     */
    record Chosen(Equilibrium equilibrium, Optional<TransportProperties> transport) {}

    /** A refrigerant that a request names, and its states by reference state. */
    private record Named(Refrigerant refrigerant, boolean catalogued, Function<ReferenceState, Equilibrium> states) {}

    /** The refrigerants of a catalog, their states and their transport properties. */
    public Refrigerants(Catalog catalog, Equilibria equilibria, TransportLibrary transport) {
        this.catalog = catalog;
        this.equilibria = equilibria;
        this.transport = transport;
    }

    /** Every refrigerant, in the order of the catalog; the blends after the fluids. */
    List<Refrigerant> all() {
        return Stream.<Refrigerant>concat(catalog.all().stream(), catalog.blends().stream())
                .toList();
    }

    /** A refrigerant of the catalog. */
    Optional<Refrigerant> find(String designation) {
        return designation.length() > LONGEST ? Optional.empty() : catalog.refrigerant(designation);
    }

    /** Empty for a blend: nothing is estimated from its components. */
    Optional<TransportProperties> transport(Refrigerant refrigerant) {
        return refrigerant instanceof Fluid fluid ? Optional.of(transport.of(fluid)) : Optional.empty();
    }

    /**
     * Whether choosing this refrigerant takes no time worth mentioning: what nobody knows, and what of the catalog has been
     * chosen before. Never a composition, whose lines may have been forgotten again.
     */
    public boolean ready(String designation) {
        if (Composition.looksLike(designation)) {
            return false;
        }
        return designation.length() > LONGEST
                || catalog.designation(designation).map(made::contains).orElse(true);
    }

    /** The states of a fluid of the catalog, with its default reference state. */
    Equilibrium equilibrium(String designation) {
        Fluid fluid = catalog.find(designation).orElseThrow();
        return equilibria.of(fluid, Equilibria.defaultReference(fluid));
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

    /** Whether the member at a path names a refrigerant. */
    static boolean names(String path) {
        return path.equals(MEMBER) || path.endsWith('.' + MEMBER);
    }

    /**
     * The refrigerant asked for; {@code null} after a fault.
     *
     * @param designation or the composition of a blend; {@code null} where it is missing
     * @param reference {@code null} for the refrigerant's default
     * @param requireFitted whether a blend with a pair that was not fitted is refused
     */
    Chosen choose(String designation, ReferencePoint reference, boolean requireFitted, Source source, Faults faults) {
        return choose(MEMBER, designation, reference, requireFitted, source, faults);
    }

    /** As above, for a refrigerant that another member names. */
    Chosen choose(
            String member,
            String designation,
            ReferencePoint reference,
            boolean requireFitted,
            Source source,
            Faults faults) {
        if (designation == null) {
            return null;
        }
        Place place = source.place(member);
        try {
            Optional<Named> named = named(designation);
            if (named.isEmpty()) {
                faults.add(member, ProblemKind.INVALID_REQUEST, unknown(place, designation));
                return null;
            }
            if (requireFitted && named.get().refrigerant() instanceof Blend blend) {
                blend.mixture().requireFitted();
            }
            return chosen(named.get(), reference, source, faults);
        } catch (CompositionException e) {
            faults.add(member, CompositionFaults.kind(e.reason()), CompositionFaults.fault(place, e));
            return null;
        } catch (EngineException e) {
            Fault fault = place.fault(EngineProblems.faultCode(e.code()), Words.sentence(e.getMessage()));
            faults.add(member, EngineProblems.kind(e.code()), fault.withGot(designation));
            return null;
        }
    }

    /** By designation or name, or by the composition of a blend. */
    private Optional<Named> named(String designation) {
        if (!Composition.looksLike(designation)) {
            // a composition on file without figures is refused with the reason
            return find(designation)
                    .map(this::catalogued)
                    .or(() -> designation.length() > LONGEST
                            ? Optional.empty()
                            : catalog.mixture(designation).map(this::computed));
        }
        Mixture mixture = catalog.mixture(Composition.parse(designation));
        return catalog.refrigerant(mixture.designation())
                .map(this::catalogued)
                .or(() -> Optional.of(computed(mixture)));
    }

    private Named computed(Mixture mixture) {
        return new Named(equilibria.blend(mixture), false, state -> equilibria.of(mixture, state));
    }

    private Named catalogued(Refrigerant refrigerant) {
        return new Named(refrigerant, true, state -> equilibria.of(refrigerant, state));
    }

    private Chosen chosen(Named named, ReferencePoint reference, Source source, Faults faults) {
        ReferenceState state = reference == null
                ? Equilibria.defaultReference(named.refrigerant())
                : ReferenceState.valueOf(reference.name());
        try {
            Chosen chosen = new Chosen(named.states().apply(state), transport(named.refrigerant()));
            if (named.catalogued()) {
                made.add(named.refrigerant().designation());
            }
            return chosen;
        } catch (EngineException e) {
            Fault fault = source.value("referenceState")
                    .map(Given::place)
                    .orElseGet(() -> source.place(MEMBER))
                    .fault(EngineProblems.faultCode(e.code()), Words.sentence(e.getMessage()));
            faults.add("referenceState", EngineProblems.kind(e.code()), fault);
            return null;
        }
    }
}
