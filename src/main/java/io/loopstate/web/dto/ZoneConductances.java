package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Conductance that the whole coil would have if all of it did one thing. */
@Schema(
        description =
                "Conductance that the whole coil would have if all of its area did one thing: area times the coefficient of that "
                        + "zone. All three are required.")
public record ZoneConductances(
        @Schema(ref = "ThermalConductance") Quantity desuperheating,

        @Schema(ref = "ThermalConductance") Quantity condensing,

        @Schema(ref = "ThermalConductance") Quantity subcooling) {}
