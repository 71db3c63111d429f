package io.loopstate.engine.compression;

import io.loopstate.engine.component.Compressor;
import io.loopstate.engine.component.Require;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Rolling piston, vane, scroll or screw. With a built-in volume ratio the vapor is compressed to a fixed share of its volume and
 * then meets the discharge pressure at constant volume: w = h_i - h_1 + v_i (p_d - p_i). Source: E. Winandy, C. Saavedra, J.
 * Lebrun, Appl. Therm. Eng. 22 (2002) 107-120 (from memory).
 *
 * @param sweptFlow m3/s
 * @param volumetricEfficiency vapor drawn in, at the state of the port, over volume swept, above 0 to 1
 * @param builtInVolumeRatio volume at the start over that at the end of compression inside, 1 or more; empty where a valve
 *     opens when the pressure is reached
 * @param isentropicEfficiency the work above over work, above 0 to 1: leakage and throttling inside
 */
public record Rotor(
        double sweptFlow, double volumetricEfficiency, OptionalDouble builtInVolumeRatio, double isentropicEfficiency)
        implements Displacer {
    public Rotor {
        Require.positive("displacement", sweptFlow);
        Require.efficiency("volumetricEfficiency", volumetricEfficiency);
        Require.efficiency("isentropicEfficiency", isentropicEfficiency);
        builtInVolumeRatio.ifPresent(ratio -> {
            if (!(ratio >= 1) || ratio > MAX_RATIO) {
                throw EngineException.of(
                        ErrorCode.IMPOSSIBLE_VALUE,
                        "A built-in volume ratio is 1 or more; it is a ratio of volumes, not of pressures.",
                        "builtInVolumeRatio",
                        ratio,
                        1,
                        MAX_RATIO);
            }
        });
    }

    private static final double MAX_RATIO = 10;

    @Override
    public double work(Equilibrium equilibrium, State port, double dischargePressure) {
        State ideal = Compressor.isentropicOutlet(equilibrium, port, dischargePressure);
        double isentropicWork = ideal.specificEnthalpy() - port.specificEnthalpy();
        return builtInVolumeRatio.isEmpty()
                ? isentropicWork / isentropicEfficiency
                : (isentropicWork + mismatch(port, end(equilibrium, port), isentropicWork, dischargePressure))
                        / isentropicEfficiency;
    }

    /** Where the compression between the rotors ends. */
    private State end(Equilibrium equilibrium, State port) {
        double density = port.density() * builtInVolumeRatio.getAsDouble();
        return IsentropicDensity.state(equilibrium, port, density);
    }

    /** Work lost because that end is not the discharge pressure, J/kg. */
    private static double mismatch(State port, State end, double isentropicWork, double dischargePressure) {
        double inside = end.specificEnthalpy()
                - port.specificEnthalpy()
                + end.specificVolume() * (dischargePressure - end.pressure());
        // Rounding alone could make the mismatch of a perfect match negative.
        return Math.max(0, inside - isentropicWork);
    }

    @Override
    public Stroke stroke(Equilibrium equilibrium, State port, double dischargePressure) {
        State ideal = Compressor.isentropicOutlet(equilibrium, port, dischargePressure);
        double isentropicWork = ideal.specificEnthalpy() - port.specificEnthalpy();
        double massFlow = sweptFlow * volumetricEfficiency * port.density();
        if (builtInVolumeRatio.isEmpty()) {
            return new Stroke(
                    massFlow,
                    isentropicWork / isentropicEfficiency,
                    isentropicWork,
                    0,
                    volumetricEfficiency,
                    Optional.empty());
        }
        State end = end(equilibrium, port);
        double mismatch = mismatch(port, end, isentropicWork, dischargePressure);
        return new Stroke(
                massFlow,
                (isentropicWork + mismatch) / isentropicEfficiency,
                isentropicWork,
                0,
                volumetricEfficiency,
                Optional.of(new Inside(port, end, OptionalDouble.empty(), OptionalDouble.of(mismatch))));
    }
}
