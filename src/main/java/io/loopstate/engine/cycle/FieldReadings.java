package io.loopstate.engine.cycle;

import io.loopstate.engine.component.CompressorKind;
import io.loopstate.engine.component.Require;
import io.loopstate.engine.flash.Equilibrium;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the readings of a technician on a running single-stage unit determine. */
public final class FieldReadings {
    private FieldReadings() {}

    /**
     * What the readings determine.
     *
     * @throws io.loopstate.engine.error.EngineException where readings are impossible together or leave the range of the
     *     equation of state; it names the reading: {@code suctionPressure}, {@code suctionLineTemperature}, {@code
     *     dischargePressure} ...
     */
    public static Result calculate(Spec spec) {
        return ReadingResults.of(spec);
    }

    /**
     * The readings.
     *
     * @param equilibrium the refrigerant
     * @param pressures absolute pressures
     * @param temperatures line temperatures
     * @param air air temperatures and flows
     * @param machine compressor data and electrical readings
     * @param guidance limits for the findings
     * @param explain whether the result shows its working
     */
    public record Spec(
            Equilibrium equilibrium,
            Pressures pressures,
            LineTemperatures temperatures,
            Air air,
            Machine machine,
            Guidance guidance,
            boolean explain) {
        public Spec {
            Objects.requireNonNull(equilibrium);
            Objects.requireNonNull(pressures);
            Objects.requireNonNull(temperatures);
            Objects.requireNonNull(air);
            Objects.requireNonNull(machine);
            Objects.requireNonNull(guidance);
        }
    }

    /**
     * Absolute pressures, Pa.
     *
     * @param suction at the compressor
     * @param discharge at the compressor
     * @param liquidLine where the liquid line temperature is taken; the discharge pressure stands in for it if empty
     * @param atmosphere of the place
     */
    public record Pressures(double suction, double discharge, OptionalDouble liquidLine, double atmosphere) {
        public Pressures {
            Require.positive("suctionPressure", suction);
            Require.positive("dischargePressure", discharge);
            Require.positive("liquidLinePressure", liquidLine);
            Require.positive("atmosphericPressure", atmosphere);
        }
    }

    /**
     * Line temperatures, K.
     *
     * @param suctionLine at the compressor
     * @param dischargeLine at the compressor
     * @param liquidLine before the valve
     * @param evaporatorOutlet at the coil, where the sensing bulb sits
     */
    public record LineTemperatures(
            double suctionLine,
            OptionalDouble dischargeLine,
            OptionalDouble liquidLine,
            OptionalDouble evaporatorOutlet) {
        public LineTemperatures {
            Require.positive("suctionLineTemperature", suctionLine);
            Require.positive("dischargeLineTemperature", dischargeLine);
            Require.positive("liquidLineTemperature", liquidLine);
            Require.positive("evaporatorOutletTemperature", evaporatorOutlet);
        }
    }

    /**
     * Air side.
     *
     * @param outdoor K
     * @param condenser air of the condenser or gas cooler
     * @param evaporator air of the evaporator
     */
    public record Air(OptionalDouble outdoor, AirStream condenser, AirStream evaporator) {
        public Air {
            Require.positive("outdoorAirTemperature", outdoor);
            condenser.require("condenserAir");
            evaporator.require("evaporatorAir");
        }

        /** Nothing measured. */
        public static Air none() {
            return new Air(OptionalDouble.empty(), AirStream.none(), AirStream.none());
        }
    }

    /**
     * Compressor and liquid line.
     *
     * @param kind where the motor's heat goes
     * @param electricity electrical readings of the compressor
     * @param displacement m3/s swept
     * @param volumetricEfficiency suction volume flow over displacement
     * @param motorEfficiency shaft over electrical power
     * @param heatLossFraction share of the work given off by the shell
     * @param liquidLift m from where the liquid pressure is read up to the valve, negative if down
     * @param liquidLineLoss Pa of friction between the same places
     */
    public record Machine(
            CompressorKind kind,
            Optional<Electricity> electricity,
            OptionalDouble displacement,
            OptionalDouble volumetricEfficiency,
            OptionalDouble motorEfficiency,
            double heatLossFraction,
            double liquidLift,
            double liquidLineLoss) {
        public Machine {
            Objects.requireNonNull(kind);
            Objects.requireNonNull(electricity);
            Require.positive("displacement", displacement);
            Require.efficiency("volumetricEfficiency", volumetricEfficiency);
            Require.efficiency("motorEfficiency", motorEfficiency);
            Require.properShare("heatLossFraction", heatLossFraction);
            Require.finite("liquidLift", liquidLift);
            Require.notNegative("liquidLineLoss", liquidLineLoss);
        }

        /** A hermetic compressor of which nothing else is known. */
        public static Machine unknown() {
            OptionalDouble none = OptionalDouble.empty();
            return new Machine(CompressorKind.HERMETIC, Optional.empty(), none, none, none, 0, 0, 0);
        }
    }

