package io.loopstate.web.chart;

/** A place on a chart, in the numbers of its axes. */
public record Vertex(double x, double y) {}
