package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Air on one side of a coil. */
@Schema(
        description =
                "Air on one side of a coil: its dry bulb and one humidity. Without a humidity the air is taken as dry (entering) "
                        + "or as keeping its water (leaving), with a note. Where the air is sought, leave out the dry bulb; a "
                        + "relative humidity, dew point or humidity ratio then says on which line to look for it.")
public record AirReadings(
        @Schema(ref = "Temperature") Quantity dryBulb,

        @Schema(ref = "Temperature") Quantity wetBulb,

        @Schema(description = "0 to 1; text such as \"50 %\" is understood.", examples = "0.5")
        Double relativeHumidity,

        @Schema(ref = "Temperature") Quantity dewPoint,

        @Schema(ref = "HumidityRatio") Quantity humidityRatio) {}
