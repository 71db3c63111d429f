package io.loopstate.web.mapping;

import io.loopstate.engine.flash.Equilibria;
import io.loopstate.engine.fluid.Blend;
import io.loopstate.engine.fluid.BlendFigures;
import io.loopstate.engine.fluid.Limits;
import io.loopstate.engine.fluid.Refrigerant;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.dto.BoundaryPoint;
import io.loopstate.web.dto.CriticalState;
import io.loopstate.web.dto.ModelRange;
import io.loopstate.web.dto.OzonePotential;
import io.loopstate.web.dto.Quantity;
import io.loopstate.web.dto.ReferencePoint;
import io.loopstate.web.dto.RefrigerantItem;
import io.loopstate.web.dto.RefrigerantKind;
import io.loopstate.web.dto.RefrigerantsQuery;
import io.loopstate.web.dto.RefrigerantsReply;
import io.loopstate.web.dto.SafetyGroup;
import io.loopstate.web.dto.TransportSources;
import io.loopstate.web.dto.UnitsOnly;
import io.loopstate.web.problem.ProblemException;
import io.loopstate.web.problem.ProblemKind;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What is known of each refrigerant. */
public final class Catalogue {
    private static final String PARAMETER = "designation";

    private final Refrigerants refrigerants;
    private final RequestReader reader;
    private final CatalogueFacts facts;

    /** The refrigerants with what is on file of them beside their equations. */
    public Catalogue(Refrigerants refrigerants, RequestReader reader, CatalogueFacts facts) {
        this.refrigerants = refrigerants;
        this.reader = reader;
        this.facts = facts;
    }

    /**
     * The refrigerants that a query selects.
     *
     * @throws ProblemException with every fault of the query
     */
    public RefrigerantsReply list(Map<String, List<String>> parameters) {
        Input<RefrigerantsQuery> input = reader.read(RefrigerantsQuery.class, new QuerySource(parameters));
        input.refuseFaults();
        String component = component(input);
        List<RefrigerantItem> items = refrigerants.all().stream()
                .map(refrigerant -> item(input.output(), refrigerant))
                .filter(item -> selected(input.request(), item))
                .filter(item -> component == null || contains(item, component))
                .toList();
        return new RefrigerantsReply(items.size(), items);
    }

    /**
     * One refrigerant.
     *
     * @throws ProblemException NOT_FOUND with suggestions for an unknown designation; with every fault of the query
     */
    public RefrigerantItem one(String designation, Map<String, List<String>> parameters) {
        Input<UnitsOnly> input = reader.read(UnitsOnly.class, new QuerySource(parameters));
        input.refuseFaults();
        Refrigerant refrigerant = refrigerants
                .find(designation)
                .orElseThrow(() -> new ProblemException(
                        ProblemKind.NOT_FOUND, refrigerants.unknown(Place.query(PARAMETER), designation)));
        return item(input.output(), refrigerant);
    }

    /** The designation of the component asked for; {@code null} where none is. */
    private String component(Input<RefrigerantsQuery> input) {
        String wanted = input.request().component();
        if (wanted == null) {
            return null;
        }
        return refrigerants
                .find(wanted)
                .map(Refrigerant::designation)
                .orElseThrow(() -> new ProblemException(
                        ProblemKind.INVALID_REQUEST, refrigerants.unknown(input.place("component"), wanted)));
    }

    private static boolean contains(RefrigerantItem item, String component) {
        return item.blend() != null
                && item.blend().composition().stream()
                        .anyMatch(part -> part.refrigerant().equals(component));
    }

    private static boolean selected(RefrigerantsQuery query, RefrigerantItem item) {
        boolean kind = query.kind() == null || query.kind() == item.kind();
        boolean group = query.safetyGroup() == null || query.safetyGroup() == item.safetyGroup();
        boolean warming = query.maxGlobalWarmingPotential() == null
                || WarmingPotentials.newest(item.globalWarmingPotentials()).orElse(Double.POSITIVE_INFINITY)
                        <= query.maxGlobalWarmingPotential();
        boolean accuracy = query.accuracyClass() == null
                || item.blend() != null && item.blend().accuracyClass() == query.accuracyClass();
        return kind && group && warming && accuracy;
    }

