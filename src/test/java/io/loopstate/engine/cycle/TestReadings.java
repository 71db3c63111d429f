package io.loopstate.engine.cycle;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.component.CompressorKind;
import io.loopstate.engine.cycle.FieldReadings.Air;
import io.loopstate.engine.cycle.FieldReadings.LineTemperatures;
import io.loopstate.engine.cycle.FieldReadings.Machine;
import io.loopstate.engine.cycle.FieldReadings.Pressures;
import io.loopstate.engine.cycle.FieldReadings.Result;
import io.loopstate.engine.flash.Equilibrium;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/** Readings for tests: a sound set, and ways to change one of them. Immutable. */
record TestReadings(
        Equilibrium equilibrium,
        Pressures pressures,
        LineTemperatures temperatures,
        Air air,
        Machine machine,
        Guidance guidance,
        boolean explain) {
    static final double ATMOSPHERE = 101_325;

    /**
     * R-134a: evaporating at about -10 degC and condensing at about 40 degC, 6 K superheat at the coil and 10 K at the
     * compressor, 6 K subcooling, 62 degC discharge line. Nothing to find fault with.
     */
    static TestReadings sound() {
        Equilibrium equilibrium = TestFluids.of("R-134a");
        double low = equilibrium.saturationAtTemperature(263.15).dew().pressure();
        double high = equilibrium.saturationAtTemperature(313.15).dew().pressure();
        return new TestReadings(
                equilibrium,
                new Pressures(low, high, some(high - 5e3), ATMOSPHERE),
                new LineTemperatures(273.15, some(335), some(306.5), some(269.15)),
                Air.none(),
                Machine.unknown(),
                Guidance.common(),
                false);
    }

    /** The readings that a design cycle without pressure drops would show. */
    static TestReadings of(DesignCycle.Spec spec, DesignCycle.Result cycle) {
        return new TestReadings(
                spec.equilibrium(),
                new Pressures(
                        cycle.point(PointName.COMPRESSOR_INLET).state().pressure(),
                        cycle.point(PointName.COMPRESSOR_OUTLET).state().pressure(),
                        OptionalDouble.empty(),
                        ATMOSPHERE),
                new LineTemperatures(
                        temperature(cycle, PointName.COMPRESSOR_INLET),
                        some(temperature(cycle, PointName.COMPRESSOR_OUTLET)),
                        some(temperature(cycle, PointName.VALVE_INLET)),
                        some(temperature(cycle, PointName.EVAPORATOR_OUTLET))),
                Air.none(),
                new Machine(
                        spec.compressor().kind(),
                        Optional.empty(),
                        none(),
                        none(),
                        none(),
                        spec.compressor().heatLossFraction(),
                        0,
                        0),
                Guidance.common(),
                false);
    }

    Result result() {
        return FieldReadings.calculate(
                new FieldReadings.Spec(equilibrium, pressures, temperatures, air, machine, guidance, explain));
    }

    List<Finding> findings() {
        return result().findings();
    }

    TestReadings suction(double pressure) {
        return pressures(new Pressures(pressure, pressures.discharge(), pressures.liquidLine(), ATMOSPHERE));
    }

    TestReadings discharge(double pressure) {
        return pressures(new Pressures(pressures.suction(), pressure, none(), ATMOSPHERE));
    }

    TestReadings liquidPressure(OptionalDouble pressure) {
        return pressures(new Pressures(pressures.suction(), pressures.discharge(), pressure, ATMOSPHERE));
    }

    TestReadings suctionLine(double temperature) {
        LineTemperatures old = temperatures;
        return temperatures(
                new LineTemperatures(temperature, old.dischargeLine(), old.liquidLine(), old.evaporatorOutlet()));
    }

    TestReadings dischargeLine(OptionalDouble temperature) {
        LineTemperatures old = temperatures;
        return temperatures(
                new LineTemperatures(old.suctionLine(), temperature, old.liquidLine(), old.evaporatorOutlet()));
    }

    TestReadings liquidLine(OptionalDouble temperature) {
        LineTemperatures old = temperatures;
        return temperatures(
                new LineTemperatures(old.suctionLine(), old.dischargeLine(), temperature, old.evaporatorOutlet()));
    }

    TestReadings evaporatorOutlet(OptionalDouble temperature) {
        LineTemperatures old = temperatures;
        return temperatures(
                new LineTemperatures(old.suctionLine(), old.dischargeLine(), old.liquidLine(), temperature));
    }

    TestReadings outdoor(double temperature) {
        return air(new Air(some(temperature), air.condenser(), air.evaporator()));
    }

    TestReadings condenserAir(AirStream stream) {
        return air(new Air(air.outdoor(), stream, air.evaporator()));
    }

    TestReadings evaporatorAir(AirStream stream) {
        return air(new Air(air.outdoor(), air.condenser(), stream));
    }

    TestReadings displacement(double swept, OptionalDouble efficiency) {
        return machine(old -> new Machine(
                old.kind(),
                old.electricity(),
                some(swept),
                efficiency,
                old.motorEfficiency(),
                old.heatLossFraction(),
                old.liquidLift(),
                old.liquidLineLoss()));
    }

    TestReadings electricity(CompressorKind kind, double watt, OptionalDouble motorEfficiency) {
        return machine(old -> new Machine(
                kind,
                Optional.of(Electricity.ofPower(watt)),
                old.displacement(),
                old.volumetricEfficiency(),
                motorEfficiency,
                old.heatLossFraction(),
                old.liquidLift(),
                old.liquidLineLoss()));
    }

    TestReadings liquidRun(double lift, double loss) {
        return machine(old -> new Machine(
                old.kind(),
                old.electricity(),
                old.displacement(),
                old.volumetricEfficiency(),
                old.motorEfficiency(),
                old.heatLossFraction(),
                lift,
                loss));
    }

    TestReadings explained() {
        return new TestReadings(equilibrium, pressures, temperatures, air, machine, guidance, true);
    }

    TestReadings fluid(Equilibrium other) {
        return new TestReadings(other, pressures, temperatures, air, machine, guidance, explain);
    }

    private TestReadings pressures(Pressures given) {
        return new TestReadings(equilibrium, given, temperatures, air, machine, guidance, explain);
    }

    private TestReadings temperatures(LineTemperatures given) {
        return new TestReadings(equilibrium, pressures, given, air, machine, guidance, explain);
    }

    private TestReadings air(Air given) {
        return new TestReadings(equilibrium, pressures, temperatures, given, machine, guidance, explain);
    }

    private TestReadings machine(UnaryOperator<Machine> change) {
        return new TestReadings(equilibrium, pressures, temperatures, air, change.apply(machine), guidance, explain);
    }

    /** Air by its two temperatures and mass flow. */
    static AirStream airStream(double entering, double leaving, double massFlow) {
        return new AirStream(some(entering), some(leaving), none(), some(massFlow), none());
    }

    static AirStream airTemperatures(double entering, double leaving) {
        return new AirStream(some(entering), some(leaving), none(), none(), none());
    }

    static AirStream measuredHeat(double entering, double watt) {
        return new AirStream(some(entering), none(), none(), none(), some(watt));
    }

    static OptionalDouble some(double value) {
        return OptionalDouble.of(value);
    }

    static OptionalDouble none() {
        return OptionalDouble.empty();
    }

    private static double temperature(DesignCycle.Result cycle, PointName name) {
        return cycle.point(name).state().temperature();
    }
}
