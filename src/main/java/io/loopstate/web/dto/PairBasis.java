package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** What the interaction of two components rests on. */
@Schema(
        description = "fitted: fitted to measurements of this pair. estimated: published, but set by a combining rule. "
                + "missing: not published; set here by a combining rule.")
public enum PairBasis {
    @JsonProperty("fitted")
    FITTED,
    @JsonProperty("estimated")
    ESTIMATED,
    @JsonProperty("missing")
    MISSING
}
