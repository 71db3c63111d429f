package io.loopstate.engine.compression;

import io.loopstate.engine.component.Compressor;
import io.loopstate.engine.component.Require;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import java.util.Objects;
import java.util.Optional;

/**
 * Centrifugal compression by its head-flow curve: the head that the pressures need sets the flow, within surge and choke.
 *
 * @param tipSpeed m/s
 * @param diameter of the impeller, m
 * @param stages impellers in series, 1 or more, each with the same share of the head
 * @param curve of a stage
 */
public record CurvedImpeller(double tipSpeed, double diameter, int stages, HeadCurve curve) implements Displacer {
    public CurvedImpeller {
        Require.positive("tipSpeed", tipSpeed);
        Require.positive("impellerDiameter", diameter);
        Require.positive("stages", stages);
        Objects.requireNonNull(curve);
    }

    /** m3/s at a flow coefficient. */
    double volumeFlow(double flowCoefficient) {
        return flowCoefficient * tipSpeed * diameter * diameter;
    }

    /** Head coefficient of a stage that a head (J/kg) needs. */
    double neededCoefficient(double isentropicWork) {
        return isentropicWork / (stages * tipSpeed * tipSpeed);
    }

    /** Flow coefficient at which the stages give a head, J/kg. */
    double flowCoefficient(double isentropicWork) {
        return curve.flow(neededCoefficient(isentropicWork));
    }

    /** The most that the machine could draw in, at choke; m3/s. */
    @Override
    public double sweptFlow() {
        return volumeFlow(curve.choke());
    }

    @Override
    public double sweptFlow(Stroke stroke, State port) {
        return stroke.massFlow() / port.density();
    }

    @Override
    public double work(Equilibrium equilibrium, State port, double dischargePressure) {
        double head = head(equilibrium, port, dischargePressure);
        return head / curve.efficiency(flowCoefficient(head));
    }

    @Override
    public Stroke stroke(Equilibrium equilibrium, State port, double dischargePressure) {
        double head = head(equilibrium, port, dischargePressure);
        double flow = flowCoefficient(head);
        return new Stroke(
                volumeFlow(flow) * port.density(), head / curve.efficiency(flow), head, 0, 1, Optional.empty());
    }

    private static double head(Equilibrium equilibrium, State port, double dischargePressure) {
        return Compressor.isentropicOutlet(equilibrium, port, dischargePressure).specificEnthalpy()
                - port.specificEnthalpy();
    }
}
