package io.loopstate.engine.flash;

import io.loopstate.engine.component.CompressorModel;
import io.loopstate.engine.component.LineLosses;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.cycle.DesignCycle;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.Fluid;
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

/**
 * Cost of each flash. {@code evaluation} is the unit in which the others are counted: one equation of state with all first
 * and second derivatives at a new temperature and density.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 6, time = 1)
@Measurement(iterations = 3, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@Fork(1)
@org.openjdk.jmh.annotations.State(Scope.Thread)
public class FlashBenchmark {
    @Param({"R-134a", "R-744", "R-717", "R-290", "R-1234yf"})
    public String refrigerant;

    private FluidModel model;
    private Equilibrium equilibrium;
    private DesignCycle.Spec cycle;
    private MolarState molar;
    private State vapor;
    private State liquid;
    private State dense;
    private State mixture;
    private double evaporating;
    private double saturated;
    /** Moves the inputs a little from call to call, so that nothing is the same twice. */
    private int turn;

    @Setup
    public void setUp() {
        Fluid fluid = Catalog.bundled().find(refrigerant).orElseThrow();
        Equilibria equilibria = new Equilibria();
        equilibrium = equilibria.of(fluid, Equilibria.defaultReference(fluid));
        double tc = fluid.criticalPoint().temperature();
        evaporating = 0.86 * tc;
        Saturation saturation = equilibrium.saturationAtTemperature(evaporating);
        saturated = saturation.dew().pressure();
        vapor = equilibrium.atPressureTemperature(saturated, evaporating + 40);
        liquid = equilibrium.atPressureTemperature(saturated * 1.5, evaporating - 10);
        dense = equilibrium.atPressureTemperature(1.3 * fluid.criticalPoint().pressure(), 1.1 * tc);
        mixture = equilibrium.state(Variable.TEMPERATURE, evaporating, Variable.VAPOR_QUALITY, 0.3);
        model = new FluidModel(
                fluid, fluid.model(), new SaturationCurve(fluid), new LeverRule(), 1e5, false, new IsobarStarts());
        molar = fluid.model().isotherm(vapor.temperature()).state(vapor.density() / fluid.molarMass());
        cycle = new DesignCycle.Spec(
                equilibrium,
                SaturationLevel.temperature(0.83 * tc),
                SaturationLevel.temperature(0.95 * tc),
                OutletCondition.superheat(6),
                OutletCondition.subcooling(5),
                CompressorModel.of(0.7),
                LineLosses.none(),
                Optional.empty(),
                101325,
                Guidance.common(),
                false);
    }

    private double nudge() {
        turn = (turn + 1) & 63;
        return 1 + 1e-4 * turn;
    }

    @Benchmark
    public MolarState evaluation() {
        return model.isotherm(molar.temperature() * nudge()).state(molar.density());
    }

    @Benchmark
    public Object saturationByTemperature() {
        return model.dome().atTemperature(evaporating * nudge());
    }

    @Benchmark
    public Object saturationByPressure() {
        return model.dome().atPressure(saturated * nudge());
    }

    @Benchmark
    public Saturation saturationStates() {
        return equilibrium.saturationAtTemperature(evaporating * nudge());
    }

    @Benchmark
    public State pressureTemperatureVapor() {
        return equilibrium.atPressureTemperature(saturated * nudge(), vapor.temperature());
    }

    @Benchmark
    public State pressureTemperatureLiquid() {
        return equilibrium.atPressureTemperature(liquid.pressure() * nudge(), liquid.temperature());
    }

    @Benchmark
    public State pressureTemperatureSupercritical() {
        return equilibrium.atPressureTemperature(dense.pressure() * nudge(), dense.temperature());
    }

    @Benchmark
    public State pressureEnthalpyVapor() {
        return equilibrium.atPressureEnthalpy(vapor.pressure() * nudge(), vapor.specificEnthalpy());
    }

    @Benchmark
    public State pressureEnthalpyLiquid() {
        return equilibrium.atPressureEnthalpy(liquid.pressure() * nudge(), liquid.specificEnthalpy());
    }

    @Benchmark
    public State pressureEnthalpyTwoPhase() {
        return equilibrium.atPressureEnthalpy(mixture.pressure() * nudge(), mixture.specificEnthalpy());
    }

    @Benchmark
    public State pressureEnthalpySupercritical() {
        return equilibrium.atPressureEnthalpy(dense.pressure() * nudge(), dense.specificEnthalpy());
    }

    @Benchmark
    public State pressureEntropyVapor() {
        return equilibrium.atPressureEntropy(vapor.pressure() * nudge(), vapor.specificEntropy());
    }

    @Benchmark
    public State pressureEntropyLiquid() {
        return equilibrium.atPressureEntropy(liquid.pressure() * nudge(), liquid.specificEntropy());
    }

    @Benchmark
    public State temperatureEntropyVapor() {
        return equilibrium.state(
                Variable.TEMPERATURE,
                vapor.temperature() * nudge(),
                Variable.SPECIFIC_ENTROPY,
                vapor.specificEntropy());
    }

    @Benchmark
    public State enthalpyEntropyVapor() {
        return equilibrium.state(
                Variable.SPECIFIC_ENTHALPY,
                vapor.specificEnthalpy() * nudge(),
                Variable.SPECIFIC_ENTROPY,
                vapor.specificEntropy());
    }

    @Benchmark
    public State enthalpyEntropyTwoPhase() {
        return equilibrium.state(
                Variable.SPECIFIC_ENTHALPY,
                mixture.specificEnthalpy() * nudge(),
                Variable.SPECIFIC_ENTROPY,
                mixture.specificEntropy());
    }

    @Benchmark
    public DesignCycle.Result fourPointCycle() {
        return DesignCycle.calculate(cycle);
    }
}
