package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Ozone depletion potential on one basis. */
@Schema(description = "Ozone depletion potential on one basis.")
public record OzonePotential(
        @Schema(required = true, description = "Relative to R-11, by mass.")
        double value,

        @Schema(required = true, examples = "Montreal Protocol / 40 CFR 82")
        String basis,

        @Schema(required = true, description = "Where the value stands, and whether it was remembered.")
        String source) {}
