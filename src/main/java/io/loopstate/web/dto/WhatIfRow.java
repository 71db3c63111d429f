package io.loopstate.web.dto;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** One what-if. */
@Schema(
        name = "WhatIfRow",
        description =
                "One what-if: the machine with one thing different, and the differences to the base case; or, where it has no "
                        + "balance, the component that has none and why.")
public record WhatIfRow(
        @Schema(required = true) WhatIfName whatIf,

        @Schema(required = true) WhatIfChange change,

        @Schema(description = "Where the machine has no balance: the component that has none.")
        MachineComponent withoutBalance,

        @Schema(description = "Why it has none.") String reason,

        LevelTemperatures evaporating,

        LevelTemperatures condensing,

        @Schema(ref = "MassFlow", description = "Of refrigerant.")
        Quantity massFlow,

        EnergyBalanceFigures energyBalance,

        @Schema(description = "With the fans; where a fan power is given.")
        SystemOfMachine system,

        @Schema(ref = "Power") Quantity sensibleHeat,

        @Schema(ref = "Temperature") Quantity dischargeTemperature,

        WhatIfDifferences differences,

        @Schema(required = true) List<Warning> warnings,

        @Schema(description = "About the other refrigerant; fixed text.")
        List<String> cautions) {}
