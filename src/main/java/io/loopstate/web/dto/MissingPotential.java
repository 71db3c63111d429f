package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A basis on which the global warming potential of a blend is not given. */
@Schema(description = "A basis on which the global warming potential of a blend is not given, and why.")
public record MissingPotential(
        @Schema(required = true, examples = "AR4") String assessment,

        @Schema(required = true) int horizonYears,

        @Schema(required = true, description = "Components of which no value on this basis is on file.")
        List<String> componentsWithoutValue) {}
