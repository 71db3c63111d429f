package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Where the map holds; all limits given hold together. */
@Schema(
        name = "Envelope",
        description =
                "Where the map holds: limits of dew temperatures, a polygon over them, limits of pressures. All that are given "
                        + "hold together.")
public record EnvelopeRequest(
        @Schema(ref = "Temperature", description = "Dew temperature.")
        Quantity minSuctionTemperature,

        @Schema(ref = "Temperature", description = "Dew temperature.")
        Quantity maxSuctionTemperature,

        @Schema(ref = "Temperature", description = "Dew temperature.")
        Quantity minDischargeTemperature,

        @Schema(ref = "Temperature", description = "Dew temperature.")
        Quantity maxDischargeTemperature,

        @Schema(
                description =
                        "Corners of a polygon in order around it, three or more: dew temperatures at the suction, in the map's "
                                + "temperatureUnit; with cornerDischargeTemperatures.")
        List<Double> cornerSuctionTemperatures,

        @Schema(description = "Of the same corners, at the discharge.")
        List<Double> cornerDischargeTemperatures,

        @Schema(ref = "Pressure") Quantity minSuctionPressure,

        @Schema(ref = "Pressure") Quantity maxSuctionPressure,

        @Schema(ref = "Pressure") Quantity minDischargePressure,

        @Schema(ref = "Pressure") Quantity maxDischargePressure,

        @Schema(description = "Absolute discharge over suction pressure.")
        Double minPressureRatio,

        @Schema(description = "Absolute discharge over suction pressure.")
        Double maxPressureRatio) {}
