package io.loopstate.engine.balance;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.air.AirVariable;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.compression.CoefficientOrder;
import io.loopstate.engine.compression.CompressorUnit;
import io.loopstate.engine.compression.Displacer;
import io.loopstate.engine.compression.Drive;
import io.loopstate.engine.compression.Envelope;
import io.loopstate.engine.compression.Housing;
import io.loopstate.engine.compression.Impeller;
import io.loopstate.engine.compression.Machine;
import io.loopstate.engine.compression.MapCompressor;
import io.loopstate.engine.compression.MotorCooling;
import io.loopstate.engine.compression.Piston;
import io.loopstate.engine.compression.RatingPolynomial;
import io.loopstate.engine.compression.Rotor;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.rejection.AirSide;
import io.loopstate.engine.rejection.Arrangement;
import io.loopstate.engine.rejection.Conductance;
import io.loopstate.engine.rejection.Fan;
import io.loopstate.engine.rejection.MoistAirQuery;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A machine for tests, built up from a small air conditioner; our own invention. Temperatures in degC, flows in m3/s. */
record Plant(
        String refrigerant,
        CompressorUnit compressor,
        double outdoor,
        double indoor,
        Optional<Double> indoorHumidity,
        double condenserConductance,
        double condenserAirflow,
        double evaporatorConductance,
        double evaporatorAirflow,
        double superheat,
        double subcooling,
        Arrangement arrangement) {
    static final double ATMOSPHERE = 101325;

    static Plant small() {
        return new Plant(
                "R-134a", piston(3e-3), 35, 27, Optional.of(0.5), 1500, 1.3, 1200, 0.6, 6, 5, Arrangement.CROSS_FLOW);
    }

    static Drive hermetic() {
        return new Drive(Housing.HERMETIC, MotorCooling.SUCTION_GAS, 0.88, 1, 0.95, 0.05);
    }

    static Drive dischargeCooled() {
        return new Drive(Housing.HERMETIC, MotorCooling.DISCHARGE_GAS, 0.9, 1, 0.95, 0.05);
    }

    static Drive open() {
        return new Drive(Housing.OPEN, MotorCooling.SURROUNDINGS, 0.92, 0.97, 0.94, 0.03);
    }

    static CompressorUnit piston(double swept) {
        return new Machine(pistons(swept, 0.04), hermetic());
    }

    static Displacer pistons(double swept, double clearance) {
        return new Piston(swept, clearance, 5e3, 10e3, 0.02, OptionalDouble.of(0.75), OptionalDouble.empty());
    }

    static Displacer rotor(double swept, OptionalDouble builtIn) {
        return new Rotor(swept, 0.95, builtIn, 0.78);
    }

    static Displacer impeller(double swept, OptionalDouble coefficient) {
        return new Impeller(swept, 230, 1, coefficient, 0.78);
    }

    /**
     * A map that is a polynomial of a real shape: in degC, W and kg/h, from a displacement model of R-134a by hand; coefficients
     * invented.
     */
    static MapCompressor map(Envelope envelope, boolean extrapolate) {
        // constant, S, D, S2, SD, D2, S3, DS2, SD2, D3
        RatingPolynomial flow = polynomial(1 / 3600.0, 190, 6.4, -0.55, 0.07, -0.012, 0.001, 2e-4, 1e-5, -1e-5, -1e-5);
        RatingPolynomial power = polynomial(1, 620, 8, 28, -0.1, 0.35, 0.08, -1e-3, -2e-3, 2e-3, 1e-4);
        return new MapCompressor(
                Optional.of(flow),
                Optional.empty(),
                power,
                Optional.empty(),
                OutletCondition.superheat(11.1),
                OutletCondition.subcooling(0),
                0.75,
                0.05,
                envelope,
                extrapolate);
    }

    private static RatingPolynomial polynomial(double unit, Double... coefficients) {
        return new RatingPolynomial(List.of(coefficients), CoefficientOrder.AHRI_540, 1, 273.15, unit);
    }

    private static RatingPolynomial polynomial(double unit, double constant, double... rest) {
        Double[] all = new Double[rest.length + 1];
        all[0] = constant;
        for (int k = 0; k < rest.length; k++) {
            all[k + 1] = rest[k];
        }
        return polynomial(unit, all);
    }

    Plant with(String fluid, CompressorUnit unit) {
        return new Plant(
                fluid,
                unit,
                outdoor,
                indoor,
                indoorHumidity,
                condenserConductance,
                condenserAirflow,
                evaporatorConductance,
                evaporatorAirflow,
                superheat,
                subcooling,
                arrangement);
    }

    Plant airs(double outside, double inside) {
        return new Plant(
                refrigerant,
                compressor,
                outside,
                inside,
                indoorHumidity,
                condenserConductance,
                condenserAirflow,
                evaporatorConductance,
                evaporatorAirflow,
                superheat,
                subcooling,
                arrangement);
    }

    Plant condenser(double conductance, double airflow) {
        return new Plant(
                refrigerant,
                compressor,
                outdoor,
                indoor,
                indoorHumidity,
                conductance,
                airflow,
                evaporatorConductance,
                evaporatorAirflow,
                superheat,
                subcooling,
                arrangement);
    }

    Plant evaporator(double conductance, double airflow) {
        return new Plant(
                refrigerant,
                compressor,
                outdoor,
                indoor,
                indoorHumidity,
                condenserConductance,
                condenserAirflow,
                conductance,
                airflow,
                superheat,
                subcooling,
                arrangement);
    }

    Plant valve(double superheated, double subcooled) {
        return new Plant(
                refrigerant,
                compressor,
                outdoor,
                indoor,
                indoorHumidity,
                condenserConductance,
                condenserAirflow,
                evaporatorConductance,
                evaporatorAirflow,
                superheated,
                subcooled,
                arrangement);
    }

    Plant humidity(Optional<Double> relative, Arrangement passes) {
        return new Plant(
                refrigerant,
                compressor,
                outdoor,
                indoor,
                relative,
                condenserConductance,
                condenserAirflow,
                evaporatorConductance,
                evaporatorAirflow,
                superheat,
                subcooling,
                passes);
    }

    private static AirSide.Airflow volume(double flow) {
        return new AirSide.Airflow(OptionalDouble.empty(), OptionalDouble.of(flow), AirSide.FlowCondition.ENTERING);
    }

    SystemBalance.Spec spec(WhatIf... whatIfs) {
        return new SystemBalance.Spec(
                TestFluids.of(refrigerant),
                ATMOSPHERE,
                CompressorChoice.of(compressor),
                new CondenserSide(
                        new AirSide.Air(OptionalDouble.of(outdoor + 273.15), Optional.empty()),
                        volume(condenserAirflow),
                        Conductance.uniform(condenserConductance),
                        arrangement,
                        Fan.full()),
                new EvaporatorSide(
                        new AirSide.Air(
                                OptionalDouble.of(indoor + 273.15),
                                indoorHumidity.map(
                                        value -> new MoistAirQuery.Known(AirVariable.RELATIVE_HUMIDITY, value))),
                        volume(evaporatorAirflow),
                        evaporatorConductance,
                        0.8 * evaporatorConductance,
                        0.5),
                new Settings(superheat, 4, subcooling),
                List.of(whatIfs),
                Guidance.common(),
                false);
    }

    SystemBalance.Result balance(WhatIf... whatIfs) {
        return SystemBalance.calculate(spec(whatIfs));
    }

    Loop loop() {
        return Surroundings.loop(spec(), WhatIf.base());
    }
}
