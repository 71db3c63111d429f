package io.loopstate.wiring.telemetry;

import io.loopstate.web.mapping.Operations;
import java.util.Set;

/** What a path is called in metrics and in the access log: a name of the service's own, never the client's text. */
final class OperationLabel {
    private static final String OTHER = "other";
    private static final String CALCULATIONS = "/v1/";
    private static final String REFRIGERANT = "refrigerants/";
    private static final Set<String> FURTHER =
            Set.of("batch", "batch/sweep", "verify", "refrigerants", "units", "verification", "version");

    private OperationLabel() {}

    static String of(String path) {
        String bare = path.endsWith("/") ? path.substring(0, path.length() - 1) : path;
        if (bare.startsWith(CALCULATIONS)) {
            String name = bare.substring(CALCULATIONS.length());
            if (Operations.names().contains(name) || FURTHER.contains(name)) {
                return name;
            }
            return name.startsWith(REFRIGERANT) ? "refrigerants/{designation}" : OTHER;
        }
        if (bare.startsWith("/q/health")) {
            return "health";
        }
        if (bare.equals("/q/metrics")) {
            return "metrics";
        }
        if (bare.isEmpty()) {
            return "page";
        }
        return bare.startsWith("/front/") || bare.startsWith("/q/openapi") || bare.startsWith("/q/swagger-ui")
                ? "documents"
                : OTHER;
    }
}
