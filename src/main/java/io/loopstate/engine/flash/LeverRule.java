package io.loopstate.engine.flash;

import io.loopstate.engine.coexistence.SplitVariable;
import io.loopstate.engine.eos.MolarState;

/** Coexistence of a pure fluid: both phases are those on the edges of the dome. */
final class LeverRule implements Coexistence {
    @Override
    public Point divide(FluidModel fluid, Given line, SplitVariable second, double value) {
        double quality = switch (second) {
            case QUALITY, VAPOR_FRACTION -> value;
            case VOLUME ->
                share(value, 1 / line.edges().liquidDensity(), 1 / line.edges().vaporDensity());
            case ENTHALPY -> share(value, line.liquid().enthalpy(), line.vapor().enthalpy());
            case ENTROPY -> share(value, line.liquid().entropy(), line.vapor().entropy());
            case INTERNAL_ENERGY ->
                share(value, line.liquid().internalEnergy(), line.vapor().internalEnergy());
            case TEMPERATURE, PRESSURE -> throw new IllegalArgumentException("no share by " + second);
        };
        return quality == 0
                ? Saturated.bubble(fluid, line.edges())
                : quality == 1
                        ? Saturated.dew(fluid, line.edges())
                        : mixture(line.liquid(), line.vapor(), line.edges().dewPressure(), quality);
    }

    private static Point mixture(MolarState liquid, MolarState vapor, double pressure, double quality) {
        return new Point.TwoPhase(liquid, vapor, pressure, quality, quality);
    }

    private static double share(double value, double liquid, double vapor) {
        return (value - liquid) / (vapor - liquid);
    }
}
