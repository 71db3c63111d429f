package io.loopstate.engine.compression;

import static io.loopstate.engine.compression.Processes.suction;
import static org.assertj.core.api.Assertions.assertThat;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.SaturationLevel;
import io.loopstate.engine.compression.DisplacementRating.Figures;
import io.loopstate.engine.compression.DisplacementRating.Result;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/**
 * Compressor sizes of textbooks. Sources: column {@code source} of the collection with the number of the example; tolerances are
 * those of the collection, about 1 %, where older property tables were used 2 to 3 %.
 */
class DisplacementExamplesTest {
    private static final double SHARE = 0.01;
    private static final double OLD_TABLES = 0.03;

    /** R. Joel, example 14.1: bore 200 mm, stroke 300 mm, 500 rpm, clearance 5 %, n = 1.3. */
    @Test
    void joelOfASingleStage() {
        PublishedExample example = PublishedExample.of("JOEL-14-1");
        CylinderSize size = new CylinderSize(example.given("bore"), example.given("stroke"), 1, false, 0);
        Result result = air(
                size.volumePerRevolution() * example.given("speed"),
                example.given("clearance"),
                example.given("polytropic index"),
                suction(example.given("intake pressure"), Variable.TEMPERATURE, example.given("intake temperature")),
                example.given("delivery pressure"));
        double freeAir = free(result.figures(), example);
        example.check("free air delivered", freeAir, SHARE);
        example.check("volumetric efficiency", freeAir / result.figures().displacement(), SHARE);
        example.check("cycle power", result.figures().shaftPower(), SHARE);
        example.checkTemperature(
                "delivery temperature", result.inside().orElseThrow().endTemperature(), 1);
    }

    /** P. K. Nag, example 19.4: double acting; the clearance is that at which nothing flows at 15 bar. */
    @Test
    void nagOfADoubleActingCompressor() {
        PublishedExample example = PublishedExample.of("NAG-19-4");
        double index = example.given("polytropic index");
        double inlet = example.given("inlet pressure");
        double clearance = 1 / (Math.pow(example.given("maximum pressure at zero flow") / inlet, 1 / index) - 1);
        CylinderSize size = new CylinderSize(example.result("bore"), example.result("stroke"), 1, true, 0);
        Result result = air(
                size.volumePerRevolution() * example.given("speed"),
                clearance,
                index,
                suction(inlet, Variable.TEMPERATURE, example.given("inlet temperature")),
                example.given("delivery pressure"));
        assertThat(result.figures().massFlow())
                .isCloseTo(example.given("mass flow rate"), Percentage.withPercentage(100 * SHARE));
        example.check("power", result.figures().shaftPower(), SHARE);
        double free = result.figures().suctionVolumeFlow()
                * example.given("free air temperature")
                / example.given("inlet temperature");
        example.check("volumetric efficiency", free / result.figures().displacement(), SHARE);
        CylinderSize back = CylinderSize.of(size.volumePerRevolution(), 1, example.given("stroke to bore ratio"), true);
        example.check("bore", back.bore(), SHARE);
        example.check("stroke", back.stroke(), SHARE);
    }

    /** R. Joel, example 14.3: effective swept volume of the first of three stages. */
    @Test
    void joelOfTheFirstOfThreeStages() {
        PublishedExample example = PublishedExample.of("JOEL-14-3");
        double low = example.given("intake pressure");
        CylinderSize size = new CylinderSize(example.given("bore LP"), example.given("stroke"), 1, false, 0);
        Result result = air(
                size.volumePerRevolution(),
                example.given("clearance"),
                example.given("index"),
                suction(low, Variable.TEMPERATURE, example.given("intake temperature")),
                low * Math.cbrt(example.given("delivery pressure") / low));
        example.check("effective swept volume LP", result.figures().suctionVolumeFlow(), SHARE);
        double delivered = result.figures().suctionVolumeFlow()
                * low
                / example.given("delivery pressure")
                * example.result("delivery temperature")
                / example.given("intake temperature");
        example.check("delivery volume", delivered, SHARE);
    }

