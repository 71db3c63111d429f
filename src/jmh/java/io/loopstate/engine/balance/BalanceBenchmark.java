package io.loopstate.engine.balance;

import io.loopstate.engine.air.AirVariable;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.compression.CoefficientOrder;
import io.loopstate.engine.compression.CompressorUnit;
import io.loopstate.engine.compression.Drive;
import io.loopstate.engine.compression.Envelope;
import io.loopstate.engine.compression.Housing;
import io.loopstate.engine.compression.Machine;
import io.loopstate.engine.compression.MapCompressor;
import io.loopstate.engine.compression.MotorCooling;
import io.loopstate.engine.compression.Piston;
import io.loopstate.engine.compression.RatingPolynomial;
import io.loopstate.engine.compression.Rotor;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.flash.Equilibria;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.Refrigerant;
import io.loopstate.engine.rejection.AirSide;
import io.loopstate.engine.rejection.Arrangement;
import io.loopstate.engine.rejection.Conductance;
import io.loopstate.engine.rejection.Fan;
import io.loopstate.engine.rejection.MoistAirQuery;
import java.util.List;
import java.util.Optional;
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
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Cost of a whole machine in balance, figures and findings included. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
@State(Scope.Thread)
public class BalanceBenchmark {
    @Param({"piston R-134a", "piston R-290", "scroll R-454B", "scroll R-448A", "map R-134a"})
    public String machine;

    private Equilibrium equilibrium;
    private CompressorUnit compressor;
    /** Moves the outdoor air a little from call to call, so that nothing is the same twice. */
    private int turn;

    @Setup
    public void setUp() {
        String[] words = machine.split(" ");
        Refrigerant refrigerant = Catalog.bundled().refrigerant(words[1]).orElseThrow();
        equilibrium = new Equilibria().of(refrigerant, Equilibria.defaultReference(refrigerant));
        Drive hermetic = new Drive(Housing.HERMETIC, MotorCooling.SUCTION_GAS, 0.88, 1, 0.95, 0.05);
        compressor = switch (words[0]) {
            case "piston" ->
                new Machine(
                        new Piston(3e-3, 0.04, 5e3, 10e3, 0.02, OptionalDouble.of(0.75), OptionalDouble.empty()),
                        hermetic);
            case "scroll" -> new Machine(new Rotor(3e-3, 0.97, OptionalDouble.of(2.6), 0.78), hermetic);
            default -> map();
        };
    }

    private static MapCompressor map() {
        return new MapCompressor(
                Optional.of(polynomial(1 / 3600.0, 190, 6.4, -0.55, 0.07, -0.012, 0.001)),
                Optional.empty(),
                polynomial(1, 620, 8, 28, -0.1, 0.35, 0.08),
                Optional.empty(),
                OutletCondition.superheat(11.1),
                OutletCondition.subcooling(0),
                0.75,
                0.05,
                Envelope.unlimited(),
                false);
    }

    private static RatingPolynomial polynomial(
            double unit, double c1, double c2, double c3, double c4, double c5, double c6) {
        return new RatingPolynomial(
                List.of(c1, c2, c3, c4, c5, c6, 0.0, 0.0, 0.0, 0.0), CoefficientOrder.AHRI_540, 1, 273.15, unit);
    }

    private static AirSide.Airflow volume(double flow) {
        return new AirSide.Airflow(OptionalDouble.empty(), OptionalDouble.of(flow), AirSide.FlowCondition.ENTERING);
    }

    private static AirSide.Air air(double temperature) {
        return new AirSide.Air(
                OptionalDouble.of(temperature),
                Optional.of(new MoistAirQuery.Known(AirVariable.RELATIVE_HUMIDITY, 0.5)));
    }

    private SystemBalance.Spec spec(WhatIf... whatIfs) {
        turn = (turn + 1) % 101;
        return new SystemBalance.Spec(
                equilibrium,
                101325,
                CompressorChoice.of(compressor),
                new CondenserSide(
                        air(303 + 0.1 * turn),
                        volume(1.5),
                        Conductance.uniform(1700),
                        Arrangement.CROSS_FLOW,
                        Fan.full()),
                new EvaporatorSide(air(300), volume(0.6), 1200, 1000, 0.5),
                new Settings(6, 4, 5),
                List.of(whatIfs),
                Guidance.common(),
                false);
    }

    @Benchmark
    public SystemBalance.Result balance() {
        return SystemBalance.calculate(spec());
    }

    @Benchmark
    public SystemBalance.Result fiveWhatIfs() {
        return SystemBalance.calculate(spec(
                WhatIf.dirtyCondenser(WhatIf.DIRTY_AIRFLOW, WhatIf.DIRTY_CONDUCTANCE),
                WhatIf.hotDay(10),
                WhatIf.altitude(84e3),
                WhatIf.lowIndoorAirflow(0.6),
                WhatIf.condenserFan(0.5)));
    }
}
