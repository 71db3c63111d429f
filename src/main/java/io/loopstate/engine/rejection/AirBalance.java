package io.loopstate.engine.rejection;

import io.loopstate.engine.air.AirSolver;
import io.loopstate.engine.air.AirState;
import io.loopstate.engine.air.AirVariable;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.numerics.Search;
import io.loopstate.engine.rejection.AirSide.Air;
import io.loopstate.engine.rejection.AirSide.Airflow;
import io.loopstate.engine.rejection.AirSide.Coil;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Supplier;

/**
 * The energy balance of the air of a coil, solved for what is unknown.
 *
 * @param entering air before the coil
 * @param leaving air behind it
 * @param massFlow of dry air, kg/s
 * @param heat W exchanged with the coil
 * @param humidityAssumed whether a humidity was missing and an assumption took its place
 * @param search of the dry bulb, K, where one was sought
 */
record AirBalance(
        AirState entering,
        AirState leaving,
        double massFlow,
        double heat,
        boolean humidityAssumed,
        Optional<Search> search) {
    AirBalance(AirState entering, AirState leaving, double massFlow, double heat, boolean humidityAssumed) {
        this(entering, leaving, massFlow, heat, humidityAssumed, Optional.empty());
    }

    /** Density of standard air, kg/m3: 0.075 lb/ft3. Source: AHRI and ASHRAE usage (from memory). */
    static final double STANDARD_DENSITY = 0.075 * 0.45359237 / 0.028316846592;

    static AirBalance of(AirSide.Spec spec) {
        return new Solver(spec).solve();
    }

    /** Heat exchanged per kilogram of dry air between two states, J/kg: condensate leaves at the leaving dry bulb. */
    static double heatPerMass(Coil coil, AirState entering, AirState leaving) {
        double rise = leaving.specificEnthalpy() - entering.specificEnthalpy();
        return coil == Coil.CONDENSER
                ? rise
                : -rise
                        - (entering.humidityRatio() - leaving.humidityRatio())
                                * AirFactors.waterEnthalpy(leaving.dryBulb());
    }

    private static final class Solver {
        private final AirSide.Spec spec;
        private final AirSolver air;
        private final boolean heating;

        Solver(AirSide.Spec spec) {
            this.spec = spec;
            this.air = new AirSolver(spec.pressure());
            this.heating = spec.coil() == Coil.CONDENSER;
        }

        AirBalance solve() {
            if (heating && spec.leaving().humidity().isPresent()) {
                throw EngineException.of(
                                ErrorCode.CONTRADICTORY_INPUTS,
                                "A condenser leaves the water in the air as it is: the humidity of the leaving air follows.")
                        .about("leaving."
                                + spec.leaving().humidity().get().variable().input());
            }
            if (spec.leaving().dryBulb().isEmpty()) {
                return leavingUnknown();
            }
            return spec.entering().dryBulb().isEmpty() ? enteringUnknown() : bothKnown();
        }

        private AirBalance bothKnown() {
            boolean assumed = missing(spec.entering()) || !heating && missing(spec.leaving());
            double te = spec.entering().dryBulb().getAsDouble();
            AirState entering = missing(spec.entering())
                    ? new AirState(spec.pressure(), within("entering", te), 0)
                    : known("entering", spec.entering());
            double tl = spec.leaving().dryBulb().getAsDouble();
            requireDirection(te, tl, "leaving.dryBulb");
            AirState leaving = heating || missing(spec.leaving())
                    ? dried(entering, within("leaving", tl))
                    : known("leaving", spec.leaving());
            double perMass = heatPerMass(spec.coil(), entering, leaving);
            if (!(perMass > 0)) {
                throw backwards("leaving.dryBulb", tl);
            }
            if (spec.airflow().isPresent()) {
                double flow = massFlow(spec.airflow().get(), entering, leaving);
                return new AirBalance(entering, leaving, flow, coilHeat(flow * perMass), assumed);
            }
            double heat = spec.heat().orElseThrow();
            return new AirBalance(entering, leaving, airHeat(heat) / perMass, heat, assumed);
        }

        private AirBalance leavingUnknown() {
            AirState entering = missing(spec.entering())
                    ? new AirState(
                            spec.pressure(),
                            within("entering", spec.entering().dryBulb().orElseThrow()),
                            0)
                    : known("entering", spec.entering());
            Optional<DoubleFunction<AirState>> line = line("leaving", spec.leaving(), entering);
            DoubleFunction<AirState> leaving = line.orElse(dryBulb -> dried(entering, dryBulb));
            double far = heating ? AirSolver.HIGHEST_DRY_BULB : AirSolver.LOWEST_DRY_BULB;
            Search found = solve(entering.dryBulb(), far, t -> heat(entering, leaving.apply(t)));
            AirState other = leaving.apply(found.root());
            boolean assumed = missing(spec.entering()) || !heating && line.isEmpty();
            return closed(entering, other, assumed, found);
        }

        private AirBalance enteringUnknown() {
            double tl = spec.leaving().dryBulb().orElseThrow();
            boolean known = !missing(spec.leaving());
            AirState leaving =
                    known ? known("leaving", spec.leaving()) : new AirState(spec.pressure(), within("leaving", tl), 0);
            Optional<DoubleFunction<AirState>> line = line("entering", spec.entering(), leaving);
            if (line.isPresent() && !known) {
                return humidityFromEntering(tl, line.get());
            }
            DoubleFunction<AirState> entering = line.orElse(leaving::at);
            double far = heating ? AirSolver.LOWEST_DRY_BULB : AirSolver.HIGHEST_DRY_BULB;
            Search found = solve(leaving.dryBulb(), far, t -> heat(entering.apply(t), leaving));
            boolean assumed = line.isEmpty() && (!heating || missing(spec.entering()));
            return closed(entering.apply(found.root()), leaving, assumed, found);
        }

        /** The water of the leaving air is that of the entering air, unless saturation takes some. */
        private AirBalance humidityFromEntering(double tl, DoubleFunction<AirState> entering) {
            double far = heating ? AirSolver.LOWEST_DRY_BULB : AirSolver.HIGHEST_DRY_BULB;
            Search found = solve(tl, far, t -> heat(entering.apply(t), dried(entering.apply(t), tl)));
            AirState state = entering.apply(found.root());
            return closed(state, dried(state, tl), !heating, found);
        }

        private AirBalance closed(AirState entering, AirState leaving, boolean assumed, Search found) {
            double flow = massFlow(spec.airflow().orElseThrow(), entering, leaving);
            return new AirBalance(entering, leaving, flow, spec.heat().orElseThrow(), assumed, Optional.of(found));
        }

        /** W that the coil exchanges if the air goes between these states. */
        private double heat(AirState entering, AirState leaving) {
            return coilHeat(massFlow(spec.airflow().orElseThrow(), entering, leaving)
                    * heatPerMass(spec.coil(), entering, leaving));
        }

        /** What the coil exchanges is not what the air shows where a fan stands between the readings. */
        private double coilHeat(double air) {
            return heating ? air - spec.fanPower() : air + spec.fanPower();
        }

        private double airHeat(double coil) {
            double air = heating ? coil + spec.fanPower() : coil - spec.fanPower();
            if (!(air > 0)) {
                throw EngineException.of(
                        ErrorCode.CONTRADICTORY_INPUTS,
                        "The fan gives the air as much heat as the coil takes from it.",
                        "fanPower",
                        spec.fanPower(),
                        0,
                        coil);
            }
            return air;
        }

        private Search solve(double near, double far, DoubleUnaryOperator heat) {
            double wanted = spec.heat().orElseThrow();
            airHeat(wanted);
            if (heat.applyAsDouble(far) < wanted) {
                throw EngineException.of(
                        ErrorCode.CONTRADICTORY_INPUTS,
                        "So much heat would take so little air outside -100 to 200 degC.",
                        "heat",
                        wanted,
                        0,
                        Math.max(0, heat.applyAsDouble(far)));
            }
            return Search.brent(
                    t -> heat.applyAsDouble(t) - wanted,
                    Math.min(near, far),
                    Math.max(near, far),
                    1e-15,
                    "air of a coil");
        }

        private static double massFlow(Airflow flow, AirState entering, AirState leaving) {
            return flow.massFlow().isPresent()
                    ? flow.massFlow().getAsDouble()
                    : flow.volumeFlow().orElseThrow()
                            * switch (flow.condition()) {
                                case ENTERING -> 1 / entering.specificVolume();
                                case LEAVING -> 1 / leaving.specificVolume();
                                case STANDARD -> STANDARD_DENSITY;
                            };
        }

        /** Air of the same water at another dry bulb, less what saturation takes. */
        private AirState dried(AirState state, double dryBulb) {
            double most = AirState.saturatedHumidityRatio(spec.pressure(), dryBulb);
            return new AirState(spec.pressure(), dryBulb, Math.min(state.humidityRatio(), most));
        }

        private static boolean missing(Air side) {
            return side.humidity().isEmpty();
        }

        private AirState known(String side, Air given) {
            MoistAirQuery.Known humidity = given.humidity().orElseThrow();
            return about(
                    side,
                    () -> air.state(
                            AirVariable.DRY_BULB,
                            given.dryBulb().orElseThrow(),
                            humidity.variable(),
                            humidity.value()));
        }

        /** Air by its dry bulb alone, on the line that a humidity draws; empty without one. */
        private Optional<DoubleFunction<AirState>> line(String side, Air given, AirState other) {
            return given.humidity().map(humidity -> {
                if (humidity.variable() == AirVariable.WET_BULB) {
                    throw EngineException.of(
                                    ErrorCode.CONTRADICTORY_INPUTS,
                                    "Where the dry bulb is sought, give the humidity as relative humidity, dew point or"
                                            + " humidity ratio: along a wet bulb the enthalpy hardly changes.")
                            .about(side + ".wetBulb");
                }
                about(
                        side,
                        () -> air.state(
                                AirVariable.DRY_BULB, AirSolver.HIGHEST_DRY_BULB, AirVariable.HUMIDITY_RATIO, 0));
                return dryBulb -> onLine(side, humidity, dryBulb, other);
            });
        }

        private AirState onLine(String side, MoistAirQuery.Known humidity, double dryBulb, AirState other) {
            double most = AirState.saturatedHumidityRatio(spec.pressure(), dryBulb);
            double water = switch (humidity.variable()) {
                case RELATIVE_HUMIDITY -> AirState.humidityRatio(spec.pressure(), dryBulb, humidity.value());
                case DEW_POINT -> AirState.saturatedHumidityRatio(spec.pressure(), humidity.value());
                default -> humidity.value();
            };
            // A coil takes water from the air and never gives it any.
            double possible = heating
                    ? water
                    : side.equals("leaving")
                            ? Math.min(water, other.humidityRatio())
                            : Math.max(water, other.humidityRatio());
            return new AirState(
                    spec.pressure(), dryBulb, Math.min(Math.min(possible, most), AirSolver.HIGHEST_HUMIDITY_RATIO));
        }

        private double within(String side, double dryBulb) {
            return about(side, () -> air.state(AirVariable.DRY_BULB, dryBulb, AirVariable.HUMIDITY_RATIO, 0))
                    .dryBulb();
        }

        private static AirState about(String side, Supplier<AirState> state) {
            try {
                return state.get();
            } catch (EngineException e) {
                throw e.about(side + "." + e.input().orElseThrow());
            }
        }

        private void requireDirection(double entering, double leaving, String input) {
            if (heating ? leaving <= entering : leaving >= entering) {
                throw backwards(input, leaving);
            }
        }

        private EngineException backwards(String input, double leaving) {
            OptionalDouble entering = spec.entering().dryBulb();
            return EngineException.of(
                    ErrorCode.CONTRADICTORY_INPUTS,
                    heating
                            ? "The air leaves the condenser no warmer than it enters: swapped or wrong probes, or no heat."
                            : "The air leaves the evaporator with no less heat than it enters with: swapped or wrong"
                                    + " probes, or no cooling.",
                    input,
                    leaving,
                    heating ? entering.orElse(Double.NaN) : Double.NaN,
                    heating ? Double.NaN : entering.orElse(Double.NaN));
        }
    }
}
