package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** How motor and compressor are put together. */
@Schema(
        name = "CompressorHousing",
        description =
                "How motor and compressor are put together. hermetic: in one welded shell, the motor heat stays inside. semiHermetic: bolted together, the motor cooled by the vapor or from outside. open: the motor stands outside, with a coupling or belt between.")
public enum CompressorHousing {
    @JsonProperty("hermetic")
    HERMETIC,
    @JsonProperty("semiHermetic")
    SEMI_HERMETIC,
    @JsonProperty("open")
    OPEN
}
