package io.loopstate.web.chart;

/**
 * A mark on an axis.
 *
 * @param label empty for a small mark
 */
public record Tick(double value, String label) {}
