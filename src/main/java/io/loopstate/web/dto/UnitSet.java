package io.loopstate.web.dto;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A set of units for replies. */
@Schema(
        name = "UnitSystem",
        description =
                "SI: metric units as they stand on a gauge set (degC, kPa, kJ/kg, kW). IP: inch-pound units (degF, psia, "
                        + "Btu/lb, Btu/h).")
public enum UnitSet {
    SI,
    IP
}
