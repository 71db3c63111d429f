package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * A published source.
 *
 * @param citation authors, title, place and year
 * @param doi digital object identifier, absent where there is none
 */
@Schema(description = "A published source.")
public record Source(
        @Schema(required = true, description = "Authors, title, place and year.")
        String citation,

        @Schema(description = "Digital object identifier.", examples = "10.1063/1.555958")
        String doi) {}
