package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * What lies on an air-cooled coil, or what it could do without it.
 *
 * @param foulingResistance of dirt
 * @param area on which it lies
 * @param cleanConductance to judge a measured one by
 */
public record DirtRequest(
        @Schema(ref = "FoulingResistance", description = "Of dirt on the coil; needs area. With a conductance only.")
        Quantity foulingResistance,

        @Schema(ref = "Area", description = "On which dirt lies.")
        Quantity area,

        @Schema(
                ref = "ThermalConductance",
                description =
                        "That the coil is known to have when clean, to judge a measured one by; not with a conductance.")
        Quantity cleanConductance) {}
