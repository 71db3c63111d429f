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
 * Centrifugal compression at one operating point: the head that all stages can give is z psi u^2. Source: definition of the head
 * coefficient, e.g. S. L. Dixon, Fluid Mechanics and Thermodynamics of Turbomachinery (from memory).
 *
 * @param sweptFlow m3/s of vapor drawn in
 * @param tipSpeed m/s
 * @param stages impellers in series, 1 or more
 * @param headCoefficient isentropic head of a stage over the square of the tip speed, above 0 to 1; empty where the impeller is
 *     taken to fit
 * @param isentropicEfficiency above 0 to 1
 */
public record Impeller(
        double sweptFlow, double tipSpeed, int stages, OptionalDouble headCoefficient, double isentropicEfficiency)
        implements Displacer {
    public Impeller {
        Require.positive("inletVolumeFlow", sweptFlow);
        Require.positive("tipSpeed", tipSpeed);
        Require.positive("stages", stages);
        Require.efficiency("headCoefficient", headCoefficient);
        Require.efficiency("isentropicEfficiency", isentropicEfficiency);
    }

    /** J/kg that the stages can give. */
    OptionalDouble head() {
        return headCoefficient.isPresent()
                ? OptionalDouble.of(stages * headCoefficient.getAsDouble() * tipSpeed * tipSpeed)
                : headCoefficient;
    }

    /** Head coefficient of a stage that a head (J/kg) needs. */
    double neededCoefficient(double isentropicWork) {
        return isentropicWork / (stages * tipSpeed * tipSpeed);
    }

    @Override
    public double work(Equilibrium equilibrium, State port, double dischargePressure) {
        State ideal = Compressor.isentropicOutlet(equilibrium, port, dischargePressure);
        return (ideal.specificEnthalpy() - port.specificEnthalpy()) / isentropicEfficiency;
    }

    @Override
    public Stroke stroke(Equilibrium equilibrium, State port, double dischargePressure) {
        State ideal = Compressor.isentropicOutlet(equilibrium, port, dischargePressure);
        double isentropicWork = ideal.specificEnthalpy() - port.specificEnthalpy();
        if (head().isPresent() && head().getAsDouble() < isentropicWork) {
            throw EngineException.of(
                    ErrorCode.CONTRADICTORY_INPUTS,
                    "The impellers cannot give this head at this tip speed: the machine surges. The least head coefficient"
                            + " that would do is stated.",
                    "headCoefficient",
                    headCoefficient.getAsDouble(),
                    neededCoefficient(isentropicWork),
                    Double.NaN);
        }
        return new Stroke(
                sweptFlow * port.density(),
                isentropicWork / isentropicEfficiency,
                isentropicWork,
                0,
                1,
                Optional.empty());
    }
}