    /** A. V. Arasu, example 6.6: ammonia, from the capacity to the size of the cylinder and the motor. */
    @Test
    void arasuOfAnIcePlant() {
        PublishedExample example = PublishedExample.of("AR-6-6");
        Equilibrium ammonia = TestFluids.of("R-717");
        double capacity = example.rows().stream()
                .filter(row -> row.getField("quantity").equals("refrigerating capacity"))
                .mapToDouble(row -> Double.parseDouble(row.getField("value")) * 1e3)
                .findFirst()
                .orElseThrow();
        Nameplate.Result result = Nameplate.calculate(new Nameplate.Spec(
                ammonia,
                new SuctionCondition(
                        SaturationLevel.temperature(example.given("evaporating temperature")), Variable.SUPERHEAT, 0),
                DischargeLevel.of(SaturationLevel.temperature(example.given("condensing temperature"))),
                Optional.of(new Circuit(OutletCondition.subcooling(0), OptionalDouble.empty())),
                OptionalDouble.of(capacity),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(example.given("volumetric efficiency")),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(example.given("speed")),
                1,
                OptionalDouble.of(example.given("stroke to bore ratio")),
                false,
                Processes.ATMOSPHERE,
                Guidance.common(),
                true));
        example.check("mass flow rate", result.figures().massFlow(), OLD_TABLES);
        CylinderSize size = result.cylinders().orElseThrow();
        example.check("bore", size.bore(), SHARE);
        example.check("stroke", size.stroke(), SHARE);
        // The same machine forward: efficiency of the compression and friction on the way from motor to vapor.
        Machine machine = new Machine(
                new Rotor(
                        size.volumePerRevolution() * example.given("speed"),
                        example.given("volumetric efficiency"),
                        OptionalDouble.empty(),
                        example.given("adiabatic efficiency")),
                new Drive(Housing.OPEN, MotorCooling.SURROUNDINGS, 1, 1, example.given("mechanical efficiency"), 0));
        Result forward = DisplacementRating.calculate(Machines.withCircuit(
                Machines.spec(
                        ammonia,
                        new SuctionCondition(
                                SaturationLevel.temperature(example.given("evaporating temperature")),
                                Variable.SUPERHEAT,
                                0),
                        DischargeLevel.of(SaturationLevel.temperature(example.given("condensing temperature"))),
                        machine),
                0));
        example.check("motor power", forward.figures().electricalPower(), OLD_TABLES);
        example.check("actual COP", forward.balance().orElseThrow().coefficientOfPerformance(), OLD_TABLES);
        double ideal = forward.balance().orElseThrow().refrigeratingCapacity()
                / forward.figures().isentropicPower();
        example.check("theoretical COP", ideal, OLD_TABLES);
        assertThat(forward.balance().orElseThrow().refrigeratingCapacity())
                .isCloseTo(capacity, Percentage.withPercentage(1e-7));
    }

    /**
     * P. K. Nag, example 14.4, from the book's own properties, since it names no refrigerant in print that could be read: flow,
     * displacement and cylinders.
     */
    @Test
    void nagOfTwoCylinders() {
        PublishedExample example = PublishedExample.of("NAG-14-4");
        double effect = example.table("enthalpy", "6") - example.result("enthalpy after heat exchanger");
        double flow = example.given("refrigerating capacity") / effect;
        example.check("refrigerating effect", effect, SHARE);
        example.check("mass flow rate", flow, SHARE);
        example.check(
                "compressor power", flow * (example.table("enthalpy", "2") - example.table("enthalpy", "1")), SHARE);
        double displacement = flow * example.table("specific volume", "1") / example.given("volumetric efficiency");
        example.check("displacement", displacement, SHARE);
        CylinderSize size = CylinderSize.of(
                displacement / example.given("speed"),
                (int) example.given("cylinders"),
                example.given("stroke to bore ratio"),
                false);
        example.check("bore", size.bore(), SHARE);
        example.check("stroke", size.stroke(), SHARE);
        assertThat(size.volumePerRevolution())
                .isCloseTo(displacement / example.given("speed"), Percentage.withPercentage(1e-9));
    }

    private static double free(Figures figures, PublishedExample example) {
        double density = Processes.air()
                .atPressureTemperature(example.given("free air pressure"), example.given("free air temperature"))
                .density();
        return figures.massFlow() / density;
    }

    private static Result air(
            double swept, double clearance, double index, SuctionCondition suction, double deliveryPressure) {
        Piston piston = new Piston(swept, clearance, 0, 0, 0, OptionalDouble.empty(), OptionalDouble.of(index));
        return DisplacementRating.calculate(Machines.spec(
                Processes.air(),
                suction,
                DischargeLevel.pressure(deliveryPressure),
                new Machine(piston, Machines.lossless())));
    }
}