    /**
     * What the readings determine.
     *
     * @param points states at the places whose readings were given, in the direction of flow
     * @param evaporating temperatures at the suction pressure
     * @param condensing temperatures at the discharge pressure; empty above the critical pressure
     * @param superheat K at the compressor, suction line less dew point; negative where the readings say so, and then the
     *     point is taken as saturated vapor
     * @param evaporatorSuperheat K at the evaporator's outlet, against the suction pressure
     * @param subcooling K, bubble point at the liquid line pressure less liquid line; negative where the readings say so,
     *     and then the point is taken as saturated liquid
     * @param liquidLinePressureAssumed whether the discharge pressure stood in for that of the liquid line
     * @param flashMargin K between the liquid's temperature and its bubble point at the valve, after lift and friction
     * @param condensingOverAmbient K, condensing midpoint less outdoor air, or less air entering the condenser
     * @param evaporatorTemperatureDifference K, air entering the evaporator less evaporating midpoint
     * @param pressureRatio absolute
     * @param compression what the discharge line tells of the compressor
     * @param perMass the cycle per kilogram
     * @param routes each independent way to flow and heat that the readings open
     * @param balances each pair of routes that reach the same heat
     * @param condenserAirDensity kg/m3 taken for dry air entering the condenser
     * @param evaporatorAirDensity kg/m3 taken for dry air entering the evaporator
     * @param findings what is unwise, implausible or worth knowing
     * @param steps the working, in order; empty unless asked for
     */
    public record Result(
            List<Point> points,
            SaturationTemperatures evaporating,
            Optional<SaturationTemperatures> condensing,
            double superheat,
            OptionalDouble evaporatorSuperheat,
            OptionalDouble subcooling,
            boolean liquidLinePressureAssumed,
            OptionalDouble flashMargin,
            OptionalDouble condensingOverAmbient,
            OptionalDouble evaporatorTemperatureDifference,
            double pressureRatio,
            Optional<Compression> compression,
            PerMass perMass,
            List<Route> routes,
            List<Balance> balances,
            OptionalDouble condenserAirDensity,
            OptionalDouble evaporatorAirDensity,
            List<Finding> findings,
            List<Step> steps) {
        public Result {
            points = List.copyOf(points);
            routes = List.copyOf(routes);
            balances = List.copyOf(balances);
            findings = List.copyOf(findings);
            steps = List.copyOf(steps);
        }

        Result with(List<Finding> newFindings, List<Step> newSteps) {
            return new Result(
                    points,
                    evaporating,
                    condensing,
                    superheat,
                    evaporatorSuperheat,
                    subcooling,
                    liquidLinePressureAssumed,
                    flashMargin,
                    condensingOverAmbient,
                    evaporatorTemperatureDifference,
                    pressureRatio,
                    compression,
                    perMass,
                    routes,
                    balances,
                    condenserAirDensity,
                    evaporatorAirDensity,
                    newFindings,
                    newSteps);
        }
    }

    /**
     * The compressor as measured between suction and discharge line.
     *
     * @param isentropicEfficiency as measured, also where the reading makes it impossible (a finding says so); of a
     *     hermetic compressor it includes the motor
     * @param isentropicWork J/kg
     * @param work J/kg, enthalpy rise and shell loss
     */
    public record Compression(double isentropicEfficiency, double isentropicWork, double work) {}

    /**
     * The cycle per kilogram, as far as the readings reach.
     *
     * @param refrigeratingEffect J/kg up to the evaporator's outlet if that was read, else up to the compressor
     * @param compressorWork J/kg
     * @param heatRejection J/kg from the discharge line to the liquid line
     * @param coefficientOfPerformance effect over work
     * @param energyEfficiencyRatio the same in Btu/h per W
     * @param carnotCoefficientOfPerformance Te / (Tc - Te) between midpoint temperatures
     * @param evaporatorInletQuality kg/kg behind the valve
     */
    public record PerMass(
            OptionalDouble refrigeratingEffect,
            OptionalDouble compressorWork,
            OptionalDouble heatRejection,
            OptionalDouble coefficientOfPerformance,
            OptionalDouble energyEfficiencyRatio,
            OptionalDouble carnotCoefficientOfPerformance,
            OptionalDouble evaporatorInletQuality) {}

    /** Where a route starts. */
    public enum RouteName {
        DISPLACEMENT,
        CONDENSER_AIR,
        EVAPORATOR_AIR,
        ELECTRICAL_POWER,
        /** Heat rejected as the sum of the evaporator's air-side heat and the electrical power. */
        EVAPORATOR_AIR_AND_ELECTRICAL_POWER
    }

    /** On which side of the true figures a route's may lie because something was not measured. */
    public enum Bound {
        NONE,
        LOWER,
        UPPER
    }

    /**
     * Flow and heat by one route.
     *
     * @param name where it starts
     * @param bound whether its figures are a bound
     * @param massFlow kg/s
     * @param refrigeratingCapacity W
     * @param compressorPower W
     * @param heatRejected W
     * @param assumptions what it rests on besides the readings, plain English
     */
    public record Route(
            RouteName name,
            Bound bound,
            OptionalDouble massFlow,
            OptionalDouble refrigeratingCapacity,
            OptionalDouble compressorPower,
            OptionalDouble heatRejected,
            List<String> assumptions) {
        public Route {
            assumptions = List.copyOf(assumptions);
        }
    }

    /**
     * Two routes to the same heat rejected.
     *
     * @param first a route
     * @param second another
     * @param firstHeat W
     * @param secondHeat W
     * @param difference first less second over the second
     */
    public record Balance(RouteName first, RouteName second, double firstHeat, double secondHeat, double difference) {}
}
