package io.loopstate.web.dto;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A whole machine between indoor and outdoor air. */
@Schema(
        description =
                "A whole machine between indoor and outdoor air: a compressor by its displacement (machine) or by its rating map "
                        + "(map), a condensing coil, a valve that keeps the superheat, a charge that keeps the subcooling, and an "
                        + "evaporating coil. Evaporating and condensing level are sought. Required: outdoorAir.dryBulb and "
                        + "indoorAir.dryBulb, conductance and airflow of both coils.")
public record BalanceRequest(
        @NotNull
        @Schema(
                description =
                        "Designation, or composition of a blend by mass as in R-32/1234yf (68.9/31.1), in a body also a list of its components, {refrigerant, massFraction}; case, hyphen and the leading R do not matter.",
                examples = "R-134a")
        String refrigerant,

        @Valid @Schema(description = "The compressor by its displacement; or map.")
        MachineRequest machine,

        @Valid @Schema(description = "The compressor by its rating map, instead of machine.")
        MapRequest map,

        @Schema(description = "Air that enters the condenser.")
        AirReadings outdoorAir,

        @Schema(description = "Air that enters the evaporator; its humidity decides on latent capacity.")
        AirReadings indoorAir,

        @Valid BalanceCondenserRequest condenser,

        @Valid BalanceEvaporatorRequest evaporator,

        @NotNull
        @Schema(
                ref = "TemperatureDifference",
                description = "That the valve keeps at the outlet of the evaporator, 0 or more.")
        Quantity superheat,

        @Schema(
                ref = "TemperatureDifference",
                description = "By which the suction line warms the vapor on its way to the compressor. Default: 0 K.")
        Quantity suctionLineTemperatureRise,

        @NotNull @Schema(ref = "TemperatureDifference", description = "At the outlet of the condenser, 0 or more.")
        Quantity subcooling,

        @Valid WhatIfRequest whatIf,

        @Schema(description = "Limits for the warnings.") BalanceLimitsRequest limits,

        @JsonUnwrapped Options options) {}
