package io.loopstate.engine.cycle;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.component.CompressorKind;
import io.loopstate.engine.component.CompressorModel;
import io.loopstate.engine.component.LineLosses;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.component.SuctionLineGain;
import io.loopstate.engine.flash.Equilibrium;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Design conditions for tests: a sound cycle, and ways to change one thing of it. Immutable. */
record TestCycles(
        Equilibrium equilibrium,
        SaturationLevel evaporating,
        SaturationLevel condensing,
        OutletCondition evaporatorOutlet,
        OutletCondition condenserOutlet,
        CompressorModel compressor,
        LineLosses losses,
        Optional<Size> size,
        Guidance guidance,
        boolean explain) {

    static final double ATMOSPHERE = 101_325;

    /** R-134a between -10 and 40 degC: 6 K superheat, 6 K subcooling, efficiency 0.7. Nothing to find fault with. */
    static TestCycles sound() {
        return of("R-134a", 263.15, 313.15);
    }

    static TestCycles of(String refrigerant, double evaporating, double condensing) {
        return new TestCycles(
                TestFluids.of(refrigerant),
                SaturationLevel.temperature(evaporating),
                SaturationLevel.temperature(condensing),
                OutletCondition.superheat(6),
                OutletCondition.subcooling(6),
                CompressorModel.of(0.7),
                LineLosses.none(),
                Optional.empty(),
                Guidance.common(),
                false);
    }

    /** R-744 at -10 degC and 95 bar, 35 degC behind the gas cooler. */
    static TestCycles transcritical() {
        return of("R-744", 263.15, 300)
                .condensing(SaturationLevel.pressure(95e5))
                .condenserOutlet(OutletCondition.temperature(308.15));
    }

    /** Drops and heat in every place. */
    static LineLosses everyLoss() {
        return new LineLosses(8e3, 6e3, 12e3, 15e3, 9e3, SuctionLineGain.heat(7e3), 3e3, -1.5e3);
    }

    DesignCycle.Spec spec() {
        return new DesignCycle.Spec(
                equilibrium,
                evaporating,
                condensing,
                evaporatorOutlet,
                condenserOutlet,
                compressor,
                losses,
                size,
                ATMOSPHERE,
                guidance,
                explain);
    }

    DesignCycle.Result result() {
        return DesignCycle.calculate(spec());
    }

    List<Finding> findings() {
        return result().findings();
    }

    TestCycles evaporating(SaturationLevel level) {
        return new TestCycles(
                equilibrium,
                level,
                condensing,
                evaporatorOutlet,
                condenserOutlet,
                compressor,
                losses,
                size,
                guidance,
                explain);
    }

    TestCycles condensing(SaturationLevel level) {
        return new TestCycles(
                equilibrium,
                evaporating,
                level,
                evaporatorOutlet,
                condenserOutlet,
                compressor,
                losses,
                size,
                guidance,
                explain);
    }

    TestCycles evaporatorOutlet(OutletCondition condition) {
        return new TestCycles(
                equilibrium,
                evaporating,
                condensing,
                condition,
                condenserOutlet,
                compressor,
                losses,
                size,
                guidance,
                explain);
    }

    TestCycles condenserOutlet(OutletCondition condition) {
        return new TestCycles(
                equilibrium,
                evaporating,
                condensing,
                evaporatorOutlet,
                condition,
                compressor,
                losses,
                size,
                guidance,
                explain);
    }

    TestCycles efficiency(double efficiency) {
        return compressor(CompressorModel.of(efficiency));
    }

    TestCycles volumetricEfficiency(double efficiency) {
        return compressor(new CompressorModel(
                CompressorKind.OPEN, 0.7, 0, OptionalDouble.of(efficiency), OptionalDouble.empty()));
    }

    TestCycles compressor(CompressorModel model) {
        return new TestCycles(
                equilibrium,
                evaporating,
                condensing,
                evaporatorOutlet,
                condenserOutlet,
                model,
                losses,
                size,
                guidance,
                explain);
    }

    TestCycles losses(LineLosses given) {
        return new TestCycles(
                equilibrium,
                evaporating,
                condensing,
                evaporatorOutlet,
                condenserOutlet,
                compressor,
                given,
                size,
                guidance,
                explain);
    }

    TestCycles size(Size given) {
        return new TestCycles(
                equilibrium,
                evaporating,
                condensing,
                evaporatorOutlet,
                condenserOutlet,
                compressor,
                losses,
                Optional.of(given),
                guidance,
                explain);
    }

    TestCycles guidance(Guidance given) {
        return new TestCycles(
                equilibrium,
                evaporating,
                condensing,
                evaporatorOutlet,
                condenserOutlet,
                compressor,
                losses,
                size,
                given,
                explain);
    }

    TestCycles explained() {
        return new TestCycles(
                equilibrium,
                evaporating,
                condensing,
                evaporatorOutlet,
                condenserOutlet,
                compressor,
                losses,
                size,
                guidance,
                true);
    }
}
