package io.loopstate.engine.compression;

import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.flash.Equilibrium;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Machines for tests. */
final class Machines {
    private Machines() {}

    static Piston piston(double clearance, double efficiency) {
        return new Piston(0.005, clearance, 0, 0, 0, OptionalDouble.of(efficiency), OptionalDouble.empty());
    }

    static Drive open() {
        return new Drive(Housing.OPEN, MotorCooling.SURROUNDINGS, 0.9, 0.96, 0.92, 0.05);
    }

    static Drive hermetic(MotorCooling cooling) {
        return new Drive(Housing.HERMETIC, cooling, 0.85, 1, 0.93, 0.06);
    }

    static Drive semiHermetic(MotorCooling cooling) {
        return new Drive(Housing.SEMI_HERMETIC, cooling, 0.88, 1, 0.94, 0.04);
    }

    static Drive lossless() {
        return new Drive(Housing.OPEN, MotorCooling.SURROUNDINGS, 1, 1, 1, 0);
    }

    static DisplacementRating.Spec spec(
            Equilibrium equilibrium, SuctionCondition suction, DischargeLevel discharge, Machine machine) {
        return new DisplacementRating.Spec(
                equilibrium,
                suction,
                discharge,
                machine,
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.of(new Supply(400, 3, 0.85)),
                OptionalDouble.empty(),
                Set.of(),
                Processes.ATMOSPHERE,
                Guidance.common(),
                true);
    }

    static DisplacementRating.Spec withCircuit(DisplacementRating.Spec spec, double subcooling) {
        return new DisplacementRating.Spec(
                spec.equilibrium(),
                spec.suction(),
                spec.discharge(),
                spec.machine(),
                spec.cylinders(),
                spec.speed(),
                Optional.of(new Circuit(OutletCondition.subcooling(subcooling), OptionalDouble.empty())),
                spec.supply(),
                spec.minimumVolumeFlow(),
                spec.assumptions(),
                spec.atmosphericPressure(),
                spec.guidance(),
                spec.explain());
    }
}
