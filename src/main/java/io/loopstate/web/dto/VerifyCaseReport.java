package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * What became of one case.
 *
 * @param id of the case
 * @param operation name of the calculation
 * @param passed whether status, problem and every value were as expected
 * @param status with which the request was answered
 * @param message what was not as expected beside the values; absent where nothing was
 * @param expectations in the order of the case
 * @param problem with which the request was refused; absent where it was answered
 * @param referenceState datum of enthalpy and entropy, where the reply has one
 * @param atmosphericPressure from which gauge readings were counted, where the reply has one
 * @param warnings of the reply
 */
@Schema(description = "What became of one case.")
public record VerifyCaseReport(
        @Schema(required = true) String id,
        @Schema(required = true) String operation,

        @Schema(required = true, description = "Whether status, problem and every value were as expected.")
        boolean passed,

        @Schema(required = true, description = "Status with which the request was answered.")
        int status,

        @Schema(description = "What was not as expected beside the values.")
        String message,

        @Schema(required = true) List<VerifyValueReport> expectations,

        @Schema(description = "With which the request was refused.")
        VerifyRefusal problem,

        @Schema(description = "Datum of enthalpy and entropy, where the reply has one.")
        String referenceState,

        @Schema(ref = "Pressure", description = "From which gauge readings were counted, where the reply says so.")
        Quantity atmosphericPressure,

        @Schema(required = true, description = "Those of the reply; they fail no case.")
        List<VerifyWarning> warnings) {}
