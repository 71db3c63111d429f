package io.loopstate.web.mapping;

import io.loopstate.engine.flash.Equilibria;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.Limits;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.dto.CriticalState;
import io.loopstate.web.dto.ModelRange;
import io.loopstate.web.dto.OzonePotential;
import io.loopstate.web.dto.ReferencePoint;
import io.loopstate.web.dto.RefrigerantItem;
import io.loopstate.web.dto.RefrigerantKind;
import io.loopstate.web.dto.RefrigerantsQuery;
import io.loopstate.web.dto.RefrigerantsReply;
import io.loopstate.web.dto.SafetyGroup;
import io.loopstate.web.dto.UnitsOnly;
import io.loopstate.web.dto.WarmingPotential;
import io.loopstate.web.problem.ProblemException;
import io.loopstate.web.problem.ProblemKind;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
        List<RefrigerantItem> items = refrigerants.all().stream()
                .map(fluid -> item(input.output(), fluid))
                .filter(item -> selected(input.request(), item))
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
        Fluid fluid = refrigerants
                .find(designation)
                .orElseThrow(() -> new ProblemException(
                        ProblemKind.NOT_FOUND, refrigerants.unknown(Place.query(PARAMETER), designation)));
        return item(input.output(), fluid);
    }

    private static boolean selected(RefrigerantsQuery query, RefrigerantItem item) {
        boolean kind = query.kind() == null || query.kind() == item.kind();
        boolean group = query.safetyGroup() == null || query.safetyGroup() == item.safetyGroup();
        boolean warming = query.maxGlobalWarmingPotential() == null
                || WarmingPotentials.newest(item.globalWarmingPotentials()).orElse(Double.POSITIVE_INFINITY)
                        <= query.maxGlobalWarmingPotential();
        return kind && group && warming;
    }

    private RefrigerantItem item(Output out, Fluid fluid) {
        Optional<SafetyGroups.Entry> safety = facts.safetyGroups().of(fluid.designation());
        List<WarmingPotential> potentials = facts.warmingPotentials().of(fluid.designation());
        List<OzonePotential> ozone = facts.ozonePotentials().of(fluid);
        return new RefrigerantItem(
                fluid.designation(),
                fluid.name(),
                fluid.aliases().isEmpty() ? null : fluid.aliases(),
                RefrigerantKind.valueOf(fluid.kind().name()),
                fluid.formula().orElse(null),
                fluid.casNumber().orElse(null),
                out.of(QuantityKind.MOLAR_MASS, fluid.molarMass()),
                new CriticalState(
                        out.of(QuantityKind.TEMPERATURE, fluid.criticalPoint().temperature()),
                        out.of(QuantityKind.PRESSURE, fluid.criticalPoint().pressure()),
                        out.of(QuantityKind.DENSITY, fluid.criticalPoint().density())),
                out.of(QuantityKind.TEMPERATURE, fluid.normalBoilingPoint()),
                range(out, fluid),
                ReferencePoint.valueOf(Equilibria.defaultReference(fluid).name()),
                safety.map(entry -> SafetyGroup.valueOf(entry.safetyGroup())).orElse(null),
                safety.map(SafetyGroups.Entry::source).orElse(null),
                potentials.isEmpty() ? null : potentials,
                ozone.isEmpty() ? null : ozone,
                facts.concentrationLimits().ofRoom(out, fluid.designation()).orElse(null),
                facts.concentrationLimits().ofFlame(out, fluid.designation()).orElse(null),
                Trust.equationOfState(fluid.sources()),
                Trust.transport(refrigerants.transport(fluid)));
    }

    private static ModelRange range(Output out, Fluid fluid) {
        Limits limits = fluid.limits();
        return new ModelRange(
                out.of(QuantityKind.TEMPERATURE, limits.minTemperature()),
                out.of(QuantityKind.TEMPERATURE, limits.maxTemperature()),
                out.of(QuantityKind.PRESSURE, limits.maxPressure()),
                out.of(QuantityKind.TEMPERATURE, fluid.minSaturationTemperature()));
    }
}
