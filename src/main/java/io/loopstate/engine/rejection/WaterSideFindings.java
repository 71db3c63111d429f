package io.loopstate.engine.rejection;

import io.loopstate.engine.cycle.Basis;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.FindingCode;
import io.loopstate.engine.cycle.Findings;
import io.loopstate.engine.cycle.Guideline;
import io.loopstate.engine.cycle.QuantityKind;
import io.loopstate.engine.cycle.Severity;
import java.util.List;

/** What is unwise, implausible or left out about the water of a coil. */
final class WaterSideFindings {
    private WaterSideFindings() {}

    static List<Finding> of(WaterSide.Spec spec, WaterSide.Figures figures) {
        Findings findings = new Findings(spec.guidance());
        figures.refrigerant().ifPresent(refrigerant -> approach(findings, spec, figures, refrigerant));
        if (!spec.heating() && spec.glycolShare() == 0 && spec.brine().isEmpty()) {
            findings.below(
                    Guideline.MIN_CHILLED_WATER_TEMPERATURE,
                    figures.leaving(),
                    FindingCode.FREEZING_RISK,
                    Severity.CAUTION,
                    "leavingTemperature",
                    "The water leaves close to freezing: ice can burst the evaporator. Use a brine or a freeze guard.");
        }
        if (spec.brine().isPresent()) {
            findings.add(
                    FindingCode.APPROXIMATION,
                    Severity.NOTE,
                    "density",
                    "Density and heat capacity given stand for the mixture at every temperature, because no published"
                            + " coefficients of brines are carried. Whether it freezes or boils is not checked: the maker's"
                            + " table tells.",
                    "figures given in the request");
        }
        if (spec.glycolShare() > 0 && spec.brine().isEmpty()) {
            findings.add(
                    FindingCode.APPROXIMATION,
                    Severity.CAUTION,
                    "glycolShare",
                    "The result is that of pure water. A mixture with glycol carries less heat for each volume and degree and"
                            + " flows less easily: give density and specificHeatCapacity from its maker's table.",
                    QuantityKind.RATIO,
                    spec.glycolShare(),
                    0,
                    Basis.COMMON_PRACTICE);
        }
        figures.tower().ifPresent(tower -> tower(findings, tower));
        return findings.toList();
    }

    private static void approach(
            Findings findings, WaterSide.Spec spec, WaterSide.Figures figures, AirFigures.Refrigerant refrigerant) {
        if (refrigerant.approach() <= 0) {
            findings.add(
                    FindingCode.TEMPERATURE_CROSS,
                    Severity.CAUTION,
                    refrigerant.enteringDifference() <= 0 ? "enteringTemperature" : "leavingTemperature",
                    "The water would have to go beyond the temperature of the refrigerant: check probes and pressure.",
                    QuantityKind.TEMPERATURE,
                    figures.leaving(),
                    refrigerant.temperature(),
                    Basis.SECOND_LAW);
            return;
        }
        findings.above(
                Guideline.MAX_WATER_APPROACH,
                refrigerant.approach(),
                FindingCode.UNUSUAL_APPROACH,
                Severity.CAUTION,
                "approach",
                "The water leaves far from the temperature of the refrigerant: scale or slime on the tubes, or gas that does"
                        + " not condense.");
        findings.below(
                Guideline.MIN_WATER_APPROACH,
                refrigerant.approach(),
                FindingCode.UNUSUAL_APPROACH,
                Severity.NOTE,
                "approach",
                "The water comes very close to the temperature of the refrigerant: a large exchanger, or a reading is off.");
        if (!spec.heating() && spec.glycolShare() == 0 && spec.brine().isEmpty()) {
            findings.below(
                    Guideline.FREEZING_POINT,
                    refrigerant.temperature(),
                    FindingCode.FREEZING_RISK,
                    Severity.CAUTION,
                    "saturationTemperature",
                    "The refrigerant evaporates below the freezing point of the water that it chills.");
        }
    }

    private static void tower(Findings findings, CoolingTower tower) {
        tower.approach().ifPresent(approach -> {
            if (approach <= 0) {
                findings.add(
                        FindingCode.IMPLAUSIBLE_READING,
                        Severity.CAUTION,
                        "coolingTower.wetBulb",
                        "The water would leave the tower no warmer than the wet bulb of the air, which no tower does.",
                        QuantityKind.TEMPERATURE_DIFFERENCE,
                        approach,
                        0,
                        Basis.SECOND_LAW);
                return;
            }
            findings.below(
                    Guideline.MIN_TOWER_APPROACH,
                    approach,
                    FindingCode.UNUSUAL_APPROACH,
                    Severity.NOTE,
                    "coolingTower.wetBulb",
                    "The water leaves the tower very close to the wet bulb: an unusually large tower, or a reading is off.");
        });
    }
}
