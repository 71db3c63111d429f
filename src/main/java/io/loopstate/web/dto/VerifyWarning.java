package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * A warning of the reply of a case.
 *
 * @param code stable name
 * @param severity how much it matters
 * @param subject what it is about
 * @param message plain English
 */
@Schema(description = "A warning of the reply of a case.")
public record VerifyWarning(
        @Schema(required = true, examples = "LOW_SUPERHEAT") String code,
        @Schema(required = true, examples = "caution") String severity,
        @Schema(required = true) String subject,
        @Schema(required = true) String message) {}
