package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Where the motor of a compressor gives off its heat. */
@Schema(
        name = "CompressorKind",
        description =
                "hermetic: the motor, also of a semi-hermetic compressor, is cooled by the refrigerant, which takes up its "
                        + "loss. open: the motor stands outside, and the refrigerant takes up the shaft power only.")
public enum CompressorType {
    @JsonProperty("hermetic")
    HERMETIC,
    @JsonProperty("open")
    OPEN
}
