package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The factors of the trade between an airflow and its heat, as they are for this air. */
@Schema(
        description =
                "The factors of the trade between an airflow and its heat, as they are for this air at this altitude. In "
                        + "inch-pound units and dry standard air they are the well-known 1.08, 4.5 and 0.68.")
public record AirHeatFactors(
        @Schema(
                required = true,
                ref = "SensibleHeatFactor",
                description = "Sensible heat per volume flow and temperature difference.")
        Quantity sensible,

        @Schema(
                required = true,
                ref = "TotalHeatFactor",
                description = "Total heat per volume flow and enthalpy difference: dry air in the volume.")
        Quantity total,

        @Schema(
                required = true,
                ref = "LatentHeatFactor",
                description = "Latent heat per volume flow and difference of humidity ratio.")
        Quantity latent) {}
