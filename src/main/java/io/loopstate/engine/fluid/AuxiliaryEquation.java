package io.loopstate.engine.fluid;

/**
 * An auxiliary saturation equation, {@code ref exp(S)} or {@code ref exp(S Tref / T)} with S = sum n (1 - T/Tref)^t. A
 * starting value for pure fluids; the phase boundary itself for pseudo-pure ones.
 */
public final class AuxiliaryEquation {
    private final boolean scaled;
    private final double reference;
    private final double referenceTemperature;
    private final double[] n;
    private final double[] t;

    AuxiliaryEquation(JsonObject json) {
        scaled = switch (json.text("form")) {
            case "exp-sum" -> false;
            case "exp-sum-scaled" -> true;
            default -> throw new IllegalArgumentException("unknown auxiliary form " + json.text("form"));
        };
        reference = json.number("ref");
        referenceTemperature = json.number("Tref");
        n = json.numbers("n");
        t = json.numbers("t");
    }

    /** Pa or mol/m3 at a temperature in K; the reference value above the reference temperature. */
    public double at(double temperature) {
        double theta = Math.max(0, 1 - temperature / referenceTemperature);
        double sum = 0;
        for (int k = 0; k < n.length; k++) {
            sum += n[k] * Math.pow(theta, t[k]);
        }
        return reference * Math.exp(scaled ? sum * referenceTemperature / temperature : sum);
    }
}
