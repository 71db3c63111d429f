package io.loopstate.engine.fluid;

import io.loopstate.engine.fluid.CompositionException.Reason;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The blends of the catalog and mixtures of a caller's own composition. */
final class Blends {
    /** The cost of a phase boundary grows with the cube of the number. */
    private static final int MOST_COMPONENTS = 10;

    private static final double SMALLEST_SHARE = 1e-6;
    private static final double SUM_TOLERANCE = 1e-6;
    private static final int SUM_DIGITS = 9;
    private static final int SUGGESTIONS = 3;
    private static final int SIMILAR = 20;

    private final Catalog catalog;
    private final MixtureReader reader;
    private final Map<String, JsonObject> entries = new LinkedHashMap<>();
    /** Designations by the components' shares, whatever their order. */
    private final Map<Map<String, Double>, String> byComposition = new HashMap<>();

    private final Map<String, Mixture> mixtures = new ConcurrentHashMap<>();
    private final Map<String, Blend> loaded = new ConcurrentHashMap<>();
    private final Function<String, JsonObject> resource;
    /** One file, by blend; read when a blend is first asked for, which no start waits for. */
    private final Map<String, Map<String, JsonObject>> figures = new ConcurrentHashMap<>();

    Blends(Catalog catalog, Function<String, JsonObject> resource) {
        this.catalog = catalog;
        this.resource = resource;
        reader = new MixtureReader(
                resource.apply("binary-pairs.json"),
                resource.apply("departure-functions.json"),
                resource.apply("pair-notes.json"));
        resource.apply("blends.json").objects("blends").forEach(b -> {
            entries.put(b.text("designation"), b);
            byComposition.put(shares(b), b.text("designation"));
        });
    }

    private Map<String, JsonObject> figures() {
        return figures.computeIfAbsent(
                "figures.json",
                file -> resource.apply(file).objects("blends").stream()
                        .collect(Collectors.toUnmodifiableMap(b -> b.text("designation"), b -> b)));
    }

    Collection<String> designations() {
        return entries.keySet();
    }

    /** A catalogued composition, by its exact designation. */
    Mixture mixture(String designation) {
        return mixtures.computeIfAbsent(designation, d -> {
            List<JsonObject> components = entries.get(d).objects("components");
            return reader.mixture(
                    d,
                    components.stream()
                            .map(c -> catalog.find(c.text("designation")).orElseThrow())
                            .toList(),
                    components.stream()
                            .mapToDouble(c -> c.number("massFraction"))
                            .toArray());
        });
    }

    private static Map<String, Double> shares(JsonObject blend) {
        Map<String, Double> shares = new HashMap<>();
        blend.objects("components").forEach(c -> shares.put(c.text("designation"), c.number("massFraction")));
        return shares;
    }

    boolean hasFigures(String designation) {
        return figures().containsKey(designation);
    }

    /** A catalogued blend; empty where its model gives no phase boundary. */
    Optional<Blend> blend(String designation) {
        return Optional.ofNullable(figures().get(designation))
                .map(f -> loaded.computeIfAbsent(designation, d -> new Blend(mixture(d), List.of(), figures(f))));
    }

    private static BlendFigures figures(JsonObject json) {
        JsonObject critical = json.object("critical");
        return new BlendFigures(
                new CriticalPoint(critical.number("T"), critical.number("p"), critical.number("rho")),
                json.object("cricondentherm").number("T"),
                json.object("cricondentherm").number("p"),
                json.object("cricondenbar").number("p"),
                json.object("cricondenbar").number("T"),
                optional(json, "normalBubblePoint"),
                optional(json, "normalDewPoint"),
                json.number("minTemperature"));
    }

    private static OptionalDouble optional(JsonObject json, String name) {
        return json.optionalNumber(name);
    }

