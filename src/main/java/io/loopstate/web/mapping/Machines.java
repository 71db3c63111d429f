package io.loopstate.web.mapping;

import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.Require;
import io.loopstate.engine.compression.Circuit;
import io.loopstate.engine.compression.CurvedImpeller;
import io.loopstate.engine.compression.CylinderSize;
import io.loopstate.engine.compression.DisplacementRating.Assumption;
import io.loopstate.engine.compression.Displacer;
import io.loopstate.engine.compression.Drive;
import io.loopstate.engine.compression.HeadCurve;
import io.loopstate.engine.compression.Housing;
import io.loopstate.engine.compression.Impeller;
import io.loopstate.engine.compression.Machine;
import io.loopstate.engine.compression.MotorCooling;
import io.loopstate.engine.compression.Piston;
import io.loopstate.engine.compression.Rotor;
import io.loopstate.engine.compression.Supply;
import io.loopstate.web.dto.CompressorDesign;
import io.loopstate.web.dto.LiquidRequest;
import io.loopstate.web.dto.MachineRequest;
import io.loopstate.web.dto.Quantity;
import io.loopstate.web.dto.SupplyRequest;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Compressors by their displacement as requests give them, in a member {@code machine}. */
final class Machines {
    private static final String MACHINE = "machine.";
    private static final List<String> PISTON = List.of(
            "bore",
            "stroke",
            "cylinders",
            "doubleActing",
            "rodDiameter",
            "clearance",
            "suctionValvePressureDrop",
            "dischargeValvePressureDrop",
            "leakageFraction",
            "polytropicIndex");
    private static final List<String> IMPELLER = List.of(
            "tipSpeed",
            "impellerDiameter",
            "stages",
            "headCoefficient",
            "inletVolumeFlow",
            "minimumVolumeFlow",
            "flowCoefficients",
            "headCoefficients",
            "efficiencies");
    private static final List<String> CURVE = List.of("flowCoefficients", "headCoefficients", "efficiencies");
    private static final List<String> SWEPT =
            List.of("displacementPerRevolution", "displacement", "volumetricEfficiency");
    private static final String BUILT_IN = "builtInVolumeRatio";

    private Machines() {}

    /** The engine's names of inputs, as members of a request of this type. */
    static Map<String, List<String>> inputs(Class<?> request) {
        Map<String, List<String>> inputs = new HashMap<>(Ports.INPUTS);
        for (String path : Shape.of(request).leaves().keySet()) {
            if (path.startsWith(MACHINE)) {
                inputs.put(Paths.last(path), List.of(path));
            }
        }
        return inputs;
    }

    static void check(Input<?> input, MachineRequest machine) {
        if (machine == null || machine.design() == null) {
            return;
        }
        switch (machine.design()) {
            case RECIPROCATING -> checkPiston(input);
            case ROTARY, SCROLL, SCREW -> {
                refuse(input, machine, PISTON);
                refuse(input, machine, IMPELLER);
                exactlyOne(input, "displacementPerRevolution", "displacement");
                input.exactlyOne(MACHINE + "isentropicEfficiency");
            }
            case CENTRIFUGAL -> {
                refuse(input, machine, PISTON);
                refuse(input, machine, SWEPT);
                refuse(input, machine, List.of(BUILT_IN));
                checkImpeller(input, machine);
            }
        }
        needs(input, "displacementPerRevolution", "speed", "displacement is volume times speed.");
    }

    private static void checkImpeller(Input<?> input, MachineRequest machine) {
        needs(input, "impellerDiameter", "speed", "tip speed is diameter times speed.");
        if (CURVE.stream().noneMatch(member -> input.given(MACHINE + member))) {
            input.exactlyOne(MACHINE + "inletVolumeFlow");
            exactlyOne(input, "tipSpeed", "impellerDiameter");
            input.exactlyOne(MACHINE + "isentropicEfficiency");
            return;
        }
        CURVE.forEach(member -> input.exactlyOne(MACHINE + member));
        input.exactlyOne(MACHINE + "impellerDiameter");
        input.refuseMembers(
                "follows from the head-flow curve",
                paths(List.of(
                        "tipSpeed",
                        "headCoefficient",
                        "inletVolumeFlow",
                        "minimumVolumeFlow",
                        "isentropicEfficiency")));
        if (machine.flowCoefficients() != null) {
            input.requireLength(
                    MACHINE + "headCoefficients",
                    machine.headCoefficients(),
                    machine.flowCoefficients().size());
            input.requireLength(
                    MACHINE + "efficiencies",
                    machine.efficiencies(),
                    machine.flowCoefficients().size());
        }
    }

    private static void checkPiston(Input<?> input) {
        input.refuseMembers("not with a reciprocating compressor", paths(IMPELLER));
        input.refuseMembers("not with a reciprocating compressor", MACHINE + BUILT_IN);
        exactlyOne(input, "bore", "displacementPerRevolution", "displacement");
        needs(input, "bore", "stroke", "the volume is that of a cylinder.");
        needs(input, "bore", "speed", "displacement is volume times speed.");
        exactlyOne(input, "clearance", "volumetricEfficiency");
        exactlyOne(input, "isentropicEfficiency", "polytropicIndex");
        for (String inside : List.of(
                "suctionValvePressureDrop", "dischargeValvePressureDrop", "leakageFraction", "polytropicIndex")) {
            needs(input, inside, "clearance", "a volumetric efficiency given as such leaves nothing to model.");
        }
    }

    private static void refuse(Input<?> input, MachineRequest machine, List<String> members) {
        input.refuseMembers("not with a " + WireNames.name(machine.design()) + " compressor", paths(members));
    }

