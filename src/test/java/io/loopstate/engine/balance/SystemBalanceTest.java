package io.loopstate.engine.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.compression.CompressorUnit;
import io.loopstate.engine.compression.EnergyBalance;
import io.loopstate.engine.compression.Envelope;
import io.loopstate.engine.compression.Machine;
import io.loopstate.engine.cycle.FindingCode;
import io.loopstate.engine.cycle.Point;
import io.loopstate.engine.cycle.PointName;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.property.State;
import io.loopstate.engine.rejection.Arrangement;
import io.loopstate.engine.rejection.CondenserCoil;
import io.loopstate.engine.rejection.EvaporatorCoil;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Whole machines: laws that hold for each, the parts by themselves, and an independent solution; no published values exist. */
class SystemBalanceTest {
    static Stream<Arguments> kinds() {
        Plant small = Plant.small();
        Plant rooftop = small.condenser(4000, 4).evaporator(3500, 1.2);
        Plant large = small.condenser(60e3, 40).evaporator(60e3, 25);
        return Stream.of(
                Arguments.of("reciprocating, hermetic", small),
                Arguments.of(
                        "reciprocating, open, R-717",
                        small.with("R-717", new Machine(Plant.pistons(2.5e-3, 0.05), Plant.open()))),
                Arguments.of(
                        "rotary, motor in the discharge vapor, R-290",
                        small.with(
                                "R-290",
                                new Machine(Plant.rotor(2e-3, OptionalDouble.empty()), Plant.dischargeCooled()))),
                Arguments.of(
                        "scroll, R-454B",
                        rooftop.with(
                                "R-454B", new Machine(Plant.rotor(3e-3, OptionalDouble.of(2.6)), Plant.hermetic()))),
                Arguments.of(
                        "screw, R-448A",
                        large.with("R-448A", new Machine(Plant.rotor(0.06, OptionalDouble.of(3)), Plant.open()))),
                Arguments.of(
                        "centrifugal",
                        large.with("R-134a", new Machine(Plant.impeller(0.15, OptionalDouble.of(0.6)), Plant.open()))),
                Arguments.of("rating map", small.with("R-134a", Plant.map(Envelope.unlimited(), false))));
    }

    private static State at(Balanced balanced, PointName name) {
        return balanced.points().stream()
                .filter(point -> point.name() == name)
                .map(Point::state)
                .findFirst()
                .orElseThrow();
    }

    /** First law, from the points around the loop instead of the sums of the result. */
    @ParameterizedTest
    @MethodSource("kinds")
    void energyBalanceCloses(String name, Plant plant) {
        Balanced balanced = plant.balance().base();
        EnergyBalance energy = balanced.energy();
        double liquid = at(balanced, PointName.CONDENSER_OUTLET).specificEnthalpy();
        double vapor = at(balanced, PointName.EVAPORATOR_OUTLET).specificEnthalpy();
        double suction = at(balanced, PointName.COMPRESSOR_INLET).specificEnthalpy();
        double discharge = at(balanced, PointName.COMPRESSOR_OUTLET).specificEnthalpy();
        double flow = balanced.massFlow();
        double rejected = flow * (discharge - liquid);
        double zones = balanced.condenser().zones().stream()
                .mapToDouble(zone -> zone.heat())
                .sum();
        assertThat(zones).isCloseTo(rejected, within(1e-9 * rejected));
        assertThat(flow * (vapor - liquid) + flow * (suction - vapor) + energy.electricalPower() - energy.heatLoss())
                .isCloseTo(rejected, within(1e-9 * rejected));
        assertThat(energy.residual()).isCloseTo(0, within(1e-9));
        assertThat(at(balanced, PointName.EVAPORATOR_INLET).specificEnthalpy())
                .isCloseTo(liquid, within(1e-9 * Math.abs(liquid)));
        airTakesTheHeat(balanced);
        double reversible = balanced.evaporating().bubble()
                / (balanced.condensing().dew() - balanced.evaporating().bubble());
        assertThat(energy.coefficientOfPerformance()).isBetween(0.5, reversible);
    }

