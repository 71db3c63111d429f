package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * What became of the cases of a file.
 *
 * @param name of the file
 * @param passed whether every case passed
 * @param totals how many
 * @param cases in the order of the file
 * @param engineVersion version of the engine
 */
@Schema(description = "What became of the cases of a file, in its order. Same version and same file, same bytes.")
public record VerifyReport(
        @Schema(required = true, description = "Name of the file.")
        String name,

        @Schema(required = true, description = "Whether every case passed.")
        boolean passed,

        @Schema(required = true) VerifyTotals totals,
        @Schema(required = true) List<VerifyCaseReport> cases,

        @Schema(required = true, description = "Version of the engine.")
        String engineVersion) {}
