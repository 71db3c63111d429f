package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** What a refrigerant is to the engine. */
@Schema(
        description =
                "pure: one compound. pseudoPure: a mixture of fixed composition treated as one substance, such as dry air. "
                        + "blend: a mixture computed from its components.")
public enum RefrigerantKind {
    @JsonProperty("pure")
    PURE,
    @JsonProperty("pseudoPure")
    PSEUDO_PURE,
    @JsonProperty("blend")
    BLEND
}
