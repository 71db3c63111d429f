package io.loopstate.engine.transport;

import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.Citation;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.JsonObject;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Builds the correlations of a fluid from the {@code transport} member of its coefficient file, with the ranges of {@code
 * /transport/ranges.json}.
 */
final class TransportReader {
    private static final String CONFORMAL = "extended-corresponding-states";
    private static final String RANGES = "/transport/ranges.json";

    private final Fluid fluid;
    private final Catalog catalog;

    TransportReader(Fluid fluid, Catalog catalog) {
        this.fluid = fluid;
        this.catalog = catalog;
    }

    /** The preferred one first. */
    List<Correlation<Viscosity>> viscosities() {
        return correlations("viscosity", this::viscosity);
    }

    /** The preferred one first. */
    List<Correlation<ThermalConductivity>> conductivities() {
        return correlations("thermalConductivity", this::conductivity);
    }

    Optional<Correlation<SurfaceTension>> surfaceTension() {
        return fluid.transport()
                .flatMap(t -> t.optionalObject("surfaceTension"))
                .map(json -> new Correlation<>(new SurfaceTension(json), citation(json), CorrelationRange.UNBOUNDED));
    }

    /** The fluid whose states the corresponding-states correlations refer to. */
    Optional<Fluid> referenceFluid() {
        List<String> names = new ArrayList<>();
        for (String member : List.of("viscosity", "thermalConductivity")) {
            for (JsonObject json : list(member)) {
                json.optionalText("referenceFluid")
                        .filter(name -> !names.contains(name))
                        .ifPresent(names::add);
            }
        }
        if (names.size() > 1) {
            throw new IllegalArgumentException(fluid.designation() + " refers to several fluids: " + names);
        }
        return names.stream().findFirst().map(this::fluid);
    }

    private List<JsonObject> list(String member) {
        return fluid.transport()
                .filter(t -> t.has(member))
                .map(t -> t.objects(member))
                .orElse(List.of());
    }

    private <T> List<Correlation<T>> correlations(String member, Function<JsonObject, T> build) {
        return list(member).stream()
                .map(json -> new Correlation<>(build.apply(json), citation(json), range(member)))
                .toList();
    }

    private CorrelationRange range(String member) {
        try (InputStream stream = TransportReader.class.getResourceAsStream(RANGES)) {
            if (stream == null) {
                throw new IOException("no resource " + RANGES);
            }
            return JsonObject.read(stream).objects("ranges").stream()
                    .filter(json -> json.text("designation").equals(fluid.designation()))
                    .filter(json -> json.text("property").equals(member))
                    .findFirst()
                    .map(CorrelationRange::of)
                    .orElse(CorrelationRange.UNBOUNDED);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Citation citation(JsonObject json) {
        JsonObject source = json.object("source");
        return new Citation(source.text("citation"), source.optionalText("doi"));
    }

    private Viscosity viscosity(JsonObject json) {
        return switch (json.text("form")) {
            case "sum" -> SumViscosity.of(json, fluid);
            case CONFORMAL -> {
                TransportReader other = new TransportReader(fluid(json.text("referenceFluid")), catalog);
                yield new ConformalViscosity(json, fluid, other.fluid, other.sumViscosity());
            }
            case "residual-entropy" -> new ResidualEntropyViscosity(json, fluid);
            case "chung" -> new ChungViscosity(json);
            case "iapws-2008" -> new WaterViscosity(json, fluid);
            default -> throw new IllegalArgumentException("unknown viscosity " + json.text("form"));
        };
    }

    private ThermalConductivity conductivity(JsonObject json) {
        return switch (json.text("form")) {
            case "sum" ->
                new SumConductivity(
                        DiluteConductivity.of(
                                json.object("dilute"),
                                fluid,
                                () -> sumViscosity().dilute()),
                        ResidualConductivity.of(json.object("residual"), fluid),
                        json.optionalObject("critical").map(c -> new CriticalEnhancement(c, fluid.model())));
            case CONFORMAL -> {
                TransportReader other = new TransportReader(fluid(json.text("referenceFluid")), catalog);
                yield new ConformalConductivity(json, fluid, other.fluid, other.residualConductivity());
            }
            case "iapws-2011" -> new WaterConductivity(json, fluid);
            default -> throw new IllegalArgumentException("unknown thermal conductivity " + json.text("form"));
        };
    }

    private Fluid fluid(String designation) {
        return catalog.find(designation)
                .orElseThrow(() -> new IllegalArgumentException(
                        fluid.designation() + " refers to " + designation + ", which is not in the catalog"));
    }

    private SumViscosity sumViscosity() {
        return SumViscosity.of(sum("viscosity"), fluid);
    }

    private ResidualConductivity residualConductivity() {
        return ResidualConductivity.of(sum("thermalConductivity").object("residual"), fluid);
    }

    private JsonObject sum(String member) {
        return list(member).stream()
                .filter(json -> json.text("form").equals("sum"))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(fluid.designation() + " has no " + member + " sum"));
    }
}
