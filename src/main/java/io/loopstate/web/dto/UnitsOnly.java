package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The query of an operation without inputs. */
public record UnitsOnly(
        @Schema(description = "Units of the reply, as for every operation. Default: SI.")
        String units) {}
