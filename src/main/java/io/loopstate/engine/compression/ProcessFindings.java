package io.loopstate.engine.compression;

import io.loopstate.engine.component.SaturationMargin;
import io.loopstate.engine.compression.CompressionProcess.Figures;
import io.loopstate.engine.compression.CompressionProcess.Spec;
import io.loopstate.engine.cycle.Basis;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.FindingCode;
import io.loopstate.engine.cycle.Findings;
import io.loopstate.engine.cycle.Guideline;
import io.loopstate.engine.cycle.QuantityKind;
import io.loopstate.engine.cycle.Severity;
import io.loopstate.engine.cycle.SharedFindings;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.fluid.CriticalPoint;
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.property.State;
import java.util.List;

/** What is unwise or implausible about a compression. */
final class ProcessFindings {
    private ProcessFindings() {}

    static List<Finding> of(Spec spec, ProcessEnds ends, Figures figures) {
        Findings findings = new Findings(spec.guidance());
        ports(findings, ends.equilibrium(), ends.inlet(), ends.outlet(), spec.atmosphericPressure());
        if (spec.measure().kind() == ProcessMeasure.Kind.DISCHARGE_TEMPERATURE) {
            efficiency(findings, figures.isentropicEfficiency());
        }
        return findings.toList();
    }

    /** What suction and discharge of any compressor show, each at the input that causes it. */
    static void ports(Findings findings, Equilibrium equilibrium, State inlet, State outlet, double atmosphere) {
        suction(findings, equilibrium, inlet, atmosphere);
        discharge(findings, equilibrium, inlet, outlet, "discharge");
    }

    static void suction(Findings findings, Equilibrium equilibrium, State inlet, double atmosphere) {
        liquid(findings, inlet);
        // A gas that cannot condense has neither superheat to watch nor a circuit that air could leak into.
        if (inlet.temperature() < equilibrium.refrigerant().criticalPoint().temperature()) {
            Findings found = findings.empty();
            SaturationMargin.superheat(equilibrium, inlet)
                    .ifPresent(superheat -> SharedFindings.superheatAtCompressor(found, superheat));
            SharedFindings.vacuum(found, inlet.pressure(), atmosphere);
            findings.addAbout("suction", found);
        }
    }

    /**
     * What an outlet shows.
     *
     * @param subject the input that sets its pressure
     */
    static void discharge(Findings findings, Equilibrium equilibrium, State inlet, State outlet, String subject) {
        Findings found = findings.empty();
        SharedFindings.wetDischarge(found, outlet);
        SharedFindings.dischargeTemperature(found, outlet.temperature());
        SharedFindings.pressureRatio(found, outlet.pressure() / inlet.pressure());
        CriticalPoint critical = equilibrium.refrigerant().criticalPoint();
        if (inlet.temperature() < critical.temperature() && outlet.pressure() < critical.pressure()) {
            // however hot the vapor arrives, it has to condense there
            SharedFindings.nearCritical(found, subject, outlet.pressure(), critical.pressure());
        } else {
            SharedFindings.nearCritical(found, critical, outlet);
        }
        findings.addAbout(subject, found);
    }

    private static void liquid(Findings findings, State inlet) {
        if (inlet.phase() == Phase.TWO_PHASE) {
            findings.add(
                    FindingCode.LIQUID_AT_COMPRESSOR,
                    Severity.DANGER,
                    "suction",
                    "The compressor draws in wet vapor; the value is the share of liquid by mass. Liquid washes the oil off"
                            + " bearings and walls, and a slug of it, which cannot be compressed, breaks valves, rods or"
                            + " scrolls. What evaporates during compression cools the discharge and hides the trouble.",
                    QuantityKind.RATIO,
                    1 - inlet.vaporQuality(),
                    0,
                    Basis.DEFINITION);
        }
    }

    private static void efficiency(Findings findings, double efficiency) {
        if (!(efficiency > 0)) {
            findings.add(
                    FindingCode.EFFICIENCY_IMPLAUSIBLE,
                    Severity.CAUTION,
                    "isentropicEfficiency",
                    "The vapor leaves the compressor with no more enthalpy than it enters with: discharge and suction"
                            + " readings are swapped or wrong.",
                    QuantityKind.RATIO,
                    efficiency,
                    0,
                    Basis.FIRST_LAW);
            return;
        }
        boolean impossible = findings.above(
                Guideline.MAX_ISENTROPIC_EFFICIENCY,
                efficiency,
                FindingCode.EFFICIENCY_IMPLAUSIBLE,
                Severity.CAUTION,
                "isentropicEfficiency",
                "The discharge is colder than loss-free compression would leave it: a probe far from the compressor or bare,"
                        + " a cooled shell, liquid in the suction line, or a wrong pressure.");
        if (!impossible) {
            findings.below(
                    Guideline.MIN_ISENTROPIC_EFFICIENCY,
                    efficiency,
                    FindingCode.LOW_EFFICIENCY,
                    Severity.CAUTION,
                    "isentropicEfficiency",
                    "The discharge is far hotter than loss-free compression would leave it: leaking valves, a hot motor in the"
                            + " suction vapor, or a wrong reading.");
        }
    }
}
