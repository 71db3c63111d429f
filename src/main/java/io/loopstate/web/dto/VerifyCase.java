package io.loopstate.web.dto;

import jakarta.validation.constraints.NotNull;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * One request and what is expected of its reply.
 *
 * @param id names the case in reports, once in a file
 * @param operation name of the calculation
 * @param request body of the calculation
 * @param expect values of the reply, or of the problem where a refusal is expected
 * @param expectProblem code of the problem with which the request has to be refused
 * @param expectedStatus status with which the request has to be answered
 */
@Schema(
        description =
                "One request and what is expected of its reply. Something has to be expected: values, a problem or a "
                        + "status.")
public record VerifyCase(
        @NotNull
        @Schema(
                description = "Names the case in reports, 1 to 200 characters, once in a file.",
                examples = "bench trainer, superheat")
        String id,

        @NotNull
        @Schema(
                description = "Name of the calculation: its path below /v1/, for example cycle-points/readings.",
                examples = "cycle-points/readings")
        String operation,

        @NotNull @Schema(description = "Body of the calculation, options included.")
        Map<String, Object> request,

        @Schema(
                description = "Values expected of the reply; where a refusal is expected, of the problem. At most 100.",
                maxItems = 100)
        List<VerifyExpectation> expect,

        @Schema(
                description = "Code of the problem with which the request has to be refused.",
                examples = "out-of-range")
        String expectProblem,

        @Schema(
                description =
                        "Status with which the request has to be answered, 200 or a refusal; 200 unless a problem is expected.",
                examples = "422")
        Integer expectedStatus) {}
