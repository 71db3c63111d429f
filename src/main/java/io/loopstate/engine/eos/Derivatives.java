package io.loopstate.engine.eos;

/**
 * A part of the reduced Helmholtz energy and its derivatives, each multiplied by the variables it was taken in, which
 * keeps them finite at zero density.
 *
 * @param value alpha
 * @param d delta alpha_delta
 * @param t tau alpha_tau
 * @param dd delta^2 alpha_deltadelta
 * @param dt delta tau alpha_deltatau
 * @param tt tau^2 alpha_tautau
 */
public record Derivatives(double value, double d, double t, double dd, double dt, double tt) {}
