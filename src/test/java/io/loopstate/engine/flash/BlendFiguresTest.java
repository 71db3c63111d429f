package io.loopstate.engine.flash;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.fluid.Blend;
import io.loopstate.engine.fluid.BlendFigures;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.Mixture;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The figures of {@code mixtures/figures.json} are the engine's own, kept so that the catalog need not build 144 phase
 * boundaries: this recomputes every one. Written anew by {@code mvn -B test -Dtest=BlendFiguresTest -Dfigures.bless=true}.
 */
class BlendFiguresTest {
    private static final Catalog CATALOG = Catalog.bundled();
    private static final double SAME = 1e-9;

    static List<Blend> blends() {
        return CATALOG.blends();
    }

    @ParameterizedTest
    @MethodSource("blends")
    void storedFiguresAreThoseOfTheModel(Blend blend) {
        BlendFigures stored = blend.figures();
        BlendFigures computed = FluidModels.figures(FluidModels.boundary(blend.mixture()));
        same(stored.criticalPoint().temperature(), computed.criticalPoint().temperature());
        same(stored.criticalPoint().pressure(), computed.criticalPoint().pressure());
        // the density where both forms vanish is less sharp than the temperature
        assertThat(stored.criticalPoint().density() / computed.criticalPoint().density())
                .isCloseTo(1, within(1e-6));
        same(stored.cricondentherm(), computed.cricondentherm());
        same(stored.cricondenbar(), computed.cricondenbar());
        same(stored.minTemperature(), computed.minTemperature());
        same(stored.normalBubblePoint().orElse(0), computed.normalBubblePoint().orElse(0));
        same(stored.normalDewPoint().orElse(0), computed.normalDewPoint().orElse(0));
        assertThat(stored.cricondentherm())
                .isGreaterThanOrEqualTo(stored.criticalPoint().temperature());
        assertThat(stored.cricondenbar())
                .isGreaterThanOrEqualTo(stored.criticalPoint().pressure());
    }

    private static void same(double stored, double computed) {
        assertThat(stored).isCloseTo(computed, within(SAME * Math.abs(computed)));
    }

    @Test
    @EnabledIfSystemProperty(named = "figures.bless", matches = "true")
    void write() throws IOException {
        String entries = CATALOG.mixtures().stream()
                .map(BlendFiguresTest::entry)
                .filter(entry -> !entry.isEmpty())
                .collect(Collectors.joining(",\n"));
        Files.writeString(
                Path.of("src/main/resources/mixtures/figures.json"), "{\n  \"blends\": [\n" + entries + "\n  ]\n}\n");
    }

    private static String entry(Mixture mixture) {
        try {
            BlendFigures f = FluidModels.figures(FluidModels.boundary(mixture));
            return String.format(
                    Locale.ROOT,
                    "    {\"designation\": \"%s\", \"critical\": {\"T\": %s, \"p\": %s, \"rho\": %s}, "
                            + "\"cricondentherm\": {\"T\": %s, \"p\": %s}, \"cricondenbar\": {\"T\": %s, \"p\": %s}, "
                            + "\"normalBubblePoint\": %s, \"normalDewPoint\": %s, \"minTemperature\": %s}",
                    mixture.designation(),
                    f.criticalPoint().temperature(),
                    f.criticalPoint().pressure(),
                    f.criticalPoint().density(),
                    f.cricondentherm(),
                    f.cricondenthermPressure(),
                    f.cricondenbarTemperature(),
                    f.cricondenbar(),
                    text(f.normalBubblePoint()),
                    text(f.normalDewPoint()),
                    f.minTemperature());
        } catch (EngineException e) {
            System.out.println(mixture.designation() + ": " + e.getMessage());
            return "";
        }
    }

    private static String text(OptionalDouble value) {
        return value.isPresent() ? Double.toString(value.getAsDouble()) : "null";
    }
}
