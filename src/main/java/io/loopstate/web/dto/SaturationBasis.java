package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Which temperature of a boiling or condensing refrigerant is meant. */
@Schema(
        description =
                "Which saturation temperature is meant; one and the same for a pure refrigerant. dew: the last drop "
                        + "evaporates or the first condenses, as compressor ratings count. bubble: the first bubble appears. midpoint: "
                        + "half way between the two at one pressure. inletToDew: half way between the temperature at the "
                        + "inlet of the evaporator and the dew point, for the evaporating level of a design.")
public enum SaturationBasis {
    @JsonProperty("dew")
    DEW,
    @JsonProperty("midpoint")
    MIDPOINT,
    @JsonProperty("bubble")
    BUBBLE,
    @JsonProperty("inletToDew")
    INLET_TO_DEW
}
