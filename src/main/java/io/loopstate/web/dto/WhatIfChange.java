package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** What is different in a row. */
@Schema(name = "WhatIfChange", description = "What is different from the base case, in numbers.")
public record WhatIfChange(
        @Schema(description = "Outdoor airflow left.") Double condenserAirflow,

        @Schema(description = "Conductance left, beside what the airflow costs.")
        Double condenserConductance,

        @Schema(ref = "TemperatureDifference", description = "By which the outdoor air is warmer.")
        Quantity outdoorTemperatureRise,

        @Schema(ref = "Pressure", description = "Absolute.") Quantity atmosphericPressure,

        @Schema(description = "Indoor airflow left.") Double indoorAirflow,

        @Schema(description = "Of the condenser, as a share of full speed.")
        Double fanSpeed,

        @Schema(description = "Instead of that of the base case.")
        String refrigerant) {}
