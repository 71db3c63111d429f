package io.loopstate.engine.cycle;

/** Stable name of a finding. */
public enum FindingCode {
    /** Liquid reaches the compressor, or may. */
    LIQUID_AT_COMPRESSOR,
    /** The compressor's outlet is still wet. */
    WET_DISCHARGE,
    LOW_SUPERHEAT,
    HIGH_SUPERHEAT,
    /** Vapor in the liquid line: flash gas at the valve. */
    NO_SUBCOOLING,
    LOW_SUBCOOLING,
    HIGH_SUBCOOLING,
    /** Lift and friction bring the liquid to boiling before the valve. */
    FLASH_IN_LIQUID_LINE,
    HIGH_DISCHARGE_TEMPERATURE,
    HIGH_PRESSURE_RATIO,
    /** Suction below the atmosphere: a leak draws air in. */
    VACUUM_SUCTION,
    NEAR_CRITICAL,
    /** The high side lies above the critical pressure: nothing condenses. */
    TRANSCRITICAL,
    HIGH_GLIDE,
    HIGH_CONDENSING_OVER_AMBIENT,
    HIGH_EVAPORATOR_TEMPERATURE_DIFFERENCE,
    /** A comfort coil evaporates below the freezing point of water. */
    FROST,
    /** A reading contradicts another. */
    IMPLAUSIBLE_READING,
    EFFICIENCY_IMPLAUSIBLE,
    LOW_EFFICIENCY,
    LOW_VOLUMETRIC_EFFICIENCY,
    /** Independent routes to the same heat disagree. */
    HEAT_BALANCE_OFF,
    /** More cold per work than a Carnot machine between the same temperatures. */
    ABOVE_CARNOT,
    /** No liquid line pressure was given: the discharge pressure stands in for it. */
    LIQUID_LINE_PRESSURE_ASSUMED,
    /** No volumetric efficiency was given: it is taken as 1. */
    VOLUMETRIC_EFFICIENCY_ASSUMED,
    /** A correlation of transport properties found no answer at a state. */
    TRANSPORT_NOT_CONVERGED,
    /** Two streams would have to cross in temperature. */
    TEMPERATURE_CROSS,
    /** A fan takes power and moves little or no air. */
    FAN_WITHOUT_AIRFLOW,
    /** Air per heat is outside the usual range. */
    UNUSUAL_AIRFLOW,
    /** Water leaves close to the refrigerant, or far from it. */
    UNUSUAL_APPROACH,
    /** The split of heat rejected over heat taken up is outside the usual range. */
    UNUSUAL_HEAT_REJECTION_FACTOR,
    /** A coil has lost much of its conductance. */
    LOW_CLEANLINESS,
    /** The outlet asked for, not the coil, sets the condensing pressure. */
    AREA_LEFT_OVER,
    /** Moisture condenses out of the air. */
    CONDENSATION,
    /** Water close to or below its freezing point. */
    FREEZING_RISK,
    /** Compression inside ends above or below the discharge pressure. */
    BUILT_IN_RATIO_MISMATCH,
    /** An impeller works close to or below its least flow. */
    NEAR_SURGE,
    /** No motor efficiency was given: it is taken as 1. */
    MOTOR_EFFICIENCY_ASSUMED,
    /** A closed cylinder ends below the surrounding air. */
    BELOW_ATMOSPHERE,
    /** A point lies outside the envelope that a rating map holds for. */
    OUTSIDE_ENVELOPE,
    /** The suction differs from that of the rating, and the map is corrected for it. */
    SUPERHEAT_CORRECTED,
    /** A fit rests on points that hardly fix its coefficients. */
    ILL_CONDITIONED,
    /** Two models of one machine disagree. */
    MODELS_DISAGREE,
    /** A result rests on an approximation that is named. */
    APPROXIMATION
}
