package io.loopstate.engine.transport;

import io.loopstate.engine.fluid.JsonObject;

/** sigma_s = sum sigma (1 - T/Tc)^n, N/m, below Tc. */
final class SurfaceTension {
    private final double criticalTemperature;
    private final PowerSum sum;

    SurfaceTension(JsonObject json) {
        if (!json.text("form").equals("critical-power")) {
            throw new IllegalArgumentException("unknown surface tension " + json.text("form"));
        }
        criticalTemperature = json.number("Tc");
        sum = new PowerSum(json.numbers("sigma"), json.numbers("n"));
    }

    /** NaN at and above the critical temperature of the correlation. */
    double at(double temperature) {
        return temperature < criticalTemperature ? sum.at(1 - temperature / criticalTemperature) : Double.NaN;
    }
}
