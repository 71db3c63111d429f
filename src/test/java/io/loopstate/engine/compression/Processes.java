package io.loopstate.engine.compression;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.fluid.ReferenceState;
import java.util.OptionalDouble;

/** Compressions for tests. */
final class Processes {
    static final double ATMOSPHERE = 101325;

    private Processes() {}

    static SuctionCondition suction(double pressure, Variable given, double value) {
        return new SuctionCondition(SaturationLevel.pressure(pressure), given, value);
    }

    static CompressionProcess.Spec spec(
            String fluid, SuctionCondition suction, double discharge, ProcessMeasure.Kind kind, double value) {
        return spec(TestFluids.of(fluid), suction, DischargeLevel.pressure(discharge), kind, value, 0);
    }

    static CompressionProcess.Spec spec(
            Equilibrium equilibrium,
            SuctionCondition suction,
            DischargeLevel discharge,
            ProcessMeasure.Kind kind,
            double value,
            double loss) {
        return new CompressionProcess.Spec(
                equilibrium,
                suction,
                discharge,
                new ProcessMeasure(kind, value),
                loss,
                OptionalDouble.of(1),
                OptionalDouble.empty(),
                ATMOSPHERE,
                Guidance.common(),
                true);
    }

    /** Air is no liquid at 0 degC, so it counts from its normal boiling point. */
    static Equilibrium air() {
        return TestFluids.of("Air", ReferenceState.NORMAL_BOILING_POINT);
    }
}
