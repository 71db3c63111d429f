package io.loopstate.engine.balance;

/** A part of the machine that may have no balance. */
public enum Component {
    COMPRESSOR,
    CONDENSER,
    EVAPORATOR
}
