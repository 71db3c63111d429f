package io.loopstate.engine.rejection;

import io.loopstate.engine.component.Require;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.Guidance;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.numerics.Search;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The water of a condenser or a chiller: of flow, entering and leaving temperature and heat any three give the fourth, with pure
 * water by its equation of state, or with a brine by its maker's density and heat capacity.
 */
public final class WaterSide {
    private WaterSide() {}

    /**
     * The fourth from three.
     *
     * @throws EngineException where water would freeze or boil, or heat and temperatures point different ways; it names the
     *     input: {@code enteringTemperature}, {@code leavingTemperature}, {@code heat}
     */
    public static Result calculate(Spec spec) {
        Balance balance = spec.leaving().isEmpty()
                ? leavingSought(spec)
                : spec.entering().isEmpty() ? enteringSought(spec) : bothKnown(spec);
        SideLiquid.At entering = balance.entering();
        SideLiquid.At leaving = balance.leaving();
        double change = Math.abs(leaving.temperature() - entering.temperature());
        double heatCapacity = spec.brine().isPresent()
                ? spec.brine().get().heatCapacity()
                : Math.abs(leaving.specificEnthalpy() - entering.specificEnthalpy()) / change;
        Optional<AirFigures.Refrigerant> refrigerant =
                spec.saturationTemperature().isPresent() ? Optional.of(refrigerant(spec, balance)) : Optional.empty();
        Optional<CoolingTower> tower = spec.tower().map(conditions -> tower(spec, conditions, balance));
        Figures figures = new Figures(
                entering.temperature(),
                leaving.temperature(),
                change,
                balance.massFlow(),
                balance.massFlow() / entering.density(),
                balance.heat(),
                heatCapacity,
                entering.density() * heatCapacity,
                refrigerant,
                tower);
        return new Result(
                figures,
                WaterSideFindings.of(spec, figures),
                spec.explain() ? WaterSideWorking.of(spec, balance, figures) : List.of());
    }

    /**
     * Three of flow, entering, leaving and heat.
     *
     * @param water its states
     * @param coil a condenser heats the water, an evaporator chills it
     * @param pressure of the water, Pa
     * @param entering K
     * @param leaving K
     * @param massFlow kg/s
     * @param volumeFlow m3/s as the water enters
     * @param heat W
     * @param saturationTemperature K of the refrigerant, midpoint of a blend
     * @param tower a cooling tower that takes the heat of the condenser
     * @param glycolShare mass of glycol in the mixture; only noted
     * @param brine in place of water, by its maker's figures
     * @param guidance limits for the findings
     * @param explain whether the result shows its working
     */
    public record Spec(
            Equilibrium water,
            AirSide.Coil coil,
            double pressure,
            OptionalDouble entering,
            OptionalDouble leaving,
            OptionalDouble massFlow,
            OptionalDouble volumeFlow,
            OptionalDouble heat,
            OptionalDouble saturationTemperature,
            Optional<CoolingTower.Conditions> tower,
            double glycolShare,
            Optional<Brine> brine,
            Guidance guidance,
            boolean explain) {
        public Spec {
            Objects.requireNonNull(water);
            Objects.requireNonNull(coil);
            Objects.requireNonNull(tower);
            Objects.requireNonNull(brine);
            Objects.requireNonNull(guidance);
            Require.positive("pressure", pressure);
            Require.positive("massFlow", massFlow);
            Require.positive("volumeFlow", volumeFlow);
            Require.positive("heat", heat);
            Require.positive("saturationTemperature", saturationTemperature);
            Require.properShare("glycolShare", glycolShare);
        }

        boolean heating() {
            return coil == AirSide.Coil.CONDENSER;
        }
    }

    /** The states on both sides, kg/s and W. */
    record Balance(
            SideLiquid.At entering, SideLiquid.At leaving, double massFlow, double heat, Optional<Search> search) {
        Balance(SideLiquid.At entering, SideLiquid.At leaving, double massFlow, double heat) {
            this(entering, leaving, massFlow, heat, Optional.empty());
        }
    }

    /**
     * Flows, temperatures and heat.
     *
     * @param entering K
     * @param leaving K
     * @param temperatureChange K, without sign
     * @param massFlow kg/s
     * @param volumeFlow m3/s as the water enters
     * @param heat W
     * @param heatCapacity mean between both temperatures, J/(kg K)
     * @param factor heat per volume flow and temperature difference, the 500 of the trade, J/(m3 K)
     * @param refrigerant against the refrigerant, where its temperature is known
     * @param tower where asked for
     */
    public record Figures(
            double entering,
            double leaving,
            double temperatureChange,
            double massFlow,
            double volumeFlow,
            double heat,
            double heatCapacity,
            double factor,
            Optional<AirFigures.Refrigerant> refrigerant,
            Optional<CoolingTower> tower) {}

    /**
     * The water.
     *
     * @param figures flows, temperatures, heat
     * @param findings what is unwise, implausible or left out
     * @param steps the working; empty unless asked for
     */
    public record Result(Figures figures, List<Finding> findings, List<Step> steps) {
        public Result {
            findings = List.copyOf(findings);
            steps = List.copyOf(steps);
        }
    }

