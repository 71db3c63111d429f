package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** An airflow. */
@Schema(name = "AirFlow", description = "An airflow: a volume flow and in which air it is counted, or a mass flow.")
public record AirFlowRequest(
        @Schema(ref = "VolumeFlow", description = "Give this or the mass flow.")
        Quantity volumeFlow,

        @Schema(description = "In which air the volume flow is counted. Default: entering.")
        AirFlowCondition condition,

        @Schema(ref = "MassFlow", description = "Of dry air.")
        Quantity massFlow) {}
