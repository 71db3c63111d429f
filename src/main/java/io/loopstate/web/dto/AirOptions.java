package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * What a calculation without a refrigerant understands beside its inputs: the options of every other calculation without a
 * reference state.
 *
 * @param atmosphericPressure absolute, as a barometer on the spot reads
 * @param altitude above sea level; the standard atmosphere there
 * @param units set of units and overrides of the reply
 * @param explain whether the reply shows its working
 * @param dec decimal mark of numbers that stand in text
 */
public record AirOptions(
        @Schema(
                ref = "Pressure",
                description =
                        "Absolute pressure of the surrounding air as a barometer on the spot reads it, 20 to 120 kPa_a; "
                                + "gauge readings are counted from it. Default: the standard atmosphere, 101.325 kPa_a.")
        Quantity atmosphericPressure,

        @Schema(
                ref = "Length",
                description = "Height above sea level, -500 to 11000 m, instead of atmosphericPressure: the standard "
                        + "atmosphere there.")
        Quantity altitude,

        @Schema(
                description =
                        "Units of the reply: SI (default) or IP, then units of single kinds if wanted, for example "
                                + "IP,pressure=psig,power=ton. The kinds and their units are listed at /v1/units.",
                examples = "IP,pressure=psig")
        String units,

        @Schema(description = "Whether the reply shows its working, step by step.")
        Boolean explain,

        @Schema(
                description = "Decimal mark of numbers that stand in text: a point, or a comma if so declared.",
                pattern = "^[.,]$")
        String dec) {}
