package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The condensing coil of a machine in balance. */
@Schema(name = "CondenserInBalance", description = "The condensing coil of a machine in balance.")
public record BalanceCondenser(
        @Schema(required = true, ref = "TemperatureDifference", description = "Condensing midpoint over entering air.")
        Quantity condensingOverAmbient,

        @Schema(required = true, ref = "TemperatureDifference", description = "Condensing midpoint over leaving air.")
        Quantity approach,

        @Schema(
                required = true,
                ref = "TemperatureDifference",
                description = "Least difference between refrigerant and air anywhere in the coil.")
        Quantity pinch,

        @Schema(required = true, description = "Where it is.")
        CoilZoneName pinchZone,

        @Schema(required = true, description = "In the direction of the refrigerant; those without heat are left out.")
        List<CoilZoneFigures> zones,

        @Schema(
                required = true,
                description =
                        "Share of the area that nothing needs; above 0 where the subcooling asked for sets the pressure.")
        double areaLeftOver,

        @Schema(
                required = true,
                ref = "ThermalConductance",
                description = "As it works, fan and dirt included, if all of it condensed.")
        Quantity conductance,

        @Schema(required = true, ref = "MassFlow", description = "Of dry air.")
        Quantity airMassFlow,

        @Schema(required = true, ref = "VolumeFlow", description = "As the air enters.")
        Quantity enteringVolumeFlow,

        @Schema(required = true) MoistAirState entering,

        @Schema(required = true, description = "Mean of all air.")
        MoistAirState leaving) {}
