package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The liquid before the valve. */
@Schema(
        name = "LiquidBeforeValve",
        description =
                "The liquid before the valve, at the discharge pressure: exactly one of temperature and subcooling. Above the "
                        + "critical pressure the temperature.")
public record LiquidRequest(
        @Schema(ref = "Temperature") Quantity temperature,

        @Schema(ref = "TemperatureDifference", description = "Below the bubble point, 0 or more.")
        Quantity subcooling) {}