    /** What the refrigerant takes and gives is what the air gives and takes. */
    private static void airTakesTheHeat(Balanced balanced) {
        Balanced.CondenserFigures condenser = balanced.condenser();
        double outdoor = condenser.airMassFlow()
                * (condenser.leaving().state().specificEnthalpy()
                        - condenser.entering().state().specificEnthalpy());
        double rejected = balanced.energy().heatRejected();
        assertThat(outdoor).isCloseTo(rejected, within(1e-9 * rejected));
        Balanced.EvaporatorFigures evaporator = balanced.evaporator();
        double water = 4186 * (evaporator.leaving().state().dryBulb() - 273.15);
        double indoor = evaporator.airMassFlow()
                        * (evaporator.entering().state().specificEnthalpy()
                                - evaporator.leaving().state().specificEnthalpy())
                - evaporator.condensate() * water;
        double capacity = balanced.energy().refrigeratingCapacity();
        assertThat(indoor).isCloseTo(capacity, within(1e-9 * capacity));
        assertThat(evaporator.sensibleHeat() + evaporator.latentHeat()).isCloseTo(capacity, within(1e-9 * capacity));
        assertThat(evaporator.leaving().state().relativeHumidity()).isLessThan(1 + 1e-9);
    }

    /** Each component by itself, given what the balance says, says the same. */
    @ParameterizedTest
    @MethodSource("kinds")
    void partsAgree(String name, Plant plant) {
        Loop loop = plant.loop();
        Balanced balanced = plant.balance().base();
        double evaporating = balanced.evaporating().pressure();
        double condensing = balanced.condensing().pressure();
        State suction = at(balanced, PointName.COMPRESSOR_INLET);
        CompressorUnit.Running running = plant.compressor().run(loop.equilibrium(), suction, condensing);
        assertThat(running.massFlow()).isCloseTo(balanced.massFlow(), within(1e-9 * running.massFlow()));
        assertThat(running.electricalPower())
                .isCloseTo(balanced.energy().electricalPower(), within(1e-9 * running.electricalPower()));
        CondenserCoil.Operating condenser = loop.condenser()
                .solve(
                        running.massFlow(),
                        running.discharge().specificEnthalpy(),
                        loop.settings().liquid());
        assertThat(condenser.pressure()).isCloseTo(condensing, within(1e-9 * condensing));
        assertThat(condenser.heat()).isCloseTo(balanced.energy().heatRejected(), within(1e-9 * condenser.heat()));
        EvaporatorCoil.Operating evaporator = loop.evaporator()
                .solve(
                        running.massFlow(),
                        condenser.outlet().specificEnthalpy(),
                        loop.settings().vapor());
        assertThat(evaporator.pressure()).isCloseTo(evaporating, within(1e-9 * evaporating));
        assertThat(evaporator.heat())
                .isCloseTo(balanced.energy().refrigeratingCapacity(), within(1e-9 * evaporator.heat()));
    }

    /** The same equations by plain bisection within bisection, over pressures themselves. */
    @ParameterizedTest
    @MethodSource("kinds")
    void slowBisectionFindsTheSame(String name, Plant plant) {
        SlowBalance slow = SlowBalance.of(plant);
        Balanced balanced = plant.balance().base();
        assertThat(balanced.evaporating().pressure()).isCloseTo(slow.evaporating(), within(1e-9 * slow.evaporating()));
        assertThat(balanced.condensing().pressure()).isCloseTo(slow.condensing(), within(1e-9 * slow.condensing()));
    }

    @Test
    void hotterOutdoorAirCondensesHigherAndCoolsLess() {
        Balanced before = Plant.small().airs(20, 27).balance().base();
        for (int outdoor = 25; outdoor <= 55; outdoor += 5) {
            Balanced after = Plant.small().airs(outdoor, 27).balance().base();
            assertThat(after.condensing().pressure())
                    .isGreaterThan(before.condensing().pressure());
            assertThat(after.evaporating().pressure())
                    .isGreaterThan(before.evaporating().pressure());
            assertThat(after.energy().refrigeratingCapacity())
                    .isLessThan(before.energy().refrigeratingCapacity());
            assertThat(after.compressor().dischargeTemperature())
                    .isGreaterThan(before.compressor().dischargeTemperature());
            before = after;
        }
    }

    @Test
    void moreOutdoorAirAndALargerCondenserCondenseLower() {
        Balanced start = Plant.small().condenser(700, 0.7).balance().base();
        double air = start.condensing().pressure();
        double coil = air;
        double approach = start.condenser().condensingOverAmbient();
        for (double factor = 1.3; factor < 8; factor *= 1.3) {
            Balanced moreAir =
                    Plant.small().condenser(700, 0.7 * factor).balance().base();
            Balanced largerCoil =
                    Plant.small().condenser(700 * factor, 0.7).balance().base();
            assertThat(moreAir.condensing().pressure()).isLessThan(air);
            assertThat(largerCoil.condensing().pressure()).isLessThan(coil);
            assertThat(largerCoil.condenser().condensingOverAmbient()).isLessThan(approach);
            air = moreAir.condensing().pressure();
            coil = largerCoil.condensing().pressure();
            approach = largerCoil.condenser().condensingOverAmbient();
        }
    }

