package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The published correlations of transport properties; one that the refrigerant lacks is absent. */
@Schema(description = "The published correlations of transport properties; one that the refrigerant lacks is absent.")
public record TransportSources(Source viscosity, Source thermalConductivity, Source surfaceTension) {}