    private static String[] paths(List<String> members) {
        return members.stream().map(MACHINE::concat).toArray(String[]::new);
    }

    private static void exactlyOne(Input<?> input, String... members) {
        input.exactlyOne(paths(List.of(members)));
    }

    private static void needs(Input<?> input, String member, String needed, String reason) {
        input.needs(MACHINE + member, MACHINE + needed, reason);
    }

    static Machine machine(MachineRequest request) {
        // Factors of what the engine is given: named by themselves rather than by their product.
        Require.positive("speed", speed(request));
        Require.positive("impellerDiameter", Si.optional(request.impellerDiameter()));
        Require.positive("displacementPerRevolution", Si.optional(request.displacementPerRevolution()));
        return new Machine(displacer(request), drive(request));
    }

    private static Displacer displacer(MachineRequest request) {
        boolean centrifugal = request.design() == CompressorDesign.CENTRIFUGAL;
        if (centrifugal) {
            double tipSpeed = request.tipSpeed() == null
                    ? Math.PI
                            * request.impellerDiameter().value()
                            * request.speed().value()
                    : request.tipSpeed().value();
            if (request.flowCoefficients() != null) {
                return new CurvedImpeller(
                        tipSpeed,
                        request.impellerDiameter().value(),
                        orOne(request.stages()),
                        new HeadCurve(request.flowCoefficients(), request.headCoefficients(), request.efficiencies()));
            }
            return new Impeller(
                    request.inletVolumeFlow().value(),
                    tipSpeed,
                    orOne(request.stages()),
                    Si.optional(request.headCoefficient()),
                    request.isentropicEfficiency());
        }
        double swept = swept(request);
        if (request.clearance() == null) {
            return new Rotor(
                    swept,
                    orOne(request.volumetricEfficiency()),
                    Si.optional(request.builtInVolumeRatio()),
                    request.isentropicEfficiency());
        }
        return new Piston(
                swept,
                request.clearance(),
                Si.orZero(request.suctionValvePressureDrop()),
                Si.orZero(request.dischargeValvePressureDrop()),
                Si.orZero(request.leakageFraction()),
                Si.optional(request.isentropicEfficiency()),
                Si.optional(request.polytropicIndex()));
    }

    private static double swept(MachineRequest request) {
        if (request.displacement() != null) {
            return request.displacement().value();
        }
        double volume = cylinders(request)
                .map(CylinderSize::volumePerRevolution)
                .orElseGet(() -> request.displacementPerRevolution().value());
        return volume * request.speed().value();
    }

    static Optional<CylinderSize> cylinders(MachineRequest request) {
        return Optional.ofNullable(request.bore())
                .map(bore -> new CylinderSize(
                        bore.value(),
                        request.stroke().value(),
                        orOne(request.cylinders()),
                        Boolean.TRUE.equals(request.doubleActing()),
                        Si.orZero(request.rodDiameter())));
    }

    private static Drive drive(MachineRequest request) {
        Housing housing = Housing.valueOf(request.housing().name());
        return new Drive(
                housing,
                request.motorCooling() == null
                        ? Drive.usualCooling(housing)
                        : MotorCooling.valueOf(request.motorCooling().name()),
                orOne(request.motorEfficiency()),
                orOne(request.driveEfficiency()),
                orOne(request.mechanicalEfficiency()),
                Si.orZero(request.heatLossFraction()));
    }

    static Set<Assumption> assumptions(MachineRequest request) {
        Set<Assumption> assumptions = EnumSet.noneOf(Assumption.class);
        boolean rotor = request.clearance() == null && request.design() != CompressorDesign.CENTRIFUGAL;
        if (rotor && request.volumetricEfficiency() == null) {
            assumptions.add(Assumption.VOLUMETRIC_EFFICIENCY);
        }
        if (request.motorEfficiency() == null) {
            assumptions.add(Assumption.MOTOR_EFFICIENCY);
        }
        return assumptions;
    }

    static void checkCircuit(Input<?> input) {
        if (input.given("evaporatorOutletTemperature")) {
            input.exactlyOne("liquid.temperature", "liquid.subcooling");
        } else {
            input.atMostOne("liquid.temperature", "liquid.subcooling");
        }
    }

    static Optional<Circuit> circuit(Input<?> input, LiquidRequest liquid, Quantity evaporatorOutletTemperature) {
        if (liquid == null) {
            return Optional.empty();
        }
        OutletCondition condition = input.engine(
                "liquid",
                () -> liquid.subcooling() == null
                        ? OutletCondition.temperature(liquid.temperature().value())
                        : OutletCondition.subcooling(liquid.subcooling().value()));
        return Optional.of(new Circuit(condition, Si.optional(evaporatorOutletTemperature)));
    }

    static void checkSupply(Input<?> input) {
        String reason = "the current follows from the power.";
        input.needs("supply.voltage", "supply.powerFactor", reason);
        input.needs("supply.powerFactor", "supply.voltage", reason);
        if (!input.given("supply.powerFactor")) {
            input.needs("supply.phases", "supply.voltage", reason);
        }
    }

    static Optional<Supply> supply(SupplyRequest request) {
        return Optional.ofNullable(request)
                .map(given -> new Supply(
                        given.voltage().value(), given.phases() == null ? 3 : given.phases(), given.powerFactor()));
    }

    static OptionalDouble speed(MachineRequest request) {
        return Si.optional(request.speed());
    }

    private static int orOne(Integer number) {
        return number == null ? 1 : number;
    }

    private static double orOne(Double number) {
        return number == null ? 1 : number;
    }
}
