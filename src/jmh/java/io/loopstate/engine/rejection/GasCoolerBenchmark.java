package io.loopstate.engine.rejection;

import io.loopstate.engine.air.AirState;
import io.loopstate.engine.flash.Equilibria;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.Refrigerant;
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
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Cost of a gas cooler of R-744: its isobar and the search of its outlet. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 3, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@Fork(1)
@State(Scope.Thread)
public class GasCoolerBenchmark {
    /** MPa: just above the critical pressure, and where racks run. */
    @Param({"7.5", "9"})
    public double pressure;

    @Param({"SERIES", "CROSS_FLOW"})
    public Arrangement arrangement;

    private Equilibrium equilibrium;
    private CoilAir air;
    /** Moves the inputs a little from call to call, so that nothing is the same twice. */
    private int turn;

    @Setup
    public void setUp() {
        Refrigerant fluid = Catalog.bundled().refrigerant("R-744").orElseThrow();
        equilibrium = new Equilibria().of(fluid, Equilibria.defaultReference(fluid));
        air = new CoilAir(new AirState(101325, 303, 0.01), 2.5);
    }

    @Benchmark
    public GasCoolerCoil.Operating outlet() {
        turn = (turn + 1) % 101;
        return new GasCoolerCoil(equilibrium, air, arrangement, 1e6 * pressure * (1 + 1e-5 * turn), 380)
                .solve(2500, Load.massFlow(0.1));
    }
}
