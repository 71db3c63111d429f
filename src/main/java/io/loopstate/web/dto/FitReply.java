package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The ten coefficients that fit the points, in the units of the points, and how well they do. */
@Schema(description = "The ten coefficients that fit the points, in the units of the points, and how well they do.")
public record FitReply(
        @Schema(required = true) List<Double> coefficients,

        @Schema(required = true) PolynomialOrder coefficientOrder,

        @Schema(required = true) TemperatureScale temperatureUnit,

        @Schema(required = true, description = "Value less polynomial, in the order of the points.")
        List<Double> residuals,

        @Schema(required = true, description = "Of the residuals.")
        double rootMeanSquare,

        @Schema(required = true, description = "Greatest, without its sign.")
        double maxResidual,

        @Schema(required = true, description = "Greatest, as a share of the value.")
        double maxRelativeResidual,

        @Schema(required = true, description = "Share of the spread of the values that the fit explains.")
        double determination,

        @Schema(
                required = true,
                description =
                        "Of the problem with temperatures scaled to -1 to 1; above 1000 the points hardly fix the coefficients.")
        double conditionNumber,

        @Schema(required = true, description = "Points beyond ten.")
        int degreesOfFreedom,

        @Schema(description = "The working; only where it was asked for.")
        List<WorkingStep> working,

        @Schema(required = true) Basis basis,

        @Schema(required = true) List<Warning> warnings,

        @Schema(required = true, description = "What no calculation can take over; fixed text.")
        List<String> cautions) {}
