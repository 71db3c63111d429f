package io.loopstate.wiring.telemetry;

import io.loopstate.engine.error.ErrorCode;
import io.loopstate.web.problem.EngineProblems;
import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.MeterRegistry;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;

/** Counts what calculations end in where they do not end in an answer; rows of batches too. */
@Singleton
public class EngineErrors implements Consumer<ErrorCode> {
    private final Map<ErrorCode, Counter> counters = new EnumMap<>(ErrorCode.class);

    /** Called by the container. */
    @Inject
    public EngineErrors(MeterRegistry registry) {
        for (ErrorCode code : ErrorCode.values()) {
            counters.put(
                    code,
                    Counter.builder("loopstate.engine.errors")
                            .description(
                                    "Calculations that ended in an error; not-converged is a defect of the engine.")
                            .tag("code", EngineProblems.faultCode(code))
                            .register(registry));
        }
    }

    @Override
    public void accept(ErrorCode code) {
        counters.get(code).increment();
    }
}
