package io.loopstate.engine.balance;

import io.loopstate.engine.air.AirSolver;
import io.loopstate.engine.air.MoistAir;
import io.loopstate.engine.balance.Balanced.CondenserFigures;
import io.loopstate.engine.balance.Balanced.EvaporatorFigures;
import io.loopstate.engine.balance.Loop.Trial;
import io.loopstate.engine.compression.EnergyBalance;
import io.loopstate.engine.cycle.Constants;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.cycle.Optionals;
import io.loopstate.engine.cycle.Point;
import io.loopstate.engine.cycle.PointName;
import io.loopstate.engine.cycle.SaturationTemperatures;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import io.loopstate.engine.rejection.CoilAir;
import io.loopstate.engine.rejection.CoilZone;
import io.loopstate.engine.rejection.CondenserCoil;
import io.loopstate.engine.rejection.EvaporatorAir;
import io.loopstate.engine.rejection.EvaporatorCoil;
import io.loopstate.engine.rejection.Load;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The steady state of a whole machine between given indoor and outdoor air: the evaporating and condensing pressure at which
 * the flow of the compressor is what both coils bring to the superheat and subcooling asked for.
 */
public final class SystemBalance {
    /** Share of a coil from which it counts as left over. */
    static final double LEFT_OVER = 1e-6;

    private SystemBalance() {}

    /**
     * A machine in its surroundings.
     *
     * @param equilibrium the refrigerant
     * @param atmosphere Pa
     * @param compressor what moves the vapor
     * @param condenser and the outdoor air
     * @param evaporator and the indoor air
     * @param settings superheat and subcooling
     * @param whatIfs what is asked beside the base case
     * @param guidance limits for the findings
     * @param explain whether the result shows its working
     */
    public record Spec(
            Equilibrium equilibrium,
            double atmosphere,
            CompressorChoice compressor,
            CondenserSide condenser,
            EvaporatorSide evaporator,
            Settings settings,
            List<WhatIf> whatIfs,
            Guidance guidance,
            boolean explain) {
        public Spec {
            Objects.requireNonNull(equilibrium);
            Objects.requireNonNull(compressor);
            Objects.requireNonNull(condenser);
            Objects.requireNonNull(evaporator);
            Objects.requireNonNull(settings);
            Objects.requireNonNull(guidance);
            whatIfs = List.copyOf(whatIfs);
        }

        Spec withoutWorking() {
            return new Spec(
                    equilibrium, atmosphere, compressor, condenser, evaporator, settings, whatIfs, guidance, false);
        }
    }

    /**
     * The machine in balance, and each what-if.
     *
     * @param base as specified
     * @param rows one for each what-if, in order
     * @param steps the working of the base case; empty unless asked for
     */
    public record Result(Balanced base, List<Row> rows, List<Step> steps) {
        public Result {
            rows = List.copyOf(rows);
            steps = List.copyOf(steps);
        }
    }

    /**
     * The balance.
     *
     * @throws EngineException {@code NO_BALANCE} about an input of the component that has none; other codes for air or inputs that
     *     cannot be. A what-if without a balance says so in its row instead.
     */
    public static Result calculate(Spec spec) {
        Solved base = solve(spec, WhatIf.base());
        if (base.none().isPresent()) {
            throw base.none().get().reason();
        }
        Balanced balanced = base.balanced().orElseThrow();
        Spec plain = spec.withoutWorking();
        List<Row> rows = new ArrayList<>();
        for (WhatIf whatIf : spec.whatIfs()) {
            rows.add(row(plain, whatIf, balanced));
        }
        return new Result(balanced, rows, base.steps());
    }

    private static Row row(Spec spec, WhatIf whatIf, Balanced base) {
        if (whatIf.refrigerant().isPresent() && spec.compressor().map().isPresent()) {
            return Row.of(whatIf, NoBalance.otherRefrigerant());
        }
        Solved solved = solve(spec, whatIf);
        return solved.none()
                .map(none -> Row.of(whatIf, none))
                .orElseGet(() -> Row.of(whatIf, base, solved.balanced().orElseThrow()));
    }

    /** One case. */
    private record Solved(Optional<Balanced> balanced, Optional<NoBalance> none, List<Step> steps) {
        static Solved none(NoBalance none) {
            return new Solved(Optional.empty(), Optional.of(none), List.of());
        }
    }

    private static Solved solve(Spec spec, WhatIf whatIf) {
        Loop loop = Surroundings.loop(spec, whatIf);
        Levels levels = LevelSearch.of(loop);
        if (levels.none().isPresent()) {
            return Solved.none(levels.none().get());
        }
        Trial trial = levels.balance().orElseThrow();
        Optional<NoBalance> outside = CompressorAtBalance.outside(spec.compressor(), loop.equilibrium(), trial);
        if (outside.isPresent()) {
            return Solved.none(outside.get());
        }
        CondenserCoil.Operating condenser = loop.condenser()
                .operating(
                        trial.condensing(),
                        Load.massFlow(trial.running().massFlow()),
                        (e, p, s) -> trial.running().discharge(),
                        loop.settings().liquid());
        if (condenser.airOutlet() > AirSolver.HIGHEST_DRY_BULB) {
            return Solved.none(NoBalance.airTooHot());
        }
        double atmosphere = whatIf.atmosphere().orElse(spec.atmosphere());
        CompressorAtBalance compressor = CompressorAtBalance.of(spec, atmosphere, loop.equilibrium(), trial);
        Balanced bare = balanced(spec, whatIf, loop, trial, condenser, compressor);
        Balanced balanced = bare.with(BalanceFindings.of(spec, whatIf, loop, compressor, bare));
        List<Step> steps = spec.explain() ? BalanceWorking.of(spec, loop, levels, compressor, balanced) : List.of();
        return new Solved(Optional.of(balanced), Optional.empty(), steps);
    }

