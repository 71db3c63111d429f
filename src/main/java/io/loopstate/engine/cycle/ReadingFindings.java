package io.loopstate.engine.cycle;

import io.loopstate.engine.cycle.FieldReadings.Balance;
import io.loopstate.engine.cycle.FieldReadings.Bound;
import io.loopstate.engine.cycle.FieldReadings.Result;
import io.loopstate.engine.cycle.FieldReadings.Route;
import io.loopstate.engine.cycle.FieldReadings.RouteName;
import io.loopstate.engine.cycle.FieldReadings.Spec;
import java.util.List;
import java.util.Locale;

/** What is unwise or implausible about a set of readings, beside what {@link AirFindings} says of the air. */
final class ReadingFindings {
    private final Spec spec;
    private final ReadingStates states;
    private final Result result;
    private final Findings findings;

    ReadingFindings(Spec spec, ReadingStates states, Result result) {
        this.spec = spec;
        this.states = states;
        this.result = result;
        this.findings = new Findings(spec.guidance());
    }

    List<Finding> toList() {
        suction();
        evaporatorOutlet();
        discharge();
        efficiency();
        liquid();
        SharedFindings.pressureRatio(findings, result.pressureRatio());
        SharedFindings.vacuum(
                findings, spec.pressures().suction(), spec.pressures().atmosphere());
        SharedFindings.critical(
                findings,
                spec.pressures().discharge(),
                states.equilibrium().refrigerant().criticalPoint().pressure());
        SharedFindings.glide(findings, result.evaporating(), result.condensing());
        SharedFindings.carnot(
                findings,
                result.perMass().coefficientOfPerformance(),
                result.perMass().carnotCoefficientOfPerformance());
        SharedFindings.volumetricEfficiency(
                findings,
                spec.machine().volumetricEfficiency(),
                spec.machine().displacement().isPresent());
        AirFindings.add(findings, spec, result);
        heatBalance();
        return findings.toList();
    }

    private void suction() {
        if (result.superheat() <= 0) {
            findings.add(
                    FindingCode.LIQUID_AT_COMPRESSOR,
                    Severity.DANGER,
                    "suctionLineTemperature",
                    "The suction line is no warmer than the dew point: liquid reaches the compressor, or probe and gauge do"
                            + " not read at the same place. What follows takes the vapor as just dry, the best case.",
                    QuantityKind.TEMPERATURE_DIFFERENCE,
                    result.superheat(),
                    0,
                    Basis.DEFINITION);
        } else {
            SharedFindings.superheatAtCompressor(findings, result.superheat());
        }
    }

    private void evaporatorOutlet() {
        result.evaporatorSuperheat().ifPresent(superheat -> {
            if (superheat <= 0) {
                findings.add(
                        FindingCode.LOW_SUPERHEAT,
                        Severity.CAUTION,
                        "evaporatorOutletTemperature",
                        "The evaporator's outlet is no warmer than the dew point: liquid leaves the coil. What follows"
                                + " takes the vapor as just dry.",
                        QuantityKind.TEMPERATURE_DIFFERENCE,
                        superheat,
                        0,
                        Basis.DEFINITION);
            }
            SharedFindings.superheatAtEvaporator(findings, superheat);
            findings.above(
                    Guideline.LINE_PROBE_ACCURACY,
                    superheat - result.superheat(),
                    FindingCode.IMPLAUSIBLE_READING,
                    Severity.CAUTION,
                    "evaporatorOutletTemperature",
                    "The vapor reads warmer at the evaporator than at the compressor by more than a probe's accuracy: check"
                            + " both probes, unless the suction line runs through a colder place.");
        });
    }

    private void discharge() {
        spec.temperatures()
                .dischargeLine()
                .ifPresent(temperature -> SharedFindings.dischargeTemperature(findings, temperature));
        states.dischargeSuperheat().ifPresent(superheat -> {
            if (superheat <= 0) {
                findings.add(
                        FindingCode.IMPLAUSIBLE_READING,
                        Severity.DANGER,
                        "dischargeLineTemperature",
                        "The discharge line is no warmer than the dew point at the discharge pressure: liquid floods through"
                                + " the compressor, or the probe is loose or bare. Nothing is computed from it.",
                        QuantityKind.TEMPERATURE_DIFFERENCE,
                        superheat,
                        0,
                        Basis.DEFINITION);
            }
        });
    }

