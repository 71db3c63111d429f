package io.loopstate.web.mapping;

import io.loopstate.engine.air.EnthalpyDatum;
import io.loopstate.engine.balance.Balanced;
import io.loopstate.engine.balance.CompressorChoice;
import io.loopstate.engine.balance.CondenserSide;
import io.loopstate.engine.balance.EvaporatorSide;
import io.loopstate.engine.balance.Settings;
import io.loopstate.engine.balance.SystemBalance;
import io.loopstate.engine.balance.SystemFigures;
import io.loopstate.engine.compression.MapCompressor;
import io.loopstate.engine.cycle.Constants;
import io.loopstate.engine.cycle.Optionals;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.rejection.AirSide;
import io.loopstate.engine.rejection.Arrangement;
import io.loopstate.engine.rejection.Conductance;
import io.loopstate.engine.rejection.Fan;
import io.loopstate.units.QuantityKind;
import io.loopstate.web.dto.AirFlowRequest;
import io.loopstate.web.dto.BalanceCompressor;
import io.loopstate.web.dto.BalanceCondenser;
import io.loopstate.web.dto.BalanceCondenserRequest;
import io.loopstate.web.dto.BalanceEvaporator;
import io.loopstate.web.dto.BalanceEvaporatorRequest;
import io.loopstate.web.dto.BalanceReply;
import io.loopstate.web.dto.BalanceRequest;
import io.loopstate.web.dto.CoilZoneName;
import io.loopstate.web.dto.MachineRequest;
import io.loopstate.web.dto.SystemOfMachine;
import io.loopstate.web.dto.ZoneConductances;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** A whole machine in steady state. */
public final class BalanceMapping {
    private static final String CONDENSER = "condenser";
    private static final String EVAPORATOR = "evaporator";
    private static final String OUTDOOR = "outdoorAir";
    private static final String INDOOR = "indoorAir";
    private static final String[] ZONES = {
        "condenser.zoneConductances.desuperheating",
        "condenser.zoneConductances.condensing",
        "condenser.zoneConductances.subcooling"
    };

    /** The calculation. */
    public static final Operation<BalanceRequest, SystemBalance.Spec, SystemBalance.Result, BalanceReply> OPERATION =
            new Operation<>(
                    BalanceRequest.class,
                    BalanceMapping::spec,
                    SystemBalance::calculate,
                    BalanceMapping::reply,
                    inputs());

    private BalanceMapping() {}

    private static Map<String, List<String>> inputs() {
        Map<String, List<String>> inputs = new HashMap<>(Machines.inputs(BalanceRequest.class));
        inputs.put(RatingMapMapping.RATING, RatingMapMapping.RATING_MEMBERS);
        inputs.put("condenser.conductance", List.of("condenser.conductance", ZONES[1]));
        inputs.put("compressor", List.of("machine.design", "map.temperatureUnit"));
        // The ports of the compressor are not given but sought.
        inputs.put("suction", List.of("machine.design", "map.temperatureUnit"));
        inputs.put("discharge", List.of("machine.design", "map.temperatureUnit"));
        return inputs;
    }

    private static SystemBalance.Spec spec(Input<BalanceRequest> input) {
        BalanceRequest request = input.request();
        Supplier<CompressorChoice> compressor = compressor(input);
        checkAir(input, OUTDOOR);
        checkAir(input, INDOOR);
        checkCondenser(input);
        checkCoil(input, EVAPORATOR);
        input.exactlyOne("evaporator.conductance");
        WhatIfMapping whatIfs = WhatIfMapping.check(input);
        input.refuseFaults();
        return new SystemBalance.Spec(
                input.equilibrium(),
                input.atmosphere().pressure(),
                compressor.get(),
                condenser(input),
                evaporator(input),
                new Settings(
                        request.superheat().value(),
                        Si.orZero(request.suctionLineTemperatureRise()),
                        request.subcooling().value()),
                whatIfs.cases(),
                Guidances.of(input),
                input.explain());
    }

