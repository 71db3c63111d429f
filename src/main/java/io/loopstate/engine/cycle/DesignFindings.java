package io.loopstate.engine.cycle;

import io.loopstate.engine.component.SaturationMargin;
import io.loopstate.engine.cycle.DesignCycle.Performance;
import io.loopstate.engine.cycle.DesignCycle.Spec;
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.property.State;
import java.util.List;
import java.util.OptionalDouble;

/** What is unwise or worth knowing about a design cycle. */
final class DesignFindings {
    private DesignFindings() {}

    static List<Finding> of(Spec spec, DesignStates states, Performance performance) {
        Findings findings = new Findings(spec.guidance());
        suction(findings, states);
        liquid(findings, states);
        SharedFindings.wetDischarge(findings, states.compression().outlet());
        SharedFindings.dischargeTemperature(findings, performance.dischargeTemperature());
        SharedFindings.pressureRatio(findings, performance.pressureRatio());
        SharedFindings.vacuum(findings, states.compressorInlet().pressure(), spec.atmosphericPressure());
        SharedFindings.critical(
                findings,
                states.condenserInlet().pressure(),
                states.equilibrium().refrigerant().criticalPoint().pressure());
        SharedFindings.glide(findings, states.evaporating(), states.condensing());
        SharedFindings.carnot(
                findings,
                OptionalDouble.of(performance.coefficientOfPerformance()),
                performance.carnotCoefficientOfPerformance());
        SharedFindings.volumetricEfficiency(
                findings,
                spec.compressor().volumetricEfficiency(),
                spec.size()
                        .filter(size -> size.given() == Size.Given.DISPLACEMENT)
                        .isPresent());
        return findings.toList();
    }

    private static void suction(Findings findings, DesignStates states) {
        State inlet = states.compressorInlet();
        if (inlet.phase() == Phase.TWO_PHASE || inlet.phase() == Phase.LIQUID) {
            findings.add(
                    FindingCode.LIQUID_AT_COMPRESSOR,
                    Severity.DANGER,
                    "compressorInlet",
                    "The compressor draws in wet vapor: the quality there is below one.",
                    QuantityKind.RATIO,
                    inlet.phase() == Phase.LIQUID ? 0 : inlet.vaporQuality(),
                    1,
                    Basis.DEFINITION);
        }
        SaturationMargin.superheat(states.equilibrium(), inlet)
                .ifPresent(superheat -> SharedFindings.superheatAtCompressor(findings, superheat));
        SaturationMargin.superheat(states.equilibrium(), states.evaporatorOutlet())
                .ifPresent(superheat -> SharedFindings.superheatAtEvaporator(findings, superheat));
    }

    private static void liquid(Findings findings, DesignStates states) {
        State inlet = states.valveInlet();
        if (inlet.phase() == Phase.TWO_PHASE) {
            findings.add(
                    FindingCode.NO_SUBCOOLING,
                    Severity.CAUTION,
                    "valveInlet",
                    "Vapor reaches the valve with the liquid (flash gas): the quality there is above zero.",
                    QuantityKind.RATIO,
                    inlet.vaporQuality(),
                    0,
                    Basis.DEFINITION);
        }
        if (!states.transcritical()) {
            SaturationMargin.subcooling(states.equilibrium(), inlet)
                    .ifPresent(subcooling -> SharedFindings.subcooling(findings, subcooling));
        }
    }
}
