package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A zone of a condensing coil. */
@Schema(name = "CoilZone", description = "A zone of a condensing coil, an exchanger of its own.")
public record CoilZoneFigures(
        @Schema(required = true) CoilZoneName zone,

        @Schema(required = true, ref = "Power") Quantity heat,

        @Schema(required = true, description = "Of the coil's area, 0 to 1.")
        Double areaShare,

        @Schema(required = true, ref = "ThermalConductance", description = "Of the zone.")
        Quantity conductance,

        @Schema(required = true, ref = "Temperature") Quantity refrigerantInletTemperature,

        @Schema(required = true, ref = "Temperature") Quantity refrigerantOutletTemperature,

        @Schema(required = true, ref = "Temperature") Quantity airInletTemperature,

        @Schema(required = true, ref = "Temperature", description = "Mean of the air that passed the zone.")
        Quantity airOutletTemperature,

        @Schema(required = true, description = "Of the air, 0 to 1.")
        Double effectiveness,

        @Schema(
                required = true,
                ref = "TemperatureDifference",
                description = "Least difference between refrigerant and air in this zone.")
        Quantity pinch) {}
