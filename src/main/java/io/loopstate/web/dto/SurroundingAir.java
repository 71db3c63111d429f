package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * The atmosphere from which gauge and vacuum readings were counted.
 *
 * @param pressure absolute
 * @param origin how it is known
 * @param altitude from which it was worked out, absent else
 */
@Schema(name = "Atmosphere", description = "The atmosphere from which gauge and vacuum readings were counted.")
public record SurroundingAir(
        @Schema(required = true, ref = "Pressure") Quantity pressure,

        @Schema(required = true) AtmosphereOrigin origin,

        @Schema(ref = "Length") Quantity altitude) {}
