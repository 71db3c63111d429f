package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Orders of the ten coefficients. */
@Schema(
        name = "PolynomialOrder",
        description =
                "Order of the ten coefficients over suction (S) and discharge (D) dew temperature. ahri540 and en12900: 1, S, D, S2, SD, D2, S3, DS2, SD2, D3. dischargeFirst: 1, D, S, D2, DS, S2, D3, SD2, DS2, S3. powersFirst: 1, S, S2, D, D2, SD, S3, D3, S2D, SD2.")
public enum PolynomialOrder {
    @JsonProperty("ahri540")
    AHRI_540,
    @JsonProperty("en12900")
    EN_12900,
    @JsonProperty("dischargeFirst")
    DISCHARGE_FIRST,
    @JsonProperty("powersFirst")
    POWERS_FIRST
}
