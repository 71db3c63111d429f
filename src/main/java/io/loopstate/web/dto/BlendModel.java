package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * What the model of a blend is made of.
 *
 * @param notation components and mass percents
 * @param composition in the order of the notation
 * @param accuracyClass follows from the pairs
 * @param pairs every two components
 * @param componentsBeyondOwnRange designations, absent where there are none
 */
@Schema(description = "What the model of a blend is made of, and how well founded it is.")
public record BlendModel(
        @Schema(
                required = true,
                description = "Components and mass percents as ASHRAE 34 writes them; a request may name the blend so.",
                examples = "R-32/125 (50/50)")
        String notation,

        @Schema(required = true) List<BlendComponent> composition,

        @Schema(required = true) AccuracyClass accuracyClass,

        @Schema(required = true, description = "Every two components with the origin of their interaction.")
        List<ComponentPair> pairs,

        @Schema(
                description =
                        "Components whose own range of temperature ends inside that of the blend, which is the mole-weighted mean "
                                + "of its components' ranges.")
        List<String> componentsBeyondOwnRange) {}
