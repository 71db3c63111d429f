package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A zone of an evaporating coil. */
@Schema(name = "EvaporatingCoilZone", description = "A zone of an evaporating coil, an exchanger of its own.")
public record EvaporatingCoilZoneFigures(
        @Schema(required = true) EvaporatingCoilZoneName zone,

        @Schema(required = true, ref = "Power", description = "Latent heat of the air included.")
        Quantity heat,

        @Schema(required = true, description = "Of the coil's area and of its air, 0 to 1.")
        double areaShare,

        @Schema(required = true, ref = "ThermalConductance", description = "Of the zone, dry.")
        Quantity conductance,

        @Schema(required = true, ref = "Temperature") Quantity refrigerantInletTemperature,

        @Schema(required = true, ref = "Temperature") Quantity refrigerantOutletTemperature,

        @Schema(required = true, description = "Of the air, 0 to 1.")
        double effectiveness,

        @Schema(
                required = true,
                ref = "TemperatureDifference",
                description = "Least difference between air and refrigerant in this zone.")
        Quantity pinch) {}