    private static Balanced balanced(
            Spec spec,
            WhatIf whatIf,
            Loop loop,
            Trial trial,
            CondenserCoil.Operating condenser,
            CompressorAtBalance compressor) {
        Equilibrium equilibrium = loop.equilibrium();
        double flow = trial.running().massFlow();
        EvaporatorCoil.Operating evaporator = loop.evaporator()
                .operating(
                        trial.evaporating(),
                        flow,
                        trial.liquid().specificEnthalpy(),
                        loop.settings().vapor());
        SaturationTemperatures evaporating = SaturationTemperatures.of(trial.evaporating(), evaporator.saturation());
        SaturationTemperatures condensing = SaturationTemperatures.of(trial.condensing(), condenser.saturation());
        State behindValve = equilibrium.atPressureEnthalpy(
                trial.evaporating(), trial.liquid().specificEnthalpy());
        return new Balanced(
                List.of(
                        Point.of(PointName.COMPRESSOR_INLET, equilibrium, trial.suction()),
                        Point.of(
                                PointName.COMPRESSOR_OUTLET,
                                equilibrium,
                                trial.running().discharge()),
                        Point.of(PointName.CONDENSER_OUTLET, equilibrium, trial.liquid()),
                        Point.of(PointName.EVAPORATOR_INLET, equilibrium, behindValve),
                        Point.of(PointName.EVAPORATOR_OUTLET, equilibrium, trial.vapor())),
                evaporating,
                condensing,
                flow,
                energy(trial, evaporator, condenser),
                compressor.figures(),
                condenser(loop.condenser(), condenser, condensing),
                evaporator(loop.evaporator(), evaporator, evaporating),
                system(spec, whatIf, loop, evaporator.heat(), trial.running().electricalPower()),
                List.of());
    }

    /** The fan laws: power as the cube of the speed and as the density of the air. */
    private static Optional<SystemFigures> system(
            Spec spec, WhatIf whatIf, Loop loop, double capacity, double compressor) {
        CondenserSide outdoor = spec.condenser();
        EvaporatorSide indoor = spec.evaporator();
        if (outdoor.fanPower().isEmpty() && indoor.fanPower().isEmpty()) {
            return Optional.empty();
        }
        double speed = whatIf.fanSpeed().orElse(outdoor.fan().speed());
        double outside = Surroundings.entering(outdoor.air(), spec.atmosphere(), "outdoorAir")
                        .specificVolume()
                / loop.condenser().air().state().specificVolume();
        double inside = Surroundings.entering(indoor.air(), spec.atmosphere(), "indoorAir")
                        .specificVolume()
                / loop.evaporator().air().state().specificVolume();
        return Optional.of(SystemFigures.of(
                capacity,
                compressor,
                Optionals.map(outdoor.fanPower(), power -> power * Math.pow(speed, 3) * outside),
                Optionals.map(indoor.fanPower(), power -> power * inside)));
    }

    private static EnergyBalance energy(
            Trial trial, EvaporatorCoil.Operating evaporator, CondenserCoil.Operating condenser) {
        double line = trial.running().massFlow()
                * (trial.suction().specificEnthalpy() - trial.vapor().specificEnthalpy());
        double power = trial.running().electricalPower();
        double loss = trial.running().heatLoss();
        return new EnergyBalance(
                evaporator.heat(),
                line,
                power,
                loss,
                condenser.heat(),
                (evaporator.heat() + line + power - loss - condenser.heat()) / condenser.heat(),
                evaporator.heat() / power);
    }

    private static CondenserFigures condenser(
            CondenserCoil coil, CondenserCoil.Operating operating, SaturationTemperatures condensing) {
        CoilAir air = coil.air();
        return new CondenserFigures(
                operating.zones(),
                leftOver(operating.areaLeftOver()),
                coil.conductance().condensing(),
                air.massFlow(),
                MoistAir.of(air.state()),
                MoistAir.of(air.state().at(operating.airOutlet())),
                condensing.midpoint() - air.state().dryBulb(),
                condensing.midpoint() - operating.airOutlet(),
                operating.zones().stream()
                        .min(Comparator.comparingDouble(CoilZone::pinch))
                        .orElseThrow());
    }

    /** What iteration and rounding leave is nothing. */
    private static double leftOver(double share) {
        return share > LEFT_OVER ? share : 0;
    }

    private static EvaporatorFigures evaporator(
            EvaporatorCoil coil, EvaporatorCoil.Operating operating, SaturationTemperatures evaporating) {
        CoilAir air = coil.air();
        EvaporatorAir leaving = EvaporatorAir.of(air, operating);
        return new EvaporatorFigures(
                operating.boilingShare(),
                leftOver(operating.areaLeftOver()),
                coil.boiling(),
                air.massFlow(),
                MoistAir.of(air.state()),
                MoistAir.of(leaving.state()),
                leaving.sensibleHeat(),
                leaving.latentHeat(),
                leaving.condensate(),
                air.state().dryBulb() - evaporating.midpoint(),
                air.massFlow() * air.state().specificVolume() / operating.heat() * Constants.WATT_PER_TON);
    }
}