    /**
     * A mixture of the caller's own composition; the catalogued one where it is that, whatever the order.
     *
     * @throws CompositionException for every reason but NOT_READABLE and PAIR_NOT_FITTED
     */
    Mixture mixture(Composition composition) {
        requireNumber(composition);
        List<Fluid> fluids = new ArrayList<>();
        Map<String, Double> shares = new HashMap<>();
        for (int i = 0; i < composition.designations().size(); i++) {
            Fluid fluid = component(composition.designations().get(i));
            double share = share(fluid, composition.massFractions().get(i));
            if (shares.put(fluid.designation(), share) != null) {
                throw new CompositionException(
                        Reason.REPEATED_COMPONENT,
                        fluid.designation() + " is named twice",
                        composition.designations().get(i),
                        "each component once",
                        List.of());
            }
            fluids.add(fluid);
        }
        requireWhole(composition);
        String known = byComposition.get(shares);
        if (known != null) {
            return mixture(known);
        }
        Mixture unnamed = reader.mixture(
                "",
                fluids,
                composition.massFractions().stream()
                        .mapToDouble(Double::doubleValue)
                        .toArray());
        return new Mixture(unnamed.notation(), unnamed.components(), unnamed.pairs(), unnamed.model());
    }

    private static void requireNumber(Composition composition) {
        int n = composition.designations().size();
        if (n < 2 || n > MOST_COMPONENTS) {
            throw new CompositionException(
                    Reason.NUMBER_OF_COMPONENTS,
                    "a blend of so many components is not computed",
                    Integer.toString(n),
                    "2 to " + MOST_COMPONENTS + " components",
                    List.of());
        }
        if (composition.massFractions().size() != n) {
            throw new CompositionException(
                    Reason.NUMBER_OF_COMPONENTS,
                    "there are " + n + " components and "
                            + composition.massFractions().size() + " shares",
                    Integer.toString(composition.massFractions().size()),
                    "one share for each component",
                    List.of());
        }
    }

    private static void requireWhole(Composition composition) {
        double sum = composition.massFractions().stream()
                .mapToDouble(Double::doubleValue)
                .sum();
        if (!(Math.abs(sum - 1) <= SUM_TOLERANCE)) {
            throw new CompositionException(
                    Reason.SUM_OF_SHARES,
                    "the shares by mass do not add up to the whole",
                    percent(new BigDecimal(sum).round(new MathContext(SUM_DIGITS))) + " in all",
                    "100 % in all, to 0.0001 %",
                    List.of());
        }
    }

    private Fluid component(String designation) {
        Optional<Fluid> fluid = catalog.find(designation);
        if (fluid.filter(f -> f.kind() == Refrigerant.Kind.PURE).isPresent()) {
            return fluid.get();
        }
        boolean known = fluid.isPresent() || catalog.isBlend(designation);
        throw new CompositionException(
                known ? Reason.NOT_PURE : Reason.UNKNOWN_COMPONENT,
                known ? designation + " is a blend itself" : "no component " + designation + " is known",
                designation,
                known ? "pure components: give those of the blend" : "designations or names of pure refrigerants",
                known
                        ? List.of()
                        : catalog.similar(designation, SIMILAR).stream()
                                .filter(name -> !entries.containsKey(name))
                                .limit(SUGGESTIONS)
                                .toList());
    }

    private static double share(Fluid fluid, double share) {
        if (!(share > 0 && share <= 1)) {
            throw new CompositionException(
                    Reason.SHARE_NOT_POSITIVE,
                    "the share of " + fluid.designation() + " is no part of a whole",
                    Double.isFinite(share) ? percent(Composition.decimal(share)) : Double.toString(share),
                    "more than 0 and less than 100 % of the mass",
                    List.of());
        }
        if (share < SMALLEST_SHARE) {
            throw new CompositionException(
                    Reason.SHARE_TOO_SMALL,
                    "the share of " + fluid.designation() + " is too small to be told from none",
                    percent(Composition.decimal(share)),
                    "at least " + percent(Composition.decimal(SMALLEST_SHARE)) + ", or leave it out",
                    List.of());
        }
        return share;
    }

    private static String percent(BigDecimal share) {
        BigDecimal percent = share.movePointRight(2);
        return (percent.signum() == 0 ? "0" : percent.stripTrailingZeros().toPlainString()) + " %";
    }
}
