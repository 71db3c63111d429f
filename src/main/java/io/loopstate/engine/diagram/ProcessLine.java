package io.loopstate.engine.diagram;

import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * The line of a process between two states of a calculation. A calculation knows the ends; what lies between is drawn as the
 * process would go if what it gains or loses were spread evenly.
 */
public final class ProcessLine {
    /** Change of the logarithm of pressure that bends no line of even pressure drop visibly. */
    private static final double LEVEL = 1e-2;

    private ProcessLine() {}

    /** How a process goes. */
    public enum Kind {
        /** Entropy changes evenly over the logarithm of pressure: nearly a constant polytropic efficiency. */
        COMPRESSION,
        /** Pressure falls evenly over enthalpy: heat exchangers and lines. */
        HEAT,
        /** Enthalpy changes evenly over the logarithm of pressure: a valve, where it stays the same. */
        THROTTLING
    }

    /**
     * The states of a process from its inlet to its outlet, closer where it bends; without the part where the equilibrium
     * refuses.
     */
    public static List<List<State>> between(
            Equilibrium equilibrium, Window window, Kind kind, State inlet, State outlet) {
        double h1 = inlet.specificEnthalpy();
        double dh = outlet.specificEnthalpy() - h1;
        double p1 = inlet.pressure();
        double dp = outlet.pressure() - p1;
        double rise = Math.log(outlet.pressure() / p1);
        double s1 = inlet.specificEntropy();
        double ds = outlet.specificEntropy() - s1;
        boolean level = kind == Kind.HEAT && Math.abs(rise) < LEVEL;
        if (window.plane() == Plane.PRESSURE_ENTHALPY && (level || kind == Kind.THROTTLING)) {
            return List.of(List.of(inlet, outlet));
        }
        DoubleFunction<State> path = switch (kind) {
            case COMPRESSION -> t -> equilibrium.atPressureEntropy(p1 * Math.exp(t * rise), s1 + t * ds);
            case HEAT -> t -> equilibrium.atPressureEnthalpy(p1 + t * dp, h1 + t * dh);
            case THROTTLING -> t -> equilibrium.atPressureEnthalpy(p1 * Math.exp(t * rise), h1 + t * dh);
        };
        return new Tracer(window).trace(t -> t == 0 ? inlet : t == 1 ? outlet : path.apply(t), 0, 1, 4);
    }
}
