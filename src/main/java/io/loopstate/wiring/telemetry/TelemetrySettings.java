package io.loopstate.wiring.telemetry;

import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithDefault;

/** What is told about requests beside metrics, which are always counted. */
@ConfigMapping(prefix = "loopstate.telemetry")
public interface TelemetrySettings {

    /**
     * Whether a line is logged for each request, by the logger {@code io.loopstate.access}: its id, method, operation, status,
     * problem, time and bytes sent. Never what was asked, by whom or from where.
     */
    @WithDefault("false")
    boolean accessLog();
}
