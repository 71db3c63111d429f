package io.loopstate.wiring;

/**
 * One fact for the line that the service logs when it is ready, such as the number of refrigerants. Every bean of this
 * type is printed; producing it may load what it counts.
 *
 * @param key camel case
 * @param value without spaces
 */
public record StartupFact(String key, String value) {}
