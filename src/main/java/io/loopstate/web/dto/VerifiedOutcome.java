package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Whether a published value is met. */
@Schema(
        description =
                "met: rounds to the printed value. knownDeviation: does not, for a reason that is told. unexpected: does not "
                        + "and should.")
public enum VerifiedOutcome {
    @JsonProperty("met")
    MET,
    @JsonProperty("knownDeviation")
    KNOWN_DEVIATION,
    @JsonProperty("unexpected")
    UNEXPECTED
}
