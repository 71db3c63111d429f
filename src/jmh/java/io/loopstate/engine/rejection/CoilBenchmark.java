package io.loopstate.engine.rejection;

import io.loopstate.engine.air.AirState;
import io.loopstate.engine.component.OutletCondition;
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

/** Cost of a coil in balance, and of the pieces that an outer iteration calls. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 3, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@Fork(1)
@State(Scope.Thread)
public class CoilBenchmark {
    private static final OutletCondition SUBCOOLED = OutletCondition.subcooling(4);
    private static final OutletCondition SUPERHEATED = OutletCondition.superheat(6);

    @Param({"R-134a", "R-290", "R-454B"})
    public String refrigerant;

    private CondenserCoil condenser;
    private EvaporatorCoil evaporator;
    private double inlet;
    private double liquid;
    private double flow;
    private double condensing;
    private double evaporating;
    /** Moves the inputs a little from call to call, so that nothing is the same twice. */
    private int turn;

    @Setup
    public void setUp() {
        Refrigerant fluid = Catalog.bundled().refrigerant(refrigerant).orElseThrow();
        Equilibrium equilibrium = new Equilibria().of(fluid, Equilibria.defaultReference(fluid));
        CoilAir outdoor = new CoilAir(new AirState(101325, 305, 0.01), 1);
        CoilAir indoor = new CoilAir(new AirState(101325, 298, 0.01), 0.6);
        condenser = new CondenserCoil(equilibrium, Conductance.uniform(900), outdoor, Arrangement.CROSS_FLOW);
        evaporator = new EvaporatorCoil(equilibrium, 700, 700, indoor);
        condensing = equilibrium.saturationAtTemperature(318).dew().pressure();
        evaporating = equilibrium.saturationAtTemperature(280).dew().pressure();
        inlet = equilibrium.atPressureTemperature(condensing, 345).specificEnthalpy();
        liquid = equilibrium.saturationAtTemperature(314).bubble().specificEnthalpy();
        flow = 7e3 / (inlet - liquid);
    }

    private double next(double value) {
        turn = (turn + 1) % 101;
        return value * (1 + 1e-4 * turn);
    }

    @Benchmark
    public CondenserCoil.Operating condenserInBalance() {
        return condenser.solve(next(flow), inlet, SUBCOOLED);
    }

    @Benchmark
    public double condenserShare() {
        return condenser.share(next(condensing), flow, inlet, SUBCOOLED);
    }

    @Benchmark
    public EvaporatorCoil.Operating evaporatorInBalance() {
        return evaporator.solve(next(flow), liquid, SUPERHEATED);
    }

    @Benchmark
    public double evaporatorMassFlow() {
        return evaporator.massFlow(next(evaporating), liquid, SUPERHEATED);
    }
}
