package io.loopstate.engine.flash;

import io.loopstate.engine.coexistence.MixtureSplit;
import io.loopstate.engine.coexistence.PhaseBoundary;
import io.loopstate.engine.coexistence.Split;
import io.loopstate.engine.coexistence.SplitVariable;
import io.loopstate.engine.coexistence.TangentPlane;
import io.loopstate.engine.eos.MolarState;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.Variable;

/** Coexistence of a blend: phases of different composition, the datum of enthalpy and entropy that of the whole. */
final class BlendCoexistence implements Coexistence {
    /** Share of the way through the dome below which a state is on its edge. */
    private static final double SLIVER = 1e-12;

    private final PhaseBoundary boundary;
    private final MixtureSplit split;
    private final double enthalpy;
    private final double entropy;

    /**
     * @param enthalpy J/mol added to every enthalpy of the model
     * @param entropy J/(mol K) added to every entropy of the model
     */
    BlendCoexistence(PhaseBoundary boundary, MixtureSplit split, double enthalpy, double entropy) {
        this.boundary = boundary;
        this.split = split;
        this.enthalpy = enthalpy;
        this.entropy = entropy;
    }

    @Override
    public double closestToCritical() {
        return MixtureSplit.CRITICAL_TEMPERATURES;
    }

    @Override
    public Coexistence shifted(double byEnthalpy, double byEntropy) {
        return new BlendCoexistence(boundary, split, enthalpy + byEnthalpy, entropy + byEntropy);
    }

    @Override
    public Point divide(FluidModel fluid, Given line, SplitVariable second, double value) {
        double raw = switch (second) {
            case ENTHALPY, INTERNAL_ENERGY -> value - enthalpy;
            case ENTROPY -> value - entropy;
            default -> value;
        };
        double share = share(line, second, value);
        if (Math.abs(share) < SLIVER || Math.abs(share - 1) < SLIVER) {
            return onLine(fluid, line.value(), line.edges(), share < SLIVER);
        }
        Split s = split(fluid, line, second, raw, share);
        // at a low pressure the bubble line runs on below the range
        fluid.requireTemperature(s.temperature());
        return new Point.TwoPhase(
                s.liquid().shifted(enthalpy, entropy),
                s.vapor().shifted(enthalpy, entropy),
                s.pressure(),
                s.vaporFraction(),
                s.quality());
    }

    private Split split(FluidModel fluid, Given line, SplitVariable second, double value, double share) {
        try {
            return split.at(line.fixed(), line.value(), second, value, share);
        } catch (EngineException e) {
            // where a liquid divides, the way from one edge to the other breaks off
            throw line.edges().bubbleTemperature() < boundary.oneLiquidAbove()
                    ? twoLiquids(fluid, line.edges().bubbleTemperature())
                    : e;
        }
    }

    /** How far a value is from that on the dense edge. */
    private static double share(Given line, SplitVariable second, double value) {
        Dome.Edges edges = line.edges();
        return switch (second) {
            case QUALITY, VAPOR_FRACTION -> value;
            case TEMPERATURE -> share(value, edges.bubbleTemperature(), edges.dewTemperature());
            case PRESSURE -> share(value, edges.bubblePressure(), edges.dewPressure());
            case VOLUME -> share(value, 1 / edges.liquidDensity(), 1 / edges.vaporDensity());
            case ENTHALPY -> share(value, line.liquid().enthalpy(), line.vapor().enthalpy());
            case ENTROPY -> share(value, line.liquid().entropy(), line.vapor().entropy());
            case INTERNAL_ENERGY ->
                share(value, line.liquid().internalEnergy(), line.vapor().internalEnergy());
        };
    }

    private static double share(double value, double dense, double thin) {
        return (value - dense) / (thin - dense);
    }

    @Override
    public Point onLine(FluidModel fluid, double pressure, Dome.Edges edges, boolean bubble) {
        return bubble ? Saturated.bubble(fluid, edges) : Saturated.dew(fluid, edges);
    }

    @Override
    public void requireStable(FluidModel fluid, Point.OnePhase point) {
        MolarState state = point.state();
        boolean doubtful = state.temperature() < boundary.oneLiquidAbove()
                && state.density() > fluid.fluid().criticalMolarDensity();
        if (doubtful && !TangentPlane.stable(boundary.feed(), state.temperature(), state.density())) {
            throw twoLiquids(fluid, state.temperature());
        }
    }

    private EngineException twoLiquids(FluidModel fluid, double temperature) {
        return EngineException.notComputed(
                "the model of " + fluid.fluid().designation() + " has two liquids here, which are not computed",
                Variable.TEMPERATURE,
                temperature,
                boundary.oneLiquidAbove(),
                fluid.maxTemperature());
    }
}
