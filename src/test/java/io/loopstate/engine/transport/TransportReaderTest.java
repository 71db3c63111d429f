package io.loopstate.engine.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.JsonObject;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class TransportReaderTest {
    private static final Fluid FLUID = Fixtures.fluid("R-134a");

    private static JsonObject json(String text) throws IOException {
        return JsonObject.read(new ByteArrayInputStream(text.replace('\'', '"').getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void wholeExponentsAndOthersAgree() {
        PowerSum whole = new PowerSum(new double[] {2, -3, 0.5}, new double[] {0, 1, 3});
        PowerSum other = new PowerSum(new double[] {2, -3, 0.5, 0}, new double[] {0, 1, 3, 0.5});

        assertThat(whole.at(1.7)).isCloseTo(other.at(1.7), within(1e-14));
        assertThat(whole.at(1.7)).isCloseTo(2 - 3 * 1.7 + 0.5 * Math.pow(1.7, 3), within(1e-14));
        assertThat(whole.at(-2)).isEqualTo(2 + 6 - 4);
    }

    @Test
    void reducedSum() throws IOException {
        ReducedSum sum =
                ReducedSum.of(json("{'n': [2, 3], 'd': [1, 2], 't': [0.5, -1], 'gamma': [0, 1], 'l': [0, 2]}"));

        double expected = 2 * 1.5 * Math.sqrt(1.2) + 3 * 1.5 * 1.5 / 1.2 * Math.exp(-1.5 * 1.5);
        assertThat(sum.at(1.2, 1.5)).isCloseTo(expected, within(1e-14));
    }

    @Test
    void coefficientsAndExponentsMustMatch() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PowerSum.of(json("{'n': [1, 2], 't': [0, 1, 2]}")))
                .withMessageContaining("2 coefficients for 3 exponents");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ReducedSum.of(json("{'n': [1, 2], 'd': [1], 't': [0, 1]}")));
    }

    @Test
    void unknownFormsAreNamed() throws IOException {
        JsonObject unknown = json("{'form': 'guesswork'}");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DiluteViscosity.of(unknown))
                .withMessageContaining("guesswork");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ResidualViscosity.of(unknown, FLUID))
                .withMessageContaining("guesswork");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new InitialDensity(unknown))
                .withMessageContaining("guesswork");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SurfaceTension(unknown))
                .withMessageContaining("guesswork");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new CriticalEnhancement(unknown, FLUID.model()))
                .withMessageContaining("guesswork");
    }

    @Test
    void nothingIsBeyondTheClosePackedDensity() throws IOException {
        JsonObject block = json("{'form': 'batschinski-hildebrand', 'Tref': 300, 'rhoRef': 5000,"
                + "'series': {'n': [0], 'd': [1], 't': [0]},"
                + "'freeVolume': {'n': [2e-4], 'd': [0], 't': [0], 'closePacked': {"
                + "'numerator': {'n': [3], 't': [0]}, 'denominator': {'n': [1], 't': [0]}}}}");
        ResidualViscosity.Explicit residual = (ResidualViscosity.Explicit) ResidualViscosity.of(block, FLUID);

        assertThat(residual.at(300, 10000)).isCloseTo(2e-4 * (1 - 1 / 3.0), within(1e-15));
        assertThat(residual.at(300, 15000)).isNaN();
        assertThat(residual.at(300, 20000)).isNaN();
    }
}
