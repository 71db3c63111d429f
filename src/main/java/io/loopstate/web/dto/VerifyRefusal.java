package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * The problem of a case.
 *
 * @param code of the problem
 * @param detail in one sentence
 * @param faults code and place of each fault
 */
@Schema(description = "The problem with which the request of a case was refused.")
public record VerifyRefusal(
        @Schema(required = true, examples = "out-of-range") String code,
        @Schema(required = true) String detail,

        @Schema(required = true, description = "Code and place of each fault, place in the request of the case.")
        List<String> faults) {}
