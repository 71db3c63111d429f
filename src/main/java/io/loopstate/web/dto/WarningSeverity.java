package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** How much a warning matters. */
@Schema(
        name = "Severity",
        description =
                "note: worth knowing. caution: outside good practice, or a reading to check again. danger: may damage "
                        + "the machine.")
public enum WarningSeverity {
    @JsonProperty("note")
    NOTE,
    @JsonProperty("caution")
    CAUTION,
    @JsonProperty("danger")
    DANGER
}
