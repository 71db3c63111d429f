package io.loopstate.engine.component;

import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.numerics.Roots;
import io.loopstate.engine.property.State;

/**
 * The evaporating pressure at which the mean of the temperature at the evaporator's inlet and the dew temperature has a given
 * value. Less of the glide is left than between bubble and dew point, since some evaporates in the valve.
 */
public final class EvaporatorMean {
    /** Last step of the iteration, relative to the logarithm of the pressure. */
    private static final double TOLERANCE = 1e-14;
    /** Steps of the logarithm of the pressure by which a bracket is widened, and how often. */
    private static final double WIDER = 0.05;

    private static final int MOST = 60;

    private final Equilibrium equilibrium;
    private final double enthalpy;
    private final double pressureDrop;

    /**
     * @param enthalpy J/kg before the valve
     * @param pressureDrop Pa, of the evaporator
     */
    public EvaporatorMean(Equilibrium equilibrium, double enthalpy, double pressureDrop) {
        this.equilibrium = equilibrium;
        this.enthalpy = enthalpy;
        this.pressureDrop = pressureDrop;
    }

    /** The mean, K, for a pressure (Pa) at the outlet. */
    private double at(double pressure) {
        State inlet = equilibrium.atPressureEnthalpy(pressure + pressureDrop, enthalpy);
        State dew = equilibrium.saturationAtPressure(pressure).dew();
        return (inlet.temperature() + dew.temperature()) / 2;
    }

    /**
     * The pressure (Pa) at the outlet for a mean (K).
     *
     * @throws io.loopstate.engine.error.EngineException where the saturation line ends before it
     */
    public double pressure(double temperature) {
        Saturation saturation = equilibrium.saturationAtTemperature(temperature);
        double low = Math.log(saturation.dew().pressure());
        double high = Math.log(saturation.bubble().pressure());
        for (int k = 0; k < MOST && at(Math.exp(low)) >= temperature; k++) {
            low -= WIDER;
        }
        for (int k = 0; k < MOST && at(Math.exp(high)) <= temperature; k++) {
            high += WIDER;
        }
        return Math.exp(Roots.brent(
                logPressure -> at(Math.exp(logPressure)) - temperature,
                low,
                high,
                TOLERANCE,
                "pressure of the mean from evaporator inlet to dew point"));
    }
}
