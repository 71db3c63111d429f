package io.loopstate.engine.rejection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.air.AirVariable;
import io.loopstate.engine.cycle.FindingCode;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.rejection.AirSide.Air;
import io.loopstate.engine.rejection.AirSide.Airflow;
import io.loopstate.engine.rejection.AirSide.Coil;
import io.loopstate.engine.rejection.AirSide.FlowCondition;
import io.loopstate.engine.rejection.AirSide.Result;
import io.loopstate.engine.rejection.AirSide.Spec;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** The air of a coil: any three of four, balances, and what is said of implausible readings. */
class AirSideTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();

    private static Air air(double dryBulb, AirVariable variable, double humidity) {
        return new Air(OptionalDouble.of(dryBulb), Optional.of(new MoistAirQuery.Known(variable, humidity)));
    }

    private static Air dryBulb(double kelvin) {
        return new Air(OptionalDouble.of(kelvin), Optional.empty());
    }

    private static Air sought(AirVariable variable, double humidity) {
        return new Air(NONE, Optional.of(new MoistAirQuery.Known(variable, humidity)));
    }

    private static Optional<Airflow> volume(double flow, FlowCondition condition) {
        return Optional.of(new Airflow(NONE, OptionalDouble.of(flow), condition));
    }

    private static Spec spec(
            Coil coil, Air entering, Air leaving, Optional<Airflow> flow, OptionalDouble heat, double fan) {
        return new Spec(coil, 95e3, entering, leaving, flow, heat, fan, NONE, Guidance.common(), true);
    }

    /** Three of four lead back to the fourth, wherever the flow is counted. */
    @Property(tries = 500)
    void anyThreeOfACondenserGiveTheFourth(
            @ForAll @DoubleRange(min = 250, max = 315) double entering,
            @ForAll @DoubleRange(min = 1, max = 25) double rise,
            @ForAll @DoubleRange(min = 0.1, max = 20) double flow,
            @ForAll @DoubleRange(min = 0, max = 0.9) double humidity,
            @ForAll FlowCondition condition) {
        Air in = air(entering, AirVariable.RELATIVE_HUMIDITY, humidity);
        Air out = dryBulb(entering + rise);
        double fan = 20 * flow;
        Result base = AirSide.calculate(spec(Coil.CONDENSER, in, out, volume(flow, condition), NONE, fan));
        OptionalDouble heat = OptionalDouble.of(base.figures().heat());
        if (heat.getAsDouble() <= 0) {
            return;
        }
        Result byHeat = AirSide.calculate(spec(Coil.CONDENSER, in, out, Optional.empty(), heat, fan));
        assertThat(byHeat.figures().massFlow())
                .isCloseTo(
                        base.figures().massFlow(), within(1e-9 * base.figures().massFlow()));
        Result leaving = AirSide.calculate(
                spec(Coil.CONDENSER, in, new Air(NONE, Optional.empty()), volume(flow, condition), heat, fan));
        assertThat(leaving.leaving().state().dryBulb()).isCloseTo(entering + rise, within(1e-7));
        Result before = AirSide.calculate(spec(
                Coil.CONDENSER,
                sought(AirVariable.HUMIDITY_RATIO, base.entering().state().humidityRatio()),
                out,
                volume(flow, condition),
                heat,
                fan));
        assertThat(before.entering().state().dryBulb()).isCloseTo(entering, within(1e-7));
        closes(base, 1, fan);
        closes(leaving, 1, fan);
        closes(before, 1, fan);
    }

    @Property(tries = 500)
    void anyThreeOfAnEvaporatorGiveTheFourth(
            @ForAll @DoubleRange(min = 285, max = 310) double entering,
            @ForAll @DoubleRange(min = 5, max = 15) double drop,
            @ForAll @DoubleRange(min = 0.1, max = 20) double flow,
            @ForAll @DoubleRange(min = 0.2, max = 0.9) double humidity,
            @ForAll FlowCondition condition) {
        Air in = air(entering, AirVariable.RELATIVE_HUMIDITY, humidity);
        double fan = 100 * flow;
        Result dry = AirSide.calculate(
                spec(Coil.EVAPORATOR, in, dryBulb(entering - drop), volume(flow, condition), NONE, fan));
        double water = dry.leaving().state().humidityRatio();
        Result base = AirSide.calculate(spec(
                Coil.EVAPORATOR,
                in,
                air(entering - drop, AirVariable.HUMIDITY_RATIO, 0.95 * water),
                volume(flow, condition),
                NONE,
                fan));
        OptionalDouble heat = OptionalDouble.of(base.figures().heat());
        Result leaving = AirSide.calculate(spec(
                Coil.EVAPORATOR,
                in,
                sought(AirVariable.HUMIDITY_RATIO, 0.95 * water),
                volume(flow, condition),
                heat,
                fan));
        assertThat(leaving.leaving().state().dryBulb()).isCloseTo(entering - drop, within(1e-7));
        Result before = AirSide.calculate(spec(
                Coil.EVAPORATOR,
                sought(AirVariable.RELATIVE_HUMIDITY, humidity),
                air(entering - drop, AirVariable.HUMIDITY_RATIO, 0.95 * water),
                volume(flow, condition),
                heat,
                fan));
        assertThat(before.entering().state().dryBulb()).isCloseTo(entering, within(1e-6));
        closes(base, -1, fan);
        closes(leaving, -1, fan);
        closes(before, -1, fan);
    }

    /** First law around the air; the condensate takes its heat along. */
    private static void closes(Result result, int sign, double fan) {
        AirFigures figures = result.figures();
        double air = figures.massFlow()
                * (result.leaving().state().specificEnthalpy()
                        - result.entering().state().specificEnthalpy());
        double condensate = figures.condensate()
                * AirFactors.waterEnthalpy(result.leaving().state().dryBulb());
        double scale = figures.heat() + fan;
        assertThat(sign * figures.heat() + fan).isCloseTo(air + condensate, within(1e-9 * scale));
        assertThat(figures.sensibleHeat() + figures.latentHeat())
                .isCloseTo(figures.heat() + sign * fan, within(1e-9 * scale));
        assertThat(result.steps()).isNotEmpty();
    }

    /** Source: trade practice, 1.08 cfm dT of dry standard air, users' formula; 1 % for its rounding. */
    @Example
    void theTradesFormulaHoldsForStandardAir() {
        double cfm = 0.028316846592 / 60;
        Result result = AirSide.calculate(spec(
                Coil.CONDENSER,
                air((95 + 459.67) / 1.8, AirVariable.HUMIDITY_RATIO, 0),
                dryBulb((115 + 459.67) / 1.8),
                volume(3000 * cfm, FlowCondition.STANDARD),
                NONE,
                0));
        assertThat(result.figures().heat() * 3600 / 1055.05585262).isCloseTo(1.08 * 3000 * 20, within(0.01 * 64800));
    }

    @Example
    void temperaturesThatCrossAreNamed() {
        Spec spec = new Spec(
                Coil.CONDENSER,
                101325,
                air(308, AirVariable.RELATIVE_HUMIDITY, 0.3),
                dryBulb(320),
                volume(1, FlowCondition.ENTERING),
                NONE,
                4000,
                OptionalDouble.of(318),
                Guidance.common(),
                false);
        assertThat(AirSide.calculate(spec).findings())
                .anyMatch(finding -> finding.code() == FindingCode.TEMPERATURE_CROSS
                        && finding.subject().equals("leaving.dryBulb"))
                .anyMatch(finding -> finding.code() == FindingCode.FAN_WITHOUT_AIRFLOW
                        && finding.subject().equals("fanPower"));
    }

    @Example
    void heatAgainstTheAirIsRefused() {
        Air warm = air(308, AirVariable.RELATIVE_HUMIDITY, 0.3);
        refused(
                spec(Coil.CONDENSER, warm, dryBulb(300), volume(1, FlowCondition.ENTERING), NONE, 0),
                "leaving.dryBulb");
        refused(
                spec(Coil.EVAPORATOR, warm, dryBulb(310), volume(1, FlowCondition.ENTERING), NONE, 0),
                "leaving.dryBulb");
        refused(
                spec(
                        Coil.CONDENSER,
                        warm,
                        air(320, AirVariable.RELATIVE_HUMIDITY, 0.3),
                        volume(1, FlowCondition.ENTERING),
                        NONE,
                        0),
                "leaving.relativeHumidity");
        refused(
                spec(
                        Coil.CONDENSER,
                        warm,
                        new Air(NONE, Optional.empty()),
                        volume(0.01, FlowCondition.ENTERING),
                        OptionalDouble.of(1e6),
                        0),
                "heat");
        refused(spec(Coil.EVAPORATOR, warm, dryBulb(300), Optional.empty(), OptionalDouble.of(1000), 2000), "fanPower");
    }

    private static void refused(Spec spec, String input) {
        assertThatThrownBy(() -> AirSide.calculate(spec)).isInstanceOfSatisfying(EngineException.class, e -> {
            assertThat(e.code()).isEqualTo(ErrorCode.CONTRADICTORY_INPUTS);
            assertThat(e.input()).contains(input);
        });
    }
}