    @Test
    void littleIndoorAirEvaporatesLower() {
        double before = 0;
        for (double flow = 0.1; flow < 3; flow *= 1.4) {
            Balanced balanced = Plant.small().evaporator(1200, flow).balance().base();
            assertThat(balanced.evaporating().pressure()).isGreaterThan(before);
            before = balanced.evaporating().pressure();
        }
    }

    @Test
    void aLargerEvaporatorComesCloserToItsAir() {
        double before = Double.POSITIVE_INFINITY;
        for (double conductance = 200; conductance < 5000; conductance *= 1.5) {
            double difference = Plant.small()
                    .evaporator(conductance, 0.6)
                    .balance()
                    .base()
                    .evaporator()
                    .temperatureDifference();
            assertThat(difference).isLessThan(before);
            before = difference;
        }
    }

    @Test
    void moreHumidAirGivesMoreCapacityAndLessOfItSensible() {
        Balanced dry = Plant.small()
                .humidity(Optional.of(0.2), Arrangement.CROSS_FLOW)
                .balance()
                .base();
        Balanced damp = Plant.small()
                .humidity(Optional.of(0.7), Arrangement.CROSS_FLOW)
                .balance()
                .base();
        Balanced saturated = Plant.small()
                .humidity(Optional.of(1.0), Arrangement.CROSS_FLOW)
                .balance()
                .base();
        assertThat(dry.evaporator().sensibleHeatRatio())
                .isGreaterThan(damp.evaporator().sensibleHeatRatio());
        assertThat(damp.evaporator().sensibleHeatRatio())
                .isGreaterThan(saturated.evaporator().sensibleHeatRatio());
        assertThat(damp.energy().refrigeratingCapacity())
                .isGreaterThan(dry.energy().refrigeratingCapacity());
        assertThat(saturated.evaporator().leaving().state().relativeHumidity()).isLessThan(1 + 1e-9);
        airTakesTheHeat(saturated);
    }

    /** Where coils are far larger than anything needs, the valve and the charge set the levels. */
    @Test
    void outletsAskedForSetThePressuresOfHugeCoils() {
        Plant plant = Plant.small().condenser(1e7, 5000).evaporator(1e7, 5000);
        Balanced balanced = plant.balance().base();
        assertThat(balanced.evaporating().dew()).isCloseTo(27 + 273.15 - 6, within(1e-5));
        assertThat(balanced.condensing().bubble()).isCloseTo(35 + 273.15 + 5, within(1e-5));
        assertThat(balanced.condenser().areaLeftOver()).isBetween(0.9, 1.0);
        assertThat(balanced.evaporator().areaLeftOver()).isBetween(0.9, 1.0);
        assertThat(balanced.energy().residual()).isCloseTo(0, within(1e-9));
        assertThat(balanced.findings())
                .filteredOn(finding -> finding.code() == FindingCode.AREA_LEFT_OVER)
                .hasSize(2);
    }

    static Stream<Arguments> machinesWithoutABalance() {
        Plant small = Plant.small();
        return Stream.of(
                Arguments.of(small.with("R-744", Plant.piston(1e-3)), Component.CONDENSER, "outdoorAir.dryBulb"),
                Arguments.of(small.condenser(60, 0.05), Component.CONDENSER, "condenser.conductance"),
                Arguments.of(
                        small.with("R-454B", Plant.piston(3e-3)).condenser(150, 0.1),
                        Component.CONDENSER,
                        "condenser.conductance"),
                Arguments.of(
                        small.with("R-134a", new Machine(Plant.rotor(100, OptionalDouble.empty()), Plant.open()))
                                .condenser(1e6, 1000)
                                .evaporator(20, 0.02),
                        Component.EVAPORATOR,
                        "evaporator.conductance"),
                Arguments.of(small.airs(-30, 27), Component.COMPRESSOR, "outdoorAir.dryBulb"),
                Arguments.of(small.airs(10, -97).valve(20, 5), Component.EVAPORATOR, "indoorAir.dryBulb"),
                Arguments.of(
                        small.with("R-134a", new Machine(Plant.impeller(3e-3, OptionalDouble.of(0.1)), Plant.open())),
                        Component.COMPRESSOR,
                        "headCoefficient"),
                Arguments.of(
                        small.with("R-134a", Plant.map(new Envelope(250, 270, 290, 340), false)),
                        Component.COMPRESSOR,
                        "map.envelope.maxSuctionTemperature"));
    }

