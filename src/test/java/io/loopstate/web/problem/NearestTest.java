package io.loopstate.web.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {
    private static final List<String> KNOWN =
            List.of("refrigerant", "suctionPressure", "suctionLineTemperature", "superheat", "name", "x");

    @ParameterizedTest
    @CsvSource({
        "refridgerant, refrigerant",
        "suctionpressure, suctionPressure",
        "suctionPresure, suctionPressure",
        "suctionPressrue, suctionPressure",
        "superHeat, superheat",
        "nmae, name",
        "naem, name"
    })
    void fewEditsAreForgiven(String typed, String meant) {
        assertThat(Nearest.to(typed, KNOWN)).contains(meant);
    }

    @ParameterizedTest
    @CsvSource({"pressure", "n", "y", "mane2", "dischargePressure"})
    void whatIsFarGetsNoGuess(String typed) {
        assertThat(Nearest.to(typed, KNOWN)).isEmpty();
    }

    @Test
    void aHugeNameCostsNothing() {
        assertThat(Nearest.to("a".repeat(1_000_000), KNOWN)).isEmpty();
        assertThat(Nearest.to("", KNOWN)).isEmpty();
    }
}
