package io.loopstate.engine.compression;

import io.loopstate.engine.compression.Staging.Stages;
import io.loopstate.engine.cycle.Basis;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.FindingCode;
import io.loopstate.engine.cycle.Findings;
import io.loopstate.engine.cycle.QuantityKind;
import io.loopstate.engine.cycle.Severity;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import java.util.List;

/** What is unwise or worth knowing about two stages. */
final class StagingFindings {
    private StagingFindings() {}

    static List<Finding> of(Staging.Spec spec, Equilibrium equilibrium, State suction, Stages stages) {
        Findings findings = new Findings(spec.guidance());
        ProcessFindings.suction(findings, equilibrium, suction, spec.atmosphericPressure());
        ProcessFindings.discharge(
                findings,
                equilibrium,
                suction,
                stages.low().outlet(),
                spec.intermediatePressure().isPresent() ? "intermediatePressure" : "discharge");
        ProcessFindings.discharge(
                findings, equilibrium, stages.cooled(), stages.high().outlet(), "discharge");
        if (stages.cooled().temperature() > spec.intercoolerTemperature() && stages.intercoolerHeat() > 0) {
            findings.add(
                    FindingCode.APPROXIMATION,
                    Severity.NOTE,
                    "intercoolerTemperature",
                    "The intercooler would go below the dew point: cooling stops there, since the second stage must not"
                            + " draw in liquid.",
                    QuantityKind.TEMPERATURE,
                    spec.intercoolerTemperature(),
                    stages.cooled().temperature(),
                    Basis.DEFINITION);
        }
        if (stages.intercoolerHeat() == 0) {
            findings.add(
                    FindingCode.APPROXIMATION,
                    Severity.CAUTION,
                    "intercoolerTemperature",
                    "The vapor leaves the first stage no warmer than the intercooler: nothing is cooled and nothing saved.",
                    QuantityKind.TEMPERATURE,
                    spec.intercoolerTemperature(),
                    stages.low().outlet().temperature(),
                    Basis.DEFINITION);
        }
        return findings.toList();
    }
}
