package io.loopstate.engine.coexistence;

import io.loopstate.engine.component.CompressorModel;
import io.loopstate.engine.component.LineLosses;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.cycle.DesignCycle;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibria;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.fluid.Blend;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.Mixture;
import io.loopstate.engine.property.State;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.Warmup;

/** Cost of what is asked of a blend of two components and of one of five. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 3, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@Fork(1)
@org.openjdk.jmh.annotations.State(Scope.Thread)
public class BlendBenchmark {
    @Param({"R-454B", "R-448A"})
    public String refrigerant;

    private Equilibrium blend;
    private Feed feed;
    private DesignCycle.Spec cycle;
    private State vapor;
    private State liquid;
    private State mixture;
    private double pressure;

    /** States in the range of refrigeration. */
    @Setup
    public void prepare() {
        Blend found = (Blend) Catalog.bundled().refrigerant(refrigerant).orElseThrow();
        blend = new Equilibria().of(found, Equilibria.defaultReference(found));
        Mixture m = found.mixture();
        feed = new Feed(
                m.model(),
                m.moleFractions(),
                m.components().stream()
                        .map(Mixture.Component::fluid)
                        .map(f -> new Feed.Component(
                                f.criticalPoint().temperature(),
                                f.criticalPoint().pressure(),
                                f.acentricFactor(),
                                f.molarMass()))
                        .toList());
        pressure = blend.saturationAtTemperature(280).dew().pressure();
        vapor = blend.state(Variable.PRESSURE, pressure, Variable.SUPERHEAT, 12);
        liquid = blend.state(Variable.PRESSURE, pressure, Variable.SUBCOOLING, 12);
        mixture = blend.state(Variable.PRESSURE, pressure, Variable.VAPOR_QUALITY, 0.3);
        cycle = new DesignCycle.Spec(
                blend,
                SaturationLevel.temperature(280),
                SaturationLevel.temperature(318),
                OutletCondition.superheat(6),
                OutletCondition.subcooling(5),
                CompressorModel.of(0.7),
                LineLosses.none(),
                Optional.empty(),
                101325,
                Guidance.common(),
                false);
    }

    @Benchmark
    public Saturation saturationByTemperature() {
        return blend.saturationAtTemperature(280);
    }

    @Benchmark
    public Saturation saturationByPressure() {
        return blend.saturationAtPressure(pressure);
    }

    /** Without the kept line. */
    @Benchmark
    public Optional<BoundaryPoint> bubblePointFromNothing() {
        return BoundaryStart.atTemperature(feed, 280, true);
    }

    /** Without the kept line. */
    @Benchmark
    public Optional<BoundaryPoint> dewPointFromNothing() {
        return BoundaryStart.atPressure(feed, pressure, false);
    }

    @Benchmark
    public State vaporByPressureTemperature() {
        return blend.atPressureTemperature(pressure, vapor.temperature());
    }

    @Benchmark
    public State liquidByPressureTemperature() {
        return blend.atPressureTemperature(pressure, liquid.temperature());
    }

    @Benchmark
    public State mixtureByPressureTemperature() {
        return blend.atPressureTemperature(pressure, mixture.temperature());
    }

    @Benchmark
    public State vaporByPressureEnthalpy() {
        return blend.atPressureEnthalpy(pressure, vapor.specificEnthalpy());
    }

    @Benchmark
    public State liquidByPressureEntropy() {
        return blend.atPressureEntropy(pressure, liquid.specificEntropy());
    }

    @Benchmark
    public State mixtureByPressureEnthalpy() {
        return blend.atPressureEnthalpy(pressure, mixture.specificEnthalpy());
    }

    @Benchmark
    public State mixtureByPressureEntropy() {
        return blend.atPressureEntropy(pressure, mixture.specificEntropy());
    }

    @Benchmark
    public DesignCycle.Result fourPointCycle() {
        return DesignCycle.calculate(cycle);
    }
}
