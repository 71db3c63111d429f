package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * The equation of state behind a reply.
 *
 * @param source the paper it is published in
 * @param doi of that paper, absent where it has none
 * @param furtherSources papers that parts of it rest on
 */
@Schema(
        description =
                "The equation of state behind a reply: a Helmholtz-energy equation with all its published sources.")
public record EquationOfState(
        @Schema(required = true, description = "The paper that publishes the equation.")
        String source,

        @Schema(description = "Digital object identifier of that paper.", examples = "10.1063/1.555958")
        String doi,

        @Schema(description = "Papers that parts of the equation rest on.")
        List<Source> furtherSources) {}
