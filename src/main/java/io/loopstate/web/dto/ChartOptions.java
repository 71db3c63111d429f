package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * What a picture understands beside the inputs of its calculation; it stands in the query.
 *
 * @param chart which picture
 */
public record ChartOptions(
        @Schema(description = "Which picture image/svg+xml draws. Taken as pressureEnthalpy unless given.")
        ChartName chart) {}
