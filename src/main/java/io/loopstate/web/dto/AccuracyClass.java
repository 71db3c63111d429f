package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** How well founded the model of a blend is. */
@Schema(
        description =
                "How well founded the model of a blend is. fitted: every pair of components was fitted to measurements. "
                        + "estimated: every pair has published parameters, but one or more were set by a combining rule. "
                        + "predicted: one or more pairs have no published parameters; the quality is unknown.")
public enum AccuracyClass {
    @JsonProperty("fitted")
    FITTED,
    @JsonProperty("estimated")
    ESTIMATED,
    @JsonProperty("predicted")
    PREDICTED
}
