package io.loopstate.engine.component;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.property.State;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Invariants of compression; published compressions are in the worked examples. */
class CompressorTest {
    private static final double HIGH = 12e5;

    private final Equilibrium fluid = TestFluids.of("R-134a");
    private final State suction = Evaporator.outlet(fluid, 2e5, OutletCondition.superheat(8));

    @ParameterizedTest
    @CsvSource({"1, 0", "0.85, 0", "0.7, 0", "0.7, 0.15", "0.5, 0.3"})
    void measuringWhatWasComputedReturnsTheEfficiency(double efficiency, double loss) {
        Compressor.Compression forward = compress(suction, model(CompressorKind.OPEN, efficiency, loss, 1));
        Compressor.Compression backward = Compressor.measure(fluid, suction, forward.outlet(), loss);
        assertThat(backward.isentropicEfficiency()).isCloseTo(efficiency, within(1e-9));
        assertThat(backward.work()).isCloseTo(forward.work(), within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.99, 0.8, 0.6, 0.4})
    void entropyRisesAsLossesDo(double efficiency) {
        State outlet = compress(suction, CompressorModel.of(efficiency)).outlet();
        State better = compress(suction, CompressorModel.of(efficiency + 0.01)).outlet();
        assertThat(outlet.specificEntropy()).isGreaterThan(suction.specificEntropy());
        assertThat(outlet.temperature()).isGreaterThan(better.temperature());
    }

    @Test
    void theShellsLossLeavesTheVaporCooler() {
        Compressor.Compression bare = compress(suction, model(CompressorKind.OPEN, 0.7, 0.1, 1));
        Compressor.Compression insulated = compress(suction, CompressorModel.of(0.7));
        assertThat(bare.work()).isEqualTo(insulated.work());
        assertThat(bare.heatLoss()).isCloseTo(0.1 * bare.work(), within(1e-9));
        assertThat(insulated.outlet().specificEnthalpy() - bare.outlet().specificEnthalpy())
                .isCloseTo(bare.heatLoss(), within(1e-4));
    }

    @Test
    void aHermeticMotorsLossReachesTheRefrigerant() {
        double work =
                compress(suction, model(CompressorKind.HERMETIC, 0.7, 0, 0.9)).work();
        assertThat(work).isCloseTo(compress(suction, CompressorModel.of(0.7)).work() / 0.9, within(1e-6));
        assertThat(compress(suction, model(CompressorKind.OPEN, 0.7, 0, 0.9)).work())
                .isEqualTo(compress(suction, CompressorModel.of(0.7)).work());
    }

    @Test
    void wetVaporIsCompressedToo() {
        State wet = fluid.state(Variable.PRESSURE, 2e5, Variable.VAPOR_QUALITY, 0.85);
        Compressor.Compression compression = compress(wet, CompressorModel.of(1));
        assertThat(compression.outlet().specificEntropy()).isCloseTo(wet.specificEntropy(), within(1e-6));
        assertThat(compression.outlet().phase()).isEqualTo(Phase.TWO_PHASE);
    }

    @ParameterizedTest
    @ValueSource(doubles = {2e5, 1e5})
    void thePressureMustRise(double outletPressure) {
        assertThatThrownBy(() -> Compressor.isentropicOutlet(fluid, suction, outletPressure))
                .isInstanceOfSatisfying(EngineException.class, exception -> {
                    assertThat(exception.code()).isEqualTo(ErrorCode.CONTRADICTORY_INPUTS);
                    assertThat(exception.variable()).contains(Variable.PRESSURE);
                    assertThat(exception.lower()).isEqualTo(suction.pressure());
                });
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.1, 1.01, Double.NaN})
    void efficienciesAreSharesAboveZero(double efficiency) {
        assertThatThrownBy(() -> CompressorModel.of(efficiency))
                .isInstanceOfSatisfying(EngineException.class, exception -> {
                    assertThat(exception.code()).isEqualTo(ErrorCode.IMPOSSIBLE_VALUE);
                    assertThat(exception.input()).contains("isentropicEfficiency");
                });
    }

    private Compressor.Compression compress(State from, CompressorModel model) {
        return Compressor.compress(fluid, from, Compressor.isentropicOutlet(fluid, from, HIGH), model);
    }

    private static CompressorModel model(CompressorKind kind, double efficiency, double loss, double motor) {
        return new CompressorModel(kind, efficiency, loss, OptionalDouble.empty(), OptionalDouble.of(motor));
    }
}