    private static Balance bothKnown(Spec spec) {
        SideLiquid.At entering =
                SideLiquid.of(spec).at("enteringTemperature", spec.entering().getAsDouble());
        SideLiquid.At leaving =
                SideLiquid.of(spec).at("leavingTemperature", spec.leaving().getAsDouble());
        double perMass = perMass(spec, entering, leaving);
        if (!(perMass > 0)) {
            throw EngineException.of(
                    ErrorCode.CONTRADICTORY_INPUTS,
                    spec.heating()
                            ? "The water leaves the condenser no warmer than it enters: swapped or wrong probes, or no heat."
                            : "The water leaves the chiller no colder than it enters: swapped or wrong probes, or no cooling.",
                    "leavingTemperature",
                    leaving.temperature(),
                    spec.heating() ? entering.temperature() : Double.NaN,
                    spec.heating() ? Double.NaN : entering.temperature());
        }
        if (spec.heat().isPresent()) {
            double heat = spec.heat().getAsDouble();
            return new Balance(entering, leaving, heat / perMass, heat);
        }
        double flow = flow(spec, entering);
        return new Balance(entering, leaving, flow, flow * perMass);
    }

    private static Balance leavingSought(Spec spec) {
        SideLiquid.At entering =
                SideLiquid.of(spec).at("enteringTemperature", spec.entering().orElseThrow());
        double flow = flow(spec, entering);
        double heat = spec.heat().orElseThrow();
        double change = (spec.heating() ? 1 : -1) * heat / flow;
        SideLiquid.At leaving = SideLiquid.of(spec).withHeat(entering.specificEnthalpy() + change);
        return new Balance(entering, leaving, flow, heat);
    }

    private static Balance enteringSought(Spec spec) {
        SideLiquid.At leaving =
                SideLiquid.of(spec).at("leavingTemperature", spec.leaving().orElseThrow());
        double heat = spec.heat().orElseThrow();
        double sign = spec.heating() ? -1 : 1;
        Optional<Search> search =
                spec.massFlow().isPresent() ? Optional.empty() : Optional.of(flowAtEntering(spec, leaving, sign));
        double flow = search.map(Search::root).orElseGet(() -> spec.massFlow().getAsDouble());
        SideLiquid.At entering = SideLiquid.of(spec).withHeat(leaving.specificEnthalpy() + sign * heat / flow);
        return new Balance(entering, leaving, flow, heat, search);
    }

    /** kg/s of a volume flow that counts in the water sought. */
    private static Search flowAtEntering(Spec spec, SideLiquid.At leaving, double sign) {
        double volume = spec.volumeFlow().orElseThrow();
        double heat = spec.heat().orElseThrow();
        // Between freezing and boiling the density of water changes by less than a tenth.
        double guess = volume * leaving.density();
        return Search.brent(
                flow -> volume
                                * SideLiquid.of(spec)
                                        .withHeat(leaving.specificEnthalpy() + sign * heat / flow)
                                        .density()
                        - flow,
                0.9 * guess,
                1.1 * guess,
                1e-14,
                "flow of entering water");
    }

    private static double flow(Spec spec, SideLiquid.At entering) {
        return spec.massFlow().isPresent()
                ? spec.massFlow().getAsDouble()
                : spec.volumeFlow().orElseThrow() * entering.density();
    }

    private static double perMass(Spec spec, SideLiquid.At entering, SideLiquid.At leaving) {
        return (spec.heating() ? 1 : -1) * (leaving.specificEnthalpy() - entering.specificEnthalpy());
    }

    private static AirFigures.Refrigerant refrigerant(Spec spec, Balance balance) {
        double temperature = spec.saturationTemperature().orElseThrow();
        int sign = spec.heating() ? 1 : -1;
        return AirFigures.Refrigerant.of(
                temperature,
                sign * (temperature - balance.entering().temperature()),
                sign * (temperature - balance.leaving().temperature()),
                balance.heat());
    }

    private static CoolingTower tower(Spec spec, CoolingTower.Conditions conditions, Balance balance) {
        if (!spec.heating()) {
            throw EngineException.of(
                            ErrorCode.CONTRADICTORY_INPUTS, "A cooling tower stands at a condenser, not at a chiller.")
                    .about("coolingTower.wetBulb");
        }
        if (spec.brine().isPresent()) {
            throw EngineException.of(
                            ErrorCode.CONTRADICTORY_INPUTS,
                            "A cooling tower evaporates its water, which a brine keeps to itself in a closed circuit.")
                    .about("coolingTower.wetBulb");
        }
        if (conditions.cyclesOfConcentration().orElse(2) <= 1) {
            throw EngineException.of(
                    ErrorCode.IMPOSSIBLE_VALUE,
                    "Evaporation leaves solids behind, so that their concentration rises: above 1.",
                    "coolingTower.cyclesOfConcentration",
                    conditions.cyclesOfConcentration().getAsDouble(),
                    1,
                    Double.NaN);
        }
        double cold = balance.entering().temperature();
        double warm = balance.leaving().temperature();
        double latent = spec.water().saturationAtTemperature((cold + warm) / 2).latentHeat();
        return CoolingTower.of(conditions, balance.heat(), latent, cold, warm);
    }
}