    private RefrigerantItem item(Output out, Refrigerant refrigerant) {
        Optional<Blend> blend = refrigerant instanceof Blend mixed ? Optional.of(mixed) : Optional.empty();
        Optional<BlendFigures> figures = blend.map(Blend::figures);
        Optional<SafetyGroups.Entry> safety = facts.safetyGroups().of(refrigerant.designation());
        WarmingPotentials.Known warming = facts.warmingPotentials().of(refrigerant);
        List<OzonePotential> ozone = facts.ozonePotentials().of(refrigerant);
        return new RefrigerantItem(
                refrigerant.designation(),
                refrigerant.name(),
                refrigerant.aliases().isEmpty() ? null : refrigerant.aliases(),
                RefrigerantKind.valueOf(refrigerant.kind().name()),
                refrigerant.formula().orElse(null),
                refrigerant.casNumber().orElse(null),
                out.of(QuantityKind.MOLAR_MASS, refrigerant.molarMass()),
                new CriticalState(
                        out.of(
                                QuantityKind.TEMPERATURE,
                                refrigerant.criticalPoint().temperature()),
                        out.of(
                                QuantityKind.PRESSURE,
                                refrigerant.criticalPoint().pressure()),
                        out.of(QuantityKind.DENSITY, refrigerant.criticalPoint().density())),
                out.of(QuantityKind.TEMPERATURE, refrigerant.normalBoilingPoint()),
                out.of(
                        QuantityKind.TEMPERATURE,
                        figures.map(BlendFigures::normalDewPoint).orElse(OptionalDouble.empty())),
                figures.map(f -> glide(out, f)).orElse(null),
                figures.map(f -> boundary(out, f.cricondentherm(), f.cricondenthermPressure()))
                        .orElse(null),
                figures.map(f -> boundary(out, f.cricondenbarTemperature(), f.cricondenbar()))
                        .orElse(null),
                range(out, refrigerant),
                ReferencePoint.valueOf(Equilibria.defaultReference(refrigerant).name()),
                safety.map(entry -> SafetyGroup.valueOf(entry.safetyGroup())).orElse(null),
                safety.map(SafetyGroups.Entry::source).orElse(null),
                warming.values().isEmpty() ? null : warming.values(),
                warming.missing().isEmpty() ? null : warming.missing(),
                ozone.isEmpty() ? null : ozone,
                facts.concentrationLimits()
                        .ofRoom(out, refrigerant.designation())
                        .orElse(null),
                facts.concentrationLimits()
                        .ofFlame(out, refrigerant.designation())
                        .orElse(null),
                BlendModels.of(refrigerant),
                Trust.equationOfState(refrigerant.sources()),
                refrigerants
                        .transport(refrigerant)
                        .map(Trust::transport)
                        .orElse(new TransportSources(null, null, null)));
    }

    private static Quantity glide(Output out, BlendFigures figures) {
        double dew = figures.normalDewPoint().orElse(Double.NaN);
        double bubble = figures.normalBubblePoint().orElse(Double.NaN);
        return out.of(QuantityKind.TEMPERATURE_DIFFERENCE, dew - bubble);
    }

    private static BoundaryPoint boundary(Output out, double temperature, double pressure) {
        return new BoundaryPoint(
                out.of(QuantityKind.TEMPERATURE, temperature), out.of(QuantityKind.PRESSURE, pressure));
    }

    private static ModelRange range(Output out, Refrigerant refrigerant) {
        Limits limits = refrigerant.limits();
        return new ModelRange(
                out.of(QuantityKind.TEMPERATURE, limits.minTemperature()),
                out.of(QuantityKind.TEMPERATURE, limits.maxTemperature()),
                out.of(QuantityKind.PRESSURE, limits.maxPressure()),
                out.of(QuantityKind.TEMPERATURE, refrigerant.minSaturationTemperature()));
    }
}
