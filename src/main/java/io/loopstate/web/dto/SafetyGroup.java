package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Safety group of a refrigerant. */
@Schema(
        description =
                "Safety group of ASHRAE 34 and ISO 817: A lower and B higher toxicity; 1 no flame propagation, 2L lower "
                        + "flammability, 2 flammable, 3 higher flammability.")
public enum SafetyGroup {
    A1,
    A2L,
    A2,
    A3,
    B1,
    B2L,
    B2,
    B3
}
