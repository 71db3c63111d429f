package io.loopstate.engine.compression;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.fluid.ReferenceState;
import io.loopstate.engine.property.State;
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

    /** Rise of the enthalpy along dh = share v dp in equal steps of ln p by the midpoint rule, an error of second order. */
    static double stages(Equilibrium equilibrium, State inlet, double high, double share, int count) {
        double step = Math.log(high / inlet.pressure()) / count;
        double rise = 0;
        for (int k = 0; k < count; k++) {
            double p = inlet.pressure() * Math.exp(k * step);
            double v = equilibrium
                    .atPressureEnthalpy(p, inlet.specificEnthalpy() + rise)
                    .specificVolume();
            double half = p * Math.exp(step / 2);
            double middle = inlet.specificEnthalpy() + rise + share * p * v * step / 2;
            rise += share * half * equilibrium.atPressureEnthalpy(half, middle).specificVolume() * step;
        }
        return rise;
    }
}
