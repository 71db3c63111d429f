package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A part of a gas cooler. */
@Schema(name = "GasCoolerSegment", description = "A tenth of the heat of a gas cooler.")
public record GasCoolerSegment(
        @Schema(required = true, ref = "Power") Quantity heat,

        @Schema(required = true, description = "Of the area, 0 to 1.")
        double areaShare,

        @Schema(required = true, ref = "Temperature") Quantity refrigerantInletTemperature,

        @Schema(required = true, ref = "Temperature") Quantity refrigerantOutletTemperature,

        @Schema(required = true, ref = "Temperature") Quantity airInletTemperature,

        @Schema(
                required = true,
                ref = "Temperature",
                description = "In cross flow the mean of the air that passed this part.")
        Quantity airOutletTemperature) {}
