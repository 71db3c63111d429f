package io.loopstate.web.mapping;

import io.loopstate.engine.cycle.Point;
import io.loopstate.engine.cycle.Transport;
import io.loopstate.engine.property.State;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.dto.FluidPhase;
import io.loopstate.web.dto.FluidState;
import io.loopstate.web.dto.PlaceInLoop;
import java.util.OptionalDouble;
import java.util.Set;

/** A state of the engine in the units of the reply. */
final class States {
    /** Members of a state that come from transport properties. */
    static final Set<String> TRANSPORT = Set.of("viscosity", "thermalConductivity", "surfaceTension");

    private States() {}

    /** A point of a cycle. */
    static FluidState of(Output out, Point point) {
        PlaceInLoop name = PlaceInLoop.valueOf(point.name().name());
        return of(out, name, point.state(), point.superheat(), point.subcooling(), Transport.none());
    }

    /** A state outside a cycle. */
    static FluidState of(
            Output out, State state, OptionalDouble superheat, OptionalDouble subcooling, Transport transport) {
        return of(out, null, state, superheat, subcooling, transport);
    }

    /** A saturated state. */
    static FluidState of(Output out, State state, Transport transport) {
        return of(out, null, state, OptionalDouble.empty(), OptionalDouble.empty(), transport);
    }

    private static FluidState of(
            Output out,
            PlaceInLoop name,
            State state,
            OptionalDouble superheat,
            OptionalDouble subcooling,
            Transport transport) {
        return new FluidState(
                name,
                FluidPhase.valueOf(state.phase().name()),
                out.of(QuantityKind.TEMPERATURE, state.temperature()),
                out.of(QuantityKind.PRESSURE, state.pressure()),
                out.of(QuantityKind.DENSITY, state.density()),
                out.of(QuantityKind.SPECIFIC_VOLUME, state.specificVolume()),
                out.of(QuantityKind.SPECIFIC_ENERGY, state.specificEnthalpy()),
                out.of(QuantityKind.SPECIFIC_ENTROPY, state.specificEntropy()),
                out.of(QuantityKind.SPECIFIC_ENERGY, state.specificInternalEnergy()),
                out.plain(state.vaporQuality()),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, superheat),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, subcooling),
                out.of(QuantityKind.SPECIFIC_ENTROPY, state.isobaricHeatCapacity()),
                out.of(QuantityKind.SPECIFIC_ENTROPY, state.isochoricHeatCapacity()),
                out.of(QuantityKind.SPEED, state.speedOfSound()),
                out.of(QuantityKind.JOULE_THOMSON, state.jouleThomsonCoefficient()),
                out.plain(state.compressibilityFactor()),
                out.plain(state.isentropicExponent()),
                out.of(QuantityKind.THERMAL_EXPANSION, state.thermalExpansion()),
                out.of(QuantityKind.COMPRESSIBILITY, state.isothermalCompressibility()),
                out.of(QuantityKind.DYNAMIC_VISCOSITY, transport.viscosity()),
                out.of(QuantityKind.THERMAL_CONDUCTIVITY, transport.thermalConductivity()),
                out.of(QuantityKind.SURFACE_TENSION, transport.surfaceTension()));
    }
}
