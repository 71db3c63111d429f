package io.loopstate.engine.compression;

import io.loopstate.engine.cycle.Basis;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.FindingCode;
import io.loopstate.engine.cycle.Findings;
import io.loopstate.engine.cycle.QuantityKind;
import io.loopstate.engine.cycle.Severity;
import io.loopstate.engine.cycle.SharedFindings;
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.property.State;
import java.util.List;

/** What is worth knowing about a closed cylinder. */
final class CylinderFindings {
    private CylinderFindings() {}

    static List<Finding> of(ClosedCylinder.Spec spec, State start, State end) {
        Findings findings = new Findings(spec.guidance());
        Findings hot = findings.empty();
        SharedFindings.dischargeTemperature(hot, Math.max(start.temperature(), end.temperature()));
        findings.addAbout("end", hot);
        if (end.phase() == Phase.TWO_PHASE || end.phase() == Phase.LIQUID) {
            findings.add(
                    FindingCode.CONDENSATION,
                    Severity.NOTE,
                    "end",
                    "Part or all of the vapor condenses on the way: it no longer behaves as a gas; the value is the vapor"
                            + " quality at the end.",
                    QuantityKind.RATIO,
                    end.phase() == Phase.LIQUID ? 0 : end.vaporQuality(),
                    1,
                    Basis.DEFINITION);
        }
        if (end.pressure() < spec.atmosphericPressure()) {
            findings.add(
                    FindingCode.BELOW_ATMOSPHERE,
                    Severity.NOTE,
                    "end",
                    "The end lies below the atmosphere: a gauge shows a vacuum, and the surrounding air pushes the piston in.",
                    QuantityKind.PRESSURE,
                    end.pressure(),
                    spec.atmosphericPressure(),
                    "atmospheric pressure given");
        }
        return findings.toList();
    }
}
