package io.loopstate.engine.fluid;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * A blend with the figures of its phase boundary.
 *
 * @param mixture its components and model
 * @param aliases further names
 * @param figures critical point, ends of the two-phase region, normal bubble and dew points
 */
public record Blend(Mixture mixture, List<String> aliases, BlendFigures figures) implements Refrigerant {
    private static final Citation MIXTURE_MODEL = new Citation(
            "O. Kunz, W. Wagner, J. Chem. Eng. Data 57 (2012) 3032-3091: form of the mixture model",
            Optional.of("10.1021/je300655b"));

    @Override
    public String designation() {
        return mixture.designation();
    }

    /** Components and mass percents, as ASHRAE 34 writes compositions. */
    @Override
    public String name() {
        return mixture.notation();
    }

    @Override
    public Optional<String> formula() {
        return Optional.empty();
    }

    @Override
    public Optional<String> casNumber() {
        return Optional.empty();
    }

    @Override
    public Kind kind() {
        return Kind.BLEND;
    }

    @Override
    public double molarMass() {
        return mixture.molarMass();
    }

    @Override
    public Limits limits() {
        Limits limits = mixture.limits();
        return new Limits(figures.minTemperature(), limits.maxTemperature(), limits.maxPressure());
    }

    @Override
    public CriticalPoint criticalPoint() {
        return figures.criticalPoint();
    }

    /** Mole-weighted mean of the components' acentric factors; good for starting values only. */
    public double acentricFactor() {
        return mixture.components().stream()
                .mapToDouble(c -> c.moleFraction() * c.fluid().acentricFactor())
                .sum();
    }

    @Override
    public double minSaturationTemperature() {
        return figures.minTemperature();
    }

    /** Bubble point at 101.325 kPa, K. */
    @Override
    public OptionalDouble normalBoilingPoint() {
        return figures.normalBubblePoint();
    }

    @Override
    public List<Citation> sources() {
        Stream<Citation> components = mixture.components().stream().flatMap(c -> c.fluid().sources().stream());
        Stream<Citation> pairs = mixture.pairs().stream().flatMap(p -> p.source().stream());
        return Stream.of(Stream.of(MIXTURE_MODEL), components, pairs)
                .flatMap(sources -> sources)
                .distinct()
                .toList();
    }
}
