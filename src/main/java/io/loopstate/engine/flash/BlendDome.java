package io.loopstate.engine.flash;

import io.loopstate.engine.coexistence.BoundaryPoint;
import io.loopstate.engine.coexistence.PhaseBoundary;
import io.loopstate.engine.coexistence.SplitVariable;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The dome of a blend. Between the critical temperature and the highest one both edges are dew points, between the critical
 * pressure and the highest one both are bubble points or both dew points; what holds of the edges holds of them too.
 */
final class BlendDome implements Dome {
    private final PhaseBoundary boundary;
    private final double topTemperature;
    private final double topPressure;
    private final double minPressure;
    private final double thinnestPressure;

    BlendDome(PhaseBoundary boundary) {
        this.boundary = boundary;
        topTemperature = boundary.hottest().temperature();
        topPressure = boundary.tightest().pressure();
        minPressure = boundary.minPressure();
        thinnestPressure =
                boundary.atTemperature(boundary.minTemperature(), false).pressure();
    }

    PhaseBoundary boundary() {
        return boundary;
    }

    @Override
    public double topTemperature() {
        return topTemperature;
    }

    @Override
    public double topPressure() {
        return topPressure;
    }

    @Override
    public Edges atTemperature(double t) {
        return edges(boundary.atTemperature(t, true), boundary.atTemperature(t, false));
    }

    @Override
    public Edges atPressure(double p) {
        return edges(boundary.atPressure(p, true), boundary.atPressure(p, false));
    }

    private Edges edges(BoundaryPoint dense, BoundaryPoint thin) {
        boundary.requireSound(dense);
        boundary.requireSound(thin);
        return new Edges(
                dense.temperature(),
                dense.pressure(),
                dense.density(),
                thin.temperature(),
                thin.pressure(),
                thin.density());
    }

    @Override
    public double minPressure() {
        return minPressure;
    }

    @Override
    public double thinVaporTemperature(double pressure) {
        return pressure > thinnestPressure
                ? boundary.atPressure(pressure, false).temperature()
                : boundary.minTemperature();
    }

    @Override
    public List<Double> incipient(SplitVariable fixed, double value, boolean bubble) {
        BoundaryPoint point = fixed == SplitVariable.TEMPERATURE
                ? boundary.atTemperature(value, bubble)
                : boundary.atPressure(value, bubble);
        return IntStream.range(0, boundary.feed().size())
                .mapToObj(point::incipientFraction)
                .toList();
    }
}
