package io.loopstate.engine.cycle;

import static io.loopstate.engine.cycle.Working.difference;
import static io.loopstate.engine.cycle.Working.energy;
import static io.loopstate.engine.cycle.Working.massFlow;
import static io.loopstate.engine.cycle.Working.power;
import static io.loopstate.engine.cycle.Working.ratio;
import static io.loopstate.engine.cycle.Working.specificVolume;
import static io.loopstate.engine.cycle.Working.temperature;
import static io.loopstate.engine.cycle.Working.volumeFlow;

import io.loopstate.engine.component.CompressorKind;
import io.loopstate.engine.cycle.FieldReadings.Result;
import io.loopstate.engine.cycle.FieldReadings.Route;
import io.loopstate.engine.cycle.FieldReadings.Spec;
import io.loopstate.engine.cycle.Step.Term;

/** The working of each route from readings to flow and heat. */
final class RouteWorking {
    private static final String DRY_AIR_SOURCE =
            "ASHRAE Handbook - Fundamentals 2017, chapter 1, dry-air part of equation 28 (from memory)";

    private final Working working;
    private final Spec spec;
    private final ReadingStates states;
    private final Result result;

    RouteWorking(Working working, Spec spec, ReadingStates states, Result result) {
        this.working = working;
        this.spec = spec;
        this.states = states;
        this.result = result;
    }

    void add() {
        for (Route route : result.routes()) {
            switch (route.name()) {
                case DISPLACEMENT -> displacement(route);
                case CONDENSER_AIR -> condenserAir(route);
                case EVAPORATOR_AIR -> evaporatorAir(route);
                case ELECTRICAL_POWER -> electricalPower(route);
                case EVAPORATOR_AIR_AND_ELECTRICAL_POWER -> sum(route);
            }
        }
    }

    private void condenserAir(Route route) {
        airHeat(
                "heat given to the condenser's air",
                "Q_rejected",
                "condenser",
                spec.air().condenser(),
                1);
        route.massFlow()
                .ifPresent(value -> working.formula(
                        "mass flow from the heat rejected",
                        "m = Q_rejected / q_rejected",
                        Basis.FIRST_LAW,
                        massFlow("m", value),
                        power("Q_rejected", route.heatRejected().orElseThrow()),
                        energy("q_rejected", result.perMass().heatRejection().orElseThrow())));
    }

    private void evaporatorAir(Route route) {
        airHeat(
                "heat taken from the evaporator's air",
                "Q",
                "evaporator",
                spec.air().evaporator(),
                -1);
        route.massFlow()
                .ifPresent(value -> working.formula(
                        "mass flow from the refrigerating capacity",
                        "m = Q / q",
                        Basis.FIRST_LAW,
                        massFlow("m", value),
                        power("Q", route.refrigeratingCapacity().orElseThrow()),
                        energy("q", result.perMass().refrigeratingEffect().orElseThrow())));
        heatRejected(route);
    }

    /** What the routes are compared by. */
    private void heatRejected(Route route) {
        if (route.massFlow().isPresent() && route.heatRejected().isPresent()) {
            working.formula(
                    "heat rejected",
                    "Q_rejected = m * q_rejected",
                    Basis.FIRST_LAW,
                    power("Q_rejected", route.heatRejected().getAsDouble()),
                    massFlow("m", route.massFlow().getAsDouble()),
                    energy("q_rejected", result.perMass().heatRejection().orElseThrow()));
        }
    }

    private void displacement(Route route) {
        working.formula(
                "mass flow from the displacement",
                "m = V * eta_v / v1",
                Basis.DEFINITION,
                massFlow("m", route.massFlow().orElseThrow()),
                volumeFlow("V", spec.machine().displacement().orElseThrow()),
                ratio("eta_v", spec.machine().volumetricEfficiency().orElse(1)),
                specificVolume("v1", states.compressorInlet().specificVolume()));
        heatRejected(route);
    }

    private void airHeat(String name, String symbol, String coil, AirStream air, int sign) {
        double atmosphere = spec.pressures().atmosphere();
        AirHeat heat = AirHeat.of(air, atmosphere, sign);
        if (heat.measured()) {
            return;
        }
        Term entering = temperature("entering", air.entering().orElseThrow());
        Term leaving = temperature("leaving", air.leaving().orElseThrow());
        Term change = working.formula(
                "temperature difference of the " + coil + "'s air",
                "dT_" + coil + " = " + (sign > 0 ? "leaving - entering" : "entering - leaving"),
                Basis.DEFINITION,
                difference("dT_" + coil, sign * (leaving.value() - entering.value())),
                leaving,
                entering);
        Term flow = massFlow("m_" + coil, air.massFlow(atmosphere).orElseThrow());
        air.volumeFlow()
                .ifPresent(volume -> working.formula(
                        "mass flow of the " + coil + "'s air, taken as dry",
                        "m_" + coil + " = V_" + coil + " * rho",
                        DRY_AIR_SOURCE,
                        flow,
                        volumeFlow("V_" + coil, volume),
                        Working.density("rho", air.density(atmosphere).orElseThrow())));
        working.formula(
                name,
                "%s = %s * cp * %s".formatted(symbol, flow.symbol(), change.symbol()),
                DRY_AIR_SOURCE,
                power(symbol, heat.heat().orElseThrow()),
                flow,
                new Term("cp", Constants.DRY_AIR_HEAT_CAPACITY, QuantityKind.SPECIFIC_HEAT_CAPACITY),
                change);
    }

    private void electricalPower(Route route) {
        double power = route.compressorPower().orElseThrow();
        Term refrigerant = power("P", power);
        if (spec.machine().kind() == CompressorKind.OPEN) {
            working.formula(
                    "shaft power",
                    "P = P_electrical * eta_motor",
                    Basis.DEFINITION,
                    refrigerant,
                    power(
                            "P_electrical",
                            spec.machine().electricity().orElseThrow().watt()),
                    ratio("eta_motor", spec.machine().motorEfficiency().orElse(1)));
        }
        route.massFlow()
                .ifPresent(value -> working.formula(
                        "mass flow from the compressor power",
                        "m = P / w",
                        Basis.FIRST_LAW,
                        massFlow("m", value),
                        refrigerant,
                        energy("w", result.perMass().compressorWork().orElseThrow())));
        heatRejected(route);
    }

    private void sum(Route route) {
        working.formula(
                "heat rejected from the evaporator's air and the electrical power",
                "Q_rejected = Q + P * (1 - f)",
                Basis.FIRST_LAW,
                power("Q_rejected", route.heatRejected().orElseThrow()),
                power("Q", route.refrigeratingCapacity().orElseThrow()),
                power("P", route.compressorPower().orElseThrow()),
                ratio("f", spec.machine().heatLossFraction()));
    }
}
