package io.loopstate.engine.compression;

/** What takes up the motor's heat. */
public enum MotorCooling {
    /** The vapor on its way to the suction port of the cylinder: it arrives warmer and thinner. */
    SUCTION_GAS,
    /** The vapor after compression, as in a shell at discharge pressure. */
    DISCHARGE_GAS,
    /** Air or water around the motor. */
    SURROUNDINGS
}
