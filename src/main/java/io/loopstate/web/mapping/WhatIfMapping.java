package io.loopstate.web.mapping;

import io.loopstate.engine.balance.Balanced;
import io.loopstate.engine.balance.Row;
import io.loopstate.engine.balance.WhatIf;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.units.Atmosphere;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.dto.BalanceRequest;
import io.loopstate.web.dto.MachineComponent;
import io.loopstate.web.dto.WhatIfChange;
import io.loopstate.web.dto.WhatIfDifferences;
import io.loopstate.web.dto.WhatIfName;
import io.loopstate.web.dto.WhatIfRequest;
import io.loopstate.web.dto.WhatIfRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a request asks beside its base case.
 *
 * @param request the members, {@code null} where none was given
 * @param altitude of that row
 * @param refrigerant of that row
 */
record WhatIfMapping(WhatIfRequest request, Optional<Atmosphere> altitude, Optional<Equilibrium> refrigerant) {
    private static final String ALTITUDE = "whatIf.altitude";

    /** Reads what has to be looked up, with faults where it cannot be. */
    static WhatIfMapping check(Input<BalanceRequest> input) {
        return new WhatIfMapping(
                input.request().whatIf(), input.atmosphereAt(ALTITUDE), input.equilibriumOf("whatIf.refrigerant"));
    }

    /** In the order of the members. */
    List<WhatIf> cases() {
        List<WhatIf> cases = new ArrayList<>();
        if (request == null) {
            return cases;
        }
        boolean usual = Boolean.TRUE.equals(request.usual());
        if (usual
                || Boolean.TRUE.equals(request.dirtyCondenser())
                || request.dirtyCondenserAirflow() != null
                || request.dirtyCondenserConductance() != null) {
            cases.add(WhatIf.dirtyCondenser(
                    or(request.dirtyCondenserAirflow(), WhatIf.DIRTY_AIRFLOW),
                    or(request.dirtyCondenserConductance(), WhatIf.DIRTY_CONDUCTANCE)));
        }
        if (usual || request.hotDay() != null) {
            cases.add(WhatIf.hotDay(Si.optional(request.hotDay()).orElse(WhatIf.HOT_DAY)));
        }
        altitude.ifPresent(atmosphere -> cases.add(WhatIf.altitude(atmosphere.pressure())));
        if (usual || request.lowIndoorAirflow() != null) {
            cases.add(WhatIf.lowIndoorAirflow(or(request.lowIndoorAirflow(), WhatIf.LOW_INDOOR_AIRFLOW)));
        }
        if (usual || request.condenserFanSpeed() != null) {
            cases.add(WhatIf.condenserFan(or(request.condenserFanSpeed(), WhatIf.HALF_SPEED)));
        }
        if (usual || Boolean.TRUE.equals(request.condenserFanOff())) {
            cases.add(WhatIf.condenserFan(0));
        }
        refrigerant.ifPresent(equilibrium -> cases.add(WhatIf.refrigerant(equilibrium)));
        return cases;
    }

    private static double or(Double number, double other) {
        return number == null ? other : number;
    }

    static List<WhatIfRow> rows(Input<BalanceRequest> input, List<Row> rows, Trust trust) {
        return rows.stream().map(row -> row(input, row, trust)).toList();
    }

    private static WhatIfRow row(Input<BalanceRequest> input, Row row, Trust trust) {
        // Gauges count from the air around them.
        Input<BalanceRequest> there = row.whatIf().kind() == WhatIf.Kind.ALTITUDE
                ? input.withOutput(new Output(
                        input.output().units(), input.atmosphereAt(ALTITUDE).orElseThrow()))
                : input;
        Output out = there.output();
        Optional<Balanced> balanced = row.balanced();
        return new WhatIfRow(
                WhatIfName.valueOf(row.whatIf().kind().name()),
                change(out, row.whatIf()),
                row.none()
                        .map(none -> MachineComponent.valueOf(none.component().name()))
                        .orElse(null),
                row.none()
                        .map(none -> Words.sentence(none.reason().getMessage()))
                        .orElse(null),
                balanced.map(b -> Levels.of(out, b.evaporating())).orElse(null),
                balanced.map(b -> Levels.of(out, b.condensing())).orElse(null),
                balanced.map(b -> out.of(QuantityKind.MASS_FLOW, b.massFlow())).orElse(null),
                balanced.map(b -> DisplacementMapping.balance(out, b.energy())).orElse(null),
                balanced.flatMap(Balanced::system)
                        .map(system -> BalanceMapping.system(out, system))
                        .orElse(null),
                balanced.map(b -> out.of(QuantityKind.POWER, b.evaporator().sensibleHeat()))
                        .orElse(null),
                balanced.map(b ->
                                out.of(QuantityKind.TEMPERATURE, b.compressor().dischargeTemperature()))
                        .orElse(null),
                row.differences().map(d -> differences(out, d)).orElse(null),
                balanced.map(b -> trust.warnings(there, b.findings())).orElse(List.of()),
                row.whatIf().refrigerant().map(trust::cautions).orElse(null));
    }

    private static WhatIfChange change(Output out, WhatIf whatIf) {
        boolean dirty = whatIf.kind() == WhatIf.Kind.DIRTY_CONDENSER;
        boolean hot = whatIf.kind() == WhatIf.Kind.HOT_DAY;
        boolean blocked = whatIf.kind() == WhatIf.Kind.LOW_INDOOR_AIRFLOW;
        return new WhatIfChange(
                dirty ? whatIf.condenserAirflow() : null,
                dirty ? whatIf.condenserConductance() : null,
                hot ? out.of(QuantityKind.TEMPERATURE_DIFFERENCE, whatIf.outdoorRise()) : null,
                out.absolute().of(QuantityKind.PRESSURE, whatIf.atmosphere()),
                blocked ? whatIf.indoorAirflow() : null,
                out.plain(whatIf.fanSpeed()),
                whatIf.refrigerant()
                        .map(equilibrium -> equilibrium.refrigerant().designation())
                        .orElse(null));
    }

    private static WhatIfDifferences differences(Output out, Row.Differences differences) {
        return new WhatIfDifferences(
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, differences.evaporating()),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, differences.condensing()),
                out.of(QuantityKind.PRESSURE_DIFFERENCE, differences.evaporatingPressure()),
                out.of(QuantityKind.PRESSURE_DIFFERENCE, differences.condensingPressure()),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, differences.dischargeTemperature()),
                out.of(QuantityKind.POWER, differences.capacity()),
                out.of(QuantityKind.POWER, differences.power()),
                differences.relativeCapacity(),
                differences.relativePower(),
                differences.relativeMassFlow(),
                differences.relativeCoefficientOfPerformance());
    }
}
