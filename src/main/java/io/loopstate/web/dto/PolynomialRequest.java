package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** Ten coefficients of one quantity of a rating map, as printed. */
@Schema(name = "RatingPolynomial", description = "Ten coefficients of one quantity of a rating map, as printed.")
public record PolynomialRequest(
        @Schema(description = "Ten, in the order named.") List<Double> coefficients,

        @Schema(
                description = "Of the value: a token of /v1/units, for example lb_per_h, W, Btu_per_h or A.",
                examples = "lb_per_h")
        String unit) {}
