package io.loopstate.web.batch;

import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * One calculation over a range of inputs, for the contract.
 *
 * @param operation the calculation
 * @param request its request without the varied inputs
 * @param vary one or two inputs
 * @param pick values of the reply
 */
@Schema(description = "One calculation over a range of one or two inputs.")
public record SweepRequest(
        @Schema(
                required = true,
                description = "The calculation by its path below /v1.",
                examples = "cycle-points/design")
        String operation,

        @Schema(
                required = true,
                description = "The body that the POST of this calculation takes, without the varied inputs.")
        Map<String, Object> request,

        @Schema(required = true, description = "One or two inputs; of two, the last changes fastest.")
        List<SweepVariable> vary,

        @Schema(
                description =
                        "Values of the reply by name, such as coefficientOfPerformance, or by pointer; all of them "
                                + "where absent. A picture needs one to four.")
        List<String> pick) {}
