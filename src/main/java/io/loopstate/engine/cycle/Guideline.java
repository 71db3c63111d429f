package io.loopstate.engine.cycle;

/**
 * Every limit of good practice that findings are measured against, with its common value and where that comes from. A
 * {@link Guidance} can replace each; the manufacturer's data always wins over these.
 */
public enum Guideline {
    /** Discharge line about 15 cm from the compressor: 225 degF. The valve itself is about 75 degF hotter. */
    MAX_DISCHARGE_TEMPERATURE(QuantityKind.TEMPERATURE, fahrenheit(225)),
    /** Least superheat at the compressor: 5 degF. */
    MIN_SUPERHEAT(QuantityKind.TEMPERATURE_DIFFERENCE, fahrenheitDifference(5)),
    /** Upper end of the usual superheat at the compressor: 30 degF. */
    MAX_SUPERHEAT(QuantityKind.TEMPERATURE_DIFFERENCE, fahrenheitDifference(30)),
    /** Upper end of the usual superheat at the evaporator's outlet: 12 degF. */
    MAX_EVAPORATOR_SUPERHEAT(QuantityKind.TEMPERATURE_DIFFERENCE, fahrenheitDifference(12)),
    /** Lower end of the usual subcooling with an expansion valve: 8 degF. */
    MIN_SUBCOOLING(QuantityKind.TEMPERATURE_DIFFERENCE, fahrenheitDifference(8)),
    /** Upper end of the usual subcooling with an expansion valve: 15 degF. */
    MAX_SUBCOOLING(QuantityKind.TEMPERATURE_DIFFERENCE, fahrenheitDifference(15)),
    /** Absolute discharge over suction pressure in one stage. */
    MAX_PRESSURE_RATIO(QuantityKind.RATIO, 10),
    /** Condensing midpoint over outdoor air: 30 degF. */
    MAX_CONDENSING_OVER_AMBIENT(QuantityKind.TEMPERATURE_DIFFERENCE, fahrenheitDifference(30)),
    /** Air entering the evaporator over its midpoint temperature: 35 degF. */
    MAX_EVAPORATOR_TEMPERATURE_DIFFERENCE(QuantityKind.TEMPERATURE_DIFFERENCE, fahrenheitDifference(35)),
    /** Glide above which dew and bubble must not be confused: 5 degF. */
    MAX_UNNOTICED_GLIDE(QuantityKind.TEMPERATURE_DIFFERENCE, fahrenheitDifference(5)),
    /** Share by which two routes to the same heat may differ. */
    MAX_HEAT_BALANCE_DIFFERENCE(QuantityKind.RATIO, 0.10),
    /** Volumetric efficiency below which valves and clearance deserve a look. */
    MIN_VOLUMETRIC_EFFICIENCY(QuantityKind.RATIO, 0.5),
    /** Measured isentropic efficiency below which valves, motor heat or the readings deserve a look. */
    MIN_ISENTROPIC_EFFICIENCY(QuantityKind.RATIO, 0.4),
    /** Largest isentropic efficiency that a compressor without outside cooling can show. */
    MAX_ISENTROPIC_EFFICIENCY(QuantityKind.RATIO, 1.0, Basis.SECOND_LAW),
    /** Pressure as a share of the critical one from which properties change steeply. */
    NEAR_CRITICAL_PRESSURE(QuantityKind.RATIO, 0.9, "choice of this engine, no source"),
    /** Temperature as a share of the critical one, and as far beyond it, between which the same holds. */
    NEAR_CRITICAL_TEMPERATURE(QuantityKind.RATIO, 0.97, "choice of this engine, no source"),
    /** Air entering an evaporator from which it is taken for a comfort coil: 60 degF. */
    COMFORT_AIR_TEMPERATURE(QuantityKind.TEMPERATURE, fahrenheit(60)),
    /** What a line probe may be off by: 1 degF. */
    LINE_PROBE_ACCURACY(QuantityKind.TEMPERATURE_DIFFERENCE, fahrenheitDifference(1)),
    /** Fan power over airflow, which is a pressure, above which the air is in doubt. */
    MAX_FAN_PRESSURE(QuantityKind.PRESSURE_DIFFERENCE, 2500),
    /** Least airflow of a comfort evaporator for each ton of refrigeration: 300 cfm. */
    MIN_EVAPORATOR_AIRFLOW(QuantityKind.VOLUME_FLOW, cubicFeetPerMinute(300)),
    /** Most airflow of a comfort evaporator for each ton of refrigeration: 500 cfm. */
    MAX_EVAPORATOR_AIRFLOW(QuantityKind.VOLUME_FLOW, cubicFeetPerMinute(500)),
    /** Least heat rejected over heat taken up: a cool condenser above a warm evaporator. */
    MIN_HEAT_REJECTION_FACTOR(QuantityKind.RATIO, 1.05),
    /** Upper end of heat rejected over heat taken up, low temperature. */
    MAX_HEAT_REJECTION_FACTOR(QuantityKind.RATIO, 1.75),
    /** Condensing temperature over leaving water, lower end: 2 degF. */
    MIN_WATER_APPROACH(QuantityKind.TEMPERATURE_DIFFERENCE, fahrenheitDifference(2)),
    /** Condensing temperature over leaving water, upper end: 10 degF. */
    MAX_WATER_APPROACH(QuantityKind.TEMPERATURE_DIFFERENCE, fahrenheitDifference(10)),
    /** Tower water over the wet bulb of the air, lower end: 5 degF. */
    MIN_TOWER_APPROACH(QuantityKind.TEMPERATURE_DIFFERENCE, fahrenheitDifference(5)),
    /** Least temperature of water that leaves a chiller: 40 degF. */
    MIN_CHILLED_WATER_TEMPERATURE(QuantityKind.TEMPERATURE, fahrenheit(40)),
    /** Least share of its clean conductance that a coil should keep. */
    MIN_CLEANLINESS(QuantityKind.RATIO, 0.8),
    /** Least distance between the streams anywhere in a coil: 2 degF. */
    MIN_PINCH(QuantityKind.TEMPERATURE_DIFFERENCE, fahrenheitDifference(2)),
    /** Power lost to a built-in volume ratio that does not fit, as a share of the isentropic power. */
    MAX_BUILT_IN_MISMATCH(QuantityKind.RATIO, 0.05),
    /** Flow of an impeller over its least flow, below which it is close to surge. */
    MIN_SURGE_MARGIN(QuantityKind.RATIO, 1.1),
    /** Share by which a rating map and a displacement model of one machine may differ. */
    MAX_MODEL_DIFFERENCE(QuantityKind.RATIO, 0.10),
    /** Freezing point of water. */
    FREEZING_POINT(QuantityKind.TEMPERATURE, 273.15, "freezing point of water");

    private final QuantityKind kind;
    private final Limit common;

    Guideline(QuantityKind kind, double value) {
        this(kind, value, Basis.COMMON_PRACTICE);
    }

    Guideline(QuantityKind kind, double value, String basis) {
        this.kind = kind;
        this.common = new Limit(value, basis);
    }

    /** What the limit is. */
    public QuantityKind kind() {
        return kind;
    }

    /** The limit that holds unless replaced. */
    public Limit common() {
        return common;
    }

    private static double fahrenheit(double value) {
        return (value + 459.67) / 1.8;
    }

    private static double cubicFeetPerMinute(double value) {
        return value * 0.028316846592 / 60;
    }

    private static double fahrenheitDifference(double value) {
        return value / 1.8;
    }
}
