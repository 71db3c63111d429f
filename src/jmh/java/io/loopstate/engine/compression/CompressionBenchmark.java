package io.loopstate.engine.compression;

import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibria;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.fluid.Blend;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.Fluid;
import io.loopstate.engine.fluid.Refrigerant;
import io.loopstate.engine.property.State;
import java.util.OptionalDouble;
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

/** Cost of compressions and of the compressors that a balance asks in its iterations. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 3, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@Fork(1)
@org.openjdk.jmh.annotations.State(Scope.Thread)
public class CompressionBenchmark {
    @Param({"R-134a", "R-744", "R-454B"})
    public String refrigerant;

    private Equilibrium equilibrium;
    private State suction;
    private Machine hermetic;
    private Machine open;
    private double pressure;
    /** Moves the inputs a little from call to call, so that nothing is the same twice. */
    private int turn;

    @Setup
    public void setUp() {
        Refrigerant found = Catalog.bundled().refrigerant(refrigerant).orElseThrow();
        equilibrium = found instanceof Blend blend
                ? new Equilibria().of(blend, Equilibria.defaultReference(blend))
                : new Equilibria().of((Fluid) found, Equilibria.defaultReference(found));
        pressure = 0.15 * equilibrium.refrigerant().criticalPoint().pressure();
        suction = equilibrium.state(Variable.PRESSURE, pressure, Variable.SUPERHEAT, 10);
        Piston piston = new Piston(0.005, 0.04, 0, 0, 0, OptionalDouble.of(0.75), OptionalDouble.empty());
        hermetic = new Machine(piston, new Drive(Housing.HERMETIC, MotorCooling.SUCTION_GAS, 0.85, 1, 0.93, 0.05));
        open = new Machine(piston, new Drive(Housing.OPEN, MotorCooling.SURROUNDINGS, 0.9, 0.97, 0.93, 0));
    }

    @Benchmark
    public CompressionProcess.Result processOfIsentropicEfficiency() {
        return process(ProcessMeasure.Kind.ISENTROPIC_EFFICIENCY, 0.75);
    }

    @Benchmark
    public CompressionProcess.Result processOfPolytropicEfficiency() {
        return process(ProcessMeasure.Kind.POLYTROPIC_EFFICIENCY, 0.78);
    }

    @Benchmark
    public CompressionProcess.Result processOfDischargeTemperature() {
        return process(ProcessMeasure.Kind.DISCHARGE_TEMPERATURE, suction.temperature() + 60);
    }

    @Benchmark
    public CompressorUnit.Running openUnit() {
        return open.run(equilibrium, suction, moved(3 * pressure));
    }

    @Benchmark
    public CompressorUnit.Running hermeticUnit() {
        return hermetic.run(equilibrium, suction, moved(3 * pressure));
    }

    @Benchmark
    public Staging.Result staging() {
        return Staging.calculate(new Staging.Spec(
                equilibrium,
                new SuctionCondition(SaturationLevel.pressure(pressure), Variable.SUPERHEAT, 10),
                DischargeLevel.pressure(moved(5 * pressure)),
                Staging.Kind.EFFICIENCY,
                0.75,
                0.75,
                suction.temperature() + 10,
                OptionalDouble.empty(),
                101325,
                Guidance.common(),
                false));
    }

    private CompressionProcess.Result process(ProcessMeasure.Kind kind, double value) {
        return CompressionProcess.calculate(new CompressionProcess.Spec(
                equilibrium,
                new SuctionCondition(SaturationLevel.pressure(pressure), Variable.SUPERHEAT, 10),
                DischargeLevel.pressure(moved(3 * pressure)),
                new ProcessMeasure(kind, value),
                0,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                101325,
                Guidance.common(),
                false));
    }

    private double moved(double value) {
        turn = (turn + 1) % 64;
        return value * (1 + 1e-5 * turn);
    }
}