    /** Checks the compressor; it can be had once the request has no fault. */
    private static Supplier<CompressorChoice> compressor(Input<BalanceRequest> input) {
        Optional<String> machine = firstGiven(input, "machine.");
        Optional<String> map = firstGiven(input, "map.");
        if (machine.isPresent() && map.isPresent()) {
            input.atMostOne(machine.get(), map.get());
        } else if (map.isPresent()) {
            Supplier<MapCompressor> compressor =
                    RatingMapMapping.map(input, input.request().map());
            return () -> CompressorChoice.of(compressor.get());
        }
        if (machine.isEmpty()) {
            input.exactlyOne("machine.design", "map.power.coefficients");
        }
        MachineRequest request = input.request().machine();
        Machines.check(input, request);
        return () -> new CompressorChoice(
                Machines.machine(request),
                Machines.cylinders(request),
                Machines.speed(request),
                Si.optional(request.minimumVolumeFlow()),
                Set.copyOf(Machines.assumptions(request)));
    }

    private static Optional<String> firstGiven(Input<?> input, String prefix) {
        return input.shape().leaves().keySet().stream()
                .filter(path -> path.startsWith(prefix) && input.given(path))
                .findFirst();
    }

    private static void checkAir(Input<?> input, String side) {
        input.exactlyOne(side + ".dryBulb");
        AirSideMapping.oneHumidity(input, side);
    }

    private static void checkCoil(Input<?> input, String coil) {
        input.exactlyOne(coil + ".airflow.volumeFlow", coil + ".airflow.massFlow");
        input.needs(coil + ".airflow.condition", coil + ".airflow.volumeFlow", "it says in which air that is counted.");
    }

    private static void checkCondenser(Input<?> input) {
        checkCoil(input, CONDENSER);
        boolean zones = Stream.of(ZONES).anyMatch(input::given);
        if (zones) {
            Stream.of(ZONES).forEach(input::exactlyOne);
            input.atMostOne("condenser.conductance", ZONES[1]);
        } else {
            input.exactlyOne("condenser.conductance");
        }
    }

    private static CondenserSide condenser(Input<BalanceRequest> input) {
        BalanceCondenserRequest request = input.request().condenser();
        return within(
                CONDENSER,
                () -> new CondenserSide(
                        AirSideMapping.air(input, OUTDOOR),
                        airflow(request.airflow()),
                        conductance(request),
                        request.arrangement() == null
                                ? Arrangement.CROSS_FLOW
                                : Arrangement.valueOf(request.arrangement().name()),
                        Coils.fan(request.fan()),
                        Si.optional(request.fanPower())));
    }

    private static AirSide.Airflow airflow(AirFlowRequest request) {
        return AirSideMapping.airflow(request);
    }

    private static Conductance conductance(BalanceCondenserRequest request) {
        ZoneConductances zones = request.zoneConductances();
        return zones == null ? Conductance.uniform(request.conductance().value()) : CoilMapping.zones(zones);
    }

    private static EvaporatorSide evaporator(Input<BalanceRequest> input) {
        BalanceEvaporatorRequest request = input.request().evaporator();
        double boiling = request.conductance().value();
        return within(
                EVAPORATOR,
                () -> new EvaporatorSide(
                        AirSideMapping.air(input, INDOOR),
                        airflow(request.airflow()),
                        boiling,
                        Si.optional(request.superheatingConductance()).orElse(boiling),
                        Si.optional(request.airflowExponent()).orElse(Fan.USUAL_EXPONENT),
                        Si.optional(request.fanPower())));
    }

    /** A part of the input; what the engine refuses of it is a member of that part. */
    private static <V> V within(String part, Supplier<V> value) {
        try {
            return value.get();
        } catch (EngineException e) {
            String name = e.input().orElse("conductance");
            throw e.about(name.startsWith(part) ? name : part + '.' + name);
        }
    }

