package io.loopstate.engine.compression;

import static io.loopstate.engine.compression.Processes.suction;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.loopstate.engine.TestFluids;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.FindingCode;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** Centrifugal compressors by a head-flow curve; the curve is our own invention. */
class CurvedImpellerTest {
    private static final Equilibrium R134A = TestFluids.of("R-134a");
    private static final List<Double> FLOWS = List.of(0.015, 0.02, 0.025, 0.03, 0.035);
    private static final List<Double> HEADS = List.of(0.66, 0.68, 0.66, 0.60, 0.50);
    private static final List<Double> EFFICIENCIES = List.of(0.74, 0.79, 0.82, 0.80, 0.72);
    private static final HeadCurve CURVE = new HeadCurve(FLOWS, HEADS, EFFICIENCIES);

    private static DisplacementRating.Result rate(double tipSpeed, double ratio) {
        Machine machine = new Machine(new CurvedImpeller(tipSpeed, 0.3, 1, CURVE), Machines.open());
        return DisplacementRating.calculate(Machines.withCircuit(
                Machines.spec(R134A, suction(3.4e5, Variable.SUPERHEAT, 3), DischargeLevel.ratio(ratio), machine), 4));
    }

    /** The curve goes through its points and between them never beyond them. */
    @Property(tries = 500)
    void theCurveStaysBetweenItsPoints(@ForAll @Scale(4) @DoubleRange(min = 0.0201, max = 0.0349) double flow) {
        for (int k = 1; k < FLOWS.size(); k++) {
            assertThat(CURVE.flow(HEADS.get(k))).isCloseTo(FLOWS.get(k), within(1e-12));
            assertThat(CURVE.efficiency(FLOWS.get(k))).isCloseTo(EFFICIENCIES.get(k), within(1e-15));
        }
        int k = 1;
        while (flow > FLOWS.get(k + 1)) {
            k++;
        }
        double least = Math.min(EFFICIENCIES.get(k), EFFICIENCIES.get(k + 1));
        double most = Math.max(EFFICIENCIES.get(k), EFFICIENCIES.get(k + 1));
        assertThat(CURVE.efficiency(flow)).isBetween(least - 1e-15, most + 1e-15);
    }

    /** More lift means less flow; the head needed is that of the curve; energy closes around the circuit. */
    @Property(tries = 60)
    void moreLiftMeansLessFlow(@ForAll @DoubleRange(min = 0.52, max = 0.67) double coefficient) {
        double tipSpeed = 195;
        double ratio = ratio(coefficient, tipSpeed);
        DisplacementRating.Result result = rate(tipSpeed, ratio);
        assertThat(rate(tipSpeed, ratio * 1.005).figures().massFlow())
                .isLessThan(result.figures().massFlow());
        DisplacementRating.Head head = result.head().orElseThrow();
        DisplacementRating.OnCurve on = head.onCurve().orElseThrow();
        assertThat(CURVE.flow(head.neededCoefficient())).isCloseTo(on.flowCoefficient(), within(1e-12));
        assertThat(result.figures().suctionVolumeFlow())
                .isCloseTo(on.flowCoefficient() * tipSpeed * 0.09, within(1e-12));
        assertThat(result.figures().suctionVolumeFlow()).isBetween(on.surgeVolumeFlow(), on.chokeVolumeFlow());
        assertThat(result.figures().volumetricEfficiency()).isCloseTo(1, within(1e-12));
        assertThat(Math.abs(result.balance().orElseThrow().residual())).isLessThan(1e-9);
    }

    /** Pressure ratio at which the head is a coefficient times the square of the tip speed: found by bisection. */
    private static double ratio(double coefficient, double tipSpeed) {
        var inlet = suction(3.4e5, Variable.SUPERHEAT, 3).state(R134A);
        double low = 1.01;
        double high = 8;
        for (int k = 0; k < 60; k++) {
            double middle = (low + high) / 2;
            double head = R134A.atPressureEntropy(middle * inlet.pressure(), inlet.specificEntropy())
                            .specificEnthalpy()
                    - inlet.specificEnthalpy();
            low = head < coefficient * tipSpeed * tipSpeed ? middle : low;
            high = head < coefficient * tipSpeed * tipSpeed ? high : middle;
        }
        return low;
    }

    /** The fan laws: at the same place on the curve the volume goes with the speed, the head with its square. */
    @Example
    void fanLaws() {
        DisplacementRating.Result slow = rate(180, ratio(0.6, 180));
        DisplacementRating.Result fast = rate(210, ratio(0.6, 210));
        assertThat(fast.figures().suctionVolumeFlow() / slow.figures().suctionVolumeFlow())
                .isCloseTo(210.0 / 180, within(1e-9));
        assertThat(fast.head().orElseThrow().needed()
                        / slow.head().orElseThrow().needed())
                .isCloseTo(Math.pow(210.0 / 180, 2), within(1e-9));
    }

    @Example
    void surgeAndChokeAreRefusedAndNearnessTold() {
        refused(() -> rate(195, ratio(0.69, 195)), "surges");
        refused(() -> rate(195, ratio(0.49, 195)), "chokes");
        assertThat(rate(195, ratio(0.679, 195)).findings())
                .extracting(Finding::code)
                .contains(FindingCode.NEAR_SURGE);
        assertThat(rate(195, ratio(0.6, 195)).findings())
                .extracting(Finding::code)
                .doesNotContain(FindingCode.NEAR_SURGE);
    }

    @Example
    void whatIsNoCurveIsRefused() {
        refused(() -> new HeadCurve(FLOWS.subList(0, 2), HEADS.subList(0, 2), EFFICIENCIES.subList(0, 2)), "three");
        refused(
                () -> new HeadCurve(List.of(0.02, 0.015, 0.03), HEADS.subList(0, 3), EFFICIENCIES.subList(0, 3)),
                "rising");
        refused(() -> new HeadCurve(FLOWS.subList(0, 3), List.of(0.5, 0.6, 0.7), EFFICIENCIES.subList(0, 3)), "falls");
        refused(() -> new HeadCurve(FLOWS, List.of(0.66, 0.68, 0.5, 0.6, 0.4), EFFICIENCIES), "falls");
    }

    private static void refused(Runnable call, String word) {
        assertThatThrownBy(call::run).isInstanceOf(EngineException.class).hasMessageContaining(word);
    }
}
