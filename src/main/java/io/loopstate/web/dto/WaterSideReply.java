package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The water of a condenser or chiller. */
@Schema(description = "The water of a condenser or chiller.")
public record WaterSideReply(
        @Schema(required = true, ref = "Temperature") Quantity enteringTemperature,

        @Schema(required = true, ref = "Temperature") Quantity leavingTemperature,

        @Schema(required = true, ref = "TemperatureDifference", description = "Without sign.")
        Quantity temperatureChange,

        @Schema(required = true, ref = "MassFlow") Quantity massFlow,

        @Schema(required = true, ref = "VolumeFlow", description = "As the water enters; in IP gallons per minute.")
        Quantity volumeFlow,

        @Schema(required = true, ref = "Power") Quantity heat,

        @Schema(required = true, ref = "SpecificEntropy", description = "Mean between both temperatures.")
        Quantity isobaricHeatCapacity,

        @Schema(
                required = true,
                ref = "SensibleHeatFactor",
                description = "Heat per volume flow and temperature difference, the 500 of the trade.")
        Quantity factor,

        @Schema(
                ref = "TemperatureDifference",
                description = "Between refrigerant and entering water, where its temperature is given.")
        Quantity enteringDifference,

        @Schema(
                ref = "TemperatureDifference",
                description = "Between refrigerant and leaving water, negative where the temperatures cross.")
        Quantity approach,

        @Schema(description = "Share of the way to the refrigerant's temperature that the water goes.")
        Double effectiveness,

        @Schema(ref = "TemperatureDifference", description = "Absent where the temperatures cross.")
        Quantity logarithmicMeanDifference,

        @Schema(
                ref = "ThermalConductance",
                description = "Heat over the logarithmic mean difference, the refrigerant taken as of one temperature.")
        Quantity conductance,

        CoolingTowerFigures coolingTower,

        @Schema(description = "The working; only where it was asked for.")
        List<WorkingStep> working,

        @Schema(required = true) Basis basis,

        @Schema(required = true) List<Warning> warnings,

        @Schema(required = true, description = "What no calculation can take over; fixed text.")
        List<String> cautions) {}
