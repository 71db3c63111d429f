package io.loopstate.web.dto;

import jakarta.validation.constraints.DecimalMin;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Which refrigerants to list. */
public record RefrigerantsQuery(
        RefrigerantKind kind,

        SafetyGroup safetyGroup,

        @Schema(description = "Only blends whose model is founded so.")
        AccuracyClass accuracyClass,

        @Schema(description = "Only blends with this component, by designation, name or alias.", examples = "R-32")
        String component,

        @DecimalMin("0")
        @Schema(
                description =
                        "Only refrigerants whose global warming potential is known and at most this, by the newest assessment "
                                + "on file over 100 years.")
        Double maxGlobalWarmingPotential,

        @Schema(description = "Units of the reply, as for every operation. Default: SI.")
        String units) {}
