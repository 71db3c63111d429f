package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * Something possible but unwise, implausible or worth knowing. The request was answered all the same.
 *
 * @param code stable name
 * @param severity how much it matters
 * @param message plain English
 * @param subject name of the input or result it is about
 * @param value the number in question, absent where there is none
 * @param limit what it is measured against
 * @param basis where the limit comes from
 */
@Schema(
        description =
                "Something possible but unwise, implausible or worth knowing; the request was answered all the same.")
public record Warning(
        @Schema(required = true, description = "Stable name, upper case.", examples = "LOW_SUPERHEAT")
        String code,

        @Schema(required = true) WarningSeverity severity,

        @Schema(
                required = true,
                description = "One or two sentences for a person; the numbers stand in value and limit.")
        String message,

        @Schema(
                required = true,
                description = "Name of the input or result it is about.",
                examples = "suctionLineTemperature")
        String subject,

        @Schema(ref = "AnyQuantity") Quantity value,

        @Schema(ref = "AnyQuantity") Quantity limit,

        @Schema(
                required = true,
                description = "Where the limit comes from: a source, or \"common practice, no source\".")
        String basis) {}