    private void efficiency() {
        result.compression()
                .map(FieldReadings.Compression::isentropicEfficiency)
                .ifPresent(efficiency -> {
                    if (efficiency < 0) {
                        findings.add(
                                FindingCode.EFFICIENCY_IMPLAUSIBLE,
                                Severity.CAUTION,
                                "isentropicEfficiency",
                                "The vapor leaves the compressor with less enthalpy than it enters with: discharge and suction"
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
                            "The discharge line is colder than loss-free compression would leave it: a probe far from the compressor"
                                    + " or bare, a cooled shell, liquid in the suction line, or a wrong pressure.");
                    if (!impossible) {
                        findings.below(
                                Guideline.MIN_ISENTROPIC_EFFICIENCY,
                                efficiency,
                                FindingCode.LOW_EFFICIENCY,
                                Severity.CAUTION,
                                "isentropicEfficiency",
                                "The discharge is far hotter than loss-free compression would leave it: leaking valves, a hot motor"
                                        + " in the suction vapor, or a wrong reading.");
                    }
                });
    }

    private void liquid() {
        if (spec.temperatures().liquidLine().isEmpty()) {
            return;
        }
        if (result.liquidLinePressureAssumed()) {
            findings.add(
                    FindingCode.LIQUID_LINE_PRESSURE_ASSUMED,
                    Severity.NOTE,
                    "liquidLinePressure",
                    "No liquid line pressure was given: the discharge pressure stands in for it, so the true subcooling is"
                            + " lower by what condenser and line lose.",
                    Basis.DEFINITION);
        }
        if (states.liquidPressure() > spec.pressures().discharge()) {
            findings.add(
                    FindingCode.IMPLAUSIBLE_READING,
                    Severity.CAUTION,
                    "liquidLinePressure",
                    "The liquid line stands under more pressure than the discharge: possible only far below the condenser;"
                            + " check both gauges.",
                    QuantityKind.PRESSURE,
                    states.liquidPressure(),
                    spec.pressures().discharge(),
                    Basis.READINGS);
        }
        subcooling();
    }

    private void subcooling() {
        result.subcooling().ifPresent(subcooling -> {
            SharedFindings.subcooling(findings, subcooling);
            double temperature = spec.temperatures().liquidLine().orElseThrow();
            double dew = states.atLiquidLine().orElseThrow().dew();
            if (temperature - dew > findings.limit(Guideline.LINE_PROBE_ACCURACY)) {
                findings.add(
                        FindingCode.IMPLAUSIBLE_READING,
                        Severity.CAUTION,
                        "liquidLineTemperature",
                        "The liquid line is warmer than the refrigerant condenses: probe or gauge is wrong, or hot vapor"
                                + " passes the condenser.",
                        QuantityKind.TEMPERATURE,
                        temperature,
                        dew,
                        Basis.READINGS);
            }
            double margin = result.flashMargin().orElse(1);
            if (subcooling > 0 && margin <= 0) {
                findings.add(
                        FindingCode.FLASH_IN_LIQUID_LINE,
                        Severity.CAUTION,
                        "flashMargin",
                        "Lift and friction of the liquid line use up the subcooling: vapor forms before the valve.",
                        QuantityKind.TEMPERATURE_DIFFERENCE,
                        margin,
                        0,
                        Basis.DEFINITION);
            }
        });
    }

    private void heatBalance() {
        for (Balance balance : result.balances()) {
            if (!explained(balance)) {
                findings.above(
                        Guideline.MAX_HEAT_BALANCE_DIFFERENCE,
                        Math.abs(balance.difference()),
                        FindingCode.HEAT_BALANCE_OFF,
                        Severity.CAUTION,
                        "balances",
                        "Two routes to the heat rejected disagree, as a share of the second: suspect the air flow and the"
                                + " air temperatures first, then whether the machine had run steadily. Routes: "
                                + words(balance.first()) + " and " + words(balance.second()) + ".");
            }
        }
    }

    /** A bound may lie on its side of the other route without anything being wrong. */
    private boolean explained(Balance balance) {
        boolean firstHigher = balance.difference() > 0;
        Bound low = bound(firstHigher ? balance.second() : balance.first());
        Bound high = bound(firstHigher ? balance.first() : balance.second());
        return low == Bound.LOWER || high == Bound.UPPER;
    }

    private Bound bound(RouteName name) {
        return result.routes().stream()
                .filter(route -> route.name() == name)
                .map(Route::bound)
                .findFirst()
                .orElse(Bound.NONE);
    }

    private static String words(RouteName name) {
        return name.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
