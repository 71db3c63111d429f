package io.loopstate.web.dto;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * What the fan of an air-cooled coil does, beside a conductance that holds for full speed.
 *
 * @param fanSpeed share of full speed
 * @param airflowExponent with which the conductance follows the airflow
 * @param naturalDraft airflow without a fan
 */
public record FanRequest(
        @DecimalMin("0")
        @DecimalMax("1")
        @Schema(
                description =
                        "Share of full speed, to which the airflow is proportional; 0 where the fan stands still. With a "
                                + "conductance only. Default: 1.")
        Double fanSpeed,

        @DecimalMin("0")
        @DecimalMax(value = "1", inclusive = false)
        @Schema(
                description =
                        "With which the conductance follows the airflow. Default: 0.5, common practice, no source.")
        Double airflowExponent,

        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax("1")
        @Schema(
                description =
                        "Airflow without a fan as a share of that at full speed. Default: 0.1, common practice, no source.")
        Double naturalDraft) {}
