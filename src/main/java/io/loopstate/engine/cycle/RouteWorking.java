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
import java.util.OptionalDouble;

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
                case CONDENSER_AIR -> {
                    airHeat(
                            "heat given to the condenser's air",
                            "leaving - entering",
                            spec.air().condenser(),
                            1);
                    flow(
                            route,
                            "heat rejected",
                            route.heatRejected(),
                            result.perMass().heatRejection());
                }
                case EVAPORATOR_AIR -> {
                    airHeat(
                            "heat taken from the evaporator's air",
                            "entering - leaving",
                            spec.air().evaporator(),
                            -1);
                    flow(
                            route,
                            "refrigerating capacity",
                            route.refrigeratingCapacity(),
                            result.perMass().refrigeratingEffect());
                }
                case ELECTRICAL_POWER -> electricalPower(route);
                case EVAPORATOR_AIR_AND_ELECTRICAL_POWER -> sum(route);
            }
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
    }

    private void airHeat(String name, String difference, AirStream air, int sign) {
        AirHeat heat = AirHeat.of(air, spec.pressures().atmosphere(), sign);
        if (heat.measured()) {
            return;
        }
        double change = sign * (air.leaving().orElseThrow() - air.entering().orElseThrow());
        Term rise = working.formula(
                "temperature difference of the air",
                "dT = " + difference,
                Basis.DEFINITION,
                difference("dT", change),
                temperature("leaving", air.leaving().orElseThrow()),
                temperature("entering", air.entering().orElseThrow()));
        air.volumeFlow()
                .ifPresent(volume -> working.formula(
                        "mass flow of the air, taken as dry",
                        "m_air = V * rho",
                        DRY_AIR_SOURCE,
                        massFlow(
                                "m_air",
                                air.massFlow(spec.pressures().atmosphere()).orElseThrow()),
                        volumeFlow("V", volume),
                        Working.density(
                                "rho",
                                air.density(spec.pressures().atmosphere()).orElseThrow())));
        working.formula(
                name,
                "Q = m_air * cp * dT",
                DRY_AIR_SOURCE,
                power("Q", heat.heat().orElseThrow()),
                massFlow("m_air", air.massFlow(spec.pressures().atmosphere()).orElseThrow()),
                new Term("cp", Constants.DRY_AIR_HEAT_CAPACITY, QuantityKind.SPECIFIC_HEAT_CAPACITY),
                rise);
    }

    private void flow(Route route, String from, OptionalDouble amount, OptionalDouble perMass) {
        if (route.massFlow().isPresent()) {
            working.formula(
                    "mass flow from the " + from,
                    "m = Q / q",
                    Basis.FIRST_LAW,
                    massFlow("m", route.massFlow().getAsDouble()),
                    power("Q", amount.orElseThrow()),
                    energy("q", perMass.orElseThrow()));
        }
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
