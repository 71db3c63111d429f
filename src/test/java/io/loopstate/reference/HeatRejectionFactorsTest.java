package io.loopstate.reference;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.component.CompressorKind;
import io.loopstate.engine.component.CompressorModel;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.rejection.CondenserDuty;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every row of {@code heat_rejection_factors.csv}: tables A (open) and B (suction-cooled hermetic) of a manufacturer's selection
 * data, read from the page named there; generic to about 5 %, as the collection says. The open table is close to the loss-free
 * cycle, since an open compressor gives its losses largely to the room. For the hermetic table a compression of 80 % and a motor
 * of 90 % and 5 K of subcooling are taken throughout: common practice, no source.
 */
class HeatRejectionFactorsTest {
    private static final double GENERIC = 0.05;
    private static final CompressorModel OPEN = CompressorModel.of(1);
    private static final CompressorModel HERMETIC =
            new CompressorModel(CompressorKind.HERMETIC, 0.8, 0, OptionalDouble.empty(), OptionalDouble.of(0.9));

    @ParameterizedTest
    @ValueSource(strings = {"R-134a", "R-22", "R-290"})
    void everyRow(String refrigerant) {
        new PublishedTable("heat_rejection_factors").compare(71, row -> {
            CompressorModel model = row.text("compressor_type").equals("open") ? OPEN : HERMETIC;
            double factor = factor(
                    refrigerant, model, row.given("evaporating_T_C") + 273.15, row.given("condensing_T_C") + 273.15);
            row.checkWithin("factor", Double.parseDouble(row.text("factor")), factor, GENERIC);
        });
    }

    private static double factor(String refrigerant, CompressorModel model, double evaporating, double condensing) {
        return CondenserDuty.calculate(new CondenserDuty.Spec(
                        TestFluids.of(refrigerant),
                        Optional.of(new CondenserDuty.CondensingSide(
                                SaturationLevel.temperature(condensing),
                                OptionalDouble.empty(),
                                Optional.of(new CondenserDuty.Compression(
                                        SaturationLevel.temperature(evaporating), OutletCondition.superheat(0), model)),
                                OutletCondition.subcooling(model == OPEN ? 0 : 5))),
                        new CondenserDuty.Machine(
                                model.kind(),
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                0,
                                0),
                        Guidance.common(),
                        false))
                .totals()
                .heatRejectionFactor()
                .orElseThrow();
    }
}
