package io.loopstate.engine.air;

/** From where the enthalpy of moist air is counted; liquid water at 0 degC has none in either case. */
public enum EnthalpyDatum {
    /** Dry air at 0 degC has none: SI charts. */
    ZERO_CELSIUS(0),
    /** Dry air at 0 degF has none: inch-pound charts. */
    ZERO_FAHRENHEIT(AirState.DRY_AIR_HEAT_CAPACITY * 32 / 1.8);

    private final double offset;

    EnthalpyDatum(double offset) {
        this.offset = offset;
    }

    /** J per kg of dry air by which the enthalpy from this datum lies above that from 0 degC. */
    public double offset() {
        return offset;
    }
}