    private static BalanceReply reply(Input<BalanceRequest> input, SystemBalance.Result result, Trust trust) {
        Output out = input.output();
        Balanced base = result.base();
        return new BalanceReply(
                base.points().stream().map(point -> States.of(out, point)).toList(),
                Levels.of(out, base.evaporating()),
                Levels.of(out, base.condensing()),
                out.of(QuantityKind.MASS_FLOW, base.massFlow()),
                DisplacementMapping.balance(out, base.energy()),
                base.heatRejectionFactor(),
                compressor(out, base.compressor()),
                condenser(out, base.condenser()),
                evaporator(out, base.evaporator()),
                base.system().map(system -> system(out, system)).orElse(null),
                result.rows().isEmpty() ? null : WhatIfMapping.rows(input, result.rows(), trust),
                trust.working(input, result.steps()),
                trust.basis(input),
                trust.warnings(input, base.findings(), UnitSlips.BALANCE),
                trust.cautions(input));
    }

    static SystemOfMachine system(Output out, SystemFigures system) {
        return new SystemOfMachine(
                out.of(QuantityKind.POWER, system.condenserFanPower()),
                out.of(QuantityKind.POWER, system.evaporatorFanPower()),
                out.of(QuantityKind.POWER, system.electricalPower()),
                system.coefficientOfPerformance(),
                system.coefficientOfPerformance() * Constants.BTU_PER_HOUR_PER_WATT,
                out.of(QuantityKind.POWER, system.netCapacity()),
                out.plain(system.netCoefficientOfPerformance()),
                out.plain(Optionals.map(
                        system.netCoefficientOfPerformance(), cop -> cop * Constants.BTU_PER_HOUR_PER_WATT)));
    }

    private static BalanceCompressor compressor(Output out, Balanced.CompressorFigures figures) {
        return new BalanceCompressor(
                figures.pressureRatio(),
                out.of(QuantityKind.TEMPERATURE, figures.dischargeTemperature()),
                out.of(QuantityKind.POWER, figures.shaftPower()),
                out.plain(figures.volumetricEfficiency()),
                figures.overallEfficiency(),
                out.of(QuantityKind.ELECTRIC_CURRENT, figures.current()));
    }

    private static BalanceCondenser condenser(Output out, Balanced.CondenserFigures figures) {
        return new BalanceCondenser(
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, figures.condensingOverAmbient()),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, figures.approach()),
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, figures.pinch().pinch()),
                CoilZoneName.valueOf(figures.pinch().kind().name()),
                figures.zones().stream()
                        .map(zone -> CoilMapping.zone(out, zone))
                        .toList(),
                figures.areaLeftOver(),
                out.of(QuantityKind.THERMAL_CONDUCTANCE, figures.conductance()),
                out.of(QuantityKind.MASS_FLOW, figures.airMassFlow()),
                volumeFlow(
                        out, figures.airMassFlow(), figures.entering().state().specificVolume()),
                AirStates.of(out, figures.entering(), EnthalpyDatum.ZERO_CELSIUS),
                AirStates.of(out, figures.leaving(), EnthalpyDatum.ZERO_CELSIUS));
    }

    private static io.loopstate.web.dto.Quantity volumeFlow(Output out, double massFlow, double specificVolume) {
        return out.of(QuantityKind.VOLUME_FLOW, massFlow * specificVolume);
    }

    private static BalanceEvaporator evaporator(Output out, Balanced.EvaporatorFigures figures) {
        return new BalanceEvaporator(
                out.of(QuantityKind.TEMPERATURE_DIFFERENCE, figures.temperatureDifference()),
                out.of(QuantityKind.POWER, figures.sensibleHeat()),
                out.of(QuantityKind.POWER, figures.latentHeat()),
                figures.sensibleHeatRatio(),
                out.of(QuantityKind.MASS_FLOW, figures.condensate()),
                figures.boilingShare(),
                figures.areaLeftOver(),
                out.of(QuantityKind.THERMAL_CONDUCTANCE, figures.conductance()),
                out.of(QuantityKind.MASS_FLOW, figures.airMassFlow()),
                volumeFlow(
                        out, figures.airMassFlow(), figures.entering().state().specificVolume()),
                out.of(QuantityKind.VOLUME_FLOW, figures.airflowPerTon()),
                AirStates.of(out, figures.entering(), EnthalpyDatum.ZERO_CELSIUS),
                AirStates.of(out, figures.leaving(), EnthalpyDatum.ZERO_CELSIUS));
    }
}
