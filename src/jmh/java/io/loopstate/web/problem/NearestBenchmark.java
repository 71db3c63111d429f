package io.loopstate.web.problem;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What a mistyped name costs: a client may send many. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class NearestBenchmark {
    private final List<String> known = List.of(
            "refrigerant", "suctionPressure", "suctionLineTemperature", "dischargePressure", "liquidLineTemperature");

    /** One name against five. */
    @Benchmark
    public Optional<String> mistyped() {
        return Nearest.to("suctionLineTemprature", known);
    }
}
