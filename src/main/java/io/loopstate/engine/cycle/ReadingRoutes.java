package io.loopstate.engine.cycle;

import io.loopstate.engine.component.CompressorKind;
import io.loopstate.engine.cycle.FieldReadings.Balance;
import io.loopstate.engine.cycle.FieldReadings.Bound;
import io.loopstate.engine.cycle.FieldReadings.Machine;
import io.loopstate.engine.cycle.FieldReadings.PerMass;
import io.loopstate.engine.cycle.FieldReadings.Route;
import io.loopstate.engine.cycle.FieldReadings.RouteName;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The independent ways from the readings to flow and heat, and how well they agree. */
final class ReadingRoutes {
    private final FieldReadings.Spec spec;
    private final ReadingStates states;
    private final PerMass perMass;

    ReadingRoutes(FieldReadings.Spec spec, ReadingStates states, PerMass perMass) {
        this.spec = spec;
        this.states = states;
        this.perMass = perMass;
    }

    List<Route> routes() {
        List<Route> routes = new ArrayList<>();
        displacement(routes);
        condenserAir(routes);
        evaporatorAir(routes);
        electricalPower(routes);
        evaporatorAirAndPower(routes);
        return routes;
    }

    static List<Balance> balances(List<Route> routes) {
        List<Balance> balances = new ArrayList<>();
        for (int i = 0; i < routes.size(); i++) {
            for (int j = i + 1; j < routes.size(); j++) {
                Route first = routes.get(i);
                Route second = routes.get(j);
                if (independent(first.name(), second.name())
                        && first.heatRejected().isPresent()
                        && second.heatRejected().isPresent()) {
                    double one = first.heatRejected().getAsDouble();
                    double other = second.heatRejected().getAsDouble();
                    balances.add(new Balance(first.name(), second.name(), one, other, (one - other) / other));
                }
            }
        }
        return balances;
    }

    /** m = V eta_v / v1. */
    private void displacement(List<Route> routes) {
        Machine machine = spec.machine();
        machine.displacement().ifPresent(swept -> {
            boolean assumed = machine.volumetricEfficiency().isEmpty();
            double massFlow = swept
                    * machine.volumetricEfficiency().orElse(1)
                    * states.compressorInlet().density();
            routes.add(fromMassFlow(
                    RouteName.DISPLACEMENT,
                    assumed ? Bound.UPPER : Bound.NONE,
                    massFlow,
                    assumed ? List.of("volumetric efficiency not given: taken as one") : List.of()));
        });
    }

    /** Q = m_air cp (T_leaving - T_entering), m = Q / (h2 - h3). */
    private void condenserAir(List<Route> routes) {
        AirHeat air = AirHeat.of(spec.air().condenser(), spec.pressures().atmosphere(), 1);
        air.heat().ifPresent(heat -> {
            OptionalDouble massFlow = Optionals.map(perMass.heatRejection(), value -> heat / value);
            routes.add(new Route(
                    RouteName.CONDENSER_AIR,
                    Bound.NONE,
                    massFlow,
                    times(massFlow, perMass.refrigeratingEffect()),
                    times(massFlow, perMass.compressorWork()),
                    OptionalDouble.of(heat),
                    air.measured() ? List.of() : List.of(AirHeat.DRY_AIR)));
        });
    }

    /** Q = m_air cp (T_entering - T_leaving), m = Q / (h5 - h4). */
    private void evaporatorAir(List<Route> routes) {
        AirHeat air = evaporatorHeat();
        air.heat().ifPresent(heat -> {
            OptionalDouble massFlow = Optionals.map(perMass.refrigeratingEffect(), value -> heat / value);
            routes.add(new Route(
                    RouteName.EVAPORATOR_AIR,
                    air.measured() ? Bound.NONE : Bound.LOWER,
                    massFlow,
                    OptionalDouble.of(heat),
                    times(massFlow, perMass.compressorWork()),
                    times(massFlow, perMass.heatRejection()),
                    air.measured() ? List.of() : List.of(AirHeat.DRY_AIR, AirHeat.SENSIBLE_ONLY)));
        });
    }

    /** m = P / w, with the motor's efficiency where the motor stands outside the refrigerant. */
    private void electricalPower(List<Route> routes) {
        refrigerantPower().ifPresent(power -> {
            OptionalDouble massFlow = Optionals.map(perMass.compressorWork(), work -> power / work);
            routes.add(new Route(
                    RouteName.ELECTRICAL_POWER,
                    motorAssumed() ? Bound.UPPER : Bound.NONE,
                    massFlow,
                    times(massFlow, perMass.refrigeratingEffect()),
                    OptionalDouble.of(power),
                    times(massFlow, perMass.heatRejection()),
                    motorAssumed() ? List.of("motor efficiency not given: taken as one") : List.of()));
        });
    }

    /** Q_rejected = Q_evaporator + P (1 - f). */
    private void evaporatorAirAndPower(List<Route> routes) {
        AirHeat air = evaporatorHeat();
        OptionalDouble power = refrigerantPower();
        if (air.heat().isPresent() && power.isPresent()) {
            double kept = power.getAsDouble() * (1 - spec.machine().heatLossFraction());
            List<String> assumptions = new ArrayList<>();
            assumptions.add("heat taken up by the suction line left out");
            if (!air.measured()) {
                assumptions.add(AirHeat.DRY_AIR);
                assumptions.add(AirHeat.SENSIBLE_ONLY);
            }
            routes.add(new Route(
                    RouteName.EVAPORATOR_AIR_AND_ELECTRICAL_POWER,
                    air.measured() ? Bound.NONE : Bound.LOWER,
                    OptionalDouble.empty(),
                    air.heat(),
                    power,
                    OptionalDouble.of(air.heat().getAsDouble() + kept),
                    assumptions));
        }
    }

    private Route fromMassFlow(RouteName name, Bound bound, double massFlow, List<String> assumptions) {
        OptionalDouble flow = OptionalDouble.of(massFlow);
        return new Route(
                name,
                bound,
                flow,
                times(flow, perMass.refrigeratingEffect()),
                times(flow, perMass.compressorWork()),
                times(flow, perMass.heatRejection()),
                assumptions);
    }

    private AirHeat evaporatorHeat() {
        return AirHeat.of(spec.air().evaporator(), spec.pressures().atmosphere(), -1);
    }

    /** W that reach the refrigerant: electrical of a hermetic compressor, shaft power of an open one. */
    private OptionalDouble refrigerantPower() {
        Machine machine = spec.machine();
        double share = machine.kind() == CompressorKind.OPEN
                ? machine.motorEfficiency().orElse(1)
                : 1;
        return machine.electricity()
                .map(electricity -> OptionalDouble.of(electricity.watt() * share))
                .orElseGet(OptionalDouble::empty);
    }

    private boolean motorAssumed() {
        return spec.machine().kind() == CompressorKind.OPEN
                && spec.machine().motorEfficiency().isEmpty();
    }

    private static OptionalDouble times(OptionalDouble massFlow, OptionalDouble perMass) {
        return Optionals.both(massFlow, perMass, (flow, value) -> flow * value);
    }

    /** The sum of evaporator heat and power is not independent of its two parts. */
    private static boolean independent(RouteName first, RouteName second) {
        return second != RouteName.EVAPORATOR_AIR_AND_ELECTRICAL_POWER
                || first == RouteName.DISPLACEMENT
                || first == RouteName.CONDENSER_AIR;
    }
}
