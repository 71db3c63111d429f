package io.loopstate.testing;

import java.util.List;

/** A body with a member of every kind that the reading of JSON has to cope with. */
public record Probe(String name, Double efficiency, Side side, Probe inner, List<Double> values) {

    /** A closed set of values. */
    public enum Side {
        HIGH,
        LOW
    }
}