    @ParameterizedTest
    @MethodSource("machinesWithoutABalance")
    void saysWhichComponentHasNoBalanceAndWhy(Plant plant, Component component, String input) {
        assertThatThrownBy(plant::balance).isInstanceOfSatisfying(EngineException.class, e -> {
            assertThat(e.code()).isEqualTo(ErrorCode.NO_BALANCE);
            assertThat(e.getMessage().toUpperCase(java.util.Locale.ROOT)).startsWith(component.name());
            assertThat(e.input()).contains(input);
        });
    }

    @Test
    void aMapAnswersOutsideItsEnvelopeWhenAskedTo() {
        Envelope envelope = new Envelope(250, 270, 290, 340);
        Balanced asked = Plant.small()
                .with("R-134a", Plant.map(envelope, true))
                .balance()
                .base();
        Balanced everywhere = Plant.small()
                .with("R-134a", Plant.map(Envelope.unlimited(), false))
                .balance()
                .base();
        assertThat(asked.massFlow()).isEqualTo(everywhere.massFlow());
        assertThat(asked.findings()).anyMatch(finding -> finding.code() == FindingCode.OUTSIDE_ENVELOPE);
        assertThat(everywhere.findings()).noneMatch(finding -> finding.code() == FindingCode.OUTSIDE_ENVELOPE);
    }

    @Test
    void whatIfsStandBesideTheBaseCase() {
        SystemBalance.Result result = Plant.small()
                .balance(
                        WhatIf.dirtyCondenser(WhatIf.DIRTY_AIRFLOW, WhatIf.DIRTY_CONDUCTANCE),
                        WhatIf.hotDay(10),
                        WhatIf.altitude(84e3),
                        WhatIf.lowIndoorAirflow(0.5),
                        WhatIf.condenserFan(0.5),
                        WhatIf.refrigerant(TestFluids.of("R-290")),
                        WhatIf.refrigerant(TestFluids.of("R-744")));
        List<Row> rows = result.rows();
        assertThat(rows).hasSize(7);
        for (Row row : rows.subList(0, 3)) {
            assertThat(row.differences().orElseThrow().condensing()).isPositive();
            assertThat(row.differences().orElseThrow().relativeCapacity()).isNegative();
            assertThat(row.differences().orElseThrow().power()).isPositive();
        }
        assertThat(rows.get(3).differences().orElseThrow().evaporating()).isNegative();
        assertThat(rows.get(3).differences().orElseThrow().relativeCapacity()).isNegative();
        assertThat(rows.get(4).differences().orElseThrow().condensing()).isPositive();
        assertThat(rows.get(5).balanced().orElseThrow().findings())
                .anyMatch(finding -> finding.subject().equals("whatIf.refrigerant"));
        assertThat(rows.get(6).none().orElseThrow().component()).isEqualTo(Component.CONDENSER);
    }

    /** A row is the base case of a machine that is like that. */
    @Test
    void rowsAreWhatTheMachineItselfWouldDo() {
        Plant plant = Plant.small();
        Row hot = plant.balance(WhatIf.hotDay(0)).rows().get(0);
        assertThat(hot.differences().orElseThrow().relativeCapacity()).isCloseTo(0, within(1e-9));
        Row slow = plant.balance(WhatIf.lowIndoorAirflow(0.5)).rows().get(0);
        Balanced same = plant.evaporator(1200 * Math.sqrt(0.5), 0.3).balance().base();
        assertThat(slow.balanced().orElseThrow().energy().refrigeratingCapacity())
                .isCloseTo(
                        same.energy().refrigeratingCapacity(),
                        within(1e-9 * same.energy().refrigeratingCapacity()));
        Row propane =
                plant.balance(WhatIf.refrigerant(TestFluids.of("R-290"))).rows().get(0);
        assertThat(propane.balanced().orElseThrow().massFlow())
                .isCloseTo(
                        plant.with("R-290", plant.compressor()).balance().base().massFlow(), within(1e-9));
    }

    @Test
    void aMapIsForItsOwnRefrigerant() {
        Row row = Plant.small()
                .with("R-134a", Plant.map(Envelope.unlimited(), false))
                .balance(WhatIf.refrigerant(TestFluids.of("R-290")))
                .rows()
                .get(0);
        assertThat(row.none().orElseThrow().component()).isEqualTo(Component.COMPRESSOR);
    }
}
