package io.loopstate.web.dto;

/**
 * A number with its unit. Each place of the contract refers to the schema of its kind, which lists the units.
 *
 * <p>In a request that was read, value and unit are SI whatever the client wrote.
 *
 * @param value the number, finite
 * @param unit canonical ASCII name of the unit
 */
public record Quantity(double value, String unit) {}
