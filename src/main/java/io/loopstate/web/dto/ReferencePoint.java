package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The datum from which enthalpy and entropy are counted. */
@Schema(
        name = "ReferenceState",
        description = "The saturated liquid from which enthalpy and entropy are counted. IIR: h = 200 kJ/kg, "
                + "s = 1 kJ/(kg K) at 0 degC. ASHRAE: h = 0, s = 0 at -40 degF. normalBoilingPoint: h = 0, s = 0 at "
                + "101.325 kPa.")
public enum ReferencePoint {
    @JsonProperty("IIR")
    IIR,
    @JsonProperty("ASHRAE")
    ASHRAE,
    @JsonProperty("normalBoilingPoint")
    NORMAL_BOILING_POINT
}
