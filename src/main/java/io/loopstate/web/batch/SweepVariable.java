package io.loopstate.web.batch;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * An input that takes several values, for the contract.
 *
 * @param input its name
 * @param from first value
 * @param to last value
 * @param step between values
 * @param count of values
 * @param values instead of a range
 */
@Schema(description = "An input that takes several values: a list, or a range with a step or a count.")
public record SweepVariable(
        @Schema(
                required = true,
                description = "Name of the input, as in a body with dots or as in a query.",
                examples = "condensing.temperature")
        String input,

        @Schema(description = "First value with its unit, in which the others are given.", examples = "30 degC")
        String from,

        @Schema(
                description = "Last value with its unit, above or below the first; met where the step allows.",
                examples = "50 degC")
        String to,

        @Schema(
                description =
                        "Above 0; a temperature difference for a temperature, a pressure difference for a pressure.",
                examples = "5 K")
        String step,

        @Schema(
                description = "Number of values in equal distances, both ends included, instead of step.",
                minimum = "2")
        Integer count,

        @Schema(
                description = "Values with their units instead of a range, or names, such as refrigerants.",
                examples = "[\"R-134a\", \"R-290\"]")
        List<String> values) {}
